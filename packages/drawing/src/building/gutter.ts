import type { Shape } from '../sheet/shapes.ts';
import type { BuiltGutter, BuiltRoof } from './building.ts';
import type { RoofOutline } from './roofOutline.ts';
import {
  area,
  atLeast,
  type Brush,
  beyond,
  curve,
  line,
  type Point,
  pipe,
  plain,
  unmeasured,
  type View,
} from './view.ts';

/** A gutter cut across, its rim at the eave, about the middle of its pipe. */
export function gutterSection(view: View, gutter: BuiltGutter, middle: number, rim: number, brush: Brush): Shape {
  const width = atLeast(view, gutter.width_m.value, 4);
  const depth = atLeast(view, gutter.depth_m.value, 2.6);
  return line(view, 'edge', brush, profile(gutter, middle - width / 2, rim, width, depth));
}

/** The line of each shape from lip to lip. */
export function profile(
  { shape, width_m, baseWidth_m }: BuiltGutter,
  x: number,
  y: number,
  width: number,
  depth: number,
): readonly Point[] {
  const right = x + width;
  if (shape === 'rectangular')
    return [
      [x, y],
      [x, y - depth],
      [right, y - depth],
      [right, y],
    ];
  if (shape === 'trapezoidal') {
    const inset = ((1 - baseWidth_m.value / width_m.value) / 2) * width;
    return [
      [x, y],
      [x + inset, y - depth],
      [right - inset, y - depth],
      [right, y],
    ];
  }
  const middle = x + width / 2;
  if (shape === 'cutPipe') return arc(middle, y, width / 2, depth, Math.PI, 2 * Math.PI);
  return [
    [x - 0.008, y + 0.006],
    ...arc(middle, y, width / 2, depth, Math.PI, 2 * Math.PI),
    [right + 0.008, y + 0.006],
  ];
}

function arc(x: number, y: number, a: number, b: number, from: number, to: number): readonly Point[] {
  return Array.from({ length: 9 }, (_, index) => {
    const angle = from + ((to - from) * index) / 8;
    return [x + a * Math.cos(angle), y + b * Math.sin(angle)] as const;
  });
}

export const gutterBrush = ({ gutter, gutteredFraction }: BuiltRoof): Brush =>
  gutter.width_m.how === 'usual' || gutteredFraction.how === 'usual' ? unmeasured : plain;

/** The leaf screen in its head under the gutter, down to the branch of the first flush. */
export function headAndPipe(view: View, roof: BuiltRoof, outline: RoofOutline, middle: number): readonly Shape[] {
  const brush: Brush = roof.bore_m.how === 'usual' ? unmeasured : plain;
  const outlet = outline.eaveHeight_m - atLeast(view, roof.gutter.depth_m.value, 2.6);
  const bore = atLeast(view, roof.bore_m.value, 2.6);
  const drop = outlet - outline.branchHeight_m;
  const [head, tall] = [Math.max(bore * 1.6, 0.13), Math.min(0.16, drop * 0.45)];
  const top = outlet - drop * 0.12;
  const funnel: readonly Point[] = [
    [middle - head / 2, top],
    [middle + head / 2, top],
    [middle + head / 2, top - tall * 0.55],
    [middle + bore / 2, top - tall],
    [middle - bore / 2, top - tall],
    [middle - head / 2, top - tall * 0.55],
  ];
  return [
    ...pipe(
      view,
      [
        [middle, outlet],
        [middle, top],
      ],
      roof.bore_m.value,
      brush,
    ),
    ...pipe(
      view,
      [
        [middle, top - tall],
        [middle, outline.branchHeight_m - bore / 2],
      ],
      roof.bore_m.value,
      brush,
    ),
    area(view, 'paper', ['thin', plain], funnel),
    line(view, 'hair', plain, [
      [middle - head / 2, top - 0.02],
      [middle + head / 2, top - tall * 0.5],
    ]),
  ];
}

/** A gutter at the far eave sends its water across, behind the cut: two hidden edges. */
export function hiddenCrossing(view: View, roof: BuiltRoof, outline: RoofOutline): readonly Shape[] {
  const { leftPipe_m, rightPipe_m, branchHeight_m, width_m } = outline;
  const from = branchHeight_m + Math.min(0.12, 0.01 * width_m);
  const half = atLeast(view, roof.bore_m.value, 2.6) / 2;
  const lines = [half, -half].map((by): readonly Point[] => [
    [leftPipe_m + half, from + by],
    [rightPipe_m - half, branchHeight_m + by],
  ]);
  return [
    line(view, 'hair', { ...beyond, dash: 'unknown' }, ...lines),
    line(
      view,
      'thin',
      plain,
      curve([leftPipe_m - half, from + half], [leftPipe_m - half, from - half], [leftPipe_m + half, from - half], 4),
    ),
  ];
}
