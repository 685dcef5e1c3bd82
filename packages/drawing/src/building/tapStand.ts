import type { Shape } from '../sheet/shapes.ts';
import type { BuiltStops } from './building.ts';
import { usualTapHeight_m, usualUnitHeight_m } from './constants.ts';
import { person } from './people.ts';
import {
  area,
  type Brush,
  boxOf,
  curve,
  isFine,
  line,
  type Point,
  pipe,
  plain,
  raised,
  unmeasured,
  type View,
} from './view.ts';

const dashed: Brush = { ink: 'mark', dash: 'unknown' };

/** Where the soakaway lies in the ground, from the left edge of the taps [m]. */
export const soakaway = { from_m: 2.62, to_m: 3.22, deep_m: 0.62 } as const;

/** Taps higher than somebody reaches stand on ground or a platform that is as much higher: so much [m]. */
export const tapLift_m = ({ tapHeight_m: { value } }: BuiltStops): number =>
  value > reach_m ? value - usualTapHeight_m : 0;

/** Over this nobody fills a container from the ground [m]. */
const reach_m = 1.3;
/** The pipe over the mouth of its taps, and the bench under it, where a container of 0.34 m stands [m]. */
const pipeOver_m = 0.11;
const benchUnder_m = 0.57;

/** How much the treatment unit stands over where its inlet usually is [m]. */
export const unitLift_m = ({ unitHeight_m: { value } }: BuiltStops): number => Math.max(0, value - usualUnitHeight_m);

/** Where the taps stand, from the left edge [m]. */
export function tapsAt({ taps_count }: BuiltStops): readonly number[] {
  const count = taps_count.value;
  return Array.from({ length: count }, (_, nth) => (count === 1 ? 0.9 : 0.55 + (0.7 * nth) / (count - 1)));
}

/** Taps over a bench with containers, someone who fills, the drain to a soakaway, a child who carries. Left edge at 0. */
export function tapStand(view: View, stops: BuiltStops): readonly Shape[] {
  const lift = tapLift_m(stops);
  const up = raised(view, lift);
  const mouth = stops.tapHeight_m.value - lift;
  const bench = Math.max(0.02, mouth - benchUnder_m);
  const brush = stops.tapHeight_m.how === 'usual' ? unmeasured : plain;
  return [
    ...legsUnder(view, lift, [0.2, 1.25, 2.3]),
    area(up, 'concrete', ['thin', dashed], boxOf(0.1, -0.06, 2.3, 0.12)),
    ...feed(view, stops, brush),
    ...tapsAt(stops).map((x) => tap(up, x, mouth)),
    area(up, 'paper', ['thin', dashed], boxOf(0.42, bench, 1.1, 0.06)),
    line(
      up,
      'thin',
      dashed,
      [
        [0.5, Math.min(0.06, bench)],
        [0.5, bench],
      ],
      [
        [1.44, Math.min(0.06, bench)],
        [1.44, bench],
      ],
    ),
    ...[0.55, 0.9].flatMap((x) => container(up, x, bench + 0.06, 0.34)),
    ...person(up, 'fills', 1.98, 0.06, -1),
    ...soak(view, lift),
    ...person(view, 'carries', 3.6, 0),
    ...container(view, 3.565, 0.27, 0.27),
  ];
}

/** From the treatment unit along the ground, up to the pipe the taps hang from. */
function feed(view: View, stops: BuiltStops, brush: Brush): readonly Shape[] {
  const top = stops.tapHeight_m.value + pipeOver_m;
  const from = unitLift_m(stops) + 0.16;
  const bore = stops.legs.unitToTap.bore_m;
  const along = Math.min(0.16, top - 0.02);
  const down: readonly Point[] =
    from > 0.2
      ? [
          [-0.45, from],
          [-0.45, along],
        ]
      : [];
  const axis: readonly Point[] = [[-0.9, from > 0.2 ? from : along], ...down, [0.22, along], [0.22, top]];
  return [
    ...pipe(view, axis, bore.value, bore.how === 'usual' ? unmeasured : plain),
    ...pipe(
      view,
      [
        [0.22, top],
        [1.46, top],
      ],
      bore.value,
      brush,
    ),
  ];
}

/** What something stands on that is higher than the ground: nobody measured it. */
export function legsUnder(view: View, lift_m: number, at_m: readonly number[]): readonly Shape[] {
  if (lift_m < 0.05) return [];
  const posts = at_m.map((x) => boxOf(x - 0.04, 0, 0.08, lift_m));
  return [area(view, 'paper', ['thin', dashed], ...posts)];
}

function tap(view: View, x: number, mouth: number): Shape {
  const spout = curve([x, mouth + 0.085], [x + 0.005, mouth + 0.03], [x + 0.05, mouth], 4);
  const top = mouth + pipeOver_m;
  return line(
    view,
    'edge',
    plain,
    [[x, top], ...spout],
    [
      [x - 0.045, top + 0.06],
      [x + 0.045, top + 0.06],
    ],
    [
      [x, top + 0.02],
      [x, top + 0.06],
    ],
  );
}

/** A container of some 20 litres. */
function container(view: View, x: number, y: number, height: number): readonly Shape[] {
  const half = height * 0.32;
  const body: readonly Point[] = [
    [x - half, y],
    [x + half, y],
    [x + half, y + height * 0.72],
    [x + half * 0.55, y + height * 0.9],
    [x - half, y + height * 0.9],
  ];
  const neck = boxOf(x - half * 0.75, y + height * 0.9, half * 0.6, height * 0.1);
  if (!isFine(view)) return [area(view, 'paper', ['thin', plain], body)];
  return [area(view, 'paper', ['thin', plain], body, neck)];
}

/** What is spilled runs to a pit filled with stones. */
function soak(view: View, lift_m: number): readonly Shape[] {
  const { from_m, to_m, deep_m } = soakaway;
  const pit: readonly Point[] = [
    [from_m, 0],
    [from_m + 0.08, -deep_m],
    [to_m - 0.08, -deep_m],
    [to_m, 0],
  ];
  const stones: (readonly Point[])[] = [];
  for (let row = 0; row < 4; row++)
    for (let nth = 0; nth < 4; nth++) {
      const x = from_m + 0.14 + nth * 0.115 + (row % 2) * 0.04;
      const y = -0.1 - row * 0.14;
      const r = 0.042 + 0.012 * ((row * 7 + nth * 3) % 3);
      if (x + r < to_m - 0.06) stones.push(round(x, y, r));
    }
  return [
    line(view, 'thin', dashed, [
      [2.4, lift_m + 0.02],
      ...(lift_m > 0 ? [[2.5, 0.05] as const] : []),
      [from_m + 0.1, -0.03],
    ]),
    area(view, 'paper', ['thin', dashed], pit),
    ...(isFine(view) ? [area(view, 'paper', ['hair', plain], ...stones)] : []),
  ];
}

const round = (x: number, y: number, r: number): readonly Point[] =>
  Array.from({ length: 6 }, (_, nth) => [
    x + r * 1.15 * Math.cos((nth * Math.PI) / 3 + x * 9),
    y + r * Math.sin((nth * Math.PI) / 3 + x * 9),
  ]);
