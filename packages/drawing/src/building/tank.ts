import type { GroupShape, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import type { BuiltTank } from './building.ts';
import { domeOf } from './layout.ts';
import { cellWalls, sludge } from './settling.ts';
import { inletInside, outletValve, overflowPipe } from './tankFittings.ts';
import { area, type Brush, boxOf, line, penOf, plain, trace, unmeasured, type View } from './view.ts';

/** Are its outlines drawn dashed? */
export const isTankDashed = ({ diameter_m, height_m }: BuiltTank): boolean =>
  diameter_m.how === 'usual' || height_m.how === 'usual';

interface Fitted {
  /** Where the pipe from the roofs comes in, over the ground [m]; null: none does. */
  readonly inletAt: number | null;
  readonly hasOutlet: boolean;
  /** How deep what settled lies; null: not known. */
  readonly sludge_m: number | null;
}

/** A tank cut through its middle x, with its fittings; its water is given, so that it can be drawn anew: null where it would go. */
export function tankSection(
  view: View,
  tank: BuiltTank,
  x: number,
  water: GroupShape | null,
  { inletAt, hasOutlet, sludge_m }: Fitted,
): readonly Shape[] {
  const radius = tank.diameter_m.value / 2;
  const foot = tank.standHeight_m.value;
  const [left, right, top] = [x - radius, x + radius, foot + tank.height_m.value];
  const brush = isTankDashed(tank) ? unmeasured : plain;
  return [
    area(view, 'paper', null, boxOf(left, foot, 2 * radius, tank.height_m.value)),
    { kind: 'path', d: dome(view, tank, x), pen: penOf(view, 'edge', brush), ground: 'paper' },
    ...(water === null ? [] : [water]),
    ...sludge(view, tank, x, sludge_m),
    ...cellWalls(view, tank, x),
    ...(inletAt === null ? [] : inletInside(view, tank, x, inletAt)),
    ...overflowPipe(view, tank, x),
    line(view, 'cut', brush, [
      [left, top],
      [left, foot],
      [right, foot],
      [right, top],
    ]),
    ...(hasOutlet ? outletValve(view, tank, x) : []),
    area(view, 'paper', ['thin', brush], boxOf(x - lid(tank) / 2, top + domeOf(2 * radius) - 0.025, lid(tank), 0.06)),
  ];
}

const lid = ({ diameter_m }: BuiltTank) => Math.min(0.5, diameter_m.value * 0.3);

/** Slightly domed, wall to wall. */
function dome(view: View, tank: BuiltTank, x: number): string {
  const radius = tank.diameter_m.value / 2;
  const rise = domeOf(2 * radius);
  const round = (radius * radius + rise * rise) / (2 * rise);
  const top = tank.standHeight_m.value + tank.height_m.value;
  const [right, level] = [view.x0 + (x + radius) * view.k, view.y0 - top * view.k];
  const r = px(round * view.k);
  return `${trace(view, [[x - radius, top]])}A${r} ${r} 0 0 1 ${px(right)} ${px(level)}`;
}

/** The outline of a tank that is to be built. */
export function proposedTank(view: View, tank: BuiltTank, x: number, brush: Brush): readonly Shape[] {
  const radius = tank.diameter_m.value / 2;
  const foot = tank.standHeight_m.value;
  const top = foot + tank.height_m.value;
  return [
    { kind: 'path', d: dome(view, tank, x), pen: penOf(view, 'edge', brush), ground: 'none' },
    line(view, 'edge', brush, [
      [x - radius, top],
      [x - radius, foot],
      [x + radius, foot],
      [x + radius, top],
    ]),
  ];
}
