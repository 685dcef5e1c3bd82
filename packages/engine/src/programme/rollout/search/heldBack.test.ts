import { expect, it } from 'vitest';
import { evaluatePlan } from '../evaluatePlan.ts';
import { planRollout } from '../planRollout.ts';
import { tinyCrew, tinyJob, tinyRollout } from '../tinyRollout.testing.ts';
import { budgetOfTries } from './searchBudget.ts';

/** Trips of three days, three nights away at the most, a feast on days 4 to 8: the second trip would be away over it. */
const works = Uint8Array.from({ length: 100 }, (_, day) => (day >= 4 && day <= 8 ? 0 : 1));
const jobs = [500, 100].map((people, at) => ({
  ...{ ...tinyJob, siteId: `J${at}`, people, weight: people, install_days: { low: 2, likely: 2, high: 2 } },
  needs: [1],
}));
const crew = { ...tinyCrew(100), works, mostDaysAway: 3, turnaround_days: 0, limit_kg: 10 };
const arrival = (day: number) => ({
  ...{ arrivalId: `A${day}`, day, goods: 0, quantity_count: 1, slip_days: { low: 0, likely: 0, high: 0 } },
});

it.each([
  ['where nothing is shared', [], []],
  ['where stock comes in time', [{ partId: 'kit' }], [arrival(0), arrival(1)]],
])('a trip that a feast would keep away too long leaves after it: %s', (_, goods, arrivals) => {
  const problem = tinyRollout(2, {
    ...{ goods, stores: [{ node: 0, filledBy: null, arrivals }], crews: [crew] },
    jobs: jobs.map((job) => ({ ...job, needs: goods.length > 0 ? job.needs : [] })),
  });
  const { plan, outcome } = planRollout(problem, { budget: budgetOfTries(256), seed: 1 });
  expect(outcome.broken).toEqual([]);
  expect(plan.trips[0]!.map(({ stops, notBefore }) => [stops, notBefore])).toEqual([
    [[0], 0],
    [[1], 9],
  ]);
  const atOnce = { trips: [plan.trips[0]!.map((trip) => ({ ...trip, notBefore: 0 }))] };
  expect(evaluatePlan(problem, atOnce).broken.map(({ kind }) => kind)).toEqual(['tooLongAway']);
});
