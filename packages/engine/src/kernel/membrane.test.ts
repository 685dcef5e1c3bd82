import { describe, expect, it } from 'vitest';
import {
  flowAtReference,
  headOfPressure_m,
  membraneFlux_L_per_m2_per_h,
  membraneResistance_per_m,
  pressureOfHead_kPa,
  unitFlow_L_per_min,
  unitPressure_kPa,
  unitResistance_per_m3,
} from './membrane.ts';

describe('membraneResistance_per_m', () => {
  it('is 3.6e12, 1.44e12, 7.2e11 and 3.6e11 for 100, 250, 500 and 1,000 L/m²/h/bar, worked out elsewhere', () => {
    for (const [permeability, wanted] of [
      [100, 3.6e12],
      [250, 1.44e12],
      [500, 7.2e11],
      [1000, 3.6e11],
    ] as const)
      expect(Math.abs(membraneResistance_per_m(permeability) / wanted - 1)).toBeLessThan(5e-3);
  });
});

describe('membraneFlux_L_per_m2_per_h', () => {
  it('is the permeability at one bar and 20 °C, and half of it with as much again lying on the membrane', () => {
    const clean = membraneResistance_per_m(250);
    expect(membraneFlux_L_per_m2_per_h(100, 20, [clean])).toBeCloseTo(250, 9);
    expect(membraneFlux_L_per_m2_per_h(100, 20, [clean, clean / 2, clean / 2])).toBeCloseTo(125, 9);
    expect(membraneFlux_L_per_m2_per_h(-5, 20, [clean])).toBe(0);
  });
});

describe('a unit', () => {
  const clean = unitResistance_per_m3(5, 100, 25);

  it('gives what it is rated for, and takes that pressure for it', () => {
    expect(unitFlow_L_per_min(clean, 100, 25, 1)).toBeCloseTo(5, 12);
    expect(unitPressure_kPa(clean, 5, 25, 1)).toBeCloseTo(100, 9);
  });

  it('gives half when twice as worn, and 1.3059 ÷ 0.8900 times less at 10 than at 25 °C', () => {
    expect(unitFlow_L_per_min(clean, 100, 25, 2)).toBeCloseTo(2.5, 12);
    expect(5 / unitFlow_L_per_min(clean, 100, 10, 1)).toBeCloseTo(1.3059 / 0.89, 3);
    expect(unitFlow_L_per_min(clean, -1, 25, 1)).toBe(0);
  });

  it('is its membrane over its area', () => {
    const area_m2 = 7;
    const unit = membraneResistance_per_m(250) / area_m2;
    expect(unitFlow_L_per_min(unit, 100, 20, 1) * 60).toBeCloseTo(250 * area_m2, 9);
  });
});

describe('flowAtReference', () => {
  it('is 1.3038 times the flow at 10 °C: 1.3059 ÷ 1.0016', () => {
    expect(flowAtReference(1, 10)).toBeCloseTo(1.3059 / 1.0016, 4);
  });
});

describe('head and pressure', () => {
  it('are 0.4086, 0.664 and 1.5323 m for 40, 65 and 150 mbar, worked out elsewhere', () => {
    for (const [pressure_kPa, wanted] of [
      [4, 0.4086],
      [6.5, 0.664],
      [15, 1.5323],
    ] as const)
      expect(headOfPressure_m(pressure_kPa, 20)).toBeCloseTo(wanted, 3);
  });

  it('belong to each other', () => {
    expect(headOfPressure_m(pressureOfHead_kPa(3, 12), 12)).toBeCloseTo(3, 12);
  });
});
