import { describe, expect, it } from 'vitest';
import { calendarDay } from '../../packages/engine/src/kernel/index.ts';
import {
  amountMoments,
  chainFromCounts,
  chainFromWetDays,
  madeRain,
  monthsFromNormals,
  monthsFromRecord,
  type RainMonth,
  spellLengths,
  totalMoments,
  type WetDayAmounts,
  wetDayMoments,
  wetShare,
} from '../../packages/engine/src/water/rain/index.ts';

const mm_per_in = 25.4;
const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Ephrata, Washington, 44 years: USDA station file for making rain (parameters in inches); January first. */
const station = {
  wetDayMean_in: [0.1, 0.1, 0.11, 0.1, 0.11, 0.14, 0.14, 0.09, 0.1, 0.1, 0.12, 0.12],
  wetDaySd_in: [0.12, 0.12, 0.11, 0.13, 0.13, 0.18, 0.22, 0.13, 0.13, 0.11, 0.14, 0.13],
  wetAfterWet: [0.47, 0.5, 0.39, 0.32, 0.33, 0.3, 0.27, 0.28, 0.4, 0.41, 0.42, 0.48],
  wetAfterDry: [0.2, 0.16, 0.15, 0.13, 0.13, 0.11, 0.05, 0.06, 0.08, 0.12, 0.23, 0.23],
};
/** What follows from them by the formulas of Nicks, Lane and Gander (1995), worked out apart from this program. */
const follows = {
  wetDays: [8.493, 6.788, 6.118, 4.815, 5.038, 4.074, 1.987, 2.385, 3.529, 5.239, 8.519, 9.507],
  mean_mm: [21.57, 17.24, 17.09, 12.23, 14.07, 14.49, 7.07, 5.45, 8.96, 13.31, 25.96, 28.98],
  sd_mm: [12.12, 11.34, 10.45, 9.5, 10.18, 12.24, 9.91, 6.61, 8.75, 9.53, 13.78, 14.28],
  annual_mm: 186.43,
  annualWetDays: 66.49,
};

const stationMonths: readonly RainMonth[] = days.map((_, i) => {
  const mean_mm = station.wetDayMean_in[i]! * mm_per_in;
  const scale_mm = (station.wetDaySd_in[i]! * mm_per_in) ** 2 / mean_mm;
  const chain = { wetAfterDry_fraction: station.wetAfterDry[i]!, wetAfterWet_fraction: station.wetAfterWet[i]! };
  return { chain, amounts: { kind: 'gamma', least_mm: 0, shape: mean_mm / scale_mm, scale_mm } };
});
const mixed: WetDayAmounts = {
  kind: 'mixedExponential',
  least_mm: 0,
  light_fraction: 0.6,
  lightMean_mm: 5,
  heavyMean_mm: 20,
};
const island = monthsFromNormals(
  [210, 190, 220, 150, 80, 40, 25, 12, 30, 90, 160, 230].map((rain_mm, i) => ({
    rain_mm,
    wetDays: [16, 14, 16, 13, 9, 6, 4, 2, 4, 8, 12, 17][i]!,
  })),
)!;

describe('the moments of made-up rain', () => {
  it('are those worked out from a station’s parameters', () => {
    const months = stationMonths.map(({ chain, amounts }, i) => ({
      ...totalMoments(chain, amountMoments(amounts), days[i]!),
      wetDays: wetDayMoments(chain, days[i]!).mean_days,
    }));
    for (const [i, month] of months.entries()) {
      expect(Math.abs(month.wetDays - follows.wetDays[i]!)).toBeLessThanOrEqual(0.0005 + 1e-9);
      expect(Math.abs(month.mean_mm - follows.mean_mm[i]!)).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(Math.abs(month.sd_mm - follows.sd_mm[i]!)).toBeLessThanOrEqual(0.005 + 1e-9);
    }
    expect(months.reduce((sum, { mean_mm }) => sum + mean_mm, 0)).toBeCloseTo(follows.annual_mm, 2);
    expect(months.reduce((sum, { wetDays }) => sum + wetDays, 0)).toBeCloseTo(follows.annualWetDays, 2);
  });

  it('of a mixed exponential distribution are those of its formula: mean 11, variance 229', () => {
    const { mean_mm, sd_mm } = amountMoments(mixed);
    expect(mean_mm).toBeCloseTo(11, 12);
    expect(sd_mm ** 2).toBeCloseTo(229, 10);
  });
});

const years = 2000;

/** Totals [mm] and wet days of each month of every year, January first. */
function monthsOf({ firstDay, rain_mm }: ReturnType<typeof madeRain>) {
  const sums = Array.from({ length: 12 }, () => ({ totals: new Float64Array(years), wet: new Float64Array(years) }));
  const firstYear = calendarDay(firstDay).year;
  for (const [at, rain] of rain_mm.entries()) {
    const { year, month } = calendarDay(firstDay + at);
    sums[month - 1]!.totals[year - firstYear]! += rain;
    if (rain > 0) sums[month - 1]!.wet[year - firstYear]!++;
  }
  return sums;
}

const meanOf = (values: ArrayLike<number>) => Array.from(values).reduce((sum, one) => sum + one, 0) / values.length;

/** The share of days that are wet, day by day through a year of the chain, once it goes round and round: exact. */
function wetDaysGoingRound(months: readonly RainMonth[]): readonly number[] {
  let share = wetShare(months[0]!.chain);
  let found: number[] = [];
  for (let round = 0; round < 2; round++)
    found = days.map((count, i) => {
      const { wetAfterDry_fraction, wetAfterWet_fraction } = months[i]!.chain;
      let sum = 0;
      for (let day = 0; day < count; day++) {
        share = share * wetAfterWet_fraction + (1 - share) * wetAfterDry_fraction;
        sum += share;
      }
      return sum;
    });
  return found;
}

describe(`${years} made years`, () => {
  it.each([
    ['a station', stationMonths],
    ['an island with a dry season', island],
    ['light and heavy rain', island.map(({ chain }) => ({ chain, amounts: mixed }))],
  ] as const)('of %s keep the means of every month within four standard errors', (_, months) => {
    const made = monthsOf(madeRain(months, { name: 'G1', seed: 11, firstYear: 2001, years }));
    const wetDays = wetDaysGoingRound(months);
    for (const [i, { chain, amounts }] of months.entries()) {
      // February has a day more in the 485 leap years of 2001 to 4000.
      const leap = i === 1 ? (485 / years) * wetShare(chain) : 0;
      const wetDay = amountMoments(amounts);
      const { sd_mm } = totalMoments(chain, wetDay, days[i]!);
      const { sd_days } = wetDayMoments(chain, days[i]!);
      const margin = 4 / Math.sqrt(years);
      expect(Math.abs(meanOf(made[i]!.wet) - wetDays[i]! - leap)).toBeLessThan(margin * sd_days);
      expect(Math.abs(meanOf(made[i]!.totals) - (wetDays[i]! + leap) * wetDay.mean_mm)).toBeLessThan(margin * sd_mm);
      // The months' own means, as if each had gone on for long, are as near.
      const { mean_mm } = totalMoments(chain, wetDay, days[i]!);
      expect(Math.abs(meanOf(made[i]!.totals) - mean_mm - leap * wetDay.mean_mm)).toBeLessThan(margin * sd_mm);
    }
  });

  it('keep the mean length of dry and of wet spells', () => {
    const chain = { wetAfterDry_fraction: 0.25, wetAfterWet_fraction: 0.66 };
    const same = Array.from({ length: 12 }, (): RainMonth => ({ chain, amounts: mixed }));
    const { rain_mm } = madeRain(same, { name: 'G1', seed: 5, firstYear: 2001, years });
    const runs = { dry: [] as number[], wet: [] as number[] };
    let length = 0;
    for (const [at, rain] of rain_mm.entries()) {
      length++;
      if (at + 1 < rain_mm.length && rain_mm[at + 1]! > 0 === rain > 0) continue;
      runs[rain > 0 ? 'wet' : 'dry'].push(length);
      length = 0;
    }
    const { dry_days, wet_days } = spellLengths(chain);
    // A geometric length with mean m has the variance m(m − 1).
    for (const [found, mean] of [
      [runs.dry, dry_days],
      [runs.wet, wet_days],
    ] as const)
      expect(Math.abs(meanOf(found) - mean)).toBeLessThan(4 * Math.sqrt((mean * (mean - 1)) / found.length));
  });

  it('are the same for the same seed and name; more years only add to the end', () => {
    const order = { name: 'G1', seed: 1, firstYear: 2001, years: 3 };
    const made = madeRain(island, order);
    expect(madeRain(island, order)).toEqual(made);
    expect(madeRain(island, { ...order, years: 5 }).rain_mm.slice(0, made.rain_mm.length)).toEqual(made.rain_mm);
    for (const other of [{ seed: 2 }, { name: 'G2' }])
      expect(madeRain(island, { ...order, ...other }).rain_mm).not.toEqual(made.rain_mm);
    expect(() => madeRain(island, { ...order, years: 0 })).toThrow(RangeError);
    expect(() => madeRain(island.slice(1), order)).toThrow(RangeError);
  });

  it('have no rain in a month that never has any, and never a wet day under 1 mm from normals', () => {
    const months = island.map((month, i) => (i === 7 ? { ...month, chain: chainFromWetDays(0) } : month));
    const made = madeRain(months, { name: 'G1', seed: 1, firstYear: 2001, years: 50 });
    for (const [at, rain] of made.rain_mm.entries()) {
      if (calendarDay(made.firstDay + at).month === 8) expect(rain === 0).toBe(true);
      expect(rain === 0 || rain >= 1).toBe(true);
    }
  });

  it('keep the chances of a wet day after a dry and after a wet one, and the share of wet days', () => {
    const chain = { wetAfterDry_fraction: 0.2, wetAfterWet_fraction: 0.7 };
    const same = Array.from({ length: 12 }, (): RainMonth => ({ chain, amounts: mixed }));
    const { rain_mm } = madeRain(same, { name: 'G1', seed: 6, firstYear: 2001, years });
    const counts = { afterDry_count: 0, wetAfterDry_count: 0, afterWet_count: 0, wetAfterWet_count: 0 };
    for (let at = 1; at < rain_mm.length; at++) {
      const wet = rain_mm[at]! > 0 ? 1 : 0;
      if (rain_mm[at - 1]! > 0) {
        counts.afterWet_count++;
        counts.wetAfterWet_count += wet;
      } else {
        counts.afterDry_count++;
        counts.wetAfterDry_count += wet;
      }
    }
    const found = chainFromCounts(counts)!;
    const error = (p: number, n: number) => Math.sqrt((p * (1 - p)) / n);
    expect(Math.abs(found.wetAfterDry_fraction - 0.2)).toBeLessThan(4 * error(0.2, counts.afterDry_count));
    expect(Math.abs(found.wetAfterWet_fraction - 0.7)).toBeLessThan(4 * error(0.7, counts.afterWet_count));
    const { mean_days, sd_days } = wetDayMoments(chain, rain_mm.length);
    expect(Math.abs(counts.wetAfterDry_count + counts.wetAfterWet_count - mean_days)).toBeLessThan(4 * sd_days);
    const wet = rain_mm.filter((one) => one > 0);
    const { mean_mm, sd_mm } = amountMoments(mixed);
    expect(Math.abs(meanOf(wet) - mean_mm)).toBeLessThan((4 * sd_mm) / Math.sqrt(wet.length));
  });

  it.each(['gamma', 'mixedExponential'] as const)('give back the months they were made with, fitted as %s', (kind) => {
    const amounts: WetDayAmounts =
      kind === 'gamma' ? { kind, least_mm: 1, shape: 0.8, scale_mm: 12 } : { ...mixed, kind, least_mm: 1 };
    const chain = { wetAfterDry_fraction: 0.3, wetAfterWet_fraction: 0.6 };
    const same = Array.from({ length: 12 }, (): RainMonth => ({ chain, amounts }));
    const { firstDay, rain_mm } = madeRain(same, { name: 'G1', seed: 8, firstYear: 2001, years: 200 });
    const fitted = monthsFromRecord({ gaugeId: 'G1', firstDay, rain_mm, state: new Uint8Array(rain_mm.length) }, kind)!;
    const wanted = amountMoments(amounts);
    const wetDays = wetShare(chain) * 30 * 200;
    for (const month of fitted) {
      expect(month.amounts.kind).toBe(kind);
      const { mean_mm, sd_mm } = amountMoments(month.amounts);
      // The mean is the sample's; a deviation of as skewed a sample has a standard error of three times sd ÷ √(2n) at most.
      expect(Math.abs(mean_mm - wanted.mean_mm)).toBeLessThan((4.5 * wanted.sd_mm) / Math.sqrt(wetDays));
      expect(Math.abs(sd_mm - wanted.sd_mm)).toBeLessThan((4.5 * 3 * wanted.sd_mm) / Math.sqrt(2 * wetDays));
    }
    // Twelve months apart: the mean share of wet days within four standard errors of all days.
    const shares = meanOf(fitted.map((month) => wetShare(month.chain)));
    const { mean_days, sd_days } = wetDayMoments(chain, rain_mm.length);
    expect(Math.abs(shares - mean_days / rain_mm.length)).toBeLessThan((4 * sd_days) / rain_mm.length);
  });
});
