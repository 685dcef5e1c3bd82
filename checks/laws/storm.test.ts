import {
  chanceOfTimes_fraction,
  gevByLikelihood,
  gevByLMoments,
  gumbelByLMoments,
  gumbelByMoments,
  gumbelChow,
  limitsOfStorms_mm,
  lMoments,
  maximumOnceIn_mm,
  reducedMoments,
  returnPeriodAtRisk_years,
  returnPeriodOf_years,
  risk_fraction,
  sampleMoments,
  stormDistribution,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const runs = process.env['EAVEWELL_SOAK'] ? 10_000 : 500;
const settings = { numRuns: runs, seed: 20261126 };

/** Maxima as they come from some distribution with a heavy or a light tail. */
const maxima = fc
  .tuple(
    fc.double({ min: -0.4, max: 0.3, noNaN: true }),
    fc.array(fc.double({ min: 0.001, max: 0.999, noNaN: true }), { minLength: 4, maxLength: 60 }),
  )
  .map(([shape, shares]) =>
    shares.map((share) => 50 + maximumOnceIn_mm({ location_mm: 60, scale_mm: 18, shape }, 1 / share)),
  );
const periods = fc.tuple(
  fc.double({ min: 1.01, max: 1000, noNaN: true }),
  fc.double({ min: 1.01, max: 1000, noNaN: true }),
);
const near = (a: number, b: number, within = 1e-9) => Math.abs(a - b) <= within * (1 + Math.abs(b));

/** The ways a distribution is fitted, of a list of maxima. */
const fits = {
  gevByLMoments,
  gumbelByLMoments,
  stormDistribution,
  gumbelByMoments: (values: readonly number[]) => {
    const moments = sampleMoments(values);
    return moments && gumbelByMoments(moments);
  },
  gumbelChow: (values: readonly number[]) => {
    const moments = sampleMoments(values);
    return moments && gumbelChow(moments, values.length);
  },
};

describe.each(Object.entries(fits))('%s', (_, fitted) => {
  it('the order of the maxima changes nothing', () => {
    fc.assert(
      fc.property(maxima, fc.nat(), (values, turn) => {
        const at = turn % values.length;
        const other = [...values.slice(at), ...values.slice(0, at)].reverse();
        const [one, two] = [fitted(values), fitted(other)];
        if (!one || !two) return one === two;
        return near(two.location_mm, one.location_mm) && near(two.scale_mm, one.scale_mm) && near(two.shape, one.shape);
      }),
      settings,
    );
  });

  it('maxima so many times as large have location, scale and every storm so many times as large, and the same shape', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        maxima,
        fc.constantFrom(0.5, 2, 4, 1024),
        fc.double({ min: 1.01, max: 1000, noNaN: true }),
        (values, times, period) => {
          const [one, two] = [fitted(values), fitted(values.map((value) => value * times))];
          if (!one || !two) return one === two;
          compared++;
          return (
            near(two.location_mm, times * one.location_mm) &&
            near(two.scale_mm, times * one.scale_mm) &&
            near(two.shape, one.shape) &&
            near(maximumOnceIn_mm(two, period), times * maximumOnceIn_mm(one, period))
          );
        },
      ),
      settings,
    );
    expect(compared).toBeGreaterThan(0.9 * runs);
  });

  it('a rarer storm is never smaller, and its return period comes back', () => {
    let compared = 0;
    fc.assert(
      fc.property(maxima, periods, (values, [a, b]) => {
        const found = fitted(values);
        if (!found) return true;
        const [common, rare] = [Math.min(a, b), Math.max(a, b)];
        const [small, large] = [maximumOnceIn_mm(found, common), maximumOnceIn_mm(found, rare)];
        const back = returnPeriodOf_years(found, large);
        // Near a greatest value many return periods share their digits.
        if (back !== null && found.shape <= 0.2) {
          compared++;
          if (!near(back, rare, 1e-5)) return false;
        }
        return large >= small;
      }),
      settings,
    );
    expect(compared).toBeGreaterThan(0.1 * runs);
  });
});

it('a storm is taken from a distribution without a greatest value', () => {
  fc.assert(
    fc.property(maxima, (values) => (stormDistribution(values)?.shape ?? 0) <= 0),
    settings,
  );
});

it('the likeliest distribution is at least as likely as that of the L-moments', () => {
  const minusLog = (
    values: readonly number[],
    { location_mm, scale_mm, shape }: { location_mm: number; scale_mm: number; shape: number },
  ) =>
    values.reduce((sum, value) => {
      const z = (value - location_mm) / scale_mm;
      if (shape * z >= 1) return Number.POSITIVE_INFINITY;
      const y = Math.abs(shape) < 1e-6 ? z : -Math.log1p(-shape * z) / shape;
      return sum + (1 - shape) * y + Math.exp(-y);
    }, values.length * Math.log(scale_mm));
  let found = 0;
  fc.assert(
    fc.property(maxima, (values) => {
      const [likely, moments] = [gevByLikelihood(values), gevByLMoments(values)];
      if (!likely || !moments || Math.abs(moments.shape) > 1) return true;
      found++;
      return minusLog(values, likely) <= minusLog(values, moments) + 1e-9;
    }),
    { ...settings, numRuns: runs / 5 },
  );
  expect(found).toBeGreaterThan(runs / 20);
});

it('limits so many times as large for a distribution so many times as large, and of one seed the same', () => {
  const shapes = fc.double({ min: -0.4, max: 0, noNaN: true });
  fc.assert(
    fc.property(shapes, fc.integer({ min: 4, max: 60 }), fc.integer(), (shape, years, seed) => {
      const [one] = limitsOfStorms_mm({ location_mm: 60, scale_mm: 18, shape }, years, [20], 0.9, seed);
      const [two] = limitsOfStorms_mm({ location_mm: 120, scale_mm: 36, shape }, years, [20], 0.9, seed);
      return near(two!.low, 2 * one!.low) && near(two!.high, 2 * one!.high) && one!.low < one!.high;
    }),
    { ...settings, numRuns: runs / 20 },
  );
});

describe('L-moments', () => {
  /** All ways to take r of the values, each sorted. */
  const subsets = (values: readonly number[], r: number): readonly (readonly number[])[] =>
    r === 0 ? [[]] : values.flatMap((value, i) => subsets(values.slice(i + 1), r - 1).map((rest) => [value, ...rest]));

  /** By the definition: means over all subsets of differences of order statistics. */
  const plain = (values: readonly number[], r: number): number => {
    const signs = [[1], [-1, 1], [1, -2, 1], [-1, 3, -3, 1]][r - 1]!;
    const all = subsets(
      [...values].sort((a, b) => a - b),
      r,
    );
    return (
      all.reduce((sum, one) => sum + one.reduce((part, value, i) => part + signs[i]! * value, 0), 0) / all.length / r
    );
  };

  it('are those of their definition by order statistics', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 4, maxLength: 8 }), (values) => {
        const moments = lMoments(values);
        if (!moments) return new Set(values).size === 1 || plain(values, 2) < 1e-12;
        const { l1_mm, l2_mm, l3_mm, l4_mm } = moments;
        return [l1_mm, l2_mm, l3_mm, l4_mm].every((found, i) => Math.abs(found - plain(values, i + 1)) < 1e-9);
      }),
      settings,
    );
  });

  it('no sample is more skew than 1, as the middle of three lies between the others', () => {
    fc.assert(
      fc.property(maxima, (values) => Math.abs(lMoments(values)?.t3_ratio ?? 0) <= 1 + 1e-9),
      settings,
    );
  });
});

describe('risk', () => {
  it('grows with the years and falls with the return period', () => {
    fc.assert(
      fc.property(periods, fc.nat({ max: 100 }), fc.nat({ max: 100 }), ([a, b], m, n) => {
        const [few, many] = [Math.min(m, n), Math.max(m, n)];
        const [common, rare] = [Math.min(a, b), Math.max(a, b)];
        return (
          risk_fraction(common, few) <= risk_fraction(common, many) &&
          risk_fraction(rare, many) <= risk_fraction(common, many) + 1e-15
        );
      }),
      settings,
    );
  });

  it('turned round gives the return period back; the chances of all counts add up', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.5, max: 500, noNaN: true }), fc.integer({ min: 1, max: 40 }), (period, years) => {
        const chances = Array.from({ length: years + 1 }, (_, times) => chanceOfTimes_fraction(period, years, times));
        const risk = risk_fraction(period, years);
        return (
          near(
            chances.reduce((a, b) => a + b),
            1,
          ) &&
          (risk > 1 - 1e-9 || near(returnPeriodAtRisk_years(risk, years), period, 1e-6))
        );
      }),
      settings,
    );
  });
});

it('plotting positions are less spread than the distribution, and come nearer to it', () => {
  for (let years = 4; years < 200; years += 7) {
    expect(reducedMoments(years).sd_ratio).toBeLessThan(Math.PI / Math.sqrt(6));
    expect(reducedMoments(years + 7).sd_ratio).toBeGreaterThan(reducedMoments(years).sd_ratio);
  }
});
