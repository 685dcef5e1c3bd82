import {
  cylinderVolume_L,
  type EngineProblemCode,
  engineProblem,
  explain,
  type Facts,
  type Place,
  type Problem,
  type TankFacts,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { largestDifference_fraction } from './constants.ts';

/** The volume water is balanced in, or null with the problems that say why. */
export interface SiteTank {
  readonly tankVolume_L: number | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/**
 * How many litres can be drawn from tanks that are one body of water? Between outlet and overflow, from their heights where
 * given, else the stated volume with a warning. Of a settling tank only what lies above its draw-off counts, so its stated
 * volume never does.
 *
 * @param siteId - the site, for the places of problems
 * @param tanks - a tank or tanks joined at the foot, as surveyed: heights [m], diameter [m], volumes [L]
 * @returns usable volume [L], null where it is not known
 * @problem site.tank_volume_unknown - when neither heights nor a volume are given, or the overflow is not above the outlet
 * @problem site.settling_not_counted - when the draw-off or the overflow of a settling tank is not known
 * @problem site.tank_volume_stated - when only the stated volume is known
 * @problem site.tank_levels_differ - when joined tanks hold clearly less at one level than each alone
 * @problem site.tank_stands_level - when it is not known how high joined tanks stand, so that they are taken as level
 * @problem site.tank_volume_differs - when heights and stated volume are far apart
 * @definition volume of the cylinder between outlet and overflow
 */
export function usableVolume(siteId: string, tanks: readonly TankFacts[]): SiteTank {
  const problems: Problem[] = [];
  const working: WorkingLine[] = [];
  const place = { file: 'tanks.csv', siteId };
  const counted = tanks.filter((tank) => tank.role !== 'settling' || volumeBetween_L(tank) !== null);
  for (const tank of tanks)
    if (!counted.includes(tank))
      problems.push(engineProblem('site.settling_not_counted', place, { tank: tank.tankId }));
  if (counted.length === 0)
    problems.push(
      engineProblem('site.tank_volume_unknown', place, { tank: tanks.map((one) => one.tankId).join(', ') }),
    );
  const volumes = counted.map((tank) => tankVolume(tank, place, problems));
  const summed_L = volumes.reduce<number>((sum, volume) => sum + (volume ?? 0), 0);
  const levelled = oneLevel_L(counted);
  if (levelled !== null && levelled < summed_L * (1 - largestDifference_fraction))
    problems.push(engineProblem('site.tank_levels_differ', place, { level_L: levelled, summed_L }));
  const notKnown = counted.length < 2 ? [] : counted.filter(({ standHeight_m }) => standHeight_m === null);
  if (notKnown.length > 0) {
    const facts = { tanks: notKnown.map(({ tankId }) => tankId) };
    problems.push(engineProblem('site.tank_stands_level', { ...place, column: 'standHeight_m' }, facts));
  }
  if (problems.some((problem) => problem.severity === 'blocker')) return { tankVolume_L: null, problems, working };
  const tankVolume_L = explain(working, {
    code: 'storage.volume',
    value: levelled ?? summed_L,
    unit: 'L',
    inputs: counted.flatMap((tank) => [...tankInputs(tank), ...(areApart(counted) ? [standInput(tank)] : [])]),
    source: 'survey',
  });
  return { tankVolume_L, problems, working };
}

/**
 * Litres of joined tanks whose heights are all known: they share one level, so the lowest overflow spills for all, and below the
 * highest outlet not all of them can be drawn from; a settling tank has its own draw-off, above those of the tanks it feeds. Null where a height is missing.
 * Floors are at the heights of their stands; where one of those is not known, all are taken to be at one height.
 */
function oneLevel_L(tanks: readonly TankFacts[]): number | null {
  if (tanks.length < 2 || tanks.some((tank) => volumeBetween_L(tank) === null)) return null;
  const floor_m = floorsOf(tanks);
  const top_m = Math.min(...tanks.map((tank) => floor_m(tank) + tank.overflowHeight_m!));
  const storing = tanks.filter(({ role }) => role === 'storage');
  const bottom_m = Math.max(...storing.map((tank) => floor_m(tank) + tank.outletHeight_m!));
  const level = (tank: TankFacts) => {
    const outletHeight_m = tank.role === 'settling' ? tank.outletHeight_m! : bottom_m - floor_m(tank);
    const overflowHeight_m = Math.max(top_m - floor_m(tank), outletHeight_m);
    return volumeBetween_L({ ...tank, overflowHeight_m, outletHeight_m })!;
  };
  return tanks.reduce((sum, tank) => sum + level(tank), 0);
}

/** How high the floor of each of these tanks stands [m]; all at one height where one is not known. */
function floorsOf(tanks: readonly TankFacts[]): (tank: TankFacts) => number {
  const isKnown = tanks.every(({ standHeight_m }) => standHeight_m !== null);
  return ({ standHeight_m }) => (isKnown ? standHeight_m! : 0);
}

/** Litres between outlet and overflow, else as stated; null, with the problem that says why, where neither is known. */
function tankVolume(tank: TankFacts, place: Place, problems: Problem[]): number | null {
  const { tankId, nominal_L, partVolume_L, outletHeight_m, overflowHeight_m } = tank;
  const stated_L = nominal_L ?? partVolume_L;
  const add = (code: EngineProblemCode, facts: Facts) =>
    problems.push(engineProblem(code, place, { tank: tankId, ...facts }));
  const farApart = (other_L: number | null) =>
    stated_L !== null && other_L !== null && Math.abs(other_L - stated_L) > largestDifference_fraction * stated_L;
  const measured_L = volumeBetween_L(tank);
  if (measured_L !== null && measured_L <= 0) {
    add('site.tank_volume_unknown', { outlet_m: outletHeight_m ?? 0, overflow_m: overflowHeight_m ?? 0 });
    return null;
  }
  if (measured_L !== null) {
    if (farApart(measured_L)) add('site.tank_volume_differs', { measured_L, stated_L: stated_L ?? 0 });
    return measured_L;
  }
  if (stated_L === null) {
    add('site.tank_volume_unknown', {});
    return null;
  }
  if (farApart(partVolume_L)) add('site.tank_volume_differs', { part_L: partVolume_L ?? 0, stated_L });
  add('site.tank_volume_stated', { stated_L });
  return stated_L;
}

function volumeBetween_L(tank: TankFacts): number | null {
  const { diameter_m, outletHeight_m, overflowHeight_m } = tank;
  if (diameter_m === null || outletHeight_m === null || overflowHeight_m === null) return null;
  return cylinderVolume_L(diameter_m, overflowHeight_m - outletHeight_m);
}

/**
 * How high would the overflow of a measured tank have to be for so many litres?
 *
 * @param tank - its heights and its diameter [m]
 * @param tankVolume_L - the volume wanted between outlet and overflow [L]
 * @returns height of the overflow above the floor [m]; null where one of the three is not measured
 * @definition the height at which the cylinder from the outlet up holds the volume: the other way round of `usableVolume`
 * @example
 * overflowFor_m({ diameter_m: 2, outletHeight_m: 0.1, overflowHeight_m: 1.5 }, 0) // → 0.1
 */
export function overflowFor_m(
  tank: Pick<TankFacts, 'diameter_m' | 'outletHeight_m' | 'overflowHeight_m'>,
  tankVolume_L: number,
): number | null {
  const { diameter_m, outletHeight_m, overflowHeight_m } = tank;
  if (diameter_m === null || outletHeight_m === null || overflowHeight_m === null || diameter_m <= 0) return null;
  return outletHeight_m + tankVolume_L / cylinderVolume_L(diameter_m, 1);
}

/** Do joined tanks stand at heights of their own, all of them known? */
function areApart(tanks: readonly TankFacts[]): boolean {
  const heights = new Set(tanks.map(({ standHeight_m }) => standHeight_m));
  return heights.size > 1 && !heights.has(null);
}

const standInput = ({ standHeight_m }: TankFacts) => workingInput('standHeight', standHeight_m!, 'm');

function tankInputs(tank: TankFacts) {
  if (volumeBetween_L(tank) === null)
    return [workingInput('statedVolume', tank.nominal_L ?? tank.partVolume_L ?? 'unknown', 'L')];
  return [
    workingInput('diameter', tank.diameter_m!, 'm'),
    workingInput('outletHeight', tank.outletHeight_m!, 'm'),
    workingInput('overflowHeight', tank.overflowHeight_m!, 'm'),
  ];
}
