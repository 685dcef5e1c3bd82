import { expect, it } from 'vitest';
import { capitalRecovery } from './interest.ts';
import { renewalsWithin, spentPerYear } from './spending.ts';

const renewed = { kind: 'renewed', isBoughtFirst: true } as const;

it('counts renewals before the last day alone', () => {
  expect([0.1, 3, 5, 9.99, 10, 30].map((life) => renewalsWithin(life, 10))).toEqual([99, 3, 1, 1, 0, 0]);
});

it('spreads first and renewals evenly over the years', () => {
  expect(spentPerYear(renewed, 5, 20, 0)).toEqual({ first_factor: 0.05, renewals_factor: expect.closeTo(3 / 20, 14) });
  const { first_factor, renewals_factor } = spentPerYear(renewed, 5, 20, 0.06);
  const recovery = capitalRecovery(0.06, 20);
  expect(first_factor).toBe(recovery);
  expect(renewals_factor).toBeCloseTo(recovery * (1.06 ** -5 + 1.06 ** -10 + 1.06 ** -15), 14);
});

it('takes a thing whose life goes into the years for its capital recovery', () => {
  const { first_factor, renewals_factor } = spentPerYear(renewed, 4, 20, 0.06);
  expect(first_factor + renewals_factor).toBeCloseTo(capitalRecovery(0.06, 4), 13);
});

it('leaves a level amount as it is', () => {
  const yearly = { kind: 'yearly', isBoughtFirst: true } as const;
  expect(spentPerYear(yearly, 3, 20, 0.3)).toEqual({ first_factor: 1, renewals_factor: 0 });
});
