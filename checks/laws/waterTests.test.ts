import { noSafety, readIsoDay, type SiteFacts, unmeasuredSite } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundWhenAll_per_100mL,
  boundWhenNone_per_100mL,
  combinedPriority,
  ecoliBand,
  ecoliEstimate,
  garwoodLimits_count,
  inspectionBand,
  meanWhenClean_per_sample,
  type Portion,
  portionFault,
  presenceAbsence,
  samplesByBinomial_count,
  samplesForClaim_count,
  scatter_fraction,
  waterTestsFinding,
} from '../../packages/engine/src/water/waterTests/index.ts';
import { anyPortion, somePortions } from './ranges/portions.ts';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 10_000 : 300, seed: 20261126 };
const bands = ['low', 'intermediate', 'high', 'veryHigh'] as const;
const near = (a: number | null, b: number | null, within = 1e-9) =>
  a === null || b === null ? a === b : Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b), 1e-12);

describe('the count of E. coli', () => {
  it('lies within its limits, and every figure is a number or null', () => {
    fc.assert(
      fc.property(somePortions, (portions) => {
        const {
          reach,
          ecoli_per_100mL: count,
          lowest_per_100mL: low,
          highest_per_100mL: high,
          ...more
        } = ecoliEstimate(portions)!;
        const figures = [count, low, high, more.rarity_fraction, more.scatter_fraction];
        if (figures.some((one) => one !== null && !Number.isFinite(one))) return false;
        if (!(more.rarity_fraction >= 0 && more.rarity_fraction <= 1)) return false;
        if (reach === 'below') return count === 0 && low === 0 && high! > 0;
        if (reach === 'above') return count === null && low > 0 && high === null;
        return low > 0 && low < count! && count! < high!;
      }),
      settings,
    );
  });

  it('is the same in whichever order, and however wells and plates of one volume are written down', () => {
    fc.assert(
      fc.property(somePortions, (portions) => {
        const apart: Portion[] = portions.flatMap((one): Portion[] =>
          one.kind === 'wells'
            ? Array.from({ length: one.wells_count }, (_, i) => presenceAbsence(one.volume_mL, i < one.positive_count))
            : [one],
        );
        const [a, b] = [ecoliEstimate(portions)!, ecoliEstimate([...apart].reverse())!];
        return (
          near(a.ecoli_per_100mL, b.ecoli_per_100mL) &&
          near(a.lowest_per_100mL, b.lowest_per_100mL) &&
          near(a.highest_per_100mL, b.highest_per_100mL) &&
          near(a.rarity_fraction, b.rarity_fraction, 1e-6)
        );
      }),
      settings,
    );
  });

  it('is a tenth in ten times the volumes', () => {
    fc.assert(
      fc.property(somePortions, (portions) => {
        const larger = portions.map((one) => ({ ...one, volume_mL: one.volume_mL * 10 }));
        const [a, b] = [ecoliEstimate(portions)!, ecoliEstimate(larger)!];
        const tenth = (value: number | null) => (value === null ? null : value / 10);
        return (
          near(tenth(a.ecoli_per_100mL), b.ecoli_per_100mL) && near(tenth(a.highest_per_100mL), b.highest_per_100mL)
        );
      }),
      settings,
    );
  });

  it('never falls as one well more turns positive or one colony more is counted, nor do its limits', () => {
    fc.assert(
      fc.property(somePortions, fc.nat(), (portions, pick) => {
        const place = pick % portions.length;
        const more = portions.map((one, i): Portion => {
          if (i !== place || one.kind === 'uncountable') return one;
          if (one.kind === 'plate') return { ...one, colonies_count: one.colonies_count + 1 };
          return { ...one, positive_count: Math.min(one.wells_count, one.positive_count + 1) };
        });
        const value = (told: number | null) => told ?? Infinity;
        const [a, b] = [ecoliEstimate(portions)!, ecoliEstimate(more)!];
        // A bound for none or for all is of another kind than the limits within.
        const isAlike = a.reach === 'within' && b.reach === 'within';
        return (
          value(b.ecoli_per_100mL) >= value(a.ecoli_per_100mL) * (1 - 1e-9) &&
          (!isAlike ||
            (b.lowest_per_100mL >= a.lowest_per_100mL * (1 - 1e-9) &&
              value(b.highest_per_100mL) >= value(a.highest_per_100mL) * (1 - 1e-9)))
        );
      }),
      settings,
    );
  });

  it('of countable plates alone is colonies ÷ volume', () => {
    const plate = fc.record({
      kind: fc.constant('plate' as const),
      volume_mL: fc.double({ min: 0.001, max: 250, noNaN: true }),
      colonies_count: fc.integer({ min: 1, max: 300 }),
    });
    fc.assert(
      fc.property(fc.array(plate, { minLength: 1, maxLength: 6 }), (plates) => {
        const colonies = plates.reduce((sum, { colonies_count }) => sum + colonies_count, 0);
        const looked_mL = plates.reduce((sum, { volume_mL }) => sum + volume_mL, 0);
        return near(ecoliEstimate(plates)!.ecoli_per_100mL, (100 * colonies) / looked_mL);
      }),
      settings,
    );
  });

  it('is null for a faulty portion, whatever is in it', () => {
    fc.assert(
      fc.property(fc.array(anyPortion, { maxLength: 4 }), (portions) => {
        const isFaulty = portions.length === 0 || portions.some((one) => portionFault(one) !== null);
        return (ecoliEstimate(portions) === null) === isFaulty;
      }),
      settings,
    );
  });

  it('gives bounds that a smaller chance moves apart, and none where they are not wanted', () => {
    fc.assert(
      fc.property(somePortions, (portions) => {
        const [none, rarer] = [0.05, 0.025].map((chance) => boundWhenNone_per_100mL(portions, chance));
        const [all, lower] = [0.05, 0.025].map((chance) => boundWhenAll_per_100mL(portions, chance));
        const { reach } = ecoliEstimate(portions)!;
        return (
          (none !== null) === (reach === 'below') &&
          (all !== null) === (reach === 'above') &&
          (none === null || rarer! > none!) &&
          (all === null || lower! < all!)
        );
      }),
      settings,
    );
  });
});

describe('five wells of unequal volume, worked out elsewhere from the same formulas (derived)', () => {
  const volumes = [50, 30, 15, 4, 1];
  it.each([
    [[1, 0, 0, 0, 0], 1.386, 0.078, 6.54],
    [[0, 1, 0, 0, 0], 1.189, 0.068, 5.33],
    [[1, 1, 0, 0, 0], 4.077, 0.618, 16.08],
    [[1, 1, 1, 0, 0], 10.929, 1.98, 54.51],
    [[1, 1, 1, 1, 0], 40.903, 5.459, 254.85],
    [[0, 0, 0, 0, 1], 1.005, 0.057, 4.43],
    [[1, 0, 1, 1, 0], 5.545, 1.279, 16.34],
  ] as const)('%j', (pattern, count, low, high) => {
    const got = ecoliEstimate(pattern.map((found, i) => presenceAbsence(volumes[i]!, found === 1)))!;
    expect(got.ecoli_per_100mL).toBeCloseTo(count, 2);
    expect(Math.abs(got.lowest_per_100mL / low - 1)).toBeLessThan(0.01);
    expect(Math.abs(got.highest_per_100mL! / high - 1)).toBeLessThan(0.01);
    expect(got.isRare).toBe(pattern[4] === 1);
  });
});

describe('exact limits of a count', () => {
  it('rise with the count, hold it, and are those of the rule of three at none (derived)', () => {
    for (let count = 0; count < 200; count++) {
      const [own, next] = [garwoodLimits_count(count), garwoodLimits_count(count + 1)];
      expect(own.low <= count && count <= own.high && own.high < next.high && own.low < next.low).toBe(true);
    }
    expect(garwoodLimits_count(0, 0.9).high).toBeCloseTo(-Math.log(0.05), 12);
    expect(meanWhenClean_per_sample(12)).toBeCloseTo(0.24964, 5);
    const known = [
      [1, 0.025, 5.572],
      [2, 0.242, 7.225],
      [5, 1.623, 11.668],
      [10, 4.795, 18.39],
      [20, 12.217, 30.888],
    ] as const;
    for (const [count, low, high] of known) {
      expect(Math.abs(garwoodLimits_count(count).low - low)).toBeLessThan(6e-4);
      expect(Math.abs(garwoodLimits_count(count).high - high)).toBeLessThan(6e-4);
    }
  });
});

describe('samples for a claim', () => {
  it('never get fewer with one more bad one, and the classical rule never asks for fewer', () => {
    for (const exceeded of [0.02, 0.05, 0.1])
      for (let bad = 0; bad < 8; bad++) {
        const own = samplesForClaim_count(bad, exceeded);
        expect(samplesForClaim_count(bad + 1, exceeded)).toBeGreaterThan(own);
        expect(samplesByBinomial_count(bad, exceeded)).toBeGreaterThan(own);
      }
  });
});

describe('scatter of plates', () => {
  it('is rarer the more uneven the colonies are, and clumps are told', () => {
    const of = (...colonies: number[]) =>
      scatter_fraction(colonies.map((colonies_count) => ({ kind: 'plate', volume_mL: 1, colonies_count })))!;
    expect(of(10, 10)).toBe(1);
    for (let moved = 0; moved < 10; moved++)
      expect(of(10 + moved + 1, 10 - moved - 1)).toBeLessThan(of(10 + moved, 10 - moved));
    expect(of(18, 2)).toBeLessThan(0.05);
    expect(scatter_fraction([{ kind: 'plate', volume_mL: 1, colonies_count: 3 }])).toBeNull();
  });
});

describe('bands', () => {
  it('are never better for more, and every count has one', () => {
    const count = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        count,
        count,
        (a, b) => bands.indexOf(ecoliBand(Math.min(a, b))) <= bands.indexOf(ecoliBand(Math.max(a, b))),
      ),
      settings,
    );
    for (const set of ['four', 'older'] as const)
      for (let risks = 0; risks < 10; risks++)
        expect(bands.indexOf(inspectionBand(risks, 10, set)!.band)).toBeLessThanOrEqual(
          bands.indexOf(inspectionBand(risks + 1, 10, set)!.band),
        );
  });

  it('together are the worse of the two (derived)', () => {
    const cases = [
      [0.5, 1, 'low'],
      [1, 2, 'intermediate'],
      [10, 2, 'intermediate'],
      [10.9, 1, 'high'],
      [100, 4, 'high'],
      [101, 0, 'veryHigh'],
      [0.5, 9, 'veryHigh'],
      [4, 7, 'high'],
    ] as const;
    for (const [count, score, wanted] of cases)
      expect(combinedPriority(ecoliBand(count), inspectionBand(score, 10)!.band)).toBe(wanted);
  });
});

describe('what a site says of its samples', () => {
  it('is told without a figure that is none, whatever stands in its facts', () => {
    const figure = fc.constantFrom(null, 0, 0.5, 1, 5, 100, -1, 1e-300, 1e12, 1e300, Number.NaN, Infinity);
    const known = figure.map((value) => value ?? 1);
    const portion = fc.record({
      kind: fc.constantFrom('tubes', 'plates'),
      volume_mL: known,
      portions_count: known,
      positive_count: figure,
      colonies_count: figure,
      uncountable_count: known,
      uncountableFrom_count: figure,
    });
    const test = fc.record({
      testId: fc.constant('W1'),
      takenOn: fc.constantFrom(readIsoDay('2026-01-01')!, readIsoDay('2026-02-01')!),
      point: fc.constantFrom('tap', 'container', 'tank'),
      portions: fc.array(portion, { maxLength: 3 }),
    });
    const walk = fc.record({
      inspectedOn: fc.constant(readIsoDay('2026-01-01')!),
      risks_count: known,
      questions_count: known,
      by: fc.constant(null),
    });
    const sites = fc.record({ tests: fc.array(test, { maxLength: 3 }), inspections: fc.array(walk, { maxLength: 2 }) });
    fc.assert(
      fc.property(sites, (own) => {
        const site = { ...unmeasuredSite, siteId: 'S1', safety: { ...noSafety, ...own } } as unknown as SiteFacts;
        const { finding, problems, working } = waterTestsFinding(site);
        return [finding, problems, working].every(isSound);
      }),
      settings,
    );
  });
});

/** Every number in it is one, however deep it lies. */
function isSound(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(isSound);
}
