import { expect, it } from 'vitest';
import { filledDay, measured, unknownDay } from '../../kernel/index.ts';
import { drySpells } from './drySpells.ts';

const record = {
  gaugeId: 'G1',
  firstDay: 100,
  rain_mm: Float64Array.of(0, 0.9, 1, 0, 0, 0, 0, 5, 0),
  state: new Uint8Array(9).fill(measured),
};

it('takes days under 1 mm as dry and 1 mm as wet', () => {
  expect(drySpells(record)).toEqual([
    { from: 100, to: 101, days: 2 },
    { from: 103, to: 106, days: 4 },
    { from: 108, to: 108, days: 1 },
  ]);
});

it('breaks a spell at an unknown day and not at a filled one', () => {
  const state = record.state.slice();
  state[4] = unknownDay;
  state[6] = filledDay;
  expect(drySpells({ ...record, state }).map(({ days }) => days)).toEqual([2, 1, 2, 1]);
});
