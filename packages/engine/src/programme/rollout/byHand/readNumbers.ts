import { leapYear_days } from '../constants.ts';
import type { Crew, Haul, Job, RolloutProblem } from '../problem.ts';
import { endless, type PackedCrew, type PackedHaul, type PackedJobs, type PackedRollout } from './packedForm.ts';
import { readLegs } from './readLegs.ts';

/**
 * The rollout that JSON carried, with the legs that went with it.
 *
 * @param packed - as `packNumbers` made it [day, h, kg, L, person]
 * @returns the rollout; a leg that did not go with it cannot be gone, and `missingPairs` tells of it [day, h, kg, L, person]
 * @law packed again with the same legs it is the same
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function readNumbers(packed: PackedRollout): RolloutProblem {
  const { firstDay, horizon_days, placeIds, areaIds, periods, goods, pools } = packed;
  const calendars = packed.calendars.map((days) => Uint8Array.from(days, Number));
  return {
    ...{ firstDay, horizon_days, placeIds, areaIds, periods, goods, pools },
    ...{ learning_fraction: packed.learning_fraction, riverEnds_h: packed.riverEnds_h },
    fuelPrice_per_L: packed.fuelPrice_per_L,
    stores: packed.stores.map(({ node, arrivals, filledBy }) => ({
      ...{ node, arrivals },
      filledBy: filledBy === null ? null : readHaul(filledBy),
    })),
    crews: packed.crews.map((crew) => readCrew(crew, calendars)),
    jobs: readJobs(packed.jobs),
    travels: readLegs(packed.legs),
  };
}

function readHaul({ there_days, back_days, limit_kg, limit_L, ...rest }: PackedHaul): Haul {
  return {
    ...rest,
    ...{ there_days: there_days.map(endless), back_days: back_days.map(endless) },
    ...{ limit_kg: endless(limit_kg), limit_L: endless(limit_L) },
  };
}

function readCrew({ calendar, ...crew }: PackedCrew, calendars: readonly Uint8Array[]): Crew {
  return {
    ...{ ...crew, works: calendars[calendar]! },
    ...{ freeFrom: endless(crew.freeFrom), mostDaysAway: endless(crew.mostDaysAway) },
    ...{ limit_kg: endless(crew.limit_kg), limit_L: endless(crew.limit_L), longest_m: endless(crew.longest_m) },
  };
}

function readJobs(packed: PackedJobs): readonly Job[] {
  const windows = packed.windowLists.map((days) =>
    Array.from({ length: days.length / 2 }, (_, at) => ({ from: days[2 * at]!, to: days[2 * at + 1]! })),
  );
  const waits = packed.waitLists.map(readRuns);
  const none = new Float64Array(leapYear_days);
  return packed.siteId.map((siteId, at) => {
    const wait = packed.waits[at]!;
    return {
      ...{ siteId, people: packed.people[at]!, weight: packed.weight[at]! },
      install_days: { low: packed.low_days[at]!, likely: packed.likely_days[at]!, high: packed.high_days[at]! },
      ...{ windows: windows[packed.windows[at]!]!, finishBy: packed.finishBy[at]! },
      ...{ kg: packed.kg[at]!, litres: packed.litres[at]!, longest_m: packed.longest_m[at]! },
      needs: packed.needs.map((column) => column[at]!),
      ...{ skills: packed.skills[at]!, area: packed.area[at]! },
      ...{ serviceWait_days: wait === null ? none : waits[wait]!, serviceWaits: null },
    };
  });
}

function readRuns(runs: readonly number[]): Float64Array {
  const days: number[] = [];
  for (let at = 0; at < runs.length; at += 3)
    for (let day = 0; day < runs[at + 2]!; day++) days.push(runs[at]! + day * runs[at + 1]!);
  return Float64Array.from(days);
}
