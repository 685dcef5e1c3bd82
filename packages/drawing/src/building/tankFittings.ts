import type { Shape } from '../sheet/shapes.ts';
import type { BuiltTank } from './building.ts';
import { area, boxOf, disc, isFine, line, type Point, pipe, plain, unmeasured, type View } from './view.ts';

const pipe_m = 0.09;

/** How far inside its left wall the inlet hangs [m]. */
export const inletIn = ({ diameter_m }: BuiltTank): number => Math.min(0.22, diameter_m.value * 0.12);

/** The inlet inside the tank: down to near its floor, and turned up, so that it does not stir the sludge. */
export function inletInside(view: View, tank: BuiltTank, x: number, from_m: number): readonly Shape[] {
  const left = x - tank.diameter_m.value / 2 + inletIn(tank);
  const foot = tank.standHeight_m.value;
  const bottom = foot + Math.min(0.2, tank.height_m.value * 0.12);
  if (!isFine(view) || from_m < bottom + 0.2) return [];
  const turn = Math.min(0.2, tank.diameter_m.value * 0.12);
  const axis: readonly Point[] = [
    [left, from_m],
    [left, bottom],
    [left + turn, bottom],
    [left + turn, bottom + Math.min(0.14, tank.height_m.value * 0.08)],
  ];
  return pipe(view, axis, pipe_m, plain);
}

/** Out under the top of the wall, down outside, a screen at its end clear of the ground. */
export function overflowPipe(view: View, tank: BuiltTank, x: number): readonly Shape[] {
  const foot = tank.standHeight_m.value;
  const right = x + tank.diameter_m.value / 2;
  const y = foot + tank.overflowHeight_m.value;
  const end = Math.max(0.18, foot + tank.outletHeight_m.value + 0.12);
  const brush = tank.overflowHeight_m.how === 'usual' ? unmeasured : plain;
  const out = right + 0.15;
  if (y - end < 0.15) return [];
  return [
    ...pipe(
      view,
      [
        [right - 0.03, y],
        [out, y],
        [out, end],
      ],
      pipe_m,
      brush,
    ),
    ...(isFine(view) ? [screenAt(view, out, end)] : []),
  ];
}

/** A screen over the end of a pipe: small crosses. */
function screenAt(view: View, x: number, y: number): Shape {
  const half = pipe_m / 2 + 0.015;
  const lines = [-1, -0.33, 0.33, 1].map((share): readonly Point[] => [
    [x + share * half - 0.01, y + 0.02],
    [x + share * half + 0.01, y - 0.03],
  ]);
  return line(view, 'hair', plain, ...lines, [
    [x - half, y - 0.005],
    [x + half, y - 0.005],
  ]);
}

/** The outlet at its height, and its valve. */
export function outletValve(view: View, tank: BuiltTank, x: number): readonly Shape[] {
  const right = x + tank.diameter_m.value / 2;
  const y = tank.standHeight_m.value + tank.outletHeight_m.value;
  const size = Math.max(0.055, 2 / view.k);
  const at = right + 0.1;
  const bow: readonly Point[] = [
    [at - size, y - size],
    [at + size, y + size],
    [at + size, y - size],
    [at - size, y + size],
  ];
  return [
    ...pipe(
      view,
      [
        [right, y],
        [right + 0.04, y],
      ],
      0.06,
      plain,
    ),
    area(view, 'ink', ['thin', plain], bow),
  ];
}

/** What settles: a thin uneven layer, deeper in a settling tank. */
export function sludge(view: View, tank: BuiltTank, x: number): readonly Shape[] {
  if (!isFine(view)) return [];
  const width = tank.diameter_m.value;
  const deep = tank.role === 'settling' ? 0.16 : 0.05;
  const foot = tank.standHeight_m.value;
  const count = Math.min(60, Math.round(width / 0.06));
  const dots = Array.from({ length: count }, (_, nth): readonly Point[] => {
    const at = x - width / 2 + 0.04 + ((width - 0.08) * (nth + 0.5)) / count;
    const up = deep * (0.25 + 0.6 * Math.abs(Math.sin(nth * 2.4)));
    return boxOf(at - 0.012, foot + up - 0.01, 0.024, 0.02);
  });
  return [area(view, 'ink', null, ...dots)];
}

/** A pipe at the foot that joins a tank to the one before it; in a settling tank it rises to the draw-off. */
export function joiningPipe(view: View, from: BuiltTank, fromX: number, to: BuiltTank, toX: number): readonly Shape[] {
  const left = fromX + from.diameter_m.value / 2;
  const right = toX - to.diameter_m.value / 2;
  const y = Math.max(from.standHeight_m.value, to.standHeight_m.value) + 0.09;
  const middle = (left + right) / 2;
  const axis: Point[] = [
    [left - 0.06, y],
    [right + 0.06, y],
  ];
  if (from.role === 'settling') {
    const up = from.standHeight_m.value + from.outletHeight_m.value;
    axis.unshift([left - 0.2, Math.max(y + 0.05, up)], [left - 0.2, y]);
  }
  return [
    ...pipe(view, axis, 0.07, plain),
    disc(view, 'paper', ['thin', plain], [middle, y], Math.max(0.07, 2.4 / view.k)),
  ];
}
