import { describe, expect, it } from 'vitest';
import { referencePathogens } from './constants.ts';
import { type DrinkingGiven, effectiveReductions, yearOfDrinking } from './yearOfDrinking.ts';

const treating = { people_factor: 1, reduction_log10: 5, untreated_fraction: 0 };
const never = { people_factor: 1, reduction_log10: 0, untreated_fraction: 1 };
/** Rotavirus by WHO's straight line, 0.1 in a litre of raw water. */
const given: DrinkingGiven = {
  raw_per_L: 0.1,
  drunk_L_per_day: 1,
  off_days: 0,
  dirtied: null,
  groups: [treating],
  pathogen: { ...referencePathogens.rotavirus, response: { form: 'exponential', perOrganism_fraction: 0.59 } },
};
const infected = (more: Partial<DrinkingGiven> = {}) => yearOfDrinking({ ...given, ...more })!.infected_fraction;
const untreated = infected({ groups: [never] });
/** Share of the gain of treatment that is lost. */
const lost = (more: Partial<DrinkingGiven>) => (infected(more) - infected()) / (untreated - infected());

describe('yearOfDrinking', () => {
  it('loses a tenth of the gain where one in ten never treats, and 0.88 where everyone drinks a tenth untreated', () => {
    expect(lost({ groups: [{ ...treating, people_factor: 9 }, never] })).toBeCloseTo(0.1, 12);
    expect(lost({ groups: [{ ...treating, untreated_fraction: 0.1 }] })).toBeCloseTo(0.884, 3);
  });

  it('makes a year of days off as bad as no treatment, and one day off worse than none', () => {
    expect(infected({ off_days: 365 })).toBe(untreated);
    expect(infected({ off_days: 1000 })).toBe(untreated);
    expect(infected({ off_days: 1 })).toBeCloseTo(1 - Math.exp(-0.59 * 0.1 * (1 + 364e-5)), 12);
  });

  it('adds what comes in after treatment, for those who treat too', () => {
    const dirtied = { growth_factor: 10, comesBack_fraction: 0.02, added_per_L: 0.001 };
    expect(infected({ dirtied })).toBeCloseTo(1 - Math.exp(-365 * 0.59 * (0.1e-4 + 0.002 + 0.001)), 12);
  });

  it('has no answer without people', () => {
    expect(yearOfDrinking({ ...given, groups: [] })).toBeNull();
    expect(yearOfDrinking({ ...given, groups: [{ ...treating, people_factor: 0 }] })).toBeNull();
  });
});

describe('effectiveReductions', () => {
  const reductions = (more: Partial<DrinkingGiven>) =>
    Object.fromEntries(
      effectiveReductions({ ...given, ...more }).map(({ mean, reduction_log10 }) => [mean, reduction_log10]),
    );

  it('are both the log reduction itself where all do the same every day', () => {
    expect(reductions({})['dose']).toBeCloseTo(5, 12);
    expect(reductions({})['risk']).toBeCloseTo(5, 9);
  });

  it('say which mean they are of: one in ten who never treats caps that of the dose at 1, that of the risk at what infects a tenth', () => {
    const groups = [
      { ...treating, people_factor: 0.9 },
      { ...never, people_factor: 0.1 },
    ];
    expect(reductions({ groups })['dose']).toBeCloseTo(-Math.log10(0.1 + 0.9e-5), 12);
    // 365 doses of x infect 0.1 of the people and a very few: x = −ln 0.9 ÷ 365 ÷ 0.59.
    expect(reductions({ groups })['risk']).toBeCloseTo(Math.log10(0.1 / (-Math.log(0.9) / 365 / 0.59)), 2);
  });

  it('are under 0 where water is made dirtier than raw, and unknown where nothing can be said', () => {
    const dirtied = { growth_factor: 1, comesBack_fraction: 0, added_per_L: 1 };
    expect(reductions({ dirtied })['dose']).toBeCloseTo(-1, 4);
    expect(reductions({ raw_per_L: 0 })).toEqual({ dose: null, risk: null });
    expect(reductions({ groups: [] })).toEqual({ dose: null, risk: null });
    expect(reductions({ raw_per_L: 1e9, groups: [never] })['risk']).toBeNull();
  });
});
