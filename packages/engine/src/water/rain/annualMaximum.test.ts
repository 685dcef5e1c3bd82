import { expect, it } from 'vitest';
import { filledDay, measured, unknownDay } from '../../kernel/index.ts';
import { annualMaximum_mm } from './annualMaximum.ts';

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

it('finds the wettest day of each year', () => {
  expect(annualMaximum_mm(record, years)).toEqual([1, 5]);
});

it('says nothing of a year with a day not measured', () => {
  for (const how of [unknownDay, filledDay]) {
    const state = record.state.slice();
    state[6] = how;
    expect(annualMaximum_mm({ ...record, state }, years)).toEqual([1, null]);
  }
});
