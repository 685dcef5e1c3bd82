import { describe, expect, it } from 'vitest';
import { reynoldsFactor } from '../../kernel/index.ts';
import { colebrookFactor, frictionFactor, swameeJainFactor } from './frictionFactor.ts';

const reynoldsNumbers = [2500, 4000, 1e4, 1e5, 1e6, 1e8];
const roughnesses = [0, 1e-6, 1e-4, 0.01, 0.05];
const everyPair = reynoldsNumbers.flatMap((re) => roughnesses.map((rough) => [re, rough] as const));

describe('colebrookFactor', () => {
  it.each(everyPair)('meets its own law at Re %d and roughness %d', (re, rough) => {
    const root = 1 / Math.sqrt(colebrookFactor(re, rough));
    expect(Math.abs(root + 2 * Math.log10(rough / 3.7 + (2.51 * root) / re))).toBeLessThan(1e-12 * root);
  });

  it('is smooth-pipe law 1/√f = 2 log₁₀(Re √f) − 0.8 within 1 % where there is no roughness', () => {
    for (const re of reynoldsNumbers) {
      const root = 1 / Math.sqrt(colebrookFactor(re, 0));
      expect(Math.abs(root / (2 * Math.log10(re / root) - 0.8) - 1)).toBeLessThan(0.01);
    }
  });
});

describe('swameeJainFactor', () => {
  it('is within 3 % of Colebrook from Re 5,000 and roughness 10⁻⁶ to 10⁻², as its authors say', () => {
    for (const re of [5000, 1e4, 1e5, 1e6, 1e8])
      for (const rough of [1e-6, 1e-5, 1e-4, 1e-3, 1e-2])
        expect(Math.abs(swameeJainFactor(re, rough) / colebrookFactor(re, rough) - 1)).toBeLessThan(0.03);
  });
});

describe('frictionFactor', () => {
  it('is 64 ÷ Re in smooth flow, and never falls where the flow begins to be stirred', () => {
    expect(frictionFactor(640, 0.1)).toBe(0.1);
    expect(frictionFactor(2000.001, 0)).toBeGreaterThan(frictionFactor(2000, 0));
  });

  it('goes with a Reynolds number of speed × bore ÷ kinematic viscosity', () => {
    expect(reynoldsFactor(0.6119, 0.0204, 1.00339e-6)).toBeCloseTo(12_441, -1);
  });
});
