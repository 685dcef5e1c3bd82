import { expect, it } from 'vitest';
import { seededDice } from '../../../kernel/index.ts';
import {
  lognormalOfMean,
  lognormalOfShares,
  quantileRanks,
  spreadDraw,
  spreadMoments,
  spreadOf,
  spreadQuantile,
} from './index.ts';

it('is fixed where the ends meet, and a likely value outside is moved to the nearer end', () => {
  expect(spreadOf({ low: 3, likely: 3, high: 3 }, 'pert')).toEqual({ kind: 'fixed', value: 3 });
  expect(spreadOf({ low: 2, likely: 9, high: 4 }, 'triangular')).toEqual({
    kind: 'triangular',
    low: 2,
    likely: 4,
    high: 4,
  });
  expect(spreadOf({ low: 4, likely: 3, high: 2 }, 'triangular')).toMatchObject({ low: 2, likely: 3, high: 4 });
  expect(lognormalOfMean(3, 0)).toEqual({ kind: 'fixed', value: 3 });
  expect(lognormalOfShares(3, 3)).toEqual({ kind: 'fixed', value: 3 });
});

it('never draws outside its ends, and its quantiles end there', () => {
  const dice = seededDice(1);
  for (const kind of ['pert', 'triangular'] as const)
    for (const likely of [2, 3, 8]) {
      const spread = spreadOf({ low: 2, likely, high: 8 }, kind);
      for (let draw = 0; draw < 500; draw++) {
        const value = spreadDraw(spread, dice);
        expect(value >= 2 && value <= 8).toBe(true);
      }
      expect(spreadQuantile(spread, 1e-20)).toBeLessThan(2.01);
      expect(spreadMoments(spread).mean).toBeGreaterThan(2);
    }
});

it('ranks stay within what there is', () => {
  expect(quantileRanks(1, 0.9)).toEqual({ rank: 1, from: 1, to: 1 });
  expect(quantileRanks(5, 0.1)).toEqual({ rank: 1, from: 1, to: 2 });
  for (const count of [3, 10, 77, 5000])
    for (const p of [0.1, 0.5, 0.9]) {
      const { rank, from, to } = quantileRanks(count, p);
      expect(1 <= from && from <= rank && rank <= to && to <= count).toBe(true);
    }
});
