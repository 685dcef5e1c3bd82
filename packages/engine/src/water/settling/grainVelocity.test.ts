import { describe, expect, it } from 'vitest';
import { fergusonChurchVelocity_m_per_s, grainInWater, stokesVelocity_m_per_s } from './grainVelocity.ts';

const sizes_um = [1, 2, 5, 10, 20, 50, 63, 100, 200, 500, 1000];
// Quartz in water, worked out elsewhere from the published equations, to four digits [mm/s].
const byTemperature = {
  10: [0.0006884, 0.002753, 0.01718, 0.06853, 0.2718, 1.636, 2.544, 5.996, 19.41, 64.79, 121.1],
  20: [0.0008983, 0.003592, 0.02241, 0.0893, 0.3533, 2.103, 3.252, 7.53, 23.24, 71.09, 126.4],
  30: [0.00113, 0.004519, 0.02819, 0.1122, 0.4426, 2.603, 4.002, 9.099, 26.82, 76.15, 130.4],
} as const;
const stokesAt20 = [0.0008985, 0.003594, 0.02246, 0.08985, 0.3594, 2.246, 3.566, 8.985, 35.94, 224.6, 898.5];
const quartz = (grain_um: number, temperature_C: number) => grainInWater(grain_um, 2650, temperature_C);

describe('fergusonChurchVelocity_m_per_s', () => {
  it.each([10, 20, 30] as const)('is that of quartz from 1 to 1,000 µm at %i °C', (temperature_C) => {
    for (const [index, grain_um] of sizes_um.entries()) {
      const got = fergusonChurchVelocity_m_per_s(quartz(grain_um, temperature_C)) * 1000;
      expect(Math.abs(got / byTemperature[temperature_C][index]! - 1)).toBeLessThan(1e-3);
    }
  });

  it('lets a sphere sink faster than a grain, and neither faster than Stokes', () => {
    for (const grain_um of sizes_um) {
      const grain = fergusonChurchVelocity_m_per_s(quartz(grain_um, 20));
      const sphere = fergusonChurchVelocity_m_per_s(quartz(grain_um, 20), 'sphere');
      expect(sphere).toBeGreaterThan(grain);
      expect(stokesVelocity_m_per_s(quartz(grain_um, 20))).toBeGreaterThan(sphere);
    }
  });

  it('is 0 for what floats, hangs in the water or has no size', () => {
    expect(fergusonChurchVelocity_m_per_s(grainInWater(50, 900, 20))).toBe(0);
    expect(fergusonChurchVelocity_m_per_s(grainInWater(0, 2650, 20))).toBe(0);
    const same = { ...quartz(50, 20), grainDensity_kg_per_m3: quartz(50, 20).waterDensity_kg_per_m3 };
    expect(fergusonChurchVelocity_m_per_s(same)).toBe(0);
    expect(stokesVelocity_m_per_s(same)).toBe(0);
  });
});

describe('stokesVelocity_m_per_s', () => {
  it('is that of quartz at 20 °C, whatever its size', () => {
    for (const [index, grain_um] of sizes_um.entries()) {
      const got = stokesVelocity_m_per_s(quartz(grain_um, 20)) * 1000;
      expect(Math.abs(got / stokesAt20[index]! - 1)).toBeLessThan(1e-3);
    }
  });
});
