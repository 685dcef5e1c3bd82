import type { Shape } from '../sheet/shapes.ts';
import type { CurveFrames, CurveInput, CurveWords } from './curveFrame.ts';
import { xOf } from './curveLines.ts';
import type { Lettered, Lettering } from './lettering.ts';
import { down, fill, pen, ring, stroke } from './strokes.ts';

/** Rows of letters under the axis [px below it]. */
const rows_px = [19, 36, 53] as const;

/** Sizes along the axis: the chosen and the proposed first, then what is wanted to hold, then the catalogue's. */
export function letterAxis(
  frames: CurveFrames,
  input: CurveInput,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  const { days, years } = frames;
  const { curve, tankVolume_L, proposed } = input;
  const y = years.bottom;
  const [first, second, third] = rows_px;
  const own = new Set([tankVolume_L, proposed?.tankVolume_L]);
  const name = (volume_L: number, rows: readonly number[], how: Omit<Lettered, 'text'>) =>
    letterSize(frames, { text: words.size(volume_L), ...how }, volume_L, rows, lettering);
  name(tankVolume_L, [first], { isStrong: true });
  if (proposed !== null && proposed.tankVolume_L !== tankVolume_L)
    name(proposed.tankVolume_L, [first, second], { ink: 'water', isStrong: true });
  const shapes = ringToHold(frames, input, words, lettering);
  const forSale = curve.sizes.filter((size) => size.partId !== null && size.tankVolume_L <= days.end_L);
  for (const { tankVolume_L: size } of forSale) if (!own.has(size)) name(size, [first], { ink: 'water' });
  name(0, [first], {});
  const wanted = Math.max(curve.tankForDays_L ?? 0, curve.tankForRuns_L ?? 0, curve.tankToHold_L ?? 0);
  if (wanted > days.end_L) {
    const text = { text: words.beyond(wanted), isStrong: true };
    lettering.set(text, { x: days.right, y: y + second, anchor: 'end' });
  }
  const spots = [second, third].map((row) => ({ x: days.left, y: y + row }));
  lettering.set({ text: words.axis, ink: 'second' }, spots);
  const ticks = forSale.map((size) => down(xOf(days, size.tankVolume_L), y, y + 5));
  return ticks.length === 0 ? shapes : [stroke(ticks.join(''), pen('thin', 'ink')), ...shapes];
}

/** A size under its tick, or against the right edge where it is near it. */
function letterSize(
  { days, years, width }: CurveFrames,
  text: Lettered,
  volume_L: number,
  rows: readonly number[],
  lettering: Lettering,
): void {
  const x = xOf(days, volume_L);
  const spots = rows.flatMap((row) => [
    { x, y: years.bottom + row, anchor: 'middle' as const },
    ...(width - x < 40 ? [{ x: width, y: years.bottom + row, anchor: 'end' as const }] : []),
  ]);
  lettering.set(text, spots, { room: 6 });
}

/** The smallest size that holds: a ring on the axis, said below it. */
function ringToHold(
  { days, years, width }: CurveFrames,
  { curve: { tankToHold_L } }: CurveInput,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  if (tankToHold_L === null || tankToHold_L > days.end_L) return [];
  const x = xOf(days, tankToHold_L);
  const y = years.bottom + rows_px[1];
  lettering.set(words.toHold(tankToHold_L), [
    { x, y, anchor: 'middle' },
    { x: width, y, anchor: 'end' },
    { x: days.left, y },
  ]);
  return [fill(ring(x, years.bottom, 3.4), 'paper', pen('edge', 'ink'))];
}
