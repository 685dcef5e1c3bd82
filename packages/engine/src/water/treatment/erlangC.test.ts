import { describe, expect, it } from 'vitest';
import { erlangMeanWait_min, erlangWaiting_fraction } from './erlangC.ts';

describe('erlangWaiting_fraction', () => {
  it('is the load itself at one tap, and a² ÷ (2 + a) at two, as closed forms say', () => {
    for (const load of [0.1, 0.5, 0.9, 0.999]) {
      expect(erlangWaiting_fraction(load, 1)).toBeCloseTo(load, 12);
      const two = 2 * load;
      expect(erlangWaiting_fraction(two, 2)).toBeCloseTo((two * two) / (2 + two), 12);
    }
  });

  it('is 0 where nobody comes and 1 where too many do', () => {
    expect(erlangWaiting_fraction(0, 3)).toBe(0);
    expect(erlangWaiting_fraction(3, 3)).toBe(1);
    expect(erlangWaiting_fraction(4, 3)).toBe(1);
  });

  it('keeps its digits with a thousand taps', () => {
    const many = erlangWaiting_fraction(990, 1000);
    expect(many).toBeGreaterThan(0.5);
    expect(many).toBeLessThan(1);
  });
});

describe('erlangMeanWait_min', () => {
  it('is load ÷ (1 − load) services at one tap', () => {
    expect(erlangMeanWait_min(0.2, 4, 1)).toBeCloseTo((4 * 0.8) / 0.2, 12);
  });

  it('is 0 where nobody comes and endless where too many do', () => {
    expect(erlangMeanWait_min(0, 4, 1)).toBe(0);
    expect(erlangMeanWait_min(1, 4, 4)).toBe(Infinity);
  });
});
