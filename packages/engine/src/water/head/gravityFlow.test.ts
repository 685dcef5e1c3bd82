import { describe, expect, it } from 'vitest';
import { gravityFlow_m3_per_s } from './gravityFlow.ts';
import { rowLoss_m } from './pipeLoss.ts';

const nu_m2_per_s = 1e-6;
const run = { bore_m: 0.0204, length_m: 60, roughness_m: 1.5e-6, fittings_factor: 8 };

describe('gravityFlow_m3_per_s', () => {
  it('is the flow whose losses are the head there is', () => {
    for (const head_m of [0.05, 0.5, 2, 30]) {
      const flow = gravityFlow_m3_per_s([run, { ...run, bore_m: 0.03 }], null, head_m, nu_m2_per_s);
      expect(rowLoss_m([run, { ...run, bore_m: 0.03 }], null, flow, nu_m2_per_s) / head_m).toBeCloseTo(1, 9);
    }
  });

  it('is that of a smooth flow in a long thin pipe: g h π D⁴ ÷ (128 ν L)', () => {
    const thin = { bore_m: 0.006, length_m: 50, roughness_m: 0, fittings_factor: 0 };
    const wanted = (9.80665 * 0.1 * Math.PI * 0.006 ** 4) / (128 * nu_m2_per_s * 50);
    expect(gravityFlow_m3_per_s([thin], null, 0.1, nu_m2_per_s) / wanted).toBeCloseTo(1, 9);
  });

  it('is that of an open hole where a short pipe takes less than one velocity head', () => {
    const short = { bore_m: 0.02, length_m: 0, roughness_m: 0, fittings_factor: 0.25 };
    const wanted = (Math.PI / 4) * 0.02 ** 2 * Math.sqrt((2 * 9.80665 * 1) / 0.25);
    expect(gravityFlow_m3_per_s([short], null, 1, nu_m2_per_s) / wanted).toBeCloseTo(1, 12);
  });

  it('is less through a unit, and nothing without head or without a pipe', () => {
    const unit = { head_m: 3, flow_m3_per_s: 0.0002 };
    expect(gravityFlow_m3_per_s([run], unit, 2, nu_m2_per_s)).toBeLessThan(
      gravityFlow_m3_per_s([run], null, 2, nu_m2_per_s),
    );
    expect(gravityFlow_m3_per_s([run], null, 0, nu_m2_per_s)).toBe(0);
    expect(gravityFlow_m3_per_s([run], null, -1, nu_m2_per_s)).toBe(0);
    expect(gravityFlow_m3_per_s([], null, 1, nu_m2_per_s)).toBe(0);
  });
});
