import { describe, expect, it } from 'vitest';
import { meanReduction_log10, parallelReduction_log10, reductionWithDaysOff_log10 } from './meanReduction.ts';

describe('meanReduction_log10', () => {
  it('is of what is left: half untreated leaves half, a log reduction of 0.301', () => {
    const shares = [
      { share_factor: 3, reduction_log10: 0 },
      { share_factor: 3, reduction_log10: Infinity },
    ];
    expect(meanReduction_log10(shares)).toBeCloseTo(Math.log10(2), 12);
  });

  it('is unknown without water, and 0, not −0, where nothing is treated', () => {
    expect(meanReduction_log10([])).toBeNull();
    expect(meanReduction_log10([{ share_factor: 0, reduction_log10: 3 }])).toBeNull();
    expect(meanReduction_log10([{ share_factor: 1, reduction_log10: 0 }])).toBe(0);
  });
});

describe('parallelReduction_log10', () => {
  const tight = { flow_L_per_min: 5, reduction_log10: 6, leak_fraction: 0 };

  it('is that of each where all are alike and tight', () => {
    expect(parallelReduction_log10([tight, tight, tight])).toBeCloseTo(6, 12);
  });

  it('is capped by one that leaks: 0.8 % of one of three alike leaves 1 in 375', () => {
    expect(parallelReduction_log10([tight, tight, { ...tight, leak_fraction: 0.008 }])).toBeCloseTo(2.5739, 3);
  });

  it('counts a leak by its flow', () => {
    const thirsty = { flow_L_per_min: 10, reduction_log10: 6, leak_fraction: 0.01 };
    expect(parallelReduction_log10([tight, thirsty])).toBeCloseTo(-Math.log10((0.1 + 14.9e-6) / 15), 12);
    expect(parallelReduction_log10([{ ...tight, flow_L_per_min: 0 }])).toBeNull();
  });
});

describe('reductionWithDaysOff_log10', () => {
  it('takes days under 0 and over a year as none and all of them', () => {
    expect(reductionWithDaysOff_log10(5, -3)).toBeCloseTo(5, 12);
    expect(reductionWithDaysOff_log10(5, 400)).toBe(0);
  });
});
