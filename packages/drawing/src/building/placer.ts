import type { LetterShape } from '../sheet/shapes.ts';

/** A rectangle of the picture [px]. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Heights of the letters on screen [px]; on paper they are smaller, so what fits here fits there. */
export const letterHeights = { lettering: 13, body: 16, figure: 22 } as const;

/** Widths of letters [share of their height], on the wide side of the faces of the look, so that nothing is cut short. */
const narrow = /[iljtfrI.,:;'|!()[\]/ ]/;
const wide = /[mwMW%⌀@—]/;

export function widthOf(text: string, size: LetterShape['size'], isStrong: boolean): number {
  let share = 0;
  for (const letter of text)
    share += narrow.test(letter) ? 0.36 : wide.test(letter) ? 0.92 : /[A-Z0-9]/.test(letter) ? 0.64 : 0.58;
  return share * letterHeights[size] * (isStrong ? 1.07 : 1);
}

/** The rectangle a letter covers, turned as it is. */
export function boxOfLetter({ x, y, text, size, anchor, isStrong, turn_deg }: Omit<LetterShape, 'kind'>): Box {
  const long = widthOf(text, size, isStrong);
  const high = letterHeights[size];
  const back = { start: 0, middle: 0.5, end: 1 }[anchor] * long;
  if (turn_deg === 90) return { x: x - high * 0.8, y: y + back - long, width: high * 1.05, height: long };
  return { x: x - back, y: y - high * 0.8, width: long, height: high * 1.05 };
}

export const overlap = (a: Box, b: Box): number => {
  const [x, y] = [Math.max(a.x, b.x), Math.max(a.y, b.y)];
  const width = Math.min(a.x + a.width, b.x + b.width) - x;
  const height = Math.min(a.y + a.height, b.y + b.height) - y;
  return width > 0 && height > 0 ? width * height : 0;
};

/** Places letters so that none covers another, and as little as may be of what is drawn. */
export class Placer {
  readonly #taken: Box[] = [];
  readonly #drawn: Box[];
  readonly #frame: Box;

  /** What is drawn may be written over where nothing else is left; the frame may not be left. */
  constructor(frame: Box, drawn: readonly Box[]) {
    this.#frame = frame;
    this.#drawn = [...drawn];
  }

  isFree(box: Box): boolean {
    const { x, y, width, height } = this.#frame;
    if (box.x < x || box.y < y || box.x + box.width > x + width || box.y + box.height > y + height) return false;
    return this.#taken.every((other) => overlap(grown(box, 2), other) === 0);
  }

  /** Something more that had better not be written over. */
  avoid(...boxes: readonly Box[]): void {
    this.#drawn.push(...boxes);
  }

  take(box: Box): void {
    this.#taken.push(box);
  }

  /** Takes it where it is, if that is free. */
  takeIfFree(box: Box): boolean {
    if (!this.isFree(box)) return false;
    this.take(box);
    return true;
  }

  /**
   * A place near a point for a box so large: on the preferred side if that is free, else round it, farther and farther out.
   *
   * @param anchor - the point it belongs to [px]
   * @param side - the preferred way from it, x right and y down [px]
   * @param farthest - how far from the point it may stand [px]; where that is said it also keeps off what is drawn
   * @param mayCover - may it stand on what is drawn where nothing better is free
   * @param atMost - else the share of it that may
   * @returns its place, taken [px]; null where the picture is full, or nothing near enough is free
   */
  near(
    anchor: readonly [number, number],
    side: readonly [number, number],
    size: { readonly width: number; readonly height: number },
    farthest = Infinity,
    mayCover = farthest === Infinity,
    atMost = 0.2,
  ): Box | null {
    let best: Box | null = null;
    let least = Infinity;
    const towards = Math.atan2(side[1], side[0]);
    const first = Math.hypot(...side);
    for (let ring = 0; ring < 18; ring++) {
      const away = first + ring * 22;
      if (away > farthest) break;
      if (away * 0.6 > least) break;
      for (const turn of [0, 0.35, -0.35, 0.7, -0.7, 1.1, -1.1, 1.6, -1.6, 2.2, -2.2, 3.1]) {
        const angle = towards + turn;
        const [cx, cy] = [Math.cos(angle), Math.sin(angle)];
        // The side of the box that faces the point stands so far from it.
        const wanted = anchor[0] + cx * away - (cx < -0.3 ? size.width : cx > 0.3 ? 0 : size.width / 2);
        // Near an edge it slides along it rather than go elsewhere.
        const x = Math.min(Math.max(wanted, this.#frame.x + 1), this.#frame.x + this.#frame.width - size.width - 1);
        const y = anchor[1] + cy * away - (cy < -0.3 ? size.height : cy > 0.3 ? 0 : size.height / 2);
        const box = { x, y, ...size };
        if (!this.isFree(box)) continue;
        const over = this.#drawn.reduce((sum, other) => sum + overlap(box, other), 0);
        if (!mayCover && over > size.width * size.height * atMost) continue;
        const cost = away * 0.6 + Math.abs(turn) * 16 + over * 0.12 + this.#crossed(anchor, box) * 24;
        if (cost < least) [best, least] = [box, cost];
      }
    }
    if (farthest === Infinity) best ??= this.#anywhere(anchor, size);
    if (best) this.take(best);
    return best;
  }

  /** How often a straight line from a point to a box would run over letters that stand. */
  #crossed([x, y]: readonly [number, number], box: Box): number {
    const toX = Math.min(box.x + box.width, Math.max(box.x, x));
    const toY = Math.min(box.y + box.height, Math.max(box.y, y));
    let crossed = 0;
    for (let nth = 1; nth < 6; nth++) {
      const spot = { x: x + ((toX - x) * nth) / 6 - 2, y: y + ((toY - y) * nth) / 6 - 2, width: 4, height: 4 };
      if (this.#taken.some((other) => overlap(spot, other) > 0)) crossed++;
    }
    return crossed;
  }

  #anywhere(anchor: readonly [number, number], size: { width: number; height: number }): Box | null {
    const { x, y, width, height } = this.#frame;
    let best: Box | null = null;
    let least = Infinity;
    for (let top = y + 1; top + size.height < y + height; top += 12)
      for (let left = x + 1; left + size.width < x + width; left += 16) {
        const away = Math.hypot(left + size.width / 2 - anchor[0], top + size.height / 2 - anchor[1]);
        const box = { x: left, y: top, ...size };
        if (away < least && this.isFree(box)) [best, least] = [box, away];
      }
    return best;
  }
}

const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
});
