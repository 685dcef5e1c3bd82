import type { Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import { child_m, grownUp_m } from './constants.ts';
import { beyond, penOf, type View } from './view.ts';

/** What someone on a drawing does. */
export type Deed = 'stands' | 'pumps' | 'fills' | 'carries';

/** A limb: from x, y, half as thick, to x, y, half as thick [share of the body's height, x the way they face; or px]. */
export type Limb = readonly [number, number, number, number, number, number];

/** Crown to sole is 1. Proportions of a grown body; no face, no dress of anyone. */
const bodies: Record<Deed, readonly Limb[]> = {
  stands: [
    [0, 0.935, 0.062, 0, 0.925, 0.058],
    [0, 0.86, 0.03, 0, 0.8, 0.045],
    [0, 0.77, 0.085, 0, 0.55, 0.075],
    [0, 0.55, 0.078, -0.015, 0.3, 0.055],
    [0.01, 0.5, 0.07, 0.015, 0.28, 0.05],
    [-0.015, 0.3, 0.052, -0.02, 0.03, 0.032],
    [0.015, 0.28, 0.05, 0.02, 0.03, 0.032],
    [-0.02, 0.022, 0.022, 0.055, 0.018, 0.018],
    [0.0, 0.78, 0.045, -0.015, 0.62, 0.034],
    [-0.015, 0.62, 0.034, 0.02, 0.47, 0.028],
  ],
  pumps: [
    [0.075, 0.925, 0.062, 0.085, 0.915, 0.058],
    [0.06, 0.85, 0.03, 0.045, 0.8, 0.045],
    [0.04, 0.77, 0.082, -0.02, 0.55, 0.075],
    [-0.02, 0.54, 0.075, 0.06, 0.3, 0.052],
    [0.06, 0.3, 0.05, 0.055, 0.03, 0.032],
    [0.055, 0.022, 0.022, 0.13, 0.018, 0.018],
    [-0.03, 0.53, 0.072, -0.11, 0.29, 0.052],
    [-0.11, 0.29, 0.05, -0.19, 0.04, 0.032],
    [-0.19, 0.024, 0.022, -0.115, 0.018, 0.018],
    [0.05, 0.785, 0.042, 0.17, 0.67, 0.033],
    [0.17, 0.67, 0.033, 0.3, 0.7, 0.026],
    [0.03, 0.775, 0.042, 0.13, 0.63, 0.033],
    [0.13, 0.63, 0.033, 0.28, 0.67, 0.026],
  ],
  fills: [
    [0.245, 0.83, 0.06, 0.258, 0.82, 0.058],
    [0.21, 0.775, 0.032, 0.175, 0.745, 0.045],
    [0.16, 0.715, 0.08, -0.02, 0.55, 0.08],
    [-0.02, 0.54, 0.076, 0.035, 0.3, 0.054],
    [0.035, 0.3, 0.052, 0.0, 0.03, 0.032],
    [0.0, 0.022, 0.022, 0.075, 0.018, 0.018],
    [-0.035, 0.53, 0.074, -0.05, 0.29, 0.053],
    [-0.05, 0.29, 0.05, -0.1, 0.03, 0.032],
    [-0.1, 0.022, 0.022, -0.025, 0.018, 0.018],
    [0.17, 0.71, 0.042, 0.24, 0.575, 0.032],
    [0.24, 0.575, 0.032, 0.36, 0.545, 0.026],
  ],
  carries: [
    [0.01, 0.93, 0.075, 0.02, 0.915, 0.072],
    [0.0, 0.845, 0.035, 0, 0.79, 0.045],
    [0, 0.75, 0.09, -0.005, 0.54, 0.08],
    [0, 0.53, 0.08, 0.075, 0.29, 0.056],
    [0.075, 0.29, 0.052, 0.075, 0.04, 0.034],
    [0.08, 0.025, 0.024, 0.16, 0.02, 0.02],
    [-0.01, 0.53, 0.078, -0.05, 0.29, 0.054],
    [-0.05, 0.29, 0.05, -0.15, 0.06, 0.034],
    [-0.15, 0.05, 0.024, -0.1, 0.005, 0.02],
    [-0.01, 0.76, 0.044, -0.05, 0.6, 0.034],
    [-0.05, 0.6, 0.034, -0.03, 0.45, 0.029],
  ],
};

const heights: Record<Deed, number> = { stands: grownUp_m, pumps: grownUp_m, fills: grownUp_m, carries: child_m };

/** Someone at true height, as an outline without inner lines, feet at x and the ground or floor given. */
export function person(view: View, deed: Deed, x: number, floor_m: number, faces: 1 | -1 = 1): readonly Shape[] {
  const size = heights[deed] * view.k;
  const [x0, y0] = [view.x0 + x * view.k, view.y0 - floor_m * view.k];
  let d = '';
  for (const [ax, ay, ar, bx, by, br] of bodies[deed])
    d += limb(x0 + faces * ax * size, y0 - ay * size, ar * size, x0 + faces * bx * size, y0 - by * size, br * size);
  return [
    {
      kind: 'group',
      part: 'person',
      station: null,
      // The outline first, then the filling over the lines where limbs meet.
      shapes: [
        { kind: 'path', d, pen: penOf(view, 'edge', beyond), ground: 'figure' },
        { kind: 'path', d, pen: null, ground: 'figure' },
      ],
    },
  ];
}

/** The outline round two circles [px]. */
export function limb(ax: number, ay: number, ar: number, bx: number, by: number, br: number): string {
  const length = Math.hypot(bx - ax, by - ay);
  const along = Math.atan2(by - ay, bx - ax);
  const spread = Math.acos(Math.max(-1, Math.min(1, (ar - br) / (length || 1))));
  const on = (x: number, y: number, r: number, angle: number) =>
    `${px(x + r * Math.cos(angle))} ${px(y + r * Math.sin(angle))}`;
  const far = spread > Math.PI / 2 ? 1 : 0;
  return (
    `M${on(ax, ay, ar, along + spread)}` +
    `A${px(ar)} ${px(ar)} 0 ${1 - far} 1 ${on(ax, ay, ar, along - spread)}` +
    `L${on(bx, by, br, along - spread)}` +
    `A${px(br)} ${px(br)} 0 ${far} 1 ${on(bx, by, br, along + spread)}Z`
  );
}
