import { describe, expect, it } from 'vitest';
import { lineByMinute_L, peakArrivals_L_per_min, peakLines, tapsFlow_L_per_min } from './peakLines.ts';

const day = { litres_L_per_day: 1500, morning_fraction: 0.4, evening_fraction: 0.4, between_h: 9 };

describe('peakArrivals_L_per_min', () => {
  it('is 10 L a minute in the peaks and 0.56 between them, 1,500 L in all', () => {
    const arrivals = peakArrivals_L_per_min(day);
    expect(arrivals).toHaveLength(60 + 540 + 60);
    expect(arrivals[0]).toBeCloseTo(10, 12);
    expect(arrivals[300]).toBeCloseTo(300 / 540, 12);
    expect(arrivals.at(-1)).toBeCloseTo(10, 12);
    expect(arrivals.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1500, 9);
  });

  it('holds the litres of the day where all come in the peaks', () => {
    const arrivals = peakArrivals_L_per_min({ ...day, morning_fraction: 0.3, evening_fraction: 0.7 });
    expect(arrivals.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1500, 9);
  });
});

describe('tapsFlow_L_per_min', () => {
  it('is that of the taps, or of the unit where it gives less', () => {
    expect(tapsFlow_L_per_min(2, 7.5, 20)).toBe(15);
    expect(tapsFlow_L_per_min(2, 7.5, 6)).toBe(6);
  });
});

describe('peakLines', () => {
  it('has no line where the taps give what is asked', () => {
    const { morning, evening } = peakLines(day, 10);
    expect(morning).toMatchObject({ possible_L: 600, longestLine_L: 0, lastWait_min: 0, goneAfter_min: 0 });
    expect(morning.asked_L).toBeCloseTo(600, 9);
    expect(evening.goneAfter_min).toBe(0);
  });

  it('keeps the last waiting 15 min at 8 L/min for 10, worked out by hand', () => {
    const { morning, evening } = peakLines(day, 8);
    // 60 min × 2 L/min = 120 L wait at the end: 15 min; then 8 − 0.5556 L/min work them off.
    expect(morning.longestLine_L).toBeCloseTo(120, 9);
    expect(morning.lastWait_min).toBeCloseTo(15, 9);
    expect(morning.goneAfter_min).toBeCloseTo(60 + 120 / (8 - 300 / 540), 9);
    // In the evening nobody comes after: 120 L at 8 L/min.
    expect(evening.lastWait_min).toBeCloseTo(15, 9);
    expect(evening.goneAfter_min).toBeCloseTo(60 + 15, 9);
  });

  it('carries the line of the morning into the evening where the hours between do not suffice', () => {
    // 1,500 L at 1 L/min: 540 L wait after the morning, 540 + 300 − 540 = 300 L before the evening, 840 L after it.
    const { morning, evening } = peakLines(day, 1);
    expect(morning.lastWait_min).toBeCloseTo(540, 6);
    expect(morning.goneAfter_min).toBeCloseTo(660 + 840, 6);
    expect(evening.longestLine_L).toBeCloseTo(840, 6);
    expect(evening.goneAfter_min).toBeCloseTo(60 + 840, 6);
  });

  it('ends where nothing flows in a wait without end, and where nothing is asked in none', () => {
    const { morning } = peakLines(day, 0);
    expect(morning).toMatchObject({ possible_L: 0, lastWait_min: Infinity, goneAfter_min: Infinity });
    expect(peakLines({ ...day, litres_L_per_day: 0 }, 0).evening).toMatchObject({
      asked_L: 0,
      longestLine_L: 0,
      lastWait_min: 0,
      goneAfter_min: 0,
    });
  });
});

describe('lineByMinute_L', () => {
  it('lets a line within a peak go again', () => {
    expect(lineByMinute_L([5, 5, 0, 0, 0], 3)).toEqual([2, 4, 1, 0, 0]);
  });
});
