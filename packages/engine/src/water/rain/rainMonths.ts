import { calendarDay, measured, type RainRecord, type WetDayAmountKind } from '../../kernel/index.ts';
import {
  gengScaleAdded_mm,
  gengScalePerMean_fraction,
  leastPairs_count,
  leastWetDays_count,
  smallestExcess_mm,
  wetDayFrom_mm,
} from './constants.ts';
import { gammaByLMoments } from './gammaFits.ts';
import { mixedExponentialByLikelihood } from './mixedExponentialFit.ts';
import { type MonthNormal, meanDays, normalFault } from './normals.ts';
import { chainFromCounts, chainFromWetDays, type WetChain } from './wetChain.ts';
import type { GammaAmounts, WetDayAmounts } from './wetDayAmounts.ts';

/** What made-up rain needs to know of a calendar month. */
export interface RainMonth {
  readonly chain: WetChain;
  readonly amounts: WetDayAmounts;
}

/**
 * How would days of rain fall that have these normals? Needs rain and wet days of every month: rain alone says nothing of
 * how long it stays away. Wet days have 1 mm at least; all the rain falls on them.
 *
 * @param normals - twelve months, January first: rain [mm] and days of 1 mm or more [day]
 * @returns twelve months, chances [fraction] and amounts [mm]; null where a figure is missing, or its rain and wet days cannot be
 * @law the months have the normals as their means
 * @source geng-1986, chain and scale of amounts (from memory); the least of a wet day and the limit on the scale are ours
 */
export function monthsFromNormals(normals: readonly MonthNormal[]): readonly RainMonth[] | null {
  if (normals.length !== 12 || normals.some((normal, i) => normalFault(normal, i + 1) !== null)) return null;
  return normals.map(({ rain_mm, wetDays }, i) => monthOf(rain_mm!, wetDays!, meanDays[i]!));
}

function monthOf(rain_mm: number, wetDays: number, days: number): RainMonth {
  const chain = chainFromWetDays(wetDays / days);
  if (wetDays === 0) return { chain, amounts: exponential(0) };
  const mean_mm = rain_mm / wetDays;
  const excess_mm = mean_mm - wetDayFrom_mm;
  const scale_mm = Math.max(gengScalePerMean_fraction * mean_mm - gengScaleAdded_mm, excess_mm);
  return { chain, amounts: { kind: 'gamma', least_mm: wetDayFrom_mm, shape: excess_mm / scale_mm, scale_mm } };
}

/**
 * How would days of rain fall that are like this record's? Chances from the days whose day before was measured too, amounts
 * from the wet days, gamma by L-moments or mixed exponential by greatest likelihood; a month with few wet days, or none that
 * two means fit better than one, takes an exponential distribution of their mean.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param kind - the distribution of the amounts
 * @returns twelve months, January first, chances [fraction] and amounts [mm]; null where a month has fewer than 150 such days, or its dry and wet spells never end
 * @law measured days only
 * @definition ours: wet from 1 mm; rain of days under 1 mm is left out
 */
export function monthsFromRecord(record: RainRecord, kind: WetDayAmountKind = 'gamma'): readonly RainMonth[] | null {
  const seen = Array.from({ length: 12 }, () => ({ pairs: [0, 0], wetPairs: [0, 0], excess_mm: [] as number[] }));
  const isWet = (at: number) => record.rain_mm[at]! >= wetDayFrom_mm;
  for (let at = 1; at < record.state.length; at++) {
    if (record.state[at] !== measured || record.state[at - 1] !== measured) continue;
    const month = seen[calendarDay(record.firstDay + at).month - 1]!;
    const before = isWet(at - 1) ? 1 : 0;
    month.pairs[before]!++;
    if (!isWet(at)) continue;
    month.wetPairs[before]!++;
    month.excess_mm.push(Math.max(record.rain_mm[at]! - wetDayFrom_mm, smallestExcess_mm));
  }
  if (seen.some(({ pairs }) => pairs[0]! + pairs[1]! < leastPairs_count)) return null;
  const months = seen.flatMap(({ pairs, wetPairs, excess_mm }) => {
    const [afterDry_count, afterWet_count] = pairs as [number, number];
    const [wetAfterDry_count, wetAfterWet_count] = wetPairs as [number, number];
    const chain = chainFromCounts({ afterDry_count, wetAfterDry_count, afterWet_count, wetAfterWet_count });
    return chain ? [{ chain, amounts: amountsOf(excess_mm, kind) }] : [];
  });
  return months.length === 12 ? months : null;
}

function amountsOf(excess_mm: readonly number[], kind: WetDayAmountKind): WetDayAmounts {
  const mean_mm = excess_mm.reduce((sum, one) => sum + one, 0) / Math.max(1, excess_mm.length);
  if (excess_mm.length < leastWetDays_count) return exponential(mean_mm);
  if (kind === 'mixedExponential') {
    const fit = mixedExponentialByLikelihood(excess_mm);
    return fit ? { kind, least_mm: wetDayFrom_mm, ...fit } : exponential(mean_mm);
  }
  const fit = gammaByLMoments(excess_mm);
  return fit ? { kind, least_mm: wetDayFrom_mm, ...fit } : exponential(mean_mm);
}

function exponential(mean_mm: number): GammaAmounts {
  return { kind: 'gamma', least_mm: wetDayFrom_mm, shape: 1, scale_mm: mean_mm };
}
