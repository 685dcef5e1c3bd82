import { describe, expect, it } from 'vitest';
import { type CutFibres, cutFibreLeak } from './cutFibres.ts';

const one: CutFibres = {
  fibres_count: 1,
  fibreBore_mm: 0.8,
  toCut_mm: 150,
  across_kPa: 10,
  temperature_C: 20,
  unitFlow_L_per_min: 5,
};

describe('cutFibreLeak', () => {
  it('is 40.15 mL/min at a Reynolds number of 1,061 and caps the unit at 2.095 log, worked out elsewhere', () => {
    const found = cutFibreLeak(one);
    expect(found.leak_L_per_min * 1000).toBeCloseTo(40.15, 1);
    expect(Math.abs(found.reynolds_factor / 1061 - 1)).toBeLessThan(2e-3);
    expect(found.isSmooth).toBe(true);
    expect(found.ceiling_log10).toBeCloseTo(2.095, 3);
  });

  it('says at 30 kPa, a Reynolds number of 3,184, that its law does not hold', () => {
    const found = cutFibreLeak({ ...one, across_kPa: 30 });
    expect(Math.abs(found.reynolds_factor / 3184 - 1)).toBeLessThan(2e-3);
    expect(found.isSmooth).toBe(false);
  });

  it('caps by one log less with ten fibres, and by nothing with none', () => {
    expect(cutFibreLeak({ ...one, fibres_count: 10 }).ceiling_log10).toBeCloseTo(1.095, 3);
    expect(cutFibreLeak({ ...one, fibres_count: 0 })).toMatchObject({ leak_L_per_min: 0, ceiling_log10: Infinity });
    expect(cutFibreLeak({ ...one, fibreBore_mm: 0 })).toMatchObject({ leak_L_per_min: 0, reynolds_factor: 0 });
    expect(cutFibreLeak({ ...one, fibres_count: 1000 }).ceiling_log10).toBe(0);
  });
});
