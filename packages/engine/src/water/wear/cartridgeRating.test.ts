import { describe, expect, it } from 'vitest';
import { waterViscosity_Pas } from '../../kernel/index.ts';
import {
  type CartridgeRating,
  flowAtResistance_L_per_h,
  growthOfLoad,
  mostResistance_ratio,
  resistanceRead_ratio,
  wornLitres_factor,
} from './cartridgeRating.ts';

const flow = { cleanFlow_L_per_h: 900, lowestFlow_L_per_h: 300, ratedPressure_kPa: 60, workingPressure_kPa: 30 };
const rating: CartridgeRating = { ratedLitres_L: 2e6, ratedTurbidity_NTU: 5, flow, ageLimit_days: Infinity };

describe('a litre', () => {
  it('wears by one up to the rated turbidity, and in proportion above it', () => {
    expect([0, 4.9, 5, 10, 50].map((turbidity) => wornLitres_factor(turbidity, 5))).toEqual([1, 1, 1, 2, 10]);
  });

  it('counts as it is where no turbidity is rated', () => {
    expect(wornLitres_factor(500, null)).toBe(1);
  });
});

describe('the growth of the resistance', () => {
  it('brings the clean flow to the lowest after rated litres at the rated turbidity', () => {
    expect(1 + growthOfLoad(rating)! * 2e6 * 5).toBeCloseTo(900 / 300, 12);
  });

  it('is not known without a rated turbidity or a flow', () => {
    expect(growthOfLoad({ ...rating, ratedTurbidity_NTU: null })).toBeNull();
    expect(growthOfLoad({ ...rating, flow: null })).toBeNull();
  });

  it('wants a clean flow above the lowest', () => {
    expect(() => growthOfLoad({ ...rating, flow: { ...flow, cleanFlow_L_per_h: 300 } })).toThrow(RangeError);
  });
});

describe('the flow', () => {
  it('goes with the pressure, and against resistance and viscosity', () => {
    expect(flowAtResistance_L_per_h(flow, 60, 20, 1)).toBeCloseTo(900, 10);
    expect(flowAtResistance_L_per_h(flow, 30, 20, 3)).toBeCloseTo(150, 12);
    const cold = flowAtResistance_L_per_h(flow, 60, 5, 1);
    // 1.0016 ÷ 1.5182 mPa·s, the standard's own figures.
    expect(cold / 900).toBeCloseTo(1.0016 / 1.5182, 4);
    expect(cold / 900).toBeCloseTo(waterViscosity_Pas(20) / waterViscosity_Pas(5), 12);
  });

  it('read again gives the resistance it was made with', () => {
    for (const resistance of [0.9, 1, 1.7, 6])
      for (const temperature_C of [5, 20, 31]) {
        const read = flowAtResistance_L_per_h(flow, 42, temperature_C, resistance);
        expect(resistanceRead_ratio(flow, read, 42, temperature_C)).toBeCloseTo(resistance, 12);
      }
  });

  it('leaves less room to wear where the site has less pressure or colder water', () => {
    expect(mostResistance_ratio(flow, 20)).toBeCloseTo(1.5, 12);
    expect(mostResistance_ratio({ ...flow, workingPressure_kPa: 60 }, 20)).toBeCloseTo(3, 12);
    expect(mostResistance_ratio(flow, 4)).toBeLessThan(1);
  });
});
