import type { Dash, Ground, Ink, PathShape, Pen, Weight } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import { finePxPerM, leastPipe_px } from './constants.ts';

/** Where metres fall on the picture: x to the right from x0, y up from the ground at y0 [px], k px to the metre. */
export interface View {
  readonly k: number;
  readonly x0: number;
  readonly y0: number;
}

/** x, y in metres. */
export type Point = readonly [number, number];

/** The colour and dash a part is drawn with: measured, not measured, proposed. */
export interface Brush {
  readonly ink: Ink;
  readonly dash: Dash;
}
export const plain: Brush = { ink: 'ink', dash: 'none' };
export const unmeasured: Brush = { ink: 'ink', dash: 'unknown' };
export const proposed: Brush = { ink: 'water', dash: 'proposed' };
export const beyond: Brush = { ink: 'mark', dash: 'none' };
export const faint: Brush = { ink: 'rule', dash: 'none' };

export const at = (view: View, x0: number): View => ({ ...view, x0 });
/** The same, with its ground so much higher. */
export const raised = (view: View, by_m: number): View => ({ ...view, y0: view.y0 - by_m * view.k });
export const isFine = ({ k }: View): boolean => k >= finePxPerM;
/** The least number of metres that is so many px. */
export const atLeast = ({ k }: View, length_m: number, least_px: number): number => Math.max(length_m, least_px / k);

const stepDown: Record<Weight, Weight> = { cut: 'edge', edge: 'thin', thin: 'hair', hair: 'hair' };

/** The pen of a weight: where the drawing is small, one step down the ladder, so that lines do not close up. */
export function penOf(view: View, weight: Weight, { ink, dash }: Brush): Pen {
  return { weight: isFine(view) ? weight : stepDown[weight], ink, dash };
}

/** Points as a path. */
export function trace({ k, x0, y0 }: View, points: readonly Point[], isClosed = false): string {
  let d = '';
  for (const [x, y] of points) d += `${d === '' ? 'M' : 'L'}${px(x0 + x * k)} ${px(y0 - y * k)}`;
  return isClosed ? `${d}Z` : d;
}

export function line(view: View, weight: Weight, brush: Brush, ...lines: readonly (readonly Point[])[]): PathShape {
  const d = lines.map((points) => trace(view, points)).join('');
  return { kind: 'path', d, pen: penOf(view, weight, brush), ground: 'none' };
}

export function area(
  view: View,
  ground: Ground,
  outline: readonly [Weight, Brush] | null,
  ...areas: readonly (readonly Point[])[]
): PathShape {
  const d = areas.map((points) => trace(view, points, true)).join('');
  return { kind: 'path', d, pen: outline && penOf(view, ...outline), ground };
}

export const boxOf = (x: number, y: number, width: number, height: number): readonly Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** A circle as a path of two half arcs. */
export function ring({ k, x0, y0 }: View, [x, y]: Point, radius_m: number): string {
  const r = px(radius_m * k);
  const [left, right, middle] = [px(x0 + (x - radius_m) * k), px(x0 + (x + radius_m) * k), px(y0 - y * k)];
  return `M${left} ${middle}A${r} ${r} 0 1 0 ${right} ${middle}A${r} ${r} 0 1 0 ${left} ${middle}Z`;
}

export function disc(
  view: View,
  ground: Ground,
  outline: readonly [Weight, Brush] | null,
  centre: Point,
  radius_m: number,
): PathShape {
  return { kind: 'path', d: ring(view, centre, radius_m), pen: outline && penOf(view, ...outline), ground };
}

/** A pipe along its axis: two edges at true bore, never closer than can be seen, with what is given inside. */
export function pipe(
  view: View,
  axis: readonly Point[],
  bore_m: number,
  brush: Brush,
  { weight = 'thin', inside = 'paper' }: { readonly weight?: Weight; readonly inside?: Ground } = {},
): readonly PathShape[] {
  const half = atLeast(view, bore_m, leastPipe_px) / 2;
  const [left, right] = [beside(axis, half), beside(axis, -half)];
  return [area(view, inside, null, [...left, ...[...right].reverse()]), line(view, weight, brush, left, right)];
}

/** A line beside another, corners mitred. */
export function beside(axis: readonly Point[], by: number): readonly Point[] {
  const ways = axis.slice(1).map(([x, y], index) => {
    const [fromX, fromY] = axis[index]!;
    const length = Math.hypot(x - fromX, y - fromY) || 1;
    return [(x - fromX) / length, (y - fromY) / length] as const;
  });
  return axis.map(([x, y], index) => {
    const [inX, inY] = ways[Math.max(0, index - 1)]!;
    const [outX, outY] = ways[Math.min(ways.length - 1, index)]!;
    const [sumX, sumY] = [-(inY + outY), inX + outX];
    const share = (2 * by) / Math.max(0.5, sumX * sumX + sumY * sumY);
    return [x + sumX * share, y + sumY * share] as const;
  });
}

/** Points of a quadratic curve, ends included. */
export function curve(from: Point, by: Point, to: Point, steps = 8): readonly Point[] {
  return Array.from({ length: steps + 1 }, (_, index) => {
    const t = index / steps;
    const [a, b, c] = [(1 - t) * (1 - t), 2 * t * (1 - t), t * t];
    return [a * from[0] + b * by[0] + c * to[0], a * from[1] + b * by[1] + c * to[1]] as const;
  });
}
