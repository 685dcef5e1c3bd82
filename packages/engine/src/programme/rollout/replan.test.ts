import { expect, it } from 'vitest';
import { evaluatePlan } from './evaluatePlan.ts';
import { planChanges } from './planChanges.ts';
import { planRollout } from './planRollout.ts';
import { replan } from './replan.ts';
import { budgetOfTries } from './search/searchBudget.ts';
import { tinyJob, tinyRollout } from './tinyRollout.testing.ts';

const people = [40, 900, 120, 300, 700, 60];
const problem = tinyRollout(people.length, {
  jobs: people.map((count, at) => ({ ...tinyJob, siteId: `J${at}`, people: count, weight: count })),
});

it('a plan serves every site, those with many people first, the same for the same seed', () => {
  const found = planRollout(problem, { budget: budgetOfTries(256), seed: 3 });
  expect(found.outcome.broken).toEqual([]);
  const served = found.plan.trips.flatMap((trips) => trips.flatMap(({ stops }) => stops));
  // All sites lie equally far from each other and take as long: then the order is by people alone.
  expect(served).toEqual([1, 4, 3, 2, 5, 0]);
  expect(planRollout(problem, { budget: budgetOfTries(256), seed: 3 }).plan).toEqual(found.plan);
});

it('what is locked stays, and only what may move is made better', () => {
  const trip = (stops: number[], isLocked: boolean) => ({ stops, notBefore: 0, isLocked });
  const inForce = { trips: [[trip([0, 5], true), trip([2, 3], false), trip([1, 4], false)]] };
  const now = replan(problem, inForce, { budget: budgetOfTries(256), seed: 1 });
  expect(now.plan.trips[0]![0]).toEqual(trip([0, 5], true));
  const served = now.plan.trips[0]!.flatMap(({ stops }) => stops);
  expect(served).toEqual([0, 5, 1, 4, 3, 2]);
  expect(now.changes.sites.map(({ job }) => job)).toEqual([1, 2, 3, 4]);
  expect(now.changes.waiting_personDays).toBeLessThan(0);
});

it('a plan compared with itself changes nothing', () => {
  const { plan } = planRollout(problem, { budget: budgetOfTries(128), seed: 1 });
  const timed = { plan, outcome: evaluatePlan(problem, plan) };
  expect(planChanges(timed, timed)).toEqual({ sites: [], waiting_personDays: 0, finish_days: 0, cost: 0 });
});
