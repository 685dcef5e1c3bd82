import {
  burdenRange,
  type DrinkingGiven,
  doseThatInfects_organisms,
  exactBetaPoisson_fraction,
  infection_fraction,
  lowDoseInfection_fraction,
  neededReduction_log10,
  referencePathogens,
  valueWithin,
  yearOfDrinking,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const numRuns = process.env['EAVEWELL_SOAK'] ? 20_000 : 1_000;
const settings = { numRuns, seed: 20261126 };
const fewer = { ...settings, numRuns: numRuns / 10 };
const hair = 1e-12;

const log10 = fc.double({ min: 0, max: 9, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const raw = fc.double({ min: -6, max: 8, noNaN: true }).map((power) => 10 ** power);
const litres = fc.double({ min: 0.1, max: 5, noNaN: true });
const shape = fc.double({ min: -3, max: 2, noNaN: true }).map((power) => 10 ** power);
const pathogen = fc.constantFrom(...Object.values(referencePathogens));

describe('a dose', () => {
  it('never infects more by the exact beta-Poisson than by its low-dose limit, and meets it where it is small', () => {
    fc.assert(
      fc.property(raw, shape, shape, (dose, alpha, beta) => {
        const exact = exactBetaPoisson_fraction(dose, alpha, beta);
        const limit = lowDoseInfection_fraction(dose, alpha, beta);
        const small = lowDoseInfection_fraction(1e-9, alpha, beta);
        const isNear = Math.abs(exactBetaPoisson_fraction(1e-9, alpha, beta) / small - 1) <= 1e-8;
        return exact >= 0 && exact <= limit * (1 + 1e-11) && isNear;
      }),
      fewer,
    );
  });

  it('never infects fewer for being larger, whichever the response', () => {
    fc.assert(
      fc.property(raw, raw, shape, shape, (a, b, alpha, beta) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)];
        return (['betaPoisson', 'exactBetaPoisson'] as const).every((form) => {
          const infected = (dose: number) => infection_fraction(dose, { form, alpha_shape: alpha, beta_shape: beta });
          return infected(large) >= infected(small) * (1 - 1e-11) && infected(large) <= 1;
        });
      }),
      fewer,
    );
  });

  it('infects as many as it is the dose of', () => {
    fc.assert(
      fc.property(pathogen, fc.double({ min: 1e-9, max: 0.95, noNaN: true }), ({ response }, infected) => {
        const got = infection_fraction(doseThatInfects_organisms(infected, response), response);
        return Math.abs(got / infected - 1) <= 1e-9;
      }),
      settings,
    );
  });
});

const groups = fc.array(
  fc.record({
    people_factor: fc.double({ min: 0.01, max: 100, noNaN: true }),
    reduction_log10: log10,
    untreated_fraction: share,
  }),
  { minLength: 1, maxLength: 4 },
);
const drinking: fc.Arbitrary<DrinkingGiven> = fc.record({
  raw_per_L: raw,
  drunk_L_per_day: litres,
  off_days: fc.double({ min: 0, max: 365, noNaN: true }),
  dirtied: fc.option(
    fc.record({
      growth_factor: fc.double({ min: 1, max: 100, noNaN: true }),
      comesBack_fraction: share,
      added_per_L: fc.oneof(fc.constant(0), raw),
    }),
  ),
  groups,
  pathogen,
});
const better = (given: DrinkingGiven, more_log10: number): DrinkingGiven => ({
  ...given,
  groups: given.groups.map((group) => ({ ...group, reduction_log10: group.reduction_log10 + more_log10 })),
});
const burden = (given: DrinkingGiven) => yearOfDrinking(given)!.burden_DALY_per_person_per_year;
const neverWorse = (worse: DrinkingGiven, than: DrinkingGiven) => burden(worse) >= burden(than) * (1 - 1e-9);

describe('a year of drinking', () => {
  it('is never worse with more log reduction', () => {
    fc.assert(
      fc.property(drinking, log10, (given, more) => neverWorse(given, better(given, more))),
      settings,
    );
  });

  it('is never better when more of the water is not treated, or when more people skip', () => {
    fc.assert(
      fc.property(drinking, share, (given, skipped) => {
        const skipping = given.groups.map((group) => ({
          ...group,
          untreated_fraction: group.untreated_fraction + (1 - group.untreated_fraction) * skipped,
        }));
        const joined = [
          ...given.groups.map((group) => ({ ...group, people_factor: group.people_factor * (1 - skipped) })),
          ...given.groups.map((group) => ({
            ...group,
            people_factor: group.people_factor * skipped,
            untreated_fraction: 1,
          })),
        ];
        return neverWorse({ ...given, groups: skipping }, given) && neverWorse({ ...given, groups: joined }, given);
      }),
      settings,
    );
  });

  it('is never better with dirtier raw water, more litres, a day off more or more dirt after treatment', () => {
    fc.assert(
      fc.property(drinking, fc.double({ min: 1, max: 100, noNaN: true }), (given, times) =>
        [
          { raw_per_L: given.raw_per_L * times },
          { drunk_L_per_day: given.drunk_L_per_day * times },
          { off_days: given.off_days + times },
          {
            dirtied: {
              growth_factor: (given.dirtied?.growth_factor ?? 1) * times,
              comesBack_fraction: (given.dirtied?.comesBack_fraction ?? 0) + times,
              added_per_L: (given.dirtied?.added_per_L ?? 0) + times,
            },
          },
        ].every((more) => neverWorse({ ...given, ...more }, given)),
      ),
      settings,
    );
  });

  it('lies between that of its best and of its worst group, whatever their sizes', () => {
    fc.assert(
      fc.property(drinking, (given) => {
        const each = given.groups.map((group) => burden({ ...given, groups: [group] }));
        const all = burden(given);
        return all >= Math.min(...each) * (1 - 1e-9) && all <= Math.max(...each) * (1 + 1e-9);
      }),
      settings,
    );
  });

  it('is borne just with the log reduction needed', () => {
    fc.assert(
      fc.property(raw, litres, pathogen, (raw_per_L, drunk_L_per_day, germ) => {
        const needed = neededReduction_log10(raw_per_L, drunk_L_per_day, germ);
        const year = burden({
          raw_per_L,
          drunk_L_per_day,
          off_days: 0,
          dirtied: null,
          groups: [{ people_factor: 1, reduction_log10: needed, untreated_fraction: 0 }],
          pathogen: germ,
        });
        return needed > 0 ? Math.abs(year / 1e-6 - 1) <= 1e-8 : year <= 1e-6 * (1 + 1e-9);
      }),
      settings,
    );
  });
});

describe('a range', () => {
  const range = fc
    .tuple(raw, raw, raw, fc.constantFrom('all', 'fromNothing', 'noLow', 'noHigh'))
    .map(([a, b, c, kind]) => {
      const [low, typical, high] = [a, b, c].sort((x, y) => x - y);
      return {
        low_per_L: kind === 'noLow' ? null : kind === 'fromNothing' ? 0 : low!,
        typical_per_L: typical!,
        high_per_L: kind === 'noHigh' ? null : high!,
      };
    });
  const deviations = fc.double({ min: -4, max: 4, noNaN: true });

  it('never falls with the deviations, and is the middle at none', () => {
    fc.assert(
      fc.property(range, deviations, deviations, (of, a, b) => {
        const at = (z: number) => valueWithin(of.low_per_L, of.typical_per_L, of.high_per_L, z);
        return at(0) === of.typical_per_L && at(Math.max(a, b)) >= at(Math.min(a, b)) * (1 - hair);
      }),
      settings,
    );
  });

  it('of the burden is never worse with more log reduction, by the same seed, whatever else', () => {
    const drunk = { usual_L_per_day: 1, high_L_per_day: 2 };
    fc.assert(
      fc.property(drinking, range, log10, fc.integer({ min: 1, max: 3 }), (given, of, more, seed) => {
        const before = burdenRange(given, of, drunk, seed, 50)!;
        const after = burdenRange(better(given, more), of, drunk, seed, 50)!;
        return (Object.keys(before) as (keyof typeof before)[]).every(
          (field) => Number.isFinite(after[field]) && after[field] <= before[field] * (1 + 1e-9),
        );
      }),
      fewer,
    );
  });
});
