import { expect, it } from 'vitest';
import { evaluatePlan } from './evaluatePlan.ts';
import { namedAfter } from './namedAfter.ts';
import { tinyJob, tinyRollout } from './tinyRollout.testing.ts';
import { tripChanges } from './tripChanges.ts';

const one = tinyRollout(4, { jobs: [0, 1, 2, 3].map((at) => ({ ...tinyJob, siteId: `J${at}` })) });
const problem = { ...one, crews: [one.crews[0]!, { ...one.crews[0]!, crewId: 'other' }] };
const trip = (...stops: number[]) => ({ stops, notBefore: 0, isLocked: false });
const timed = (trips: ReturnType<typeof trip>[][], tripIds: string[][]) => ({
  ...{ plan: { trips }, tripIds },
  outcome: evaluatePlan(problem, { trips }),
});
const before = timed([[trip(0, 1), trip(2)], [trip(3)]], [['T1', 'T2'], ['T3']]);

it('a plan compared with itself changes no trip, and keeps the names of its trips', () => {
  expect(tripChanges(before, before)).toEqual([]);
  expect(namedAfter(before.plan, before).tripIds).toEqual(before.tripIds);
});

it('tells trips that are new, gone, with another crew, to other sites or on another day, and no other', () => {
  // The second trip goes first and with the other crew; the third is taken over by a new one; the first is as it was but for its day.
  const after = timed([[trip(3, 2)], [trip(0), trip(1)]], [['T3'], ['T1', 'new']]);
  const changes = tripChanges(before, after);
  expect(
    changes.map(({ tripId, crewBefore, crewAfter, hasOtherStops }) => [tripId, crewBefore, crewAfter, hasOtherStops]),
  ).toEqual([
    ['T3', 1, 0, true],
    ['T1', 0, 1, true],
    ['new', null, 1, true],
    ['T2', 0, null, true],
  ]);
  const moved = timed([[{ ...trip(0, 1), notBefore: 9 }, trip(2)], [trip(3)]], before.tripIds);
  const [first, second] = tripChanges(before, moved);
  expect(first).toEqual({
    tripId: 'T1',
    crewBefore: 0,
    crewAfter: 0,
    leavesBefore: 0,
    leavesAfter: 9,
    hasOtherStops: false,
  });
  expect(second).toMatchObject({ tripId: 'T2', hasOtherStops: false });
  expect(second!.leavesAfter! - second!.leavesBefore!).toBe(9);
});
