import { Lettering } from '../charts/lettering.ts';
import { letterWidth_px } from '../charts/letterWidth.ts';
import { down, fill, group, pen, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';
import { fitted } from './rangesPicture.ts';

/** Bars that are cut alike. */
export interface BarRow {
  readonly bars_count: number;
  readonly bar_m: number;
  readonly cuts: readonly { readonly runId: string; readonly length_m: number }[];
  readonly offcut_m: number;
}

/** The words of the picture. */
export interface CutsWords {
  /** `2 bars`. */
  bars(count: number): string;
  cut(runId: string, length_m: number): string;
  length(length_m: number): string;
  offcut(length_m: number): string;
}

const [row_px, bar_px] = [44, 16] as const;
/** An offcut longer than this share of a bar is named; a shorter one is waste. Ours. */
const named_fraction = 0.02;

/**
 * Bars as they are sold, with the cuts that are made from each and what is left over, one scale for all.
 *
 * @param rows - bars that are cut alike
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture, true to scale along the bars [px]
 * @definition ours: docs/decisions/0287-kits-loads-and-costs-drawn.md
 */
export function cutsPicture(rows: readonly BarRow[], words: CutsWords, { width }: { readonly width: number }): Picture {
  const height = rows.length * row_px + 4;
  const lettering = new Lettering(width, height);
  const side =
    Math.max(24, ...rows.map(({ bars_count }) => letterWidth_px(words.bars(bars_count), 'lettering', true))) + 10;
  const longest = Math.max(0.1, ...rows.map(({ bar_m }) => bar_m));
  const k = (width - side - 4) / longest;
  const shapes = rows.map((row, nth) => barOf(row, { top: nth * row_px, side, k, nth }, words, lettering));
  return { width, height, pxPerM: k, shapes: [...shapes, ...lettering.letters], handles: [] };
}

function barOf(
  { bars_count, bar_m, cuts, offcut_m }: BarRow,
  { top, side, k, nth }: { readonly top: number; readonly side: number; readonly k: number; readonly nth: number },
  words: CutsWords,
  lettering: Lettering,
): Shape {
  const y = top + 20;
  const parts: Shape[] = [];
  lettering.set({ text: words.bars(bars_count), isStrong: true }, { x: side - 8, y: y + 13, anchor: 'end' });
  let at = side;
  for (const { runId, length_m } of cuts) {
    const wide = length_m * k;
    parts.push(fill(rect(at, y, wide, bar_px), 'figure', pen('thin', 'ink')));
    const short = `${fitted(runId, wide - 70)} ${words.length(length_m)}`;
    for (const text of [words.cut(runId, length_m), ...(wide > 150 ? [short] : []), words.length(length_m)])
      if (letterWidth_px(text) < wide - 2 && lettering.set(text, { x: at + wide / 2, y: y - 5, anchor: 'middle' }))
        break;
    at += wide;
    parts.push(stroke(down(at, y - 4, y + bar_px + 4), pen('edge', 'ink')));
  }
  const end = side + bar_m * k;
  if (end - at > 0.5) parts.push(fill(rect(at, y, end - at, bar_px), 'doubt', pen('hair', 'second', 'unknown')));
  if (offcut_m > named_fraction * bar_m)
    lettering.set({ text: words.offcut(offcut_m), ink: 'second' }, [
      { x: at + (end - at) / 2, y: y - 5, anchor: 'middle' },
      { x: end, y: y - 5, anchor: 'end' },
    ]);
  return group(`bar:${nth}`, parts);
}
