import { expect, it } from 'vitest';
import { evaluatePlan } from './evaluatePlan.ts';
import { leapDayOf } from './leapDays.ts';
import { sinceTold } from './sinceTold.ts';
import { tinyJob, tinyRollout } from './tinyRollout.testing.ts';

const people = [100, 40, 7];
const problem = tinyRollout(3, { jobs: people.map((of, at) => ({ ...tinyJob, siteId: `J${at}`, people: of })) });
const { firstDay, horizon_days } = problem;
const outcome = evaluatePlan(problem, {
  trips: [[{ stops: [0, 1], notBefore: 0, isLocked: false }]],
});
const handOver = (job: number) =>
  outcome.trips.flat().flatMap(({ stops }) => stops.filter((stop) => stop.job === job))[0]!.handOverDay;

it('where every site was told its own day nobody waits longer', () => {
  const told = sinceTold(problem, outcome, (siteId) =>
    siteId === 'J2' ? null : firstDay + handOver(Number(siteId.slice(1))),
  );
  expect(told).toEqual({
    ...{ waiting_personDays: 0, later_count: 0, sooner_count: 0, untold_count: 0 },
    ...{ lastToldDay: Math.max(handOver(0), handOver(1)), otherwise: [] },
  });
});

it('sites wait as much longer as they are later than they were told, people times days; what was told nothing is in no sum', () => {
  // Told six days before it is, and before the first day that is planned; told three days after it is; told nothing.
  const days: Record<string, number> = { J0: firstDay + handOver(0) - 6, J1: firstDay + handOver(1) + 3 };
  expect(sinceTold(problem, outcome, (siteId) => days[siteId])).toEqual({
    ...{ waiting_personDays: 100 * 6 - 40 * 3, later_count: 1, sooner_count: 1, untold_count: 1 },
    lastToldDay: handOver(1) + 3,
    otherwise: [
      { job: 0, toldDay: handOver(0) - 6, newDay: handOver(0) },
      { job: 1, toldDay: handOver(1) + 3, newDay: handOver(1) },
    ],
  });
});

it('a site that is in no trip any more waits to the last day looked at', () => {
  const told = sinceTold(problem, outcome, (siteId) => (siteId === 'J2' ? firstDay + 10 : undefined));
  expect(told).toMatchObject({ waiting_personDays: 7 * (horizon_days - 10), later_count: 1, untold_count: 2 });
  expect(told.otherwise).toEqual([{ job: 2, toldDay: 10, newDay: null }]);
});

it('what a hand-over waits for rain is that of the day it was told for', () => {
  const dry = new Float64Array(366);
  dry[leapDayOf(firstDay + 10)] = 30;
  const rainy = { ...problem, jobs: problem.jobs.map((job) => ({ ...job, serviceWait_days: dry })) };
  const told = sinceTold(rainy, outcome, (siteId) => (siteId === 'J0' ? firstDay + 10 : undefined));
  // As handed over now it waits for nothing: the day is another.
  expect(handOver(0)).not.toBe(10);
  expect(told.waiting_personDays).toBe(100 * (handOver(0) - 40));
});
