import { describe, expect, it } from 'vitest';
import { handleForce_N, strokeFlow_L_per_min, strokeVolume_L } from './handStrokes.ts';

describe('a piston pump', () => {
  it('of 50 mm sweeps 0.294524 L in 150 mm, and gives 10.6029 L in 40 strokes of which 0.9 come out, worked out elsewhere', () => {
    expect(strokeVolume_L(50, 150, 1)).toBeCloseTo(0.294524, 6);
    expect(strokeFlow_L_per_min(40, strokeVolume_L(50, 150, 0.9))).toBeCloseTo(10.6029, 4);
  });

  it('of 50 mm takes 196 N at 100 kPa, and 49 N at a handle of 4 to 1, worked out elsewhere', () => {
    expect(handleForce_N(100, 50, 1, 1)).toBeCloseTo(196.3, 1);
    expect(handleForce_N(100, 50, 4, 1)).toBeCloseTo(49.1, 1);
    expect(handleForce_N(100, 50, 4, 0.5)).toBeCloseTo(98.2, 1);
  });

  it('that water pushes by itself takes no force', () => {
    expect(handleForce_N(-20, 50, 4, 1)).toBe(0);
  });

  it('does the work at the handle that reaches the water', () => {
    // One stroke: force at the handle × its way = pressure × litres of the whole stroke ÷ efficiency.
    const [pressure_kPa, bore_mm, stroke_mm, lever_ratio, efficiency] = [80, 63, 120, 5, 0.6];
    const work_J = handleForce_N(pressure_kPa, bore_mm, lever_ratio, efficiency) * lever_ratio * (stroke_mm / 1000);
    expect(work_J).toBeCloseTo((pressure_kPa * strokeVolume_L(bore_mm, stroke_mm, 1)) / efficiency, 9);
  });
});
