import {
  australianPathogens,
  exactBetaPoisson_fraction,
  infection_fraction,
  lowDoseInfection_fraction,
  meanReduction_log10,
  neededReduction_log10,
  performanceTier_count,
  type ReferencePathogen,
  reductionWithDaysOff_log10,
  referencePathogens,
  yearOfDrinking,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const numRuns = process.env['EAVEWELL_SOAK'] ? 2_000 : 60;

/** 1 − ∫ e^(−dose · p) of the beta distribution, by the trapezium rule over the log odds of p: slow, and none of our series. */
function byIntegral(dose: number, alpha: number, beta: number): number {
  const step = 0.05;
  let infected = 0;
  let all = 0;
  for (let x = -45 / alpha; x <= 45 / beta; x += step) {
    // ln p and ln (1 − p) without losing either end.
    const logP = x > 0 ? -Math.log1p(Math.exp(-x)) : x - Math.log1p(Math.exp(x));
    const weight = Math.exp(alpha * logP + beta * (logP - x));
    all += weight;
    infected -= weight * Math.expm1(-dose * Math.exp(logP));
  }
  return infected / all;
}

describe('the exact beta-Poisson', () => {
  it('is its integral, on either side of the dose where the series changes', () => {
    const shape = fc.double({ min: -1.5, max: 1, noNaN: true }).map((power) => 10 ** power);
    const dose = fc.double({ min: -4, max: 3.5, noNaN: true }).map((power) => 10 ** power);
    fc.assert(
      fc.property(dose, shape, shape, (d, alpha, beta) => {
        const [fast, slow] = [exactBetaPoisson_fraction(d, alpha, beta), byIntegral(d, alpha, beta)];
        return Math.abs(fast / slow - 1) <= 1e-10;
      }),
      { numRuns, seed: 20261126 },
    );
  });

  it('is the alternating series where that keeps its digits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.double({ min: 0.05, max: 5, noNaN: true }),
        fc.double({ min: 0.05, max: 5, noNaN: true }),
        (d, alpha, beta) => {
          let term = 1;
          let sum = 1;
          for (let k = 0; k < 80; k++) {
            term *= ((alpha + k) / (alpha + beta + k)) * (-d / (k + 1));
            sum += term;
          }
          return Math.abs(exactBetaPoisson_fraction(d, alpha, beta) - (1 - sum)) <= 1e-12;
        },
      ),
      { numRuns: 500, seed: 20261126 },
    );
  });
});

describe('a year of drinking', () => {
  /** Person by person of ten, day by day, by plain multiplication. */
  function dayByDay(
    raw: number,
    litres: number,
    left: number,
    off: number,
    added: number,
    untreated: readonly number[],
    germ: ReferencePathogen,
  ): number {
    let burden = 0;
    for (const share of untreated) {
      let spared = 1;
      for (let day = 0; day < 365; day++) {
        const skipped = day < off ? 1 : share;
        spared *= 1 - infection_fraction(litres * (raw * (skipped + (1 - skipped) * left) + added), germ.response);
      }
      burden += (1 - spared) * germ.illness_fraction * germ.burden_DALY_per_case * germ.susceptible_fraction;
    }
    return burden / untreated.length;
  }

  it('is that of its people one by one, day by day', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        fc.integer({ min: 0, max: 365 }),
        share,
        fc.array(share, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(...Object.values(referencePathogens)),
        (rawPower, reduction_log10, off_days, added, untreated, germ) => {
          const raw_per_L = 10 ** rawPower;
          const fast = yearOfDrinking({
            raw_per_L,
            drunk_L_per_day: 1.5,
            off_days,
            dirtied: { growth_factor: 1, comesBack_fraction: 0, added_per_L: added },
            groups: untreated.map((untreated_fraction) => ({ people_factor: 3, reduction_log10, untreated_fraction })),
            pathogen: germ,
          })!.burden_DALY_per_person_per_year;
          const slow = dayByDay(raw_per_L, 1.5, 10 ** -reduction_log10, off_days, added, untreated, germ);
          return Math.abs(fast / slow - 1) <= 1e-9;
        },
      ),
      { numRuns: 300, seed: 20261126 },
    );
  });
});

// Worked out from published parameters and formulas elsewhere (mpmath and plain arithmetic): they hold the program to itself, and prove no more than that.
describe('derived figures', () => {
  it('doses of 1 and 10 organisms', () => {
    const giardia = { form: 'exponential', perOrganism_fraction: 0.0199 } as const;
    const hominis = { form: 'exponential', perOrganism_fraction: 0.0572 } as const;
    for (const [response, one, ten] of [
      [hominis, 0.0555948, 0.435604],
      [giardia, 0.0197033, 0.18045],
      [referencePathogens.campylobacter.response, 0.0177862, 0.114739],
      [referencePathogens.rotavirus.response, 0.263372, 0.554696],
    ] as const) {
      expect(infection_fraction(1, response) / one).toBeCloseTo(1, 5);
      expect(infection_fraction(10, response) / ten).toBeCloseTo(1, 5);
    }
  });

  it('the exact beta-Poisson of rotavirus and norovirus, and its low-dose limit', () => {
    const doses = [0.01, 0.1, 1, 10, 100];
    for (const [alpha, beta, wanted] of [
      [0.167, 0.191, [0.00464482, 0.0447037, 0.315347, 0.643308, 0.760537]],
      [0.04, 0.055, [0.0041906, 0.0401691, 0.272756, 0.479391, 0.527057]],
    ] as const)
      for (const [index, dose] of doses.entries())
        expect(exactBetaPoisson_fraction(dose, alpha, beta) / wanted[index]!).toBeCloseTo(1, 5);
    expect(lowDoseInfection_fraction(1, 0.167, 0.191)).toBeCloseTo(0.3728, 4);
  });

  it('log reduction needed, by straight lines: three germs of WHO, three of Australia for one organism in a litre', () => {
    const { cryptosporidium, campylobacter, rotavirus } = referencePathogens;
    for (const [pathogen, raw_per_L, perOrganism_fraction, wanted] of [
      [cryptosporidium, 10, 0.2, 5.884],
      [campylobacter, 100, 0.019, 5.981],
      [rotavirus, 10, 0.59, 5.956],
      [australianPathogens.cryptosporidium, 1, 0.2, 4.9389],
      [australianPathogens.campylobacter, 1, 0.145 / 7.58, 4.6922],
      [australianPathogens.norovirus, 1, 0.0044 / 0.0064, 5.0005],
    ] as const) {
      const straight = { ...pathogen, response: { form: 'exponential', perOrganism_fraction } } as const;
      expect(Math.abs(neededReduction_log10(raw_per_L, 1, straight) - wanted)).toBeLessThan(0.001);
      // The responses as they are bend so little at these doses that it makes no difference but for WHO's rounded slopes.
      expect(Math.abs(neededReduction_log10(raw_per_L, 1, pathogen) - wanted)).toBeLessThan(0.006);
    }
  });

  it('log reductions of shares left untreated and of hours without the barrier', () => {
    for (const [reduction_log10, untreated, wanted] of [
      [6, 0.1, 1.0],
      [6, 0.01, 2.0],
      [6, 0.001, 2.9996],
      [4, 0.01, 1.9957],
      [4, 0.05, 1.3002],
      [3, 0.001, 2.6992],
    ] as const) {
      const shares = [
        { share_factor: untreated, reduction_log10: 0 },
        { share_factor: 1 - untreated, reduction_log10 },
      ];
      expect(Math.abs(meanReduction_log10(shares)! - wanted)).toBeLessThan(1e-4);
    }
    for (const [hours, wanted] of [
      [1, 3.9387],
      [8.76, 2.9996],
      [24, 2.5621],
    ] as const)
      expect(Math.abs(reductionWithDaysOff_log10(6, hours / 24) - wanted)).toBeLessThan(1e-4);
  });

  it('gain of treatment that is lost: 10, 22 and 88 in a hundred where all drink a tenth untreated, 10 where a tenth of the people do', () => {
    const germ: ReferencePathogen = {
      ...referencePathogens.rotavirus,
      response: { form: 'exponential', perOrganism_fraction: 0.59 },
    };
    for (const [raw_per_L, wanted] of [
      [0.0001, 10.1],
      [0.01, 21.9],
      [0.1, 88.4],
    ] as const) {
      const year = (reduction_log10: number, groups: readonly (readonly [number, number])[]) =>
        yearOfDrinking({
          raw_per_L,
          drunk_L_per_day: 1,
          off_days: 0,
          dirtied: null,
          groups: groups.map(([people_factor, untreated_fraction]) => ({
            ...{ people_factor, reduction_log10, untreated_fraction },
          })),
          pathogen: germ,
        })!.infected_fraction;
      const [none, full] = [year(0, [[1, 0]]), year(5, [[1, 0]])];
      const lost = (skipped: number) => (100 * (skipped - full)) / (none - full);
      expect(Math.abs(lost(year(5, [[1, 0.1]])) - wanted)).toBeLessThan(0.1);
      expect(
        lost(
          year(5, [
            [0.9, 0],
            [0.1, 1],
          ]),
        ),
      ).toBeCloseTo(10, 9);
    }
  });

  it('stars', () => {
    const triples = [
      [6, 3, 6, 2],
      [6, 5.2, 4, 3],
      [3, 1, 4, 1],
      [4, 5, 3.9, 2],
      [1.9, 3, 2, 1],
      [1, 1, 6, 0],
    ] as const;
    for (const [bacteria_log10, viruses_log10, protozoa_log10, stars] of triples)
      expect(performanceTier_count({ bacteria_log10, viruses_log10, protozoa_log10 })).toBe(stars);
  });
});
