import { Lettering } from '../charts/lettering.ts';
import { across, down, fill, group, pen, pointDot, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';

/** One germ in one water: what it costs in healthy years, as multiples of what is held to be tolerable. */
export interface RiskRow {
  readonly name: string;
  /** The germ alone: told where the whole name has no room. */
  readonly short?: string;
  /** Over 1: more than is tolerable. */
  readonly typical_ratio: number;
  readonly high_ratio: number;
}

/** The words of the risks, in the reader's language. */
export interface RiskWords {
  /** A multiple of the target on the axis: `1/100`, `target`, `100 ×`. */
  times(ratio: number): string;
  /** On the line of the target. */
  readonly target: string;
}

const [head_px, row_px, foot_px] = [24, 46, 22] as const;
/** The axis reaches at least so far beyond the target on both sides, and never farther than this [tenfold steps]. */
const [least_log10, most_log10] = [1, 8] as const;

/**
 * What each germ does to those who drink, on one axis of multiples of the target: a dot for the usual water, a line to its high end.
 *
 * @param rows - the germs, the worst first
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px]
 * @definition ours: docs/decisions/0233-the-way-of-the-water.md
 */
export function riskPicture(
  rows: readonly RiskRow[],
  words: RiskWords,
  { width }: { readonly width: number },
): Picture {
  const height = head_px + rows.length * row_px + foot_px;
  const lettering = new Lettering(width, height);
  const { low, high } = spanOf(rows);
  const [left, right] = [14, width - 14];
  const xOf = (ratio: number) => {
    const at = Math.log10(ratio);
    const held = Number.isFinite(at) ? Math.min(high, Math.max(low, at)) : low;
    return left + ((held - low) / (high - low)) * (right - left);
  };
  const base = head_px + rows.length * row_px;
  const target = xOf(1);
  lettering.set({ text: words.target, isStrong: true }, aroundOf(target, 14));
  const shapes: Shape[] = [
    fill(rect(target, head_px, right - target, base - head_px), 'brickWash'),
    stroke(across(left, base, right), pen('thin', 'ink')),
    ...ticksOf(low, high, width).map((power) => stroke(down(xOf(10 ** power), base - 4, base + 4), pen('thin', 'ink'))),
    stroke(down(target, head_px - 4, base), pen('edge', 'ink', 'unknown')),
  ];
  for (const power of ticksOf(low, high, width))
    lettering.set({ text: words.times(10 ** power), ink: 'second' }, { ...aroundOf(xOf(10 ** power), base + 17)[0]! });
  const drawn = rows.map((row, nth) => rowOf(row, head_px + nth * row_px, xOf, lettering));
  return { width, height, pxPerM: null, shapes: [...shapes, ...drawn, ...lettering.letters], handles: [] };
}

const aroundOf = (x: number, y: number) =>
  [
    { x, y, anchor: 'middle' },
    { x, y, anchor: 'start' },
    { x, y, anchor: 'end' },
  ] as const;

function spanOf(rows: readonly RiskRow[]) {
  const all = rows
    .flatMap(({ typical_ratio, high_ratio }) => [typical_ratio, high_ratio])
    .map((ratio) => Math.log10(ratio))
    .filter(Number.isFinite);
  const low = Math.max(-most_log10, Math.min(-least_log10, ...all.map(Math.floor)));
  const high = Math.min(most_log10, Math.max(least_log10, ...all.map(Math.ceil)));
  return { low, high };
}

/** Powers of ten with a tick: each, or each second or third where there is no room. */
function ticksOf(low: number, high: number, width: number): readonly number[] {
  const step = Math.max(1, Math.ceil(((high - low) * 74) / width));
  const found: number[] = [];
  for (let power = Math.ceil(low / step) * step; power <= high; power += step) if (power !== 0) found.push(power);
  return found;
}

function rowOf(
  { name, short, typical_ratio, high_ratio }: RiskRow,
  top: number,
  xOf: (ratio: number) => number,
  lettering: Lettering,
): Shape {
  const y = top + 32;
  const [from, to] = [xOf(typical_ratio), Math.max(xOf(typical_ratio), xOf(high_ratio))];
  const isOver = typical_ratio > 1;
  const isAtWorst = high_ratio > 1;
  for (const text of short === undefined ? [name] : [name, short]) {
    const lettered = { text, ink: isOver ? 'brick' : 'ink', isStrong: isOver || isAtWorst } as const;
    if (lettering.set(lettered, { x: 14, y: top + 16 }, { hasHalo: true })) break;
  }
  const ink = isOver ? 'brick' : isAtWorst ? 'ochre' : 'ink';
  return group(null, [
    stroke(across(from, y, to), pen('cut', ink)),
    stroke(`M${px(to)} ${px(y - 5)}v10`, pen('edge', ink)),
    pointDot(from, y),
  ]);
}
