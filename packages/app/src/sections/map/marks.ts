import type { Near, SitePoint } from './frame.ts';
import { mapVerdicts } from './mapSites.ts';
import type { PlanePoint } from './plane.ts';
import { onPicture, type Size, type View } from './view.ts';

/** A place in the picture [px]. */
interface Spot {
  readonly x: number;
  readonly y: number;
  /** How high the mark on it is [px]. */
  readonly size: number;
}

/** A site with its place in the picture. */
export interface Mark extends Spot {
  readonly site: SitePoint;
}

/** What is drawn of the sites. */
export interface MarksDrawn {
  /** Exceptions, by their marks. */
  readonly marks: readonly Mark[];
  /** Sites that hold, or are not judged, as one path of dots. */
  readonly specks: string;
  /** Exceptions whose marks would lie on worse ones: dots in their colour. */
  readonly under: { readonly short: string; readonly tight: string; readonly unknown: string };
  readonly underCount: number;
}

/** Heights of marks [px]: of those the list shows, and of the others. Eleven is the least a mark can be told at. Ours. */
const [large, small] = [20, 12] as const;
/** Marks nearer than this share of their size are drawn once [px]; so are specks nearer than two pixels. Ours. */
const [apart, specksApart] = [0.75, 2] as const;
/** Most marks with a shape of their own in one picture. Ours. */
const most = 400;

/** Verdicts with a mark of their own are those before it. */
const notJudged = mapVerdicts.indexOf('notJudged');
const dot = (x: number, y: number) => `M${Math.round(x * 2) / 2} ${Math.round(y * 2) / 2}h0`;

/**
 * Which marks and specks does the picture show? The worst come first and take their place; a mark that would lie on one of them
 * becomes a dot, and specks on one spot are drawn once, so that ten thousand sites are drawn as quickly as a thousand.
 *
 * @param near - the sites with their points, those that need her most first
 * @param listed - places of those the list shows: they are larger and come before all others
 */
export function marksOf(near: Near, listed: ReadonlySet<number>, view: View, size: Size): MarksDrawn {
  const steps = marksInSteps(near, listed, view, size);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** Sites that are gone through before others may have their turn. Ours. */
const step_sites = 500;

/** The same, step by step: the first time a browser does it, it takes several times as long as later. */
export function* marksInSteps(
  near: Near,
  listed: ReadonlySet<number>,
  view: View,
  size: Size,
): Generator<void, MarksDrawn> {
  const picture = new Picture(view, size);
  const drawing = new Drawing();
  // Those the list shows come first; nothing is made of the others but what is drawn, as there may be ten thousand.
  for (const isLarge of [true, false])
    for (let i = 0; i < near.count; i++) {
      if (i % step_sites === 0) yield;
      const isMark = near.verdictAt(i) < notJudged;
      if (isMark ? listed.has(near.places[i]!) !== isLarge : !isLarge) continue;
      if (!picture.sees(near.east_km[i]!, near.south_km[i]!)) continue;
      const { x, y } = picture;
      if (isMark) drawing.mark(near, i, { x, y, size: isLarge ? large : small });
      else drawing.speck(x, y);
    }
  return drawing.drawn();
}

/** Where sites lie in the picture [px]. */
class Picture {
  x = 0;
  y = 0;
  private readonly left: number;
  private readonly top: number;

  constructor(
    private readonly view: View,
    private readonly size: Size,
  ) {
    this.left = size.wide / 2 - view.east_km * view.pixels_per_km;
    this.top = size.high / 2 - view.south_km * view.pixels_per_km;
  }

  /** Does a site lie in it, or close to it? Then `x` and `y` tell where. Ten thousand sites pass here at each step nearer. */
  sees(east_km: number, south_km: number): boolean {
    const { wide, high } = this.size;
    this.x = this.left + east_km * this.view.pixels_per_km;
    this.y = this.top + south_km * this.view.pixels_per_km;
    // As much again on every side, so that marks come in while the map is dragged.
    return this.x >= -wide / 2 && this.y >= -high / 2 && this.x <= 1.5 * wide && this.y <= 1.5 * high;
  }
}

/** What comes into the picture, one after the other: those that come first take their place. */
class Drawing {
  private readonly taken = new Taken();
  private readonly spots = new Set<number>();
  private readonly marks: Mark[] = [];
  private readonly specks: string[] = [];
  private readonly under: Record<keyof MarksDrawn['under'], string[]> = { short: [], tight: [], unknown: [] };
  private underCount = 0;

  mark(near: Near, i: number, spot: Spot): void {
    if (this.marks.length < most && this.taken.takes(spot)) {
      this.marks.push({ site: near.at(i)!, ...spot });
      return;
    }
    this.under[mapVerdicts[near.verdictAt(i)] as keyof MarksDrawn['under']].push(dot(spot.x, spot.y));
    this.underCount++;
  }

  speck(x: number, y: number): void {
    if (isNewSpot(this.spots, x, y)) this.specks.push(dot(x, y));
  }

  drawn(): MarksDrawn {
    const { short, tight, unknown } = this.under;
    return {
      // Worst last, so that it lies on top.
      marks: this.marks.reverse(),
      specks: this.specks.join(''),
      under: { short: short.join(''), tight: tight.join(''), unknown: unknown.join('') },
      underCount: this.underCount,
    };
  }
}

/** Specks nearer than two pixels are drawn once. */
function isNewSpot(spots: Set<number>, x: number, y: number): boolean {
  const spot = Math.floor(x / specksApart) * 100_000 + Math.floor(y / specksApart);
  if (spots.has(spot)) return false;
  spots.add(spot);
  return true;
}

/** Places that are taken, in squares of the size of a large mark. */
class Taken {
  private readonly squares = new Map<number, Spot[]>();

  /** Takes the place of a mark, unless another lies there. */
  takes(mark: Spot): boolean {
    const [column, row] = [Math.floor(mark.x / large), Math.floor(mark.y / large)];
    for (let i = column - 1; i <= column + 1; i++)
      for (let j = row - 1; j <= row + 1; j++) if (this.isOver(this.squares.get(squareOf(i, j)), mark)) return false;
    const square = squareOf(column, row);
    const others = this.squares.get(square);
    if (others === undefined) this.squares.set(square, [mark]);
    else others.push(mark);
    return true;
  }

  private isOver(others: readonly Spot[] | undefined, { x, y, size }: Spot): boolean {
    if (others === undefined) return false;
    for (const other of others)
      if (Math.hypot(other.x - x, other.y - y) < apart * Math.min(size, other.size)) return true;
    return false;
  }
}

/** One number for a square of the picture. */
const squareOf = (column: number, row: number): number => column * 100_000 + row;

/** The site nearest to a point of the picture, within so many pixels; of two as near, the one that needs her more. */
export function siteAt(near: Near, view: View, size: Size, [x, y]: PlanePoint, within: number): SitePoint | null {
  let best = -1;
  let least = within;
  for (let i = 0; i < near.count; i++) {
    const [left, top] = onPicture(view, size, [near.east_km[i]!, near.south_km[i]!]);
    // An exception is larger than a speck, and is meant where both are near.
    const away = Math.hypot(left - x, top - y) * (near.verdictAt(i) < notJudged ? 0.6 : 1);
    if (away < least) [best, least] = [i, away];
  }
  return near.at(best);
}
