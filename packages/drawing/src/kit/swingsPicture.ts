import { Lettering } from '../charts/lettering.ts';
import { letterWidth_px } from '../charts/letterWidth.ts';
import { across, down, fill, group, pen, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';
import { fitted } from './rangesPicture.ts';

/** What one input alone moves. */
export interface SwingRow {
  readonly rowId: string;
  readonly label: string;
  /** The result at the low end and at the high end of the input. */
  readonly atLow: number;
  readonly atHigh: number;
  readonly saidLow: string;
  readonly saidHigh: string;
}

/** The words of the picture. */
export interface SwingsWords {
  /** What stands at the line of what is likely. */
  readonly likely: string;
}

const [head_px, row_px, bar_px] = [24, 46, 14] as const;

/**
 * What each input alone moves, the widest first: from its low end to its high end, about what is likely; words stand at the lines.
 *
 * @param rows - the inputs
 * @param likely - the result with all inputs likely
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px]
 * @definition ours: docs/decisions/0287-kits-loads-and-costs-drawn.md
 */
export function swingsPicture(
  rows: readonly SwingRow[],
  likely: number,
  words: SwingsWords,
  { width }: { readonly width: number },
): Picture {
  const height = head_px + rows.length * row_px + 6;
  const lettering = new Lettering(width, height);
  const all = [likely, ...rows.flatMap(({ atLow, atHigh }) => [atLow, atHigh])];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  // Room at both ends for the figures there.
  const side =
    Math.max(30, ...rows.flatMap(({ saidLow, saidHigh }) => [letterWidth_px(saidLow), letterWidth_px(saidHigh)])) + 10;
  const span = most - least || 1;
  const xOf = (value: number) => side + ((value - least) / span) * (width - 2 * side);
  const shapes: Shape[] = [stroke(down(xOf(likely), head_px - 6, height - 2), pen('edge', 'ink', 'unknown'))];
  lettering.set({ text: words.likely, isStrong: true }, [
    { x: xOf(likely), y: 13, anchor: 'middle' },
    { x: 2, y: 13 },
    { x: width - 2, y: 13, anchor: 'end' },
  ]);
  rows.forEach((row, nth) => {
    const top = head_px + nth * row_px;
    const [from, to] = [Math.min(row.atLow, row.atHigh), Math.max(row.atLow, row.atHigh)];
    const y = top + 20;
    lettering.set({ text: fitted(row.label, width - 8) }, { x: 2, y: top + 13 }, { hasHalo: true });
    shapes.push(
      group(row.rowId, [
        fill(rect(xOf(from), y, Math.max(1.5, xOf(to) - xOf(from)), bar_px), 'water', pen('thin', 'ink')),
        stroke(down(xOf(likely), y - 2, y + bar_px + 2), pen('edge', 'ink')),
        stroke(across(xOf(from), y + bar_px, xOf(to)), pen('thin', 'ink')),
      ]),
    );
    const [first, last] = row.atLow <= row.atHigh ? [row.saidLow, row.saidHigh] : [row.saidHigh, row.saidLow];
    lettering.set({ text: first, ink: 'second' }, { x: xOf(from) - 5, y: y + 12, anchor: 'end' }, { hasHalo: true });
    lettering.set({ text: last, ink: 'second' }, { x: xOf(to) + 5, y: y + 12 }, { hasHalo: true });
  });
  return { width, height, pxPerM: null, shapes: [...shapes, ...lettering.letters], handles: [] };
}
