import { expect, it } from 'vitest';
import { type TankFacts, unmeasuredTank } from './buildingFacts.ts';
import { tankGroups } from './tankGroups.ts';

const tank = (tankId: string, joinedTo: string | null = null): TankFacts => ({
  ...unmeasuredTank,
  tankId,
  nominal_L: 1000,

  joinedTo,
});
const ids = (tanks: TankFacts[]) => tankGroups(tanks).map(({ tankIds }) => tankIds);

it('joins tanks straight or through others, whichever names the other', () => {
  const tanks = [tank('T4', 'T2'), tank('T1'), tank('T2', 'T3'), tank('T3'), tank('T5', 'T1')];
  expect(ids(tanks)).toEqual([
    ['T2', 'T3', 'T4'],
    ['T1', 'T5'],
  ]);
  expect(ids([...tanks].reverse())).toEqual([
    ['T1', 'T5'],
    ['T2', 'T3', 'T4'],
  ]);
  expect(ids([tank('T1', 'T2'), tank('T2', 'T1')])).toEqual([['T1', 'T2']]);
  expect(ids([tank('T1'), tank('T2')])).toEqual([['T1'], ['T2']]);
});
