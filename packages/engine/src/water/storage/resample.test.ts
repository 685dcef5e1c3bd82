import { describe, expect, it } from 'vitest';
import { drawYears } from './drawYears.ts';
import { drawnRecords } from './resample.ts';

/** Years of so many days, from the inflow of each; 3 L are asked a day. */
function recordOf(...inflows: readonly (readonly number[])[]) {
  const inflow_L = Float64Array.from(inflows.flat());
  const days = inflow_L.length;
  let from = 0;
  const pool = inflows.map((inflow, i) => {
    const year = { label: 2001 + i, from, to: from + inflow.length, missing_days: 0, judged: true };
    from = year.to;
    return { year, inflowFactor: 1 };
  });
  return { balance: { inflow_L, judged_L: new Float64Array(days).fill(3), other_L: new Float64Array(days) }, pool };
}

const draw = (...positions: readonly number[]) => ({
  draws: 1,
  length: positions.length,
  positions: Uint16Array.from(positions),
});

describe('drawnRecords', () => {
  it('has no spread where every year is the same', () => {
    const { balance, pool } = recordOf([9, 0, 0, 0], [9, 0, 0, 0], [9, 0, 0, 0]);
    const found = drawnRecords(balance, [...pool, pool[0]!, pool[0]!], 100, 0, drawYears(3, 100, 1));
    // 9 L come a year and 12 L are asked: one day of four is dry, whichever years are drawn.
    expect(new Set(found.dryDays_per_year)).toEqual(new Set([1]));
    expect(new Set(found.goodYears_fraction)).toEqual(new Set([0]));
  });

  it('counts a dry run across the turn of two years, and across the seam, in the year it grows too long in', () => {
    // Year 0: dry on its first two days, then three days' litres. Year 1: dry on its first two and its last two.
    const { balance, pool } = recordOf([0, 9, 0, 0, 0], [0, 3, 0, 0, 0]);
    const at = (limit: number, ...positions: readonly number[]) =>
      drawnRecords(balance, pool, 9, limit, draw(...positions));
    expect([...at(4, 0, 0).dryDays_per_year]).toEqual([2]);
    expect([...at(2, 0, 0).goodYears_fraction]).toEqual([1]);
    expect([...at(1, 0, 0).goodYears_fraction]).toEqual([0]);
    // The run of four, two days of each year, has grown to four in year 0.
    expect([...at(4, 1, 0).goodYears_fraction]).toEqual([1]);
    expect([...at(3, 1, 0).goodYears_fraction]).toEqual([0.5]);
    expect([...at(3, 0, 1).goodYears_fraction]).toEqual([0.5]);
    expect([...at(3, 0, 1).dryDays_per_year]).toEqual([3]);
  });

  it('multiplies the water of a year beyond the extremes', () => {
    const { balance, pool } = recordOf([6, 0, 0, 0]);
    const [one] = pool;
    const halved = drawnRecords(balance, [{ ...one!, inflowFactor: 0.5 }], 100, 0, draw(0));
    const asItWas = drawnRecords(balance, pool, 100, 0, draw(0));
    expect([asItWas.dryDays_per_year[0], halved.dryDays_per_year[0]]).toEqual([2, 3]);
  });

  it('refuses an empty pool', () => {
    expect(() => drawnRecords(recordOf([1]).balance, [], 1, 0, draw(0))).toThrow(RangeError);
  });
});
