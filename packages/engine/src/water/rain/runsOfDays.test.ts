import { expect, it } from 'vitest';
import { runsOfDays } from './runsOfDays.ts';

it('finds runs at both ends and in the middle', () => {
  const wanted = [true, true, false, true, false, false, true];
  const runs = [
    { from: 0, to: 2 },
    { from: 3, to: 4 },
    { from: 6, to: 7 },
  ];
  expect(runsOfDays(wanted.length, (day) => wanted[day]!)).toEqual(runs);
});

it('finds none where there is none', () => {
  expect(runsOfDays(0, () => true)).toEqual([]);
  expect(runsOfDays(3, () => false)).toEqual([]);
});
