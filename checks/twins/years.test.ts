import {
  allSizes,
  askedDaysOf,
  type Balance,
  dayByDay,
  drawYears,
  dryRuns,
  goodYearsAt,
  judgedRules,
  resampledDryDays,
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

describe('years drawn again', () => {
  it('gives the 5 % and 95 % points of the draws, each run day by day', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { balance, years } = recordWithYears(seed);
      const judged = years.filter((year) => year.judged);
      if (judged.length === 0) continue;
      const drawn = drawYears(judged.length, 21, seed);
      const join = (values: Float64Array, draw: number) =>
        Float64Array.from(
          [...drawn.positions.slice(draw * judged.length, (draw + 1) * judged.length)].flatMap((position) => [
            ...values.slice(judged[position]!.from, judged[position]!.to),
          ]),
        );
      const dryDays = Array.from({ length: 21 }, (_, draw) => {
        const joined = {
          inflow_L: join(balance.inflow_L, draw),
          judged_L: join(balance.judged_L, draw),
          other_L: join(balance.other_L, draw),
        };
        return dayByDay(joined, 11, judgedRules).dry.reduce((sum, day) => sum + day, 0) / judged.length;
      }).sort((a, b) => a - b);
      const range = resampledDryDays(balance, years, 11, drawn, 0.9);
      // Of 21 sorted draws, the 5 % point is the second and the 95 % point the twentieth.
      expect(range.low).toBeCloseTo(dryDays[1]!, 12);
      expect(range.high).toBeCloseTo(dryDays[19]!, 12);
    }
  });

  it('gives what a plain run over the drawn years, joined end to end, gives', () => {
    for (let seed = 0; seed < 300; seed++) {
      const { balance, years } = recordWithYears(seed);
      const judged = years.filter((year) => year.judged);
      if (judged.length === 0) continue;
      const drawn = drawYears(judged.length, 1, seed);
      const order = [...drawn.positions].map((position) => judged[position]!);
      const join = (values: Float64Array) => Float64Array.from(order.flatMap((y) => [...values.slice(y.from, y.to)]));
      const joined = {
        inflow_L: join(balance.inflow_L),
        judged_L: join(balance.judged_L),
        other_L: join(balance.other_L),
      };
      for (const volume of [0, 3, 11, 40]) {
        const range = resampledDryDays(balance, years, volume, drawn, 0.9);
        const dry = dayByDay(joined, volume, judgedRules).dry.reduce((sum, day) => sum + day, 0);
        expect(range.low).toBeCloseTo(dry / judged.length, 12);
      }
    }
  });
});
