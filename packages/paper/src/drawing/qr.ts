import { encode } from 'uqr';
import type { Canvas } from '../document/canvas.ts';

/** White round a code, in squares of it. Source: iso-18004 (from memory): four. */
const quiet = 4;

/** A code ready to be drawn: how many squares a side has, the white round it counted. */
export interface QrCode {
  readonly size: number;
  /** Column and row of each black square. */
  readonly black: readonly (readonly [number, number])[];
}

/**
 * The code of a text, read by a phone's camera. A quarter of it may be lost to dirt and folds.
 *
 * @param text - what it says
 * @returns its squares
 * @source iso-18004, by the library
 */
export function qrOf(text: string): QrCode {
  const { data, size } = encode(text, { ecc: 'Q', border: quiet });
  const black: (readonly [number, number])[] = [];
  data.forEach((row, y) => {
    row.forEach((isBlack, x) => {
      if (isBlack) black.push([x, y]);
    });
  });
  return { size, black };
}

/** Draws a code, its white round it within `side` [pt]. */
export function drawQr(canvas: Canvas, { size, black }: QrCode, x: number, y: number, side: number): void {
  const step = side / size;
  canvas.squares(
    black.map(([column, row]) => [x + column * step, y + row * step] as const),
    step,
  );
}
