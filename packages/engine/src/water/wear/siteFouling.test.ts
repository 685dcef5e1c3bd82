import { describe, expect, it } from 'vitest';
import type { CartridgeRating } from './cartridgeRating.ts';
import { foulingAtShare_ratio, foulingBelief } from './foulingBelief.ts';
import { type SiteFouling, siteFouling, turbidityAt_NTU, turbidityOfThrow } from './siteFouling.ts';

const flow = { cleanFlow_L_per_h: 900, lowestFlow_L_per_h: 300, ratedPressure_kPa: 60, workingPressure_kPa: 60 };
const rating: CartridgeRating = { ratedLitres_L: 1000, ratedTurbidity_NTU: 5, flow, ageLimit_days: Infinity };
const turbidity = { roof_NTU_range: { low: 2, high: 10 }, source_NTU_range: null };
/** Read at half the rated litres: 1 + 2 × wear × turbidity ÷ 5 × 0.5 = 2.5, so that wear × turbidity is 7.5. */
const readings = [{ roof_L: 500, secondSource_L: 0, resistance_ratio: 2.5, error_fraction: 0.02 }];

/** Wear times turbidity at many even throws. */
const products = (wear: SiteFouling) => {
  const found: number[] = [];
  for (let i = 0; i < 40; i++)
    for (let j = 0; j < 40; j++) {
      const { stretch, up_fraction } = turbidityOfThrow(wear, (i + 0.5) / 40);
      const factor = foulingAtShare_ratio(wear.beliefs[stretch]!, (j + 0.5) / 40);
      found.push(factor * turbidityAt_NTU(turbidity.roof_NTU_range, up_fraction));
    }
  return found.sort((a, b) => a - b);
};

describe('without readings', () => {
  it('a throw goes up the range evenly and the wear is as rated', () => {
    const wear = siteFouling(rating, turbidity, [], 0.6);
    for (const at of [0.01, 0.3, 0.99]) expect(turbidityOfThrow(wear, at)).toEqual({ stretch: 0, up_fraction: at });
    expect(foulingAtShare_ratio(wear.beliefs[0]!, 0.5)).toBeCloseTo(1, 6);
  });
});

describe('a reading', () => {
  it('tells the product of wear and turbidity, closer than it was known', () => {
    const [before, after] = [
      products(siteFouling(rating, turbidity, [], 0.6)),
      products(siteFouling(rating, turbidity, readings, 0.6)),
    ];
    const wide = (sorted: number[]) =>
      sorted[Math.floor(sorted.length * 0.9)]! / sorted[Math.floor(sorted.length * 0.1)]!;
    expect(wide(before)).toBeGreaterThan(4);
    // Within the width of one stretch of the turbidity.
    expect(wide(after)).toBeLessThan(1.25);
    expect(Math.abs(after[Math.floor(after.length / 2)]! / 7.5 - 1)).toBeLessThan(0.05);
  });

  it('of a slowly clogging set makes clear water likelier than muddy', () => {
    const slow = [{ roof_L: 500, secondSource_L: 0, resistance_ratio: 1.2, error_fraction: 0.05 }];
    const { stretch_fraction } = siteFouling(rating, turbidity, slow, 0.6);
    expect(stretch_fraction[0]!).toBeGreaterThan(stretch_fraction.at(-1)!);
    expect(stretch_fraction.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('of water whose turbidity is known is weighed once', () => {
    const known = siteFouling(rating, { roof_NTU_range: { low: 5, high: 5 }, source_NTU_range: null }, readings, 0.6);
    const loads = [{ load_L_NTU: 2500, resistance_ratio: 2.5, error_fraction: 0.02 }];
    expect(known.beliefs).toHaveLength(1);
    expect(foulingAtShare_ratio(known.beliefs[0]!, 0.5)).toBeCloseTo(
      foulingAtShare_ratio(foulingBelief(2 / 5000, loads, 0.6), 0.5),
      12,
    );
  });

  it('counts the load of both waters', () => {
    const both = { roof_NTU_range: { low: 5, high: 5 }, source_NTU_range: { low: 20, high: 20 } };
    const read = [{ roof_L: 100, secondSource_L: 100, resistance_ratio: 2, error_fraction: 0.01 }];
    const { beliefs } = siteFouling(rating, both, read, 0.6);
    expect(foulingAtShare_ratio(beliefs[0]!, 0.5)).toBeCloseTo(1, 2);
  });

  it('says nothing of a set whose turbidity is not rated', () => {
    const { beliefs } = siteFouling({ ...rating, ratedTurbidity_NTU: null }, turbidity, readings, 0.6);
    expect(foulingAtShare_ratio(beliefs[0]!, 0.5)).toBeCloseTo(1, 6);
  });
});
