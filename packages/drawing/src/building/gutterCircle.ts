import type { Shape } from '../sheet/shapes.ts';
import type { BuiltGutter } from './building.ts';
import { profile } from './gutter.ts';
import { area, boxOf, curve, disc, line, type Point, plain, unmeasured, type View } from './view.ts';

/** How many times as large as the section a detail circle may be. */
const steps = [2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100] as const;

/** Where a detail circle stands on the picture [px]. */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** How many times as large it shows a gutter; null where it would not be larger. */
export function timesLarger(gutter: BuiltGutter, radius: number, k: number): number | null {
  const { width, tall } = sizesOf(gutter);
  const most = (2 * radius * 0.88) / Math.hypot(width, tall) / k;
  return [...steps].reverse().find((one) => one <= most) ?? null;
}

/** The gutter across and what hangs under it [m]. */
function sizesOf({ width_m, depth_m, outlet_m }: BuiltGutter) {
  const stub = Math.max(0.02, depth_m.value * 0.45);
  return { width: Math.max(width_m.value + 0.02, outlet_m.value), tall: depth_m.value + stub, stub };
}

/** A gutter across, by its shape and size, with the hole its water leaves by and what stands over it, larger than in the section. */
export function gutterCircle(gutter: BuiltGutter, { x, y, radius }: Circle, pxPerM: number): readonly Shape[] {
  const { tall, stub } = sizesOf(gutter);
  const view: View = { k: pxPerM, x0: x, y0: y };
  const rim = tall / 2;
  const sole = rim - gutter.depth_m.value;
  const half = gutter.width_m.value / 2;
  const isUsual = gutter.width_m.how === 'usual' || gutter.depth_m.how === 'usual';
  const line_of = profile(gutter, -half, rim, gutter.width_m.value, gutter.depth_m.value);
  return [
    disc(view, 'paper', ['thin', plain], [0, 0], radius / pxPerM),
    line(view, 'cut', isUsual ? unmeasured : plain, line_of),
    ...outlet(view, gutter, sole, stub),
  ];
}

/** A hole through the sole, its pipe stump under it; a grate over it. One wider than the gutter is drawn wider. */
function outlet(view: View, gutter: BuiltGutter, sole: number, stub: number): readonly Shape[] {
  const half = gutter.outlet_m.value / 2;
  const brush = gutter.outlet_m.how === 'usual' ? unmeasured : plain;
  const lift = Math.min(0.004, gutter.depth_m.value * 0.1) + roundAt(gutter, half);
  const edges: readonly (readonly Point[])[] = [
    [
      [-half, sole + lift],
      [-half, sole - stub],
    ],
    [
      [half, sole + lift],
      [half, sole - stub],
    ],
  ];
  const shapes: Shape[] = [
    area(view, 'paper', null, boxOf(-half, sole - stub, 2 * half, stub + lift + 0.002)),
    line(view, 'edge', brush, ...edges),
  ];
  if (!gutter.isGrated) return shapes;
  const tall = Math.min(half, gutter.depth_m.value * 0.5);
  const foot = sole + lift;
  const bars = [-0.6, -0.2, 0.2, 0.6].map((share): readonly Point[] => [
    [share * half, foot],
    [share * half, foot + tall * (1 - share * share)],
  ]);
  const dome = curve([-half, foot], [0, foot + 2 * tall], [half, foot], 10);
  return [...shapes, line(view, 'thin', plain, dome, ...bars)];
}

/** How much higher than its sole a round gutter is so far from its middle [m]. */
function roundAt({ shape, width_m, depth_m }: BuiltGutter, out_m: number): number {
  if (shape !== 'halfRound' && shape !== 'cutPipe') return 0;
  const share = Math.min(1, out_m / (width_m.value / 2));
  return depth_m.value * (1 - Math.sqrt(1 - share * share));
}
