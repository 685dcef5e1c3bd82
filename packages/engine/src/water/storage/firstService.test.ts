import { describe, expect, it } from 'vitest';
import { readIsoDay } from '../../kernel/index.ts';
import { firstServiceDay } from './firstService.ts';

const first = readIsoDay('2001-01-01')!;

function balanceOf(rain: (day: number) => number, judged: number) {
  const days = 3 * 365;
  return {
    inflow_L: Float64Array.from({ length: days }, (_, day) => rain(day % 365)),
    judged_L: new Float64Array(days).fill(judged),
    other_L: new Float64Array(days),
  };
}

describe('firstServiceDay', () => {
  it('is the morning after the first rain that brings a whole day', () => {
    // Rain too small on 20 January, enough on 30 January, every year.
    const balance = balanceOf((day) => (day === 19 ? 50 : day === 29 ? 200 : 0), 100);
    const found = firstServiceDay(balance, first, 1000, readIsoDay('2026-01-11')!);
    expect(found).toMatchObject({ wait_days: 20, wait_days_range: { low: 20, high: 20 } });
    expect(found?.firstServiceDay).toBe(readIsoDay('2026-01-31'));
  });

  it('looks on into the next year where the rest of the year stays dry', () => {
    const balance = balanceOf((day) => (day === 0 ? 200 : 0), 100);
    expect(firstServiceDay(balance, first, 1000, readIsoDay('2026-12-31')!)?.wait_days).toBe(2);
  });

  it('is null where the tank is too small for a day, or no rain is enough', () => {
    const balance = balanceOf((day) => (day === 29 ? 200 : 0), 100);
    expect(firstServiceDay(balance, first, 90, readIsoDay('2026-01-11')!)).toBeNull();
    expect(
      firstServiceDay(
        balanceOf(() => 20, 100),
        first,
        1000,
        readIsoDay('2026-01-11')!,
      ),
    ).toBeNull();
  });

  it('does not count a day on which nothing is asked, and keeps its rain for the first day on which something is', () => {
    // Nobody is there for the first 30 days; 60 L a day come on three of them, and 20 L a day go to other purposes.
    const balance = balanceOf((day) => (day >= 10 && day < 13 ? 60 : 0), 100);
    balance.judged_L.forEach((_, day) => {
      if (day % 365 < 30) balance.judged_L[day] = 0;
    });
    const handOver = readIsoDay('2026-01-01')!;
    expect(firstServiceDay(balance, first, 1000, handOver)?.wait_days).toBe(30);
    balance.other_L.forEach((_, day) => {
      if (day % 365 < 30) balance.other_L[day] = 20;
    });
    // 180 L less 20 L on each of the two following rain days and on every day from 14 January on: nothing is left, nor ever enough.
    expect(firstServiceDay(balance, first, 1000, handOver)).toBeNull();
  });

  it('takes a hand-over on 29 February on the 28th where there is none', () => {
    const balance = balanceOf((day) => (day === 59 ? 200 : 0), 100);
    expect(firstServiceDay(balance, first, 1000, readIsoDay('2028-02-29')!)?.wait_days).toBe(2);
  });
});
