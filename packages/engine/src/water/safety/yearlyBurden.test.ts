import { describe, expect, it } from 'vitest';
import { referencePathogens } from './constants.ts';
import { infection_fraction } from './doseResponse.ts';
import { neededReduction_log10, yearlyBurden, yearlyInfection_fraction } from './yearlyBurden.ts';

describe('yearlyInfection_fraction', () => {
  it('is one less the chance to come through every day', () => {
    expect(yearlyInfection_fraction([{ days: 2, infected_fraction: 0.5 }])).toBeCloseTo(0.75, 12);
    const stretches = [
      { days: 1, infected_fraction: 0.5 },
      { days: 2, infected_fraction: 0.1 },
    ];
    expect(yearlyInfection_fraction(stretches)).toBeCloseTo(1 - 0.5 * 0.81, 12);
  });

  it('keeps the digits of small shares: 365 times one in a million million', () => {
    expect(yearlyInfection_fraction([{ days: 365, infected_fraction: 1e-12 }]) / 3.65e-10).toBeCloseTo(1, 9);
  });

  it('is everybody after a day that infects everybody, and such a day that never comes counts for nothing', () => {
    expect(yearlyInfection_fraction([{ days: 1, infected_fraction: 1 }])).toBe(1);
    expect(yearlyInfection_fraction([{ days: 0, infected_fraction: 1 }])).toBe(0);
    expect(yearlyInfection_fraction([])).toBe(0);
  });
});

describe('yearlyBurden', () => {
  it('is ill × burden of a case × susceptible', () => {
    const { ill_fraction, burden_DALY_per_person_per_year } = yearlyBurden(0.5, referencePathogens.rotavirus);
    expect(ill_fraction).toBe(0.25);
    expect(burden_DALY_per_person_per_year).toBeCloseTo(0.25 * 0.014 * 0.06, 15);
  });
});

describe('neededReduction_log10', () => {
  it('brings the burden to the target, whatever the raw water', () => {
    for (const pathogen of Object.values(referencePathogens))
      for (const raw_per_L of [0.01, 1, 1e3, 1e6]) {
        const needed = neededReduction_log10(raw_per_L, 1.4, pathogen, 1e-6);
        const dose = 1.4 * raw_per_L * 10 ** -needed;
        const year = yearlyInfection_fraction([
          { days: 365, infected_fraction: infection_fraction(dose, pathogen.response) },
        ]);
        const { burden_DALY_per_person_per_year } = yearlyBurden(year, pathogen);
        if (needed > 0) expect(burden_DALY_per_person_per_year / 1e-6).toBeCloseTo(1, 8);
        else expect(burden_DALY_per_person_per_year).toBeLessThanOrEqual(1e-6);
      }
  });

  it('is 0 where there is nothing in the water, nobody drinks, or the target is met when all are infected', () => {
    const { cryptosporidium } = referencePathogens;
    expect(neededReduction_log10(0, 1, cryptosporidium)).toBe(0);
    expect(neededReduction_log10(10, 0, cryptosporidium)).toBe(0);
    expect(neededReduction_log10(1e9, 1, cryptosporidium, 1)).toBe(0);
    expect(neededReduction_log10(1e-9, 1, cryptosporidium)).toBe(0);
  });
});
