import {
  type Direction,
  type Line,
  linesOf,
  type MissingLetter,
  paragraphOf,
  type Text,
  type Weight,
} from '../text/index.ts';
import type { Canvas } from './canvas.ts';
import { baseline_share, leading_share, type Size, sizes_pt } from './sheetSize.ts';

/**
 * Where letters stand in the room they are given: start and end change sides with the direction. Figures stand at the right in every
 * language, so that their ones stand under each other.
 */
export type Align = 'start' | 'middle' | 'end' | 'figures';

/** Lays texts: in the direction of a language, telling letters that no face has. */
export class Setter {
  readonly direction: Direction;
  readonly missing: MissingLetter[] = [];

  constructor(direction: Direction) {
    this.direction = direction;
  }

  lines(text: Text, size: Size | number, width_pt: number, weight: Weight = 'plain'): SetLines {
    const size_pt = typeof size === 'number' ? size : sizes_pt[size];
    const paragraph = paragraphOf(text, this.direction, weight);
    this.missing.push(...paragraph.missing);
    const lines = linesOf(paragraph, size_pt, width_pt);
    const leading_pt = leading_share * size_pt;
    return { lines, size_pt, leading_pt, height_pt: lines.length * leading_pt };
  }

  /** Where a part of so many points stands, that begins `from` points after the beginning of a room. */
  place(x: number, width: number, from: number, own: number): number {
    return this.direction === 'ltr' ? x + from : x + width - from - own;
  }

  /** The left end of a line in a room. */
  left(x: number, width: number, long: number, align: Align): number {
    if (align === 'middle') return x + (width - long) / 2;
    if (align === 'figures') return x + width - long;
    return (align === 'start') === (this.direction === 'ltr') ? x : x + width - long;
  }
}

/** Lines with the height of their letters, and from line to line. */
export interface SetLines {
  readonly lines: readonly Line[];
  readonly size_pt: number;
  readonly leading_pt: number;
  readonly height_pt: number;
}

/** Where lines are drawn: the upper left corner of their room, and its width. */
export interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Draws lines under each other in a room. */
export function drawLines(
  canvas: Canvas,
  setter: Setter,
  { lines, size_pt, leading_pt }: SetLines,
  { x, y, width }: Room,
  align: Align = 'start',
): void {
  lines.forEach((line, nth) => {
    canvas.letters(
      line,
      setter.left(x, width, line.width_pt, align),
      y + nth * leading_pt + baseline_share * size_pt,
      size_pt,
    );
  });
}
