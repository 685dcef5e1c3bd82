import type { Crew, Job, LegTable, RolloutProblem } from './problem.ts';

/** Legs of the same hours between all nodes that differ. */
export function evenLegs(nodes: number, hours: number, river_h = 0): LegTable {
  const filled = (value: number) =>
    Float32Array.from({ length: nodes * nodes }, (_, at) => (Math.floor(at / nodes) === at % nodes ? 0 : value));
  return {
    ...{
      landBefore_h: filled(hours),
      river_h: filled(river_h),
      landAfter_h: filled(0),
      cost: filled(1),
      fuel_L: filled(2),
    },
    ...{ limitOf: new Uint16Array(nodes * nodes), areaOf: new Uint8Array(nodes * nodes) },
    limits: [{ kg: 1000, litres: 1000, longest_m: 6, porters_count: 0 }],
  };
}

export const tinyJob: Job = {
  ...{ siteId: 'J', people: 100, weight: 100, install_days: { low: 1, likely: 1, high: 1 } },
  ...{
    windows: [{ from: 0, to: 99 }],
    finishBy: null,
    kg: 10,
    litres: 10,
    longest_m: 1,
    needs: [],
    skills: 0,
    area: -1,
  },
  ...{ serviceWait_days: new Float64Array(366), serviceWaits: null },
};

export function tinyCrew(horizon_days: number): Crew {
  return {
    ...{ crewId: 'C', base: 0, store: 0, travel: 0, skills: 0, works: new Uint8Array(horizon_days).fill(1) },
    ...{ work_h_per_day: 8, mostDaysAway: 14, maySleepAtSites: true, freeFrom: 0, pace_factor: 1, turnaround_days: 1 },
    ...{ cost_per_day: 10, limit_kg: 100, limit_L: 100, longest_m: 6, pools: [], done_count: 0 },
  };
}

/** Jobs 4 hours from the base and from each other, one crew, everything there. */
export function tinyRollout(jobs: number, change: Partial<RolloutProblem> = {}): RolloutProblem {
  const horizon_days = 100;
  return {
    ...{ firstDay: 20_454, horizon_days, placeIds: ['B'] },
    jobs: Array.from({ length: jobs }, (_, at) => ({ ...tinyJob, siteId: `J${at}` })),
    crews: [tinyCrew(horizon_days)],
    travels: [{ nodes: jobs + 1, byPeriod: [evenLegs(jobs + 1, 4)] }],
    periods: [{ from: 0 }],
    ...{ goods: [], stores: [{ node: 0, arrivals: [], filledBy: null }], pools: [], areaIds: [] },
    ...{ learning_fraction: 1, riverEnds_h: 6, fuelPrice_per_L: 3 },
    ...change,
  };
}
