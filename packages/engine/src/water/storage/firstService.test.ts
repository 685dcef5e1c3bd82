import { describe, expect, it } from 'vitest';
import { readIsoDay } from '../../kernel/index.ts';
import { firstServiceDay as firstServiceOf } from './firstService.ts';

const first = readIsoDay('2001-01-01')!;

const allJudged = [{ from: 0, to: 3 * 365, judged: true }];
const firstServiceDay = (
  balance: Parameters<typeof firstServiceOf>[0],
  firstDay: number,
  volume: number,
  day: number,
  years = allJudged,
) => firstServiceOf(balance, firstDay, volume, day, years);

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

  /** Four years whose first rain comes so many days after 11 January; each serves the morning after. */
  const waiting = (...rainAfter: readonly number[]) => {
    const balance = {
      inflow_L: new Float64Array(4 * 366),
      judged_L: new Float64Array(4 * 366).fill(100),
      other_L: new Float64Array(4 * 366),
    };
    rainAfter.forEach((days, year) => {
      balance.inflow_L[readIsoDay(`${2001 + year}-01-11`)! - first + days] = 500;
    });
    return balance;
  };
  const day = readIsoDay('2026-01-11')!;

  it('rounds the median up, the low end down and the high end up', () => {
    const four = [{ from: 0, to: 4 * 366, judged: true }];
    const found = firstServiceDay(waiting(9, 19, 22, 39), first, 1000, day, four)!;
    // Waits of 10, 20, 23 and 40 days: median 21.5; a tenth of the way 13; nine tenths 34.9.
    expect(found.wait_days).toBe(22);
    expect(found.wait_days_range).toEqual({ low: 13, high: 35 });
    expect(found.firstServiceDay).toBe(day + 22);
    const close = firstServiceDay(waiting(9, 10, 11, 12), first, 1000, day, four)!;
    // Waits of 10 to 13 days: a tenth of the way 10.3, nine tenths 12.7.
    expect(close.wait_days_range).toEqual({ low: 10, high: 13 });
  });

  it('tries only hand-overs in judged years', () => {
    const years = [
      { from: 0, to: 365, judged: true },
      { from: 365, to: 730, judged: false },
      { from: 730, to: 1464, judged: true },
    ];
    const found = firstServiceDay(waiting(9, 300, 9, 9), first, 1000, day, years)!;
    expect(found.wait_days_range).toEqual({ low: 10, high: 10 });
    expect(firstServiceDay(waiting(9, 9, 9, 9), first, 1000, day, [{ from: 0, to: 1464, judged: false }])).toBeNull();
  });
});
