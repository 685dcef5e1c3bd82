import type { Shape } from '../sheet/shapes.ts';
import type { BuiltTank, Measure } from './building.ts';
import { type Layout, type PlacedRoof, type PlacedTank, targetOf } from './layout.ts';
import { inletIn } from './tankFittings.ts';
import { atLeast, beside, beyond, line, type Point, pipe, plain, unmeasured, type View } from './view.ts';

/** The way of the water from a roof to its tank, in m from x 0 of the picture. */
export interface Carrier {
  readonly roof: PlacedRoof;
  readonly tank: PlacedTank;
  readonly axis: readonly Point[];
  /** Where the pipe comes into the tank, over the ground. */
  readonly inletAt: number;
  /** How far the overflow stands over the line of the gutter; 0 where the tank can fill. */
  readonly tooHigh_m: number;
  /** The same of a measured inlet. */
  readonly inletTooHigh_m: number;
}

const steepest = 0.35;
const fall = 0.03;

/** Each guttered roof leads to the tank named for it, else to the first of its body of water. */
export function carriersOf({ k, placed }: Pick<Layout, 'k' | 'placed'>): readonly Carrier[] {
  const tanks = placed.filter((one): one is PlacedTank => one.kind === 'tank' && one.tank !== null);
  return placed.flatMap((roof): readonly Carrier[] => {
    if (roof.kind !== 'roof' || !(roof.outline.hasRight || roof.outline.hasLeft)) return [];
    const own = tanks.filter(({ body }) => body === roof.body);
    const wanted = targetOf({ tanks: own.flatMap(({ tank }) => (tank ? [tank] : [])) }, roof.roof);
    const target = own.find(({ tank }) => tank === wanted);
    return target?.tank ? [carrierTo(roof, target, target.tank, k)] : [];
  });
}

function carrierTo(roof: PlacedRoof, target: PlacedTank, tank: BuiltTank, k: number): Carrier {
  const from: Point = [roof.x / k + roof.outline.rightPipe_m, roof.outline.branchHeight_m];
  const wall = target.x / k - tank.diameter_m.value / 2;
  const x = wall + inletIn(tank);
  const foot = tank.standHeight_m.value;
  const measured_m = tank.inletHeight_m === null ? null : foot + tank.inletHeight_m.value;
  const top = measured_m ?? foot + tank.height_m.value - 0.07;
  const over = tank.standHeight_m.value + tank.overflowHeight_m.value;
  const [drop, run] = [from[1] - top, x - from[0]];
  const eave = roof.roof.eaveHeight_m;
  // What rests on a size that nobody measured is no finding.
  const areKnown = (...all: readonly Measure[]) => all.every(({ how }) => how === 'measured');
  const tooHigh_m = areKnown(eave, tank.standHeight_m, tank.overflowHeight_m) ? Math.max(0, over - eave.value) : 0;
  const isInletKnown = measured_m !== null && areKnown(eave, tank.standHeight_m);
  const inletTooHigh_m = isInletKnown ? Math.max(0, measured_m - eave.value) : 0;
  const told = { roof, tank: target, tooHigh_m, inletTooHigh_m };
  if (measured_m !== null) return { ...told, axis: toInlet(from, wall, x, measured_m), inletAt: measured_m };
  const end = drop > steepest * run ? from[1] - fall * run : Math.min(top, from[1] - 0.01 * run);
  const axis: Point[] = [from, [x, end]];
  if (end > top) axis.push([x, top]);
  return { ...told, axis, inletAt: Math.min(top, end) };
}

/** To an inlet at its measured height: down beside the wall and in through it; straight up to one that is higher. */
function toInlet(from: Point, wall: number, x: number, inlet: number): readonly Point[] {
  const before = Math.max(from[0], wall - 0.2);
  const at = from[1] - fall * (before - from[0]);
  if (inlet > at - 0.1) return [from, [before, inlet], [x, inlet]];
  return [from, [before, at], [before, inlet], [x, inlet]];
}

/** Two edges at true bore; hidden where it runs behind other buildings. */
export function carrierShapes(
  view: View,
  { roof, tank, axis }: Carrier,
  behind: readonly PlacedRoof[],
): readonly Shape[] {
  const brush = roof.roof.bore_m.how === 'usual' ? unmeasured : plain;
  const seen = pipe(view, axis, roof.roof.bore_m.value, brush);
  const crossed = behind.filter(({ x }) => x > roof.x && x < tank.x);
  if (crossed.length === 0) return seen;
  const half = atLeast(view, roof.roof.bore_m.value, 2.6) / 2;
  const last = crossed[crossed.length - 1]!;
  const from = last.x / view.k + last.outline.width_m + last.outline.rightOut_m;
  const [start, end] = [axis[0]!, axis[1]!];
  const y = start[1] + ((end[1] - start[1]) * (from - start[0])) / (end[0] - start[0]);
  const hidden: readonly Point[] = [start, [from, y]];
  return [
    line(view, 'hair', { ...beyond, dash: 'unknown' }, beside(hidden, half), beside(hidden, -half)),
    ...pipe(view, [[from, y], ...axis.slice(1)], roof.roof.bore_m.value, brush),
  ];
}
