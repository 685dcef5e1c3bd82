import type { Shape } from '../sheet/shapes.ts';
import type { Dimension } from './dimensions.ts';
import type { Frame } from './frame.ts';
import type { Placed } from './layout.ts';
import { group } from './sectionParts.ts';
import type { HeadLine, HeadPoint } from './sectionTypes.ts';
import { tapsAt } from './tapStand.ts';
import { line, type View } from './view.ts';

const flat: View = { k: 30, x0: 0, y0: 0 };

/** The line of pressure from tank to tap, as far as the picture shows it. */
export function headLineShapes(frame: Frame, lines: readonly HeadLine[]): readonly Shape[] {
  return lines.flatMap((one) => {
    const points = placesOf(frame, one);
    const shown = points.slice(1).flatMap((to, nth) => clipped(points[nth]!, to, [2, frame.under]));
    if (shown.length === 0) return [];
    const drawn = shown.map((ends) => ends.map(([x, y]) => [x / flat.k, -y / flat.k] as const));
    return [group('headLine', 'tap', [line(flat, 'edge', { ink: 'waterline', dash: 'dotted' }, ...drawn)])];
  });
}

type Spot = readonly [number, number];

/** Where its points are [px]; none of those the picture has no place for. */
function placesOf({ view: { k, y0 }, all }: Frame, { tankIds, points }: HeadLine): readonly Spot[] {
  let units = 0;
  return points.flatMap((point): readonly Spot[] => {
    const height = point.elevation_m + point.head_m;
    const x = placeOf(point, all, tankIds, k, point.at === 'unit' ? units++ : 0);
    return x === null || !Number.isFinite(height) ? [] : [[x, y0 - height * k]];
  });
}

function placeOf(
  { at }: HeadPoint,
  all: readonly Placed[],
  tankIds: readonly string[],
  k: number,
  nth: number,
): number | null {
  if (at === 'tank') {
    const tanks = all.flatMap((one) =>
      one.kind === 'tank' && one.tank !== null && tankIds.includes(one.tank.tankId) ? [one] : [],
    );
    const last = tanks[tanks.length - 1];
    return last?.tank ? last.x + (last.tank.diameter_m.value / 2) * k : null;
  }
  const stop = all.find(({ kind }) => kind === (at === 'unit' ? 'treatmentUnit' : 'tap'));
  if (!stop) return null;
  if (stop.kind === 'tap') return stop.x + tapsAt(stop.stops)[0]! * k;
  return stop.x + (nth === 0 ? 0 : 0.98) * k;
}

/** The part of a stretch between two heights of the picture. */
function clipped(from: Spot, to: Spot, [top, foot]: readonly [number, number]): readonly (readonly Spot[])[] {
  const [x0, y0] = from;
  const [x1, y1] = to;
  if (y0 === y1) return y0 >= top && y0 <= foot ? [[from, to]] : [];
  const shareAt = (y: number) => (y - y0) / (y1 - y0);
  const [a, b] = [shareAt(top), shareAt(foot)];
  const [low, high] = [Math.max(0, Math.min(a, b)), Math.min(1, Math.max(a, b))];
  if (low >= high) return [];
  const at = (share: number): Spot => [x0 + (x1 - x0) * share, y0 + (y1 - y0) * share];
  return [[at(low), at(high)]];
}

/** From the mouth of the taps to the line over or under it: the head left there, or what the pump must add, is told beside it. */
export function headDimensions(
  { view: { k, y0 }, placed, under }: Frame,
  lines: readonly HeadLine[],
): readonly Dimension[] {
  const stop = placed.find(({ kind }) => kind === 'tap');
  if (stop?.kind !== 'tap') return [];
  return lines.slice(0, 1).flatMap((one): readonly Dimension[] => {
    const point = one.points.find(({ at }) => at === 'tap');
    if (!point || !Number.isFinite(point.elevation_m + point.head_m)) return [];
    const within = (height: number) => Math.min(under, Math.max(6, y0 - height * k));
    const from = y0 - stop.stops.tapHeight_m.value * k;
    const to = within(point.elevation_m + point.head_m);
    const x = stop.x + tapsAt(stop.stops)[0]! * k - 10;
    return [
      { along: 'y', from, to, at: x, ends: [x + 10, x + 10], text: '', how: 'madeFrom', canChange: false, rank: -1 },
    ];
  });
}
