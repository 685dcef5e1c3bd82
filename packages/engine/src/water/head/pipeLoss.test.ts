import { describe, expect, it } from 'vitest';
import { kinematicViscosity_m2_per_s } from '../../kernel/index.ts';
import { pipeLoss, rowLoss_m } from './pipeLoss.ts';

const nu_m2_per_s = kinematicViscosity_m2_per_s(20);
const flows_L_per_s = [0.05, 0.1, 0.2, 0.3, 0.5];
// Head lost on 100 m of plastic pipe at 20 °C by Darcy–Weisbach and Colebrook, worked out elsewhere and compared with another library there [m].
const lossOn100 = [
  [13, [2.103, 6.958, 23.41, 47.93, 119.2]],
  [16, [0.7903, 2.601, 8.702, 17.76, 43.96]],
  [20.4, [0.2521, 0.8243, 2.741, 5.576, 13.74]],
  [26.2, [0.07794, 0.2531, 0.8364, 1.695, 4.159]],
  [32.6, [0.01845, 0.09041, 0.2972, 0.6006, 1.468]],
] as const;
/** Hazen and Williams, C 150: only to compare with. */
const hazenWilliams_m = (bore_m: number, flow_m3_per_s: number, length_m: number) =>
  (10.67 * length_m * flow_m3_per_s ** 1.852) / (150 ** 1.852 * bore_m ** 4.8704);

describe('pipeLoss', () => {
  it.each(lossOn100)('on 100 m of plastic pipe of %d mm is that of an independent reckoning', (bore_mm, losses) => {
    const run = { bore_m: bore_mm / 1000, length_m: 100, roughness_m: 1.5e-6, fittings_factor: 0 };
    for (const [index, flow] of flows_L_per_s.entries()) {
      const got = pipeLoss(run, flow / 1000, nu_m2_per_s).friction_m;
      expect(Math.abs(got / losses[index]! - 1)).toBeLessThan(1e-3);
    }
  });

  it('is more than Hazen and Williams give for narrow pipes with stirred flow, who are up to 30 % low', () => {
    for (const [bore_mm] of lossOn100)
      for (const flow of flows_L_per_s) {
        const run = { bore_m: bore_mm / 1000, length_m: 100, roughness_m: 1.5e-6, fittings_factor: 0 };
        const { friction_m, reynolds_factor } = pipeLoss(run, flow / 1000, nu_m2_per_s);
        const ratio = friction_m / hazenWilliams_m(bore_mm / 1000, flow / 1000, 100);
        if (reynolds_factor > 2000) expect(ratio).toBeGreaterThan(1.01);
        expect(ratio).toBeLessThan(1.44);
      }
  });

  it('of fittings is ΣK · V²/2g: 0.2243 m at 1 m/s for an entrance, three elbows, a gate valve and an exit', () => {
    const bore_m = 0.02;
    const run = { bore_m, length_m: 0, roughness_m: 0, fittings_factor: 0.5 + 3 * 0.9 + 0.2 + 1 };
    const loss = pipeLoss(run, (Math.PI / 4) * bore_m ** 2, nu_m2_per_s);
    expect(loss.friction_m).toBe(0);
    expect(loss.minor_m).toBeCloseTo(0.22434, 5);
  });

  it('of a tap line of 60 m, 20.4 mm and ΣK 8 at 0.2 L/s is 1.645 m of friction and 0.1527 m of fittings', () => {
    const run = { bore_m: 0.0204, length_m: 60, roughness_m: 1.5e-6, fittings_factor: 8 };
    const loss = pipeLoss(run, 0.0002, nu_m2_per_s);
    expect(loss.velocity_m_per_s).toBeCloseTo(0.6119, 4);
    expect(loss.reynolds_factor / 12_441).toBeCloseTo(1, 3);
    expect(loss.friction_m / 1.64482).toBeCloseTo(1, 3);
    expect(loss.minor_m / 0.152721).toBeCloseTo(1, 3);
  });

  it('is nothing where nothing flows', () => {
    const run = { bore_m: 0.02, length_m: 10, roughness_m: 0, fittings_factor: 3 };
    expect(pipeLoss(run, 0, nu_m2_per_s)).toMatchObject({ friction_m: 0, minor_m: 0, velocity_m_per_s: 0 });
  });

  it('of pipes in a row is the sum, and of a unit between them goes with the flow', () => {
    const run = { bore_m: 0.02, length_m: 10, roughness_m: 0, fittings_factor: 3 };
    const one_m = rowLoss_m([run], null, 0.0002, nu_m2_per_s);
    expect(rowLoss_m([run, run], { head_m: 4, flow_m3_per_s: 0.0004 }, 0.0002, nu_m2_per_s)).toBeCloseTo(
      2 * one_m + 2,
      12,
    );
  });
});
