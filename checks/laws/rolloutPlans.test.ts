import fc from 'fast-check';
import { expect, it } from 'vitest';
import { noRollout, type PlanFacts, type ProgrammeFacts, readIsoDay } from '../../packages/engine/src/kernel/index.ts';
import {
  evaluatePlan,
  type RolloutPlan,
  type RolloutProblem,
  retiming,
} from '../../packages/engine/src/programme/rollout/index.ts';
import { timedForSearch } from '../../packages/engine/src/programme/rollout/planRollout.ts';
import type { ReadyRollout } from '../../packages/engine/src/programmeRolloutFacts.ts';
import { keptPlan } from '../../packages/engine/src/programmeRolloutPlans.ts';
import { type PlanRows, rowsOfPlan } from '../../packages/engine/src/programmeRolloutRows.ts';
import { madePlan, madeRollout } from '../twins/madeRollouts.ts';

const numRuns = process.env['EAVEWELL_SOAK'] ? 4000 : 200;
const seeds = fc.integer({ min: 1, max: 1_000_000_000 });
const kind = { jobs: [2, 12], crews: [1, 4], horizon_days: [60, 200], trouble_fraction: 0.25 } as const;

/** Rows as the joining of tables reads them, in an order of their own. */
function read(rows: PlanRows, planId: string): PlanFacts {
  const day = (text: string | undefined) => (text === undefined ? null : readIsoDay(text)!);
  return {
    ...{ planId, name: planId, from: null, isInForce: true, timedAt: null, note: null },
    trips: rows.planTrips.toReversed().map((trip) => ({
      ...{ tripId: trip['tripId']!, crewId: trip['crewId']!, order: Number(trip['order']) },
      ...{ notBefore: day(trip['notBefore']), isLocked: trip['isLocked'] === 'yes' },
      ...{ leaves: day(trip['leaves']), back: day(trip['back']) },
      ...{ leftOn: day(trip['leftOn']), backOn: day(trip['backOn']) },
      stops: rows.planStops
        .toReversed()
        .filter(({ tripId }) => tripId === trip['tripId'])
        .map((stop) => ({
          ...{ siteId: stop['siteId']!, order: Number(stop['order']), handOver: day(stop['handOver']) },
        })),
    })),
  };
}

/** What of a rollout made ready a plan is read with. */
const readied = (problem: RolloutProblem) => ({ problem, leftOut: [] }) as unknown as ReadyRollout;
const programme = (...plans: readonly PlanFacts[]) =>
  ({ sites: [], rollout: { ...noRollout, plans } }) as unknown as ProgrammeFacts;

/** Whole days to wait, no trip without stops, and some trips to be left alone. */
function keepable({ trips }: RolloutPlan, seed: number): RolloutPlan {
  return {
    trips: trips.map((own) =>
      own
        .filter(({ stops }) => stops.length > 0)
        .map((trip, at) => ({
          ...{ stops: trip.stops, notBefore: Math.floor(trip.notBefore), isLocked: (at + seed) % 3 === 0 },
        })),
    ),
  };
}

it('a plan that is kept and read back is the same plan, with the same ids of its trips', () => {
  let placed = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const problem = madeRollout(seed, kind);
      const plan = keepable(madePlan(problem, seed), seed);
      const rows = rowsOfPlan(problem, plan, evaluatePlan(problem, plan), { planId: 'P' });
      const got = keptPlan(readied(problem), programme(read(rows, 'P')), 'P', problem.firstDay)!;
      expect(got.plan).toEqual(plan);
      expect(new Set(got.tripIds.flat()).size).toBe(plan.trips.flat().length);
      const stops = plan.trips.flat().flatMap((trip) => trip.stops);
      placed += stops.length;
      expect(got.notPlaced).toEqual(problem.jobs.map(({ siteId }) => siteId).filter((_, job) => !stops.includes(job)));
      expect([got.dropped, got.overdue, got.problems]).toEqual([[], [], []]);
      // Kept once more with its ids nothing of it is another.
      const again = rowsOfPlan(problem, plan, evaluatePlan(problem, plan), got);
      expect(again).toEqual(rows);
    }),
    { numRuns, seed: 20261126 },
  );
  expect(placed).toBeGreaterThan(5 * numRuns);
});

it('the kept days are those on which a trip leaves and is back, and on which its sites are handed over', () => {
  let compared = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const problem = madeRollout(seed, kind);
      const plan = keepable(madePlan(problem, seed), seed);
      const outcome = evaluatePlan(problem, plan);
      const { trips } = read(rowsOfPlan(problem, plan, outcome, { planId: 'P' }), 'P');
      for (const trip of trips) {
        const crew = problem.crews.findIndex(({ crewId }) => crewId === trip.crewId);
        const timed = outcome.trips[crew]![trip.order - 1]!;
        if (trip.leaves === null) continue;
        compared++;
        expect(trip.leaves - problem.firstDay).toBe(Math.floor(timed.leaves));
        // Away to the end of the day it is back on.
        const back = trip.back! + 1 - problem.firstDay;
        expect(back).toBeGreaterThanOrEqual(timed.back - 1e-6);
        expect(back - 1).toBeLessThanOrEqual(timed.back);
        for (const { siteId, handOver } of trip.stops) {
          const stop = timed.stops.find(({ job }) => problem.jobs[job]!.siteId === siteId)!;
          const isDone = stop.handOverDay < problem.horizon_days;
          expect(handOver).toBe(isDone ? problem.firstDay + stop.handOverDay : null);
        }
      }
    }),
    { numRuns, seed: 20261126 },
  );
  expect(compared).toBeGreaterThan(2 * numRuns);
});

it('trips that left stay as they are, whatever is planned anew', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const problem = madeRollout(seed, kind);
      const plan = keepable(madePlan(problem, seed), seed);
      const rows = rowsOfPlan(problem, plan, evaluatePlan(problem, plan), { planId: 'P' });
      const facts = read(rows, 'P');
      const today = problem.firstDay + 20;
      const left = facts.trips.map((trip) =>
        trip.leaves === null || trip.leaves > today
          ? trip
          : { ...trip, leftOn: trip.leaves, backOn: trip.back! < today ? trip.back : null },
      );
      const kept = keptPlan(readied(problem), programme({ ...facts, trips: left }), 'P', today)!;
      const gone = left.filter(({ leftOn }) => leftOn !== null);
      expect(kept.past.flat()).toHaveLength(gone.length);
      for (const { state, kept: trip } of kept.past.flat())
        expect(state).toBe(trip.backOn === null ? 'underWay' : 'done');
      const again = read(rowsOfPlan(problem, kept.plan, null, kept), 'P').trips;
      for (const trip of gone) {
        const stops = [...trip.stops].sort((a, b) => a.order - b.order);
        const same = again.find(({ tripId }) => tripId === trip.tripId)!;
        expect({ ...same, stops: [...same.stops].sort((a, b) => a.order - b.order) }).toEqual({ ...trip, stops });
      }
      // Those still to go come after those that left.
      for (const crew of problem.crews) {
        const own = again.filter(({ crewId }) => crewId === crew.crewId);
        const lastGone = Math.max(0, ...own.filter(({ leftOn }) => leftOn !== null).map(({ order }) => order));
        for (const { leftOn, order } of own) if (leftOn === null) expect(order).toBeGreaterThan(lastGone);
      }
    }),
    { numRuns, seed: 20261126 },
  );
});

it('a crew whose own carrier is away at first goes as one that is free when the carrier is there again', () => {
  let compared = 0;
  fc.assert(
    fc.property(seeds, fc.integer({ min: 0, max: 40 }), (seed, to) => {
      const made = madeRollout(seed, { ...kind, trouble_fraction: 0.1 });
      const away = [{ from: 0, to, carriers_count: 1 }];
      const problem = {
        ...made,
        pools: [{ carrierId: 'own', carriers_count: 1, away }],
        crews: made.crews.map((crew, at) => ({ ...crew, pools: at === 0 ? [0] : [] })),
      };
      const searched = timedForSearch(retiming(problem)).problem;
      if (searched === problem) return;
      expect(searched.pools[0]!.away).toEqual([]);
      const plan = madePlan(problem, seed, true);
      const [before, after] = [evaluatePlan(problem, plan), evaluatePlan(searched, plan)];
      // A trip for which there is no way on a day on which it could not go either is not made, and says so.
      if ([...before.broken, ...after.broken].some(({ kind: broke }) => broke === 'noWay' || broke === 'beyondHorizon'))
        return;
      compared++;
      const days = ({ trips }: typeof before) => trips.map((own) => own.map(({ leaves, back }) => [leaves, back]));
      expect(days(after)).toEqual(days(before));
      expect(after.waiting).toBe(before.waiting);
    }),
    { numRuns, seed: 20261126 },
  );
  expect(compared).toBeGreaterThan(numRuns / 5);
});
