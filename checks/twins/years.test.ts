import {
  allSizes,
  askedDaysOf,
  type Balance,
  dayByDay,
  drawnRecords,
  drawYears,
  dryRuns,
  goodYearsAt,
  judgedRules,
  type PoolYear,
  tankForDays,
  tankForRuns,
  type WaterYear,
  yearNeeds,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { numbersFrom, wholeRecord } from './records.ts';

/** A whole-litre record cut into adjoining years of uneven length, some not judged. */
function recordWithYears(seed: number): { balance: Balance; years: WaterYear[] } {
  const next = numbersFrom(seed + 99);
  for (let i = 0; i < 8; i++) next();
  const balance = wholeRecord(seed);
  const days = balance.inflow_L.length;
  const years: WaterYear[] = [];
  for (let from = 0; from < days; ) {
    const to = Math.min(days, from + 1 + Math.floor(next() * 20));
    years.push({ label: 2000 + years.length, from, to, missing_days: 0, judged: next() < 0.85 });
    from = to;
  }
  return { balance, years };
}

/** Length of the dry run that ends on each day, counted backwards day by day around the loop. */
function runLengths(dry: Uint8Array): number[] {
  const days = dry.length;
  return [...dry].map((_, day) => {
    let length = 0;
    while (length < days && dry[(day - length + days) % days] === 1) length++;
    return length;
  });
}

describe('years read off every size at once against counting in a plain run', () => {
  it('the need of a year is the volume from which its dry runs stay within the limit', () => {
    for (let seed = 0; seed < 2000; seed++) {
      const { balance, years } = recordWithYears(seed);
      const limit = seed % 4;
      const { critical_L } = allSizes(balance, { ...judgedRules, order: 'drawFirst' });
      const needs = yearNeeds(critical_L, years, limit);
      const volumes = [0, ...needs].filter(Number.isFinite).flatMap((c) => [Math.max(0, c - 0.5), c, c + 0.5]);
      for (const volume of [...volumes, 1e6]) {
        const run = dayByDay(balance, volume, judgedRules);
        const lengths = runLengths(run.dry);
        const longest = years.map((year) => Math.max(...lengths.slice(year.from, year.to)));
        const good = years.filter((year, i) => year.judged && longest[i]! <= limit).length;
        expect(goodYearsAt(needs, volume)).toBe(good);
        expect(dryRuns(run.dry, years, 0).longestByYear_days).toEqual(longest);
      }
    }
  });

  it('the smallest tank for a share of days or years meets it, and nothing smaller does', () => {
    for (let seed = 0; seed < 2000; seed++) {
      const { balance, years } = recordWithYears(seed);
      if (!years.some((year) => year.judged)) continue;
      const { critical_L } = allSizes(balance, { ...judgedRules, order: 'drawFirst' });
      const share = [0.5, 0.8, 0.95, 1][seed % 4]!;
      // Days on which nothing is asked are no part of the share.
      const isAsked = (day: number) =>
        balance.judged_L[day]! > 0 && years.some((year) => year.judged && year.from <= day && day < year.to);
      const asked = [...balance.judged_L.keys()].filter(isAsked);
      const metShare = (volume: number) => {
        const { dry } = dayByDay(balance, volume, judgedRules);
        return asked.filter((day) => dry[day] === 0).length >= share * asked.length - 1e-9;
      };
      expect(askedDaysOf(balance.judged_L, years)).toBe(asked.length);
      const forDays = tankForDays(critical_L, years, asked.length, share);
      if (forDays === null) expect(metShare(1e9)).toBe(false);
      else {
        expect(metShare(forDays)).toBe(true);
        if (forDays > 0) expect(metShare(forDays - 0.5)).toBe(false);
      }
      const needs = yearNeeds(critical_L, years, 2);
      const forRuns = tankForRuns(needs, share);
      const goodShare = (volume: number) => goodYearsAt(needs, volume) >= share * needs.length - 1e-9;
      if (forRuns === null) expect(goodShare(1e9)).toBe(false);
      else {
        expect(goodShare(forRuns)).toBe(true);
        if (forRuns > 0) expect(goodShare(forRuns - 0.5)).toBe(false);
      }
    }
  });
});

/** The drawn years joined end to end, each with its water multiplied. */
function joinedRecord(balance: Balance, drawn: readonly PoolYear[]): { joined: Balance; years: WaterYear[] } {
  const join = (values: Float64Array, ofWater: boolean) =>
    Float64Array.from(
      drawn.flatMap(({ year, inflowFactor }) =>
        [...values.slice(year.from, year.to)].map((value) => (ofWater ? value * inflowFactor : value)),
      ),
    );
  let from = 0;
  const years = drawn.map(({ year }) => {
    const own = { ...year, from, to: from + year.to - year.from };
    from = own.to;
    return own;
  });
  const joined = {
    inflow_L: join(balance.inflow_L, true),
    judged_L: join(balance.judged_L, false),
    other_L: join(balance.other_L, false),
  };
  return { joined, years };
}

describe('years drawn again', () => {
  it('gives the dry days and the good years of a plain run over the drawn years, joined end to end', () => {
    let [compared, bad] = [0, 0];
    for (let seed = 0; seed < 1500; seed++) {
      const { balance, years } = recordWithYears(seed);
      const judged = years.filter((year) => year.judged);
      if (judged.length === 0) continue;
      // Halves and doubles of whole litres are exact.
      const pool = [
        ...judged.map((year) => ({ year, inflowFactor: 1 })),
        { year: judged[0]!, inflowFactor: 0.5 },
        { year: judged.at(-1)!, inflowFactor: 2 },
      ];
      const drawn = drawYears(judged.length, 3, seed);
      const limit = seed % 5;
      for (const volume of [0, 3, 11, 40]) {
        const found = drawnRecords(balance, pool, volume, limit, drawn);
        for (let draw = 0; draw < 3; draw++) {
          const positions = drawn.positions.slice(draw * judged.length, (draw + 1) * judged.length);
          const order = [...positions].map((position) => pool[position]!);
          const { joined, years: own } = joinedRecord(balance, order);
          // A loop shorter than the limit holds no run over it.
          if (joined.inflow_L.length <= limit) continue;
          const { dry } = dayByDay(joined, volume, judgedRules);
          const lengths = runLengths(dry);
          const good = own.filter((year) => Math.max(...lengths.slice(year.from, year.to)) <= limit).length;
          expect(found.dryDays_per_year[draw]).toBeCloseTo(dry.reduce((sum, day) => sum + day, 0) / own.length, 12);
          expect(found.goodYears_fraction[draw]).toBeCloseTo(good / own.length, 12);
          compared++;
          if (good < own.length) bad++;
        }
      }
    }
    expect(compared).toBeGreaterThan(15_000);
    expect(bad).toBeGreaterThan(3_000);
  });
});
