import { expect, it } from 'vitest';
import { evaluatePlan } from '../evaluatePlan.ts';
import { retiming } from '../makeReady.ts';
import { tinyCrew, tinyJob, tinyRollout } from '../tinyRollout.testing.ts';
import { crewNumbers } from './crewNumbers.ts';
import { CrewsApart } from './crewsApart.ts';
import { Draws } from './draws.ts';

const people = [40, 900, 120, 300, 700, 60];
const problem = tinyRollout(people.length, {
  jobs: people.map((count, at) => ({ ...tinyJob, siteId: `J${at}`, people: count, weight: count })),
  crews: [tinyCrew(100), tinyCrew(100)],
});
const trip = (...stops: number[]) => ({ stops, notBefore: 0, isLocked: false });

function moved(trips: ReturnType<typeof trip>[][], moves_count: number) {
  const state = new CrewsApart(crewNumbers(retiming(problem).problem), 0.01, new Draws(1));
  state.load(trips);
  const before = state.cost();
  const told = state.moveWithin(0, moves_count);
  const plan = {
    trips: state.trips().map((some) => some.map((one) => ({ ...one, stops: one.stops.map((job) => job - 1) }))),
  };
  return { before, told, plan, waiting: evaluatePlan(problem, plan).waiting };
}

it('trips of one job each, all with one crew, are shared out, and the cost told is that of the evaluator', () => {
  const found = moved([[trip(1), trip(2), trip(3), trip(4), trip(5), trip(6)], []], 400);
  expect(found.told).toBeCloseTo(found.waiting, 6);
  expect(found.waiting).toBeLessThan(found.before);
  const served = found.plan.trips.flatMap((some) => some.flatMap(({ stops }) => stops));
  expect([...served].sort()).toEqual([0, 1, 2, 3, 4, 5]);
  expect(found.plan.trips.map((some) => some.length)).toEqual([3, 3]);
});

it('a locked trip stays with its crew', () => {
  const locked = { ...trip(1), isLocked: true };
  const { plan } = moved([[locked, trip(2), trip(3), trip(4), trip(5), trip(6)], []], 400);
  expect(plan.trips[0]![0]!.stops).toEqual([0]);
});
