import { expect, it } from 'vitest';
import { filledDay, measured, neighbourDay, unknownDay } from '../../kernel/index.ts';
import { longestDryRunByYear } from './longestDryRunByYear.ts';

const record = {
  gaugeId: 'G1',
  firstDay: 100,
  rain_mm: Float64Array.of(0, 0.9, 1, 0, 0, 0, 0, 5, 0),
  state: new Uint8Array(9).fill(measured),
};

const years = [
  { from: 0, to: 5 },
  { from: 5, to: 9 },
];

it('cuts the longest dry run at the end of the year', () => {
  expect(longestDryRunByYear(record, years)).toEqual([2, 2]);
});

it('says nothing of a year with a day not measured', () => {
  for (const how of [unknownDay, filledDay]) {
    const state = record.state.slice();
    state[6] = how;
    expect(longestDryRunByYear({ ...record, state }, years)).toEqual([2, null]);
  }
});

it('counts a filled day as it was filled where that is asked, and still nothing unknown', () => {
  const state = record.state.slice();
  state[6] = filledDay;
  state[8] = neighbourDay;
  expect(longestDryRunByYear({ ...record, state }, years, 'filledToo')).toEqual([2, 2]);
  state[5] = unknownDay;
  expect(longestDryRunByYear({ ...record, state }, years, 'filledToo')).toEqual([2, null]);
});
