import { describe, expect, test } from 'vitest';
import { demoRain } from './rain.ts';

const seeds = [1, 2, 3, 4, 5, 6];

function sumBy(dates: readonly string[], rain_mm: Float64Array, key: (date: string) => string): Map<string, number> {
  const sums = new Map<string, number>();
  for (const [i, date] of dates.entries()) sums.set(key(date), (sums.get(key(date)) ?? 0) + rain_mm[i]!);
  return sums;
}

/** Least content a tank of 30 mm of roof water comes to in each year, when 3 mm are drawn a day, as days without. */
function dryDaysByYear(dates: readonly string[], rain_mm: Float64Array): Map<string, number> {
  const dryDays = new Map<string, number>();
  let content_mm = 0;
  dates.forEach((date, i) => {
    const year = date.slice(0, 4);
    const dry = content_mm < 3;
    content_mm = Math.min(30, (dry ? 0 : content_mm - 3) + rain_mm[i]!);
    dryDays.set(year, (dryDays.get(year) ?? 0) + (dry ? 1 : 0));
  });
  return dryDays;
}

function worst(byYear: ReadonlyMap<string, number>, sign: 1 | -1): string {
  return [...byYear].sort((a, b) => sign * (b[1] - a[1]))[0]![0];
}

function correlation(a: Float64Array, b: Float64Array): number {
  const mean = (x: Float64Array) => x.reduce((s, v) => s + v, 0) / x.length;
  const [ma, mb] = [mean(a), mean(b)];
  let [ab, aa, bb] = [0, 0, 0];
  a.forEach((v, i) => {
    ab += (v - ma) * (b[i]! - mb);
    aa += (v - ma) ** 2;
    bb += (b[i]! - mb) ** 2;
  });
  return ab / Math.sqrt(aa * bb);
}

describe('the made rain', () => {
  test('covers 1994 to 2025 day by day', () => {
    const { dates, gauges } = demoRain(1);
    expect(dates[0]).toBe('1994-01-01');
    expect(dates.at(-1)).toBe('2025-12-31');
    expect(dates).toHaveLength(11688);
    for (const { rain_mm } of gauges) expect(rain_mm).toHaveLength(11688);
  });

  test.each(seeds)('is that of a humid chain with a marked dry season, seed %i', (seed) => {
    const { dates, gauges } = demoRain(seed);
    for (const { rain_mm } of gauges) {
      const mean_mm = rain_mm.reduce((sum, mm) => sum + mm, 0) / 32;
      expect(mean_mm).toBeGreaterThan(1600);
      expect(mean_mm).toBeLessThan(2600);
      const months = sumBy(dates, rain_mm, (date) => date.slice(5, 7));
      const dry = ['06', '07', '08', '09', '10'].map((month) => months.get(month)! / 32);
      const wet = ['12', '01', '02', '03', '04'].map((month) => months.get(month)! / 32);
      expect(Math.max(...dry)).toBeLessThan(130);
      expect(Math.min(...dry)).toBeGreaterThan(50);
      expect(Math.min(...wet)).toBeGreaterThan(1.5 * Math.max(...dry));
      expect(Math.max(...rain_mm)).toBeLessThan(500);
      expect(rain_mm.every((mm) => Math.abs(mm * 10 - Math.round(mm * 10)) < 1e-9)).toBe(true);
    }
  });

  test.each(seeds)('fails once, and worst, at every gauge, seed %i', (seed) => {
    const { dates, failedYear, gauges } = demoRain(seed);
    for (const { rain_mm } of gauges) {
      const season = sumBy(dates, rain_mm, (date) => (/-(0[4-9]|1[01])-/.test(date) ? date.slice(0, 4) : 'rest'));
      season.delete('rest');
      expect(worst(season, -1)).toBe(String(failedYear));
      expect(worst(dryDaysByYear(dates, rain_mm), 1)).toBe(String(failedYear));
    }
  });

  test('keeps its weather from day to day and shares it between gauges', () => {
    const { gauges } = demoRain(1);
    const [a, b, c] = gauges.map(({ rain_mm }) => rain_mm);
    for (const other of [b!, c!]) {
      expect(correlation(a!, other)).toBeGreaterThan(0.35);
      expect(correlation(a!, other)).toBeLessThan(0.8);
    }
    const afterWet = a!.filter((_, i) => i > 0 && a![i - 1]! > 0);
    const afterDry = a!.filter((_, i) => i > 0 && a![i - 1] === 0);
    const wetShare = (days: Float64Array) => days.filter((mm) => mm > 0).length / days.length;
    expect(wetShare(afterWet)).toBeGreaterThan(wetShare(afterDry) + 0.2);
  });

  test('is the same for the same seed and another for another', () => {
    expect(demoRain(3)).toEqual(demoRain(3));
    expect(demoRain(3).gauges[0]!.rain_mm).not.toEqual(demoRain(4).gauges[0]!.rain_mm);
  });

  test('of a gauge does not change when a gauge is added', () => {
    const three = demoRain(1);
    const four = demoRain(1, ['G1', 'G2', 'G3', 'G4']);
    expect(four.gauges.slice(0, 3)).toEqual(three.gauges);
  });
});
