import { describe, expect, it } from 'vitest';
import { waterViscosity_Pas } from '../../kernel/index.ts';
import type { CartridgeRating } from './cartridgeRating.ts';
import { newSet, resistance_ratio, wearThroughDays } from './wearThroughDays.ts';

const flow = { cleanFlow_L_per_h: 900, lowestFlow_L_per_h: 300, ratedPressure_kPa: 60, workingPressure_kPa: 60 };
const rating: CartridgeRating = { ratedLitres_L: 1000, ratedTurbidity_NTU: 5, flow, ageLimit_days: Infinity };
const same = (value: number, days = 100) => new Float64Array(days).fill(value);
const water = (litres: number, turbidity: number, days = 100) => [
  { litres_L: same(litres, days), turbidity_NTU: same(turbidity, days) },
];

describe('a set', () => {
  it('ends by its litres where the water is no more turbid than rated, in the middle of a day if need be', () => {
    const found = wearThroughDays(rating, water(30, 2), same(20), 1);
    expect(found.end).toBe('litres');
    expect(found.end_days).toBeCloseTo(1000 / 30, 12);
    expect(found.litres_L).toBeCloseTo(1000, 9);
    expect(found.resistance_ratio).toBeCloseTo(1 + (2 * 2) / 5, 12);
  });

  it('wears twice as fast in water twice as turbid as rated', () => {
    const found = wearThroughDays(rating, water(25, 10), same(20), 1);
    expect(found).toMatchObject({ end: 'litres', end_days: 20, litres_L: 500, wornLitres_L: 1000, load_L_NTU: 5000 });
    expect(found.resistance_ratio).toBeCloseTo(3, 12);
  });

  it('ends by its flow where it clogs faster than rated: after 1 ÷ wear of the rated load', () => {
    const found = wearThroughDays(rating, water(25, 5), same(20), 1.6);
    expect(found.end).toBe('flow');
    expect(found.end_days).toBeCloseTo(1000 / 25 / 1.6, 9);
    expect(found.resistance_ratio).toBeCloseTo(3, 12);
  });

  it('ends by its flow on the first cold day, though it would pass enough in warm water', () => {
    const temperature_C = same(25).fill(6, 30, 60);
    // At 6 °C the set may have 3 × μ(20) ÷ μ(6) = 2.04 times its resistance; after 30 days of 10 L at 10 NTU it has 1 + 2 × 0.6 × 1.1.
    const most = (3 * waterViscosity_Pas(20)) / waterViscosity_Pas(6);
    expect(1 + 2 * 0.6 * 1.1).toBeGreaterThan(most);
    expect(wearThroughDays(rating, water(10, 10), temperature_C, 1.1)).toMatchObject({ end: 'flow', end_days: 30 });
    const warm = wearThroughDays(rating, water(10, 10), same(25), 1.1);
    expect(warm.end_days).toBeGreaterThan(45);
  });

  it('that passes too little even clean ends at once', () => {
    const weak = { ...rating, flow: { ...flow, workingPressure_kPa: 15 } };
    expect(wearThroughDays(weak, water(10, 1), same(20), 1)).toMatchObject({ end: 'flow', end_days: 0, litres_L: 0 });
  });

  it('ends with its years, or when it breaks, whichever comes first', () => {
    const limited = { ...rating, ageLimit_days: 12.5 };
    const byYears = wearThroughDays(limited, water(10, 1), same(20), 1);
    expect(byYears).toMatchObject({ end: 'age', end_days: 12.5, litres_L: 125 });
    expect(wearThroughDays(limited, water(10, 1), same(20), 1, newSet, 7.25)).toMatchObject({
      end: 'failure',
      end_days: 7.25,
      litres_L: 72.5,
    });
    expect(wearThroughDays(limited, water(10, 1), same(20), 1, newSet, 12.5).end).toBe('age');
  });

  it('counts what passed before, its age and load', () => {
    const soFar = { litres_L: 700, wornLitres_L: 800, load_L_NTU: 4000, age_days: 10 };
    const found = wearThroughDays(rating, water(20, 1), same(20), 1, soFar);
    expect(found).toMatchObject({ end: 'litres', end_days: 10, litres_L: 900, load_L_NTU: 4200 });
    const old = wearThroughDays({ ...rating, ageLimit_days: 9 }, water(20, 1), same(20), 1, soFar);
    expect(old).toMatchObject({ end: 'age', end_days: 0, litres_L: 700 });
    const worn = wearThroughDays(rating, water(20, 1), same(20), 1, { ...soFar, wornLitres_L: 1000 });
    expect(worn).toMatchObject({ end: 'litres', end_days: 0 });
  });

  it('told to the last day: an end that falls on its evening is found, one after it is not', () => {
    expect(wearThroughDays(rating, water(10, 1), same(20), 1)).toMatchObject({ end: 'litres', end_days: 100 });
    const later = wearThroughDays(rating, water(9, 1), same(20), 1);
    expect(later).toMatchObject({ end: null, end_days: null, litres_L: 900 });
    const years = { ...rating, ageLimit_days: 100 };
    expect(wearThroughDays(years, water(9, 1), same(20), 1)).toMatchObject({ end: 'age', end_days: 100 });
  });

  it('wears by each water apart: clear water does not thin what muddy water does', () => {
    const both = [...water(10, 1), ...water(10, 15)];
    const found = wearThroughDays({ ...rating, flow: null }, both, same(20), 1);
    expect(found.wornLitres_L).toBeCloseTo(1000, 9);
    expect(found.end_days).toBeCloseTo(1000 / (10 + 30), 12);
  });

  it('without a rated turbidity counts litres as they are and knows no resistance', () => {
    const unrated = { ...rating, ratedTurbidity_NTU: null };
    const found = wearThroughDays(unrated, water(20, 500), same(20), 3);
    expect(found).toMatchObject({ end: 'litres', end_days: 50, resistance_ratio: null });
    expect(resistance_ratio(unrated, 100, 1)).toBeNull();
  });
});
