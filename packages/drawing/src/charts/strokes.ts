import type { Dash, Ground, GroupShape, Ink, PathShape, Pen, Shape, Weight } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';

/** A pen of the ladder. */
export function pen(weight: Weight, ink: Ink, dash: Dash = 'none'): Pen {
  return { weight, ink, dash };
}

/** A path that is a line only. */
export function stroke(d: string, own: Pen): PathShape {
  return { kind: 'path', d, pen: own, ground: 'none' };
}

/** A path that is filled, with an outline where one is given. */
export function fill(d: string, ground: Ground, own: Pen | null = null): PathShape {
  return { kind: 'path', d, pen: own, ground };
}

/** Shapes that belong together. */
export function group(part: string | null, shapes: readonly Shape[]): GroupShape {
  return { kind: 'group', part, station: null, shapes };
}

/** Paths of SVG [px]. */
export const across = (x: number, y: number, toX: number): string => `M${px(x)} ${px(y)}H${px(toX)}`;
export const down = (x: number, y: number, toY: number): string => `M${px(x)} ${px(y)}V${px(toY)}`;
export const rect = (x: number, y: number, width: number, height: number): string =>
  `M${px(x)} ${px(y)}h${px(width)}v${px(height)}h${px(-width)}Z`;
export const ring = (x: number, y: number, radius: number): string =>
  `M${px(x - radius)} ${px(y)}a${px(radius)} ${px(radius)} 0 1 0 ${px(2 * radius)} 0a${px(radius)} ${px(radius)} 0 1 0 ${px(-2 * radius)} 0Z`;

/** What points at one thing on a picture: a dot that shows on any ground. */
export function pointDot(x: number, y: number): PathShape {
  return fill(ring(x, y, 3.5), 'paper', pen('edge', 'ink'));
}
