import { expect, it } from 'vitest';
import { capitalRecovery, equivalentAnnualCost, levelPresentValue, presentValue, realInterest } from './interest.ts';

it('recovers capital, without interest in equal parts', () => {
  expect(capitalRecovery(0, 8)).toBe(0.125);
  // By hand: 0.08 × 1.08² ÷ (1.08² − 1) = 0.093312 ÷ 0.1664.
  expect(capitalRecovery(0.08, 2)).toBeCloseTo(0.093312 / 0.1664, 12);
  // Money that loses more than it earns: 1,000 paid back by less than two halves.
  expect(capitalRecovery(-0.1, 2)).toBeCloseTo(0.81 / 1.9, 12);
});

it('stays exact where interest is next to nothing', () => {
  expect(capitalRecovery(1e-12, 20) * 20 - 1).toBeCloseTo(10.5e-12, 14);
});

it('is worth at the start what the yearly parts pay back', () => {
  const flows = [1, 2, 3].map((after_years) => ({ amount: capitalRecovery(0.07, 3), after_years }));
  expect(presentValue(flows, 0.07)).toBeCloseTo(1, 12);
  expect(levelPresentValue(0.07, 3) * capitalRecovery(0.07, 3)).toBeCloseTo(1, 12);
});

it('takes inflation out of interest', () => {
  expect(realInterest(0.12, 0.05)).toBeCloseTo(1 / 15, 12);
  expect(realInterest(0.05, 0.05)).toBeCloseTo(0, 15);
});

it('adds what is yearly to capital by its own life', () => {
  const capital = [
    { amount: 100, life_years: 4 },
    { amount: 60, life_years: 2 },
  ];
  expect(equivalentAnnualCost(capital, 5, 0)).toBe(60);
  expect(equivalentAnnualCost([], 5, 0.3)).toBe(5);
});
