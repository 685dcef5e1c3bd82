import type { Shape } from '../sheet/shapes.ts';
import type { BuiltTank } from './building.ts';
import { footOf } from './stand.ts';
import { area, curve, disc, isFine, line, type Point, pipe, plain, unmeasured, type View } from './view.ts';

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
  const bore = tank.overflowBore_m.value;
  const isUsual = tank.overflowHeight_m.how === 'usual' || tank.overflowBore_m.how === 'usual';
  const brush = isUsual ? unmeasured : plain;
  const out = right + Math.max(0.15, bore / 2 + 0.06);
  if (y - end < 0.15) return [];
  return [
    ...pipe(
      view,
      [
        [right - 0.03, y],
        [out, y],
        [out, end],
      ],
      bore,
      brush,
    ),
    ...(isFine(view) && tank.isOverflowScreened ? [screenAt(view, out, end, bore)] : []),
    ...overflowWay(view, out, end, footOf(tank) + x),
  ];
}

/** Where it leads nobody said: dashed, clear of the footing. */
function overflowWay(view: View, x: number, end: number, foot: number): readonly Shape[] {
  const to = Math.max(x, foot) + 0.4;
  const head = Math.max(0.06, 3 / view.k);
  return [
    line(view, 'thin', unmeasured, curve([x, end - 0.03], [x + (to - x) * 0.25, 0.05], [to, 0.03], 6)),
    line(view, 'thin', plain, [
      [to - head, 0.03 + head * 0.6],
      [to, 0.03],
      [to - head, 0.03 - head * 0.2],
    ]),
  ];
}

/** A screen over the end of a pipe: small crosses. */
function screenAt(view: View, x: number, y: number, bore: number): Shape {
  const half = bore / 2 + 0.015;
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
