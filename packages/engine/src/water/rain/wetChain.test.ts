import { describe, expect, it } from 'vitest';
import { chainFromWetDays, spellLengths, type WetChain, wetDayMoments, wetShare } from './wetChain.ts';

const chain = (wetAfterDry_fraction: number, wetAfterWet_fraction: number): WetChain => ({
  wetAfterDry_fraction,
  wetAfterWet_fraction,
});

/** Mean and variance of the number of wet days, by the chance of every count, day by day. */
function counted({ wetAfterDry_fraction: p01, wetAfterWet_fraction: p11 }: WetChain, days: number) {
  const share = p01 / (1 + p01 - p11);
  let dry = [1 - share, 0];
  let wet = [0, share];
  for (let day = 1; day < days; day++) {
    const nextDry = [...dry.map((p, k) => p * (1 - p01) + wet[k]! * (1 - p11)), 0];
    const nextWet = [0, ...dry.map((p, k) => p * p01 + wet[k]! * p11)];
    [dry, wet] = [nextDry, nextWet];
  }
  const chances = dry.map((p, k) => p + wet[k]!);
  const mean = chances.reduce((sum, p, k) => sum + p * k, 0);
  return { mean, variance: chances.reduce((sum, p, k) => sum + p * (k - mean) ** 2, 0) };
}

describe('the chain of wet days', () => {
  it('has the share of wet days it was made for', () => {
    for (const share of [0, 0.01, 0.3, 0.77, 1]) expect(wetShare(chainFromWetDays(share))).toBeCloseTo(share, 14);
    expect(() => chainFromWetDays(1.01)).toThrow(RangeError);
    expect(() => wetShare(chain(0, 1))).toThrow(RangeError);
  });

  it('has the moments that counting every course of the days gives', () => {
    for (const one of [chain(0.25, 0.66), chain(0.05, 0.9), chain(0.6, 0.2), chain(1, 0), chain(0, 0), chain(1, 1)])
      for (const days of [1, 2, 7, 30, 31]) {
        const { mean, variance } = counted(one, days);
        const found = wetDayMoments(one, days);
        expect(found.mean_days).toBeCloseTo(mean, 10);
        expect(found.sd_days ** 2).toBeCloseTo(variance, 10);
      }
  });

  it('has spells of their geometric means, and none that end where rain never begins', () => {
    expect(spellLengths(chain(0.25, 0.66)).dry_days).toBe(4);
    expect(spellLengths(chain(0.25, 0.66)).wet_days).toBeCloseTo(2.941, 3);
    expect(spellLengths(chain(0, 0)).dry_days).toBe(Infinity);
  });
});
