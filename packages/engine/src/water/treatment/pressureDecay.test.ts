import { describe, expect, it } from 'vitest';
import { type DecayTest, decayLimit_kPa_per_min, decayReduction_log10 } from './pressureDecay.ts';

const test: DecayTest = {
  flow_L_per_min: 10,
  airToWater_ratio: 30,
  atmosphere_kPa: 101.325,
  held_L: 2,
  concentration_factor: 1,
};

describe('a test of falling pressure', () => {
  it('supports 4.1818 log at 1 kPa/min, and 4 log up to 1.5199 kPa/min, worked out elsewhere', () => {
    expect(decayReduction_log10(test, 1)).toBeCloseTo(4.1818, 4);
    expect(decayLimit_kPa_per_min(test, 4)).toBeCloseTo(1.5199, 4);
  });

  it('supports just the reduction wanted at its limit', () => {
    expect(decayReduction_log10(test, decayLimit_kPa_per_min(test, 3.3))).toBeCloseTo(3.3, 12);
  });

  it('supports nothing where all of the water could go through, and has no end where nothing falls', () => {
    expect(decayReduction_log10(test, 1e9)).toBe(0);
    expect(decayReduction_log10(test, 0)).toBe(Infinity);
  });

  it('supports less where germs are denser at the membrane', () => {
    expect(decayReduction_log10({ ...test, concentration_factor: 10 }, 1)).toBeCloseTo(3.1818, 4);
  });
});
