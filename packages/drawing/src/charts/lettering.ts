import type { Ink, LetterShape } from '../sheet/shapes.ts';
import type { Box } from './chart.ts';
import { letterSizes_px, letterWidth_px } from './letterWidth.ts';

/** A stretch of text in one ink and weight. */
export interface Lettered {
  readonly text: string;
  readonly ink?: Ink;
  readonly isStrong?: boolean;
}

/** Where a text might stand: its foot line, and which end of it is at x [px]. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly anchor?: LetterShape['anchor'];
}

/** How a text is set. */
export interface Setting {
  readonly size?: LetterShape['size'];
  readonly hasHalo?: boolean;
  /** Free room kept round it [px]. */
  readonly room?: number;
}

/** Share of its size that a letter stands above and below its foot line [fraction]. */
const above_fraction = 0.8;
const below_fraction = 0.26;
/** Between two stretches of one text [em]. */
const between_em = 0.28;

/** The letters of one picture: each is set only where it stands inside, and clear of all set before it. */
export class Lettering {
  readonly #letters: LetterShape[] = [];
  readonly #taken: Box[] = [];
  readonly #width: number;
  readonly #height: number;

  constructor(width: number, height: number) {
    this.#width = width;
    this.#height = height;
  }

  get letters(): readonly LetterShape[] {
    return this.#letters;
  }

  /** Keeps letters off a place. */
  keepOff(box: Box): void {
    this.#taken.push(box);
  }

  /** Sets a text at the first of these spots where it can stand; tells whether there was one. */
  set(text: string | Lettered | readonly Lettered[], spots: Spot | readonly Spot[], how: Setting = {}): boolean {
    const stretches: readonly Lettered[] = typeof text === 'string' ? [{ text }] : 'text' in text ? [text] : text;
    const list: readonly Spot[] = 'x' in spots ? [spots] : spots;
    for (const spot of list) {
      const set = lettersAt(stretches, spot, how);
      const room = how.room ?? 2;
      if (!this.#isFree(set.box, room)) continue;
      this.#taken.push(set.box);
      this.#letters.push(...set.letters);
      return true;
    }
    return false;
  }

  #isFree({ x, y, width, height }: Box, room: number): boolean {
    if (!(x >= 0 && y >= 0 && x + width <= this.#width && y + height <= this.#height)) return false;
    return this.#taken.every(
      (other) =>
        x + width + room <= other.x ||
        other.x + other.width + room <= x ||
        y + height <= other.y ||
        other.y + other.height <= y,
    );
  }
}

/** A text as letters, with the place they take [px]. */
export function lettersAt(
  stretches: readonly Lettered[],
  { x, y, anchor = 'start' }: Spot,
  { size = 'lettering', hasHalo = false }: Setting = {},
): { readonly letters: readonly LetterShape[]; readonly box: Box } {
  const em = letterSizes_px[size];
  const widths = stretches.map(({ text, isStrong = false }) => letterWidth_px(text, size, isStrong));
  const width = widths.reduce((sum, own) => sum + own, 0) + between_em * em * (stretches.length - 1);
  const from = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  const single = stretches.length === 1;
  let at = from;
  const letters = stretches.map(({ text, ink = 'ink', isStrong = false }, index): LetterShape => {
    const place = single ? { x, anchor } : { x: at, anchor: 'start' as const };
    at += widths[index]! + between_em * em;
    return { kind: 'letter', y, text, size, ink, isStrong, hasHalo, turn_deg: 0, ...place };
  });
  const box = { x: from, y: y - above_fraction * em, width, height: (above_fraction + below_fraction) * em };
  return { letters, box };
}

/** The place a letter takes [px]. */
export function boxOf({ text, x, y, anchor, size, isStrong }: LetterShape): Box {
  return lettersAt([{ text, isStrong }], { x, y, anchor }, { size }).box;
}

/** Letters of what is pointed at: beside a point, on the side where there is room, kept inside the picture. */
export function pointedLetters(
  stretches: readonly Lettered[],
  point: { readonly x: number; readonly y: number },
  width: number,
): readonly LetterShape[] {
  const gap = 8;
  const own = lettersAt(stretches, { x: 0, y: 0 }).box.width;
  const right = point.x + gap + own <= width;
  const x = right ? point.x + gap : Math.max(0, point.x - gap - own);
  const y = Math.max(letterSizes_px.lettering, point.y);
  return lettersAt(stretches, { x, y }, { hasHalo: true }).letters;
}
