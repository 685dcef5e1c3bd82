import type { SitePoint } from './frame.ts';
import type { PlanePoint } from './plane.ts';
import { onPicture, type Size, type View } from './view.ts';

/** A site with its place in the picture [px]. */
export interface Mark {
  readonly site: SitePoint;
  readonly x: number;
  readonly y: number;
  /** How high its mark is [px]. */
  readonly size: number;
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

const isException = ({ verdict }: SitePoint) => verdict === 'short' || verdict === 'tight' || verdict === 'unknown';
const dot = (x: number, y: number) => `M${Math.round(x * 2) / 2} ${Math.round(y * 2) / 2}h0`;

/**
 * Which marks and specks does the picture show? The worst come first and take their place; a mark that would lie on one of them
 * becomes a dot, and specks on one spot are drawn once, so that ten thousand sites are drawn as quickly as a thousand.
 *
 * @param sites - with their points, those that need her most first
 * @param listed - those the list shows: they are larger and come before all others
 */
export function marksOf(sites: readonly SitePoint[], listed: ReadonlySet<string>, view: View, size: Size): MarksDrawn {
  const { exceptions, specks } = seenOf(sites, listed, view, size);
  const first = [...exceptions.filter((one) => one.size === large), ...exceptions.filter((one) => one.size === small)];
  const marks: Mark[] = [];
  const under = { short: '', tight: '', unknown: '' };
  let underCount = 0;
  const taken = new Taken();
  for (const mark of first) {
    if (marks.length < most && taken.takes(mark)) marks.push(mark);
    else {
      under[mark.site.verdict as keyof typeof under] += dot(mark.x, mark.y);
      underCount += 1;
    }
  }
  // Worst last, so that it lies on top.
  return { marks: marks.reverse(), specks, under, underCount };
}

/** What lies in the picture or close to it: exceptions, and all others as dots. Ten thousand sites pass here at each step nearer. */
function seenOf(sites: readonly SitePoint[], listed: ReadonlySet<string>, view: View, { wide, high }: Size) {
  const exceptions: Mark[] = [];
  const spots = new Set<number>();
  let specks = '';
  const [left, top] = [wide / 2 - view.east_km * view.pixels_per_km, high / 2 - view.south_km * view.pixels_per_km];
  for (const site of sites) {
    const x = left + site.point[0] * view.pixels_per_km;
    const y = top + site.point[1] * view.pixels_per_km;
    // As much again on every side, so that marks come in while the map is dragged.
    if (x < -wide / 2 || y < -high / 2 || x > 1.5 * wide || y > 1.5 * high) continue;
    if (isException(site)) {
      exceptions.push({ site, x, y, size: listed.has(site.key) ? large : small });
      continue;
    }
    const spot = Math.floor(x / specksApart) * 100_000 + Math.floor(y / specksApart);
    if (spots.has(spot)) continue;
    spots.add(spot);
    specks += dot(x, y);
  }
  return { exceptions, specks };
}

/** Places that are taken, in squares of the size of a large mark. */
class Taken {
  private readonly squares = new Map<string, Mark[]>();

  /** Takes the place of a mark, unless another lies there. */
  takes(mark: Mark): boolean {
    const [column, row] = [Math.floor(mark.x / large), Math.floor(mark.y / large)];
    for (let i = column - 1; i <= column + 1; i++)
      for (let j = row - 1; j <= row + 1; j++)
        for (const other of this.squares.get(`${i} ${j}`) ?? [])
          if (Math.hypot(other.x - mark.x, other.y - mark.y) < apart * Math.min(mark.size, other.size)) return false;
    const square = `${column} ${row}`;
    this.squares.set(square, [...(this.squares.get(square) ?? []), mark]);
    return true;
  }
}

/** The site nearest to a point of the picture, within so many pixels; of two as near, the one that needs her more. */
export function siteAt(
  sites: readonly SitePoint[],
  view: View,
  size: Size,
  [x, y]: PlanePoint,
  within: number,
): SitePoint | null {
  let best: SitePoint | null = null;
  let least = within;
  for (const site of sites) {
    const [left, top] = onPicture(view, size, site.point);
    // An exception is larger than a speck, and is meant where both are near.
    const away = Math.hypot(left - x, top - y) * (isException(site) ? 0.6 : 1);
    if (away < least) [best, least] = [site, away];
  }
  return best;
}
