import { describe, expect, it } from 'vitest';
import type { Crew, RolloutProblem } from '../problem.ts';
import { crewsAtWork, earliestEnd, longestSpan } from './crewDays.ts';

/** One crew that works on the days written as 1. */
const problemOf = (...calendars: readonly string[]) =>
  ({
    horizon_days: calendars[0]!.length,
    crews: calendars.map((days) => ({ works: Uint8Array.from(days, Number), freeFrom: 0 }) as unknown as Crew),
  }) as unknown as RolloutProblem;

describe('crewsAtWork', () => {
  it('counts crews by day, and goes on after the last working day of each', () => {
    expect([...crewsAtWork(problemOf('11011', '10100'), 2)]).toEqual([2, 1, 1, 2, 2, 1, 1]);
  });
});

describe('longestSpan', () => {
  it('counts the rest that lies between working days', () => {
    expect(longestSpan(problemOf('1100111'), 1)).toBe(3);
    expect(longestSpan(problemOf('1100111'), 0.25)).toBe(2.25);
    expect(longestSpan(problemOf('1101011'), 2)).toBe(4);
    expect(longestSpan(problemOf('1111'), 2)).toBe(2);
  });
});

describe('earliestEnd', () => {
  it('is the day on which the first crew has worked so many', () => {
    expect(earliestEnd(problemOf('1100111'), 0, 2)).toBe(1);
    expect(earliestEnd(problemOf('1100111'), 0, 2.5)).toBe(4);
    expect(earliestEnd(problemOf('1100111', '0011111'), 0, 2.5)).toBe(4);
    expect(earliestEnd(problemOf('1100111'), 1.5, 1)).toBe(4);
    expect(earliestEnd(problemOf('1100111'), 0, 9)).toBe(7);
  });
});
