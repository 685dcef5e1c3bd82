import { describe, expect, it } from 'vitest';
import { daysApart, fastMachine } from './fastMachine.ts';

const always = (crews: number, days = 40) => new Float64Array(days).fill(crews);

describe('fastMachine', () => {
  it('is the very optimum of one crew without first days: Smith’s order', () => {
    // Weight for length 1.5 before 1: ends at 2 and 3, by hand 3 x 2 + 1 x 3.
    const jobs = [
      { weight: 1, length_days: 1, from: 0 },
      { weight: 3, length_days: 2, from: 0 },
    ];
    expect(fastMachine(jobs, always(1), 'withinDay')).toBeCloseTo(9, 12);
    // By whole days they end on days 1 and 2.
    expect(fastMachine(jobs, always(1), 'byDay')).toBeCloseTo(3 * 1 + 1 * 2, 12);
  });

  it('waits for first days, and lets the more urgent one in between', () => {
    // Job A (weight 1, 3 days) runs on days 0 and 2 to 3, job B (weight 4, 1 day) on day 1, its first: mean times of A 0.5, 2.5, 3.5.
    const jobs = [
      { weight: 1, length_days: 3, from: 0 },
      { weight: 4, length_days: 1, from: 1 },
    ];
    const meanOfA = (0.5 + 2.5 + 3.5) / 3;
    expect(fastMachine(jobs, always(1), 'withinDay')).toBeCloseTo(1 * (meanOfA + 1.5) + 4 * (1.5 + 0.5), 12);
  });

  it('rests where the crews rest', () => {
    const jobs = [{ weight: 2, length_days: 2, from: 0 }];
    expect(fastMachine(jobs, Float64Array.of(0, 1, 0, 1, 1), 'byDay')).toBeCloseTo(2 * ((1 + 3) / 2 + 0.5), 12);
  });

  it('counts what finds no day after the horizon', () => {
    expect(fastMachine([{ weight: 1, length_days: 2, from: 0 }], Float64Array.of(1), 'byDay')).toBeCloseTo(
      (0 + 1) / 2 + 0.5,
      12,
    );
  });

  it('is less with two crews, and never under what each job takes alone', () => {
    const jobs = [1, 2, 3, 4].map((weight) => ({ weight, length_days: 3, from: 0 }));
    const two = fastMachine(jobs, always(2), 'withinDay');
    expect(two).toBeLessThan(fastMachine(jobs, always(1), 'withinDay'));
    expect(two).toBeGreaterThan(10 * 1.5);
  });
});

describe('daysApart', () => {
  it.each([
    [1, 0],
    [0.5, 0],
    [3, 1],
    [2.5, 0.8],
  ])('%d days of work', (length_days, apart_days) => {
    expect(daysApart(length_days)).toBeCloseTo(apart_days, 12);
  });
});
