import { Lettering } from '../charts/lettering.ts';
import { letterWidth_px } from '../charts/letterWidth.ts';
import { stepsUp, ticksTo } from '../charts/scales.ts';
import { across, down, fill, group, pen, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';

/** An amount with what it may be. */
export interface RangeRow {
  readonly rowId: string;
  readonly label: string;
  /** The figure as it is said: value, unit, range. */
  readonly said: string;
  /** Null: not known, and drawn as an empty outline. */
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Something of it is not known: the bar is open at its end. */
  readonly isAtLeast: boolean;
  readonly isStrong: boolean;
}

/** The words of an axis. */
export interface RangesWords {
  tick(value: number): string;
}

const [row_px, bar_px, foot_px] = [46, 14, 26] as const;
/** What a row is higher by whose figure stands below its label, as both have no room on one line [px]. */
const line_px = 17;
/** Width of the outline of what is not known at all [px]. */
const unknown_px = 56;

/**
 * Amounts below each other on one axis from nought: a bar for what is likely, a line for the range, its words over it.
 *
 * @param rows - the amounts, in the order they are read
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px]
 * @definition ours: docs/decisions/0287-kits-loads-and-costs-drawn.md
 */
export function rangesPicture(
  rows: readonly RangeRow[],
  words: RangesWords,
  { width }: { readonly width: number },
): Picture {
  const placed: { readonly row: RangeRow; readonly top: number; readonly isFolded: boolean }[] = [];
  let next = 0;
  for (const row of rows) {
    const isFolded = isTooWide(row, width);
    placed.push({ row, top: next, isFolded });
    next += row_px + (isFolded ? line_px : 0);
  }
  const base = next + 4;
  const height = base + foot_px;
  const lettering = new Lettering(width, height);
  const [left, right] = [2, width - 34];
  const most = Math.max(0, ...rows.flatMap(({ value, high }) => [value ?? 0, high ?? 0]));
  const end = stepsUp(most, 5);
  const xOf = (value: number) => left + (value / end) * (right - left);
  const drawn = placed.map((one) => rowOf(one, xOf, width, lettering));
  const ticks = ticksTo(end, 5);
  const shapes: Shape[] = [
    stroke(ticks.map((tick) => down(xOf(tick), 22, base)).join('') || 'M0 0', pen('hair', 'rule')),
    ...drawn,
    stroke(across(left, base, right), pen('thin', 'ink')),
    stroke(ticks.map((tick) => down(xOf(tick), base, base + 4)).join('') || 'M0 0', pen('hair', 'ink')),
  ];
  for (const tick of ticks)
    lettering.set(
      { text: words.tick(tick), ink: 'second' },
      { x: xOf(tick), y: base + 18, anchor: tick === 0 ? 'start' : 'middle' },
      { room: 6 },
    );
  return { width, height, pxPerM: null, shapes: [...shapes, ...lettering.letters], handles: [] };
}

/** Room for a label beside its figure [px]. */
const besideFigure_px = ({ said, isStrong }: RangeRow, width: number): number =>
  width - letterWidth_px(said, 'lettering', isStrong) - 16;

const isTooWide = (row: RangeRow, width: number): boolean =>
  letterWidth_px(row.label, 'lettering', row.isStrong) > besideFigure_px(row, width);

function rowOf(
  { row, top, isFolded }: { readonly row: RangeRow; readonly top: number; readonly isFolded: boolean },
  xOf: (value: number) => number,
  width: number,
  lettering: Lettering,
): Shape {
  const { rowId, label, said, value, low, high, isAtLeast, isStrong } = row;
  const y = top + 15;
  const room = isFolded ? width - 4 : besideFigure_px(row, width);
  const under = isFolded ? line_px : 0;
  lettering.set({ text: fitted(label, room, isStrong), isStrong }, { x: 2, y }, { hasHalo: true });
  lettering.set(
    { text: said, isStrong, ink: isStrong ? 'ink' : 'second' },
    { x: width - 2, y: y + under, anchor: 'end' },
    { hasHalo: true },
  );
  const bar = top + 22 + under;
  if (value === null && (low ?? 0) === 0)
    return group(rowId, [stroke(rect(xOf(0), bar, unknown_px, bar_px), pen('thin', 'second', 'unknown'))]);
  const to = Math.max(xOf(value ?? low ?? 0), xOf(0) + 1.5);
  const shapes: Shape[] = [fill(rect(xOf(0), bar, to - xOf(0), bar_px), isStrong ? 'waterline' : 'water')];
  const edge = `M${to} ${bar}H${xOf(0)}V${bar + bar_px}H${to}`;
  shapes.push(stroke(isAtLeast ? edge : `${edge}Z`, pen('thin', 'ink')));
  // An end that is open: there is more, and nobody knows how much.
  if (isAtLeast) shapes.push(stroke(`M${to} ${bar}h14M${to} ${bar + bar_px}h14`, pen('thin', 'second', 'unknown')));
  if (low !== null && high !== null && high > low) {
    const middle = bar + bar_px / 2;
    shapes.push(
      stroke(
        `${across(xOf(low), middle, xOf(high))}${down(xOf(low), middle - 4, middle + 4)}${down(xOf(high), middle - 4, middle + 4)}`,
        pen('edge', 'ink'),
      ),
    );
  }
  return group(rowId, shapes);
}

/** A label cut to its room, with the sign that it was cut. */
export function fitted(text: string, room_px: number, isStrong = false): string {
  if (letterWidth_px(text, 'lettering', isStrong) <= room_px) return text;
  let cut = text;
  while (cut.length > 1 && letterWidth_px(`${cut}…`, 'lettering', isStrong) > room_px) cut = cut.slice(0, -1);
  return `${cut.trimEnd()}…`;
}
