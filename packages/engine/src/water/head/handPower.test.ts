import { describe, expect, it } from 'vitest';
import { handPower_W, handPumped_m3_per_s, labourerPower_W } from './handPower.ts';

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

describe('labourerPower_W', () => {
  it('is 187, 97.7 and 77 W for 12 minutes, 4 and 8 hours, and never under 0', () => {
    expect(labourerPower_W(12)).toBeCloseTo(187, 0);
    expect(labourerPower_W(240)).toBeCloseTo(97.7, 1);
    expect(labourerPower_W(480)).toBeCloseTo(77, 0);
    expect(labourerPower_W(1e9)).toBe(0);
  });
});
