import type { Shape } from '../sheet/shapes.ts';
import type { BuiltGutter } from './building.ts';
import { area, boxOf, line, type Point, plain, unmeasured, type View } from './view.ts';

/** Where the outlets of a gutter stand along it [m], and whether its water comes to them from both sides. */
interface OutletPlaces {
  readonly at_m: readonly number[];
  readonly isBothWays: boolean;
}

/** As far from each other as the farthest way of the water to them says: at the ends of equal stretches, or in their middles. */
function outletPlaces({ length_m, outlets_count, run_m }: BuiltGutter): OutletPlaces {
  const count = outlets_count.value;
  const part = length_m.value / count;
  const isBothWays = run_m.value < part * 0.98;
  if (count === 1) return { at_m: [run_m.value], isBothWays };
  return { at_m: Array.from({ length: count }, (_, nth) => part * (nth + (isBothWays ? 0.5 : 1))), isBothWays };
}

/** Room that a gutter along its run takes on the picture [px]. */
export const runRoom_px = 46;

/**
 * A gutter from its side over its whole run, its fall true to the scale of its length and never steeper: what is level, or falls
 * back, is seen against the hair line, which is level. Its left end at x, its rim at y [px].
 */
export function gutterRun(gutter: BuiltGutter, x: number, y: number, width_px: number): readonly Shape[] {
  const length = gutter.length_m.value;
  const view: View = { k: width_px / length, x0: x, y0: y };
  const depth = Math.max(gutter.depth_m.value, 2.6 / view.k);
  const rim = rimOf(gutter);
  const isUsual = gutter.length_m.how === 'usual' || gutter.fall_mm_per_m === null;
  const { at_m } = outletPlaces(gutter);
  const stump = Math.max(0.12, 7 / view.k);
  const bore = Math.max(gutter.outlet_m.value, 2.6 / view.k);
  const ways = gutter.fall_mm_per_m === null || gutter.fall_mm_per_m === 0 ? [] : arrows(gutter, view);
  const under = [...rim].reverse().map(([u, v]): Point => [u, v - depth]);
  return [
    line(view, 'hair', { ink: 'mark', dash: 'none' }, [
      [0, 0],
      [length, 0],
    ]),
    area(view, 'paper', ['edge', isUsual ? unmeasured : plain], [...rim, ...under]),
    area(
      view,
      'paper',
      ['thin', gutter.outlets_count.how === 'usual' ? unmeasured : plain],
      ...at_m.map((at) => boxOf(Math.min(Math.max(0, at - bore / 2), length - bore), -depth - stump, bore, stump)),
    ),
    ...ways,
  ];
}

/** The rim from end to end, falling to each outlet; from its highest point down [m]. */
function rimOf(gutter: BuiltGutter): readonly Point[] {
  const length = gutter.length_m.value;
  const slope = (gutter.fall_mm_per_m ?? 0) / 1000;
  const { at_m, isBothWays } = outletPlaces(gutter);
  const points: Point[] = [];
  let from = 0;
  at_m.forEach((at, nth) => {
    const next = at_m[nth + 1];
    const to = isBothWays ? (next === undefined ? length : (at + next) / 2) : at;
    points.push([from, slope * (at - from)], [at, 0]);
    if (to > at) points.push([to, slope * (to - at)]);
    from = to;
  });
  const high = Math.max(0, ...points.map(([, v]) => v));
  return points.map(([u, v]) => [u, v - high]);
}

/** Over the gutter, the way its water runs: back, where it falls back. */
function arrows(gutter: BuiltGutter, view: View): readonly Shape[] {
  const { at_m, isBothWays } = outletPlaces(gutter);
  const way = (gutter.fall_mm_per_m ?? 0) > 0 ? 1 : -1;
  const up = 7 / view.k;
  const head = 4 / view.k;
  const long = Math.min(gutter.run_m.value * 0.5, 40 / view.k);
  const arrow = (middle: number, side: 1 | -1): readonly (readonly Point[])[] => {
    const [from, to] = [middle - (side * way * long) / 2, middle + (side * way * long) / 2];
    return [
      [
        [from, up],
        [to, up],
      ],
      [
        [to - side * way * head, up + head * 0.6],
        [to, up],
        [to - side * way * head, up - head * 0.6],
      ],
    ];
  };
  const run = gutter.run_m.value;
  const lines = at_m.flatMap((at) => [
    ...arrow(at - run / 2, 1),
    ...(isBothWays && at + run / 2 <= gutter.length_m.value ? arrow(at + run / 2, -1) : []),
  ]);
  return [line(view, 'thin', plain, ...lines)];
}
