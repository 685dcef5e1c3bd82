import type { Shape } from '../sheet/shapes.ts';
import type { CurveFrames, CurveInput, CurveWords } from './curveChart.ts';
import { xOf } from './curveLines.ts';
import type { Lettering } from './lettering.ts';
import { down, fill, pen, ring, stroke } from './strokes.ts';

/** Sizes along the axis: the chosen and the proposed first, then what is wanted to hold, then the catalogue's. */
export function letterAxis(
  { days, years, width }: CurveFrames,
  input: CurveInput,
  words: CurveWords,
  lettering: Lettering,
): readonly Shape[] {
  const { curve, tankVolume_L, proposed } = input;
  const y = years.bottom;
  const shapes: Shape[] = [];
  const ticks: string[] = [];
  const named = (
    volume_L: number,
    rows: readonly number[],
    how: { isStrong?: boolean; ink?: 'ink' | 'water' },
    text = words.size(volume_L),
  ) => {
    const x = xOf(days, volume_L);
    const spots = rows.flatMap((row) => [
      { x, y: y + row, anchor: 'middle' as const },
      { x: width, y: y + row, anchor: 'end' as const },
    ]);
    const near = spots.filter((spot) => spot.anchor === 'middle' || width - x < 40);
    return lettering.set({ text, ...how }, near, { room: 6 });
  };
  named(tankVolume_L, [19], { isStrong: true });
  if (proposed !== null && proposed.tankVolume_L !== tankVolume_L)
    named(proposed.tankVolume_L, [19, 36], { ink: 'water', isStrong: true });
  const hold = curve.tankToHold_L;
  if (hold !== null && hold <= days.end_L) {
    const x = xOf(days, hold);
    shapes.push(fill(ring(x, y, 3.4), 'paper', pen('edge', 'ink')));
    const text = words.toHold(hold);
    lettering.set(text, [
      { x, y: y + 36, anchor: 'middle' },
      { x: width, y: y + 36, anchor: 'end' },
      { x: days.left, y: y + 36 },
    ]);
  }
  for (const size of curve.sizes) {
    if (size.partId === null || size.tankVolume_L > days.end_L) continue;
    ticks.push(down(xOf(days, size.tankVolume_L), y, y + 5));
    if (size.tankVolume_L !== tankVolume_L && size.tankVolume_L !== proposed?.tankVolume_L)
      named(size.tankVolume_L, [19], { ink: 'water' });
  }
  named(0, [19], {});
  const wanted = Math.max(curve.tankForDays_L ?? 0, curve.tankForRuns_L ?? 0, curve.tankToHold_L ?? 0);
  if (wanted > days.end_L)
    lettering.set({ text: words.beyond(wanted), isStrong: true }, { x: days.right, y: y + 36, anchor: 'end' });
  lettering.set({ text: words.axis, ink: 'second' }, [
    { x: days.left, y: y + 36 },
    { x: days.left, y: y + 53 },
  ]);
  return [...(ticks.length > 0 ? [stroke(ticks.join(''), pen('thin', 'ink'))] : []), ...shapes];
}
