import { expect, it } from 'vitest';
import { evaluatePlan } from './evaluatePlan.ts';
import { retiming } from './makeReady.ts';
import type { Job } from './problem.ts';
import { tightTrips } from './tightTrips.ts';
import { tinyJob, tinyRollout } from './tinyRollout.testing.ts';

/** One trip to one site: half a day on the way, a day of work, handed over on day 1; a week later on day 8. */
function tightOf(change: Partial<Job>, until?: number) {
  const ready = retiming(tinyRollout(1, { jobs: [{ ...tinyJob, ...change }] }));
  const plan = { trips: [[{ stops: [0], notBefore: 0, isLocked: false }]] };
  const outcome = evaluatePlan(ready, plan);
  expect(outcome.trips[0]![0]!.stops[0]!.handOverDay).toBe(1);
  return tightTrips(ready, { plan, outcome }, until);
}

it('a trip that may as well leave a week later is not tight', () => {
  expect(tightOf({})).toEqual([]);
  expect(tightOf({ finishBy: 8 })).toEqual([]);
});

it('one that would miss a date is, and one that is late already and grows later alike is not', () => {
  const [tight] = tightOf({ finishBy: 7 });
  expect(tight).toMatchObject({ crew: 0, trip: 0, later_days: 7, waits: null });
  expect(tight!.breaks).toMatchObject({ before_by: null, broken: { kind: 'late', job: 0, by: 1 } });
  expect(tightOf({ finishBy: 0 })).toEqual([]);
  // It leaves on day 0, and only trips before then are asked about.
  expect(tightOf({ finishBy: 7 }, 0)).toEqual([]);
});

it('one whose site would wait for its next opening is, once that is over two weeks longer', () => {
  const windows = (from: number) => [
    { from: 0, to: 3 },
    { from, to: 90 },
  ];
  // Work takes all of day 30, which is 29 days after day 1; the crew is away from day 7 to day 31, and may be for 14 nights.
  expect(tightOf({ windows: windows(30) })).toMatchObject([
    { breaks: { broken: { kind: 'tooLongAway', by: 10 } }, waits: { job: 0, handOverDay: 30, by_days: 29 } },
  ]);
  expect(tightOf({ windows: windows(15) })).toEqual([]);
});
