import { describe, expect, it } from 'vitest';
import { handPower_W, handPumped_m3_per_s } from './handPumping.ts';

describe('handPower_W', () => {
  it('is 65.26 W of water for 100 L/min lifted 4 m, twice that at the handle of a pump of efficiency 0.5', () => {
    expect(handPower_W(4, 0.1 / 60, 998.2, 1)).toBeCloseTo(65.26, 1);
    expect(handPower_W(4, 0.1 / 60, 998.2, 0.5)).toBeCloseTo(2 * 65.26, 1);
  });

  it('is nothing where the water comes by itself', () => {
    expect(handPower_W(-2, 0.001, 998, 0.5)).toBe(0);
  });
});

describe('handPumped_m3_per_s', () => {
  it('is the flow that takes just this power', () => {
    const flow = handPumped_m3_per_s(40, 6, 998, 0.5);
    expect(handPower_W(6, flow, 998, 0.5)).toBeCloseTo(40, 12);
  });
});
