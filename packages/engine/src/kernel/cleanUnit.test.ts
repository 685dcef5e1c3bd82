import { describe, expect, it } from 'vitest';
import { cleanFlow_L_per_h, cleanUnit, wornAtLowest_ratio } from './cleanUnit.ts';
import { unmeasuredUnit } from './treatmentFacts.ts';

/** 9 m² of 250 L/m²/h/bar pass 1,125 L an hour at half a bar. */
const byArea = { ...unmeasuredUnit, membraneArea_m2: 9, permeability_L_per_m2_h_bar: 250, ratedPressure_kPa: 50 };

describe('a clean set', () => {
  it('passes area × permeability × pressure', () => {
    expect(cleanFlow_L_per_h(cleanUnit(byArea))).toBeCloseTo(1125, 8);
  });

  it('passes the lesser of what is said of it in two ways', () => {
    expect(cleanFlow_L_per_h(cleanUnit({ ...byArea, ratedFlow_L_per_h: 900 }))).toBeCloseTo(900, 8);
    expect(cleanFlow_L_per_h(cleanUnit({ ...byArea, ratedFlow_L_per_h: 2000 }))).toBeCloseTo(1125, 8);
  });

  it('is not known without its pressure', () => {
    expect(cleanFlow_L_per_h(cleanUnit({ ...byArea, ratedPressure_kPa: null }))).toBeNull();
    expect(cleanFlow_L_per_h(cleanUnit(unmeasuredUnit))).toBeNull();
  });

  it('has as many times its resistance at the lowest flow as it passes more clean', () => {
    expect(wornAtLowest_ratio(cleanUnit(byArea), 375)).toBeCloseTo(3, 8);
    expect(wornAtLowest_ratio(cleanUnit(byArea), 1200)).toBeNull();
  });
});
