import { dayIndexOf, daysInMonth, isoDay } from '@eavewell/engine';
import { type Chance, chanceFor } from './chance.ts';
import { amounts, failedSeason, type MonthOfRain, months, record, sharedWeather_fraction, spread } from './climate.ts';

/** One made gauge: its rain by day, none missing. */
export interface MadeRain {
  readonly gaugeId: string;
  /** Rain by day [mm], in tenths, as long as `dates`. */
  readonly rain_mm: Float64Array;
}

/** The made rain of the whole chain. */
export interface DemoRain {
  /** ISO dates, one a day. */
  readonly dates: readonly string[];
  /** The one year whose dry season fails [year]. */
  readonly failedYear: number;
  readonly gauges: readonly MadeRain[];
}

/** A day of the calendar with what the chain's weather does on it. */
interface ChainDay {
  readonly month: MonthOfRain;
  /** Factor on the chance of rain and, by its root, on the amount. */
  readonly luck: number;
  readonly chance: number;
  readonly amount: number;
}

/**
 * Makes the daily rain of the demo's gauges: a wet-or-dry chain by month with gamma amounts, a factor by season, part of
 * the weather common to all gauges, and one failed season. Invented from end to end.
 */
export function demoRain(seed: number, gaugeIds: readonly string[] = ['G1', 'G2', 'G3']): DemoRain {
  const failedYear = chanceFor(seed, 'failed season').whole(record.firstYear + 6, record.lastYear - 6);
  const chain = chainDays(seed, failedYear);
  const first = dayIndexOf(record.firstYear, 1, 1);
  return {
    dates: chain.map((_, i) => isoDay(first + i)),
    failedYear,
    gauges: gaugeIds.map((gaugeId, g) => ({ gaugeId, rain_mm: gaugeRain(seed, gaugeId, wetness(seed, g), chain) })),
  };
}

/** What a gauge's amounts are multiplied by: the first three are a middling, a dry and a wet place. */
function wetness(seed: number, gauge: number): number {
  return [1, 0.88, 1.16][gauge] ?? chanceFor(seed, `wetness ${gauge}`).between(0.88, 1.2);
}

function chainDays(seed: number, failedYear: number): ChainDay[] {
  const weather = chanceFor(seed, 'weather of the chain');
  const seasons = chanceFor(seed, 'luck of the seasons');
  const days: ChainDay[] = [];
  for (let year = record.firstYear; year <= record.lastYear; year++) {
    const wetLuck = seasonLuck(seasons, spread.wet);
    const dryLuck = seasonLuck(seasons, spread.dry);
    for (let month = 1; month <= 12; month++) {
      for (let day = 1; day <= daysInMonth(year, month); day++) {
        const failed = year === failedYear && inFailedSeason(month, day);
        const ofMonth = failed ? months[6]! : months[month - 1]!;
        const luck = failed ? failedSeason.left_fraction : ofMonth.dry ? dryLuck : wetLuck;
        days.push({ month: ofMonth, luck, chance: weather.share(), amount: weather.gamma(amounts.sharedShape) });
      }
    }
  }
  return days;
}

function inFailedSeason(month: number, day: number): boolean {
  if (month < failedSeason.firstMonth) return false;
  return month < failedSeason.lastMonth || day <= failedSeason.lastDay;
}

function seasonLuck(chance: Chance, of: { deviation_fraction: number; least: number; greatest: number }): number {
  return Math.min(of.greatest, Math.max(of.least, 1 + of.deviation_fraction * chance.normal()));
}

function gaugeRain(seed: number, gaugeId: string, wetness: number, chain: readonly ChainDay[]): Float64Array {
  const own = chanceFor(seed, `rain at ${gaugeId}`);
  const rain_mm = new Float64Array(chain.length);
  let isWet = false;
  chain.forEach((day, i) => {
    const follows = own.share() < sharedWeather_fraction;
    const ownChance = own.share();
    const after = isWet ? day.month.wetAfterWet_fraction : day.month.wetAfterDry_fraction;
    isWet = (follows ? day.chance : ownChance) < after * day.luck;
    if (!isWet) return;
    const shape = amounts.sharedShape + amounts.ownShape;
    const mean_mm = day.month.wetDay_mm * wetness * Math.sqrt(day.luck);
    const amount_mm = ((day.amount + own.gamma(amounts.ownShape)) / shape) * mean_mm;
    rain_mm[i] = Math.max(1, Math.round(amount_mm * 10)) / 10;
  });
  return rain_mm;
}
