import fc from 'fast-check';
import type { RolloutPlan, RolloutProblem, SitePlace } from '../../packages/engine/src/programme/rollout/index.ts';
import { madePlan, madeRollout } from '../twins/madeRollouts.ts';

/** How often a law is tried. */
export const numRuns = process.env['EAVEWELL_SOAK'] ? 3000 : 150;
/** A seed of all that is drawn. */
export const seeds = fc.integer({ min: 1, max: 1_000_000_000 });
/** A place in a plan, seldom outside it. */
export const small = fc.integer({ min: -1, max: 4 });
/** A place mostly within a plan, its crew and trip drawn. */
export const placeAt = (crew: number, trip: number, at: number): SitePlace =>
  at % 2 === 0 ? { crew, newTripAt: trip } : { crew, trip, at: (at - 1) / 2 };
const kinds = [0, 0.25, 0.5].map((trouble_fraction) => ({
  ...{ jobs: [2, 9] as const, crews: [1, 4] as const, horizon_days: [60, 130] as const, trouble_fraction },
}));

/** A rollout, one in three without trouble. */
export const made = (seed: number) => madeRollout(seed, kinds[seed % kinds.length]!);

/** Trips that stand somewhere, none of them empty; one in five locked. */
export function planOf(problem: RolloutProblem, seed: number): RolloutPlan {
  const { trips } = madePlan(problem, seed);
  return {
    trips: trips.map((own, crew) =>
      own
        .filter(({ stops }) => stops.length > 0)
        .map((trip, at) => ({ ...trip, isLocked: (seed + 3 * crew + at) % 5 === 0 })),
    ),
  };
}
