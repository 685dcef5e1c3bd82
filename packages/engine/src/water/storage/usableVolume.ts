import {
  engineProblem,
  explain,
  L_per_m3,
  type Problem,
  type TankFacts,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { largestDifference_fraction } from './constants.ts';

/** The tank a site's water is balanced in, or null with the problems that say why. */
export interface SiteTank {
  readonly tankVolume_L: number | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/**
 * How many litres can be drawn from a site's tanks? Between outlet and overflow, from their heights where given, else the
 * stated volume with a warning. Tanks joined at the foot are one volume; separate tanks are separate balances.
 *
 * @param siteId - the site, for the places of problems
 * @param tanks - its tanks as surveyed, heights [m], diameter [m], volumes [L]
 * @returns usable volume [L], null where it is not known
 * @problem site.tank_none - when there is no tank
 * @problem site.tanks_separate - when tanks are not joined at the foot
 * @problem site.tank_volume_unknown - when neither heights nor a volume are given, or the overflow is not above the outlet
 * @problem site.tank_volume_stated - when only the stated volume is known
 * @problem site.tank_volume_differs - when heights and stated volume are far apart
 * @definition volume of the cylinder between outlet and overflow
 */
export function usableVolume(siteId: string, tanks: readonly TankFacts[]): SiteTank {
  const problems: Problem[] = [];
  const working: WorkingLine[] = [];
  const place = { file: 'tanks.csv', siteId };
  if (tanks.length === 0) problems.push(engineProblem('site.tank_none', place));
  if (!areJoined(tanks))
    problems.push(engineProblem('site.tanks_separate', place, { tanks: tanks.map((t) => t.tankId) }));
  let total = 0;
  for (const tank of tanks) {
    const stated = tank.nominal_L ?? tank.partVolume_L;
    const between = volumeBetween_L(tank);
    if (between !== null && between <= 0) {
      problems.push(
        engineProblem('site.tank_volume_unknown', place, {
          tank: tank.tankId,
          outlet_m: tank.outletHeight_m ?? 0,
          overflow_m: tank.overflowHeight_m ?? 0,
        }),
      );
    } else if (between !== null) {
      if (stated !== null && Math.abs(between - stated) > largestDifference_fraction * stated)
        problems.push(
          engineProblem('site.tank_volume_differs', place, {
            tank: tank.tankId,
            measured_L: between,
            stated_L: stated,
          }),
        );
      total += between;
    } else if (stated !== null) {
      problems.push(engineProblem('site.tank_volume_stated', place, { tank: tank.tankId, stated_L: stated }));
      total += stated;
    } else {
      problems.push(engineProblem('site.tank_volume_unknown', place, { tank: tank.tankId }));
    }
  }
  if (problems.some((problem) => problem.severity === 'blocker')) return { tankVolume_L: null, problems, working };
  const tankVolume_L = explain(working, {
    code: 'storage.volume',
    value: total,
    unit: 'L',
    inputs: tanks.flatMap(tankInputs),
    source: 'survey',
  });
  return { tankVolume_L, problems, working };
}

function volumeBetween_L(tank: TankFacts): number | null {
  const { diameter_m, outletHeight_m, overflowHeight_m } = tank;
  if (diameter_m === null || outletHeight_m === null || overflowHeight_m === null) return null;
  return (Math.PI / 4) * diameter_m * diameter_m * (overflowHeight_m - outletHeight_m) * L_per_m3;
}

function tankInputs(tank: TankFacts) {
  if (volumeBetween_L(tank) === null)
    return [workingInput('statedVolume', tank.nominal_L ?? tank.partVolume_L ?? 'unknown', 'L')];
  return [
    workingInput('diameter', tank.diameter_m!, 'm'),
    workingInput('outletHeight', tank.outletHeight_m!, 'm'),
    workingInput('overflowHeight', tank.overflowHeight_m!, 'm'),
  ];
}

/** Do the tanks' joints make one body of water of them all? */
function areJoined(tanks: readonly TankFacts[]): boolean {
  if (tanks.length < 2) return true;
  const reached = new Set([tanks[0]!.tankId]);
  for (let grew = true; grew; ) {
    const before = reached.size;
    for (const tank of tanks) {
      if (tank.joinedTo === null) continue;
      if (reached.has(tank.tankId)) reached.add(tank.joinedTo);
      else if (reached.has(tank.joinedTo)) reached.add(tank.tankId);
    }
    grew = reached.size > before;
  }
  return tanks.every((tank) => reached.has(tank.tankId));
}
