import { describe, expect, it } from 'vitest';
import { chanceOfTimes_fraction, returnPeriodAtRisk_years, risk_fraction } from './risk.ts';

describe('risk', () => {
  it('is one less the chance that it never comes', () => {
    for (const [period, years] of [
      [20, 20],
      [2, 5],
      [1000, 3],
    ] as const)
      expect(risk_fraction(period, years)).toBeCloseTo(1 - chanceOfTimes_fraction(period, years, 0), 12);
  });

  it('of what comes every year is sure', () => {
    expect(risk_fraction(1, 3)).toBe(1);
    expect(risk_fraction(1, 0)).toBe(0);
    expect(risk_fraction(20, 0)).toBe(0);
  });

  it('turned round gives the return period back', () => {
    expect(returnPeriodAtRisk_years(risk_fraction(37, 12), 12)).toBeCloseTo(37, 9);
  });

  it('the chances of all counts add up to 1', () => {
    const sum = Array.from({ length: 31 }, (_, times) => chanceOfTimes_fraction(7, 30, times)).reduce((a, b) => a + b);
    expect(sum).toBeCloseTo(1, 12);
  });
});
