import { describe, expect, it } from 'vitest';
import { boreArea_m2, emptyingTime_s, orificeFlow_m3_per_s } from './hydraulics.ts';

const perMinute = (flow_m3_per_s: number) => flow_m3_per_s * 60_000;

describe('orificeFlow_m3_per_s', () => {
  it('is 9.149, 12.94, 18.3 and 25.88 L/min through 10 mm at 0.5, 1, 2 and 4 m, worked out elsewhere by hand', () => {
    const flows = [0.5, 1, 2, 4].map((head_m) => perMinute(orificeFlow_m3_per_s(boreArea_m2(0.01), head_m, 0.62)));
    for (const [index, wanted] of [9.1494, 12.939, 18.299, 25.878].entries())
      expect(flows[index]! / wanted).toBeCloseTo(1, 4);
  });

  it('doubles with four times the head, and is nothing where the hole is above the water', () => {
    expect(orificeFlow_m3_per_s(1, 4, 0.6) / orificeFlow_m3_per_s(1, 1, 0.6)).toBeCloseTo(2, 12);
    expect(orificeFlow_m3_per_s(1, -0.2, 0.6)).toBe(0);
  });
});

describe('emptyingTime_s', () => {
  it('is 4.526 h for 100 L on 0.25 m² over a hole of 3 mm, worked out elsewhere by hand', () => {
    const time_h = emptyingTime_s(0.25, boreArea_m2(0.003), 0.4, 0, 0.62) / 3600;
    expect(time_h).toBeCloseTo(4.52583, 3);
  });

  it('takes twice as long as the first flow would, where it empties wholly', () => {
    const hole_m2 = boreArea_m2(0.003);
    const first_m3_per_s = orificeFlow_m3_per_s(hole_m2, 0.4, 0.62);
    expect(emptyingTime_s(0.25, hole_m2, 0.4, 0, 0.62)).toBeCloseTo((2 * 0.25 * 0.4) / first_m3_per_s, 6);
  });

  it('is the time from the top to the middle and from there to the foot', () => {
    const whole = emptyingTime_s(1, 0.001, 2, 0, 0.6);
    expect(emptyingTime_s(1, 0.001, 2, 0.7, 0.6) + emptyingTime_s(1, 0.001, 0.7, 0, 0.6)).toBeCloseTo(whole, 8);
  });

  it('rises never, and without a hole has no end', () => {
    expect(emptyingTime_s(1, 0.001, 1, 2, 0.6)).toBe(0);
    expect(emptyingTime_s(1, 0, 1, 0, 0.6)).toBe(Infinity);
  });
});
