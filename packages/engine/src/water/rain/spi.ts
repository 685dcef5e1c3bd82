import { gammaShares, normalQuantile, type RainRecord } from '../../kernel/index.ts';
import { leastSums_count, leastWetSums_count } from './constants.ts';
import { type GammaFit, gammaByLMoments, gammaByThom } from './gammaFits.ts';
import { monthTotals } from './monthTotals.ts';

/** How the gamma distribution of a calendar month is fitted. The two give different indices: say which. */
export const gammaMethods = ['lMoments', 'thom'] as const;
export type GammaMethod = (typeof gammaMethods)[number];

/** The index of some months that end in this one. */
export interface MonthSpi {
  readonly year: number;
  readonly month: number;
  /** Rain of all the months; null where a day of them was not measured. */
  readonly sum_mm: number | null;
  /** Null where the sum is, or where too few years carry it. */
  readonly spi: number | null;
}

/** How dry or wet a month is called. */
export const spiClasses = [
  'extremelyDry',
  'severelyDry',
  'moderatelyDry',
  'nearNormal',
  'moderatelyWet',
  'veryWet',
  'extremelyWet',
] as const;
export type SpiClass = (typeof spiClasses)[number];

/**
 * How unusual is each of these sums of rain among them all, in standard deviations of a normal distribution? A gamma
 * distribution is fitted to the sums above 0; a sum's chance is q + (1 − q)G(sum), q the share of sums that are 0.
 *
 * @param sums_mm - rain of the same months in different years [mm], 0 or more
 * @param method - how the gamma distribution is fitted
 * @returns the index of each sum [number], under 0 for dry ones; null for all where fewer than 20 sums are known or fewer than 10 are above 0
 * @law a larger sum never has a smaller index; a sum of 0 has the chance q
 * @source mckee-1993, standardised precipitation index; wmo-1090, least years (from memory); least sums above 0 are ours
 * @example
 * standardisedSums([0, 12.5], 'thom') // → [null, null]
 */
export function standardisedSums(sums_mm: readonly number[], method: GammaMethod): readonly (number | null)[] {
  const wet = sums_mm.filter((sum) => sum > 0);
  const isEnough = sums_mm.length >= leastSums_count && wet.length >= leastWetSums_count;
  const fit = isEnough ? fitBy[method](wet) : null;
  if (!fit) return sums_mm.map(() => null);
  const dry_fraction = 1 - wet.length / sums_mm.length;
  return sums_mm.map((sum) => {
    const { below_fraction, above_fraction } = gammaShares(sum / fit.scale_mm, fit.shape);
    return normalQuantile({
      below_fraction: dry_fraction + (1 - dry_fraction) * below_fraction,
      above_fraction: (1 - dry_fraction) * above_fraction,
    });
  });
}

const fitBy: Readonly<Record<GammaMethod, (amounts_mm: readonly number[]) => GammaFit | null>> = {
  lMoments: gammaByLMoments,
  thom: gammaByThom,
};

/**
 * How unusually dry or wet was each month, or each few months that end in it? Each calendar month is compared with itself
 * in the other years of the record. Measured days only: a filled day leaves its month without an index.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param months - how many months are added up [month], whole, 1 to 24
 * @param method - how the gamma distribution is fitted
 * @returns every month the record touches: sum_mm [mm] and spi [number], null where not known
 * @law a record with all its rain doubled has the same index
 * @source mckee-1993, standardised precipitation index
 */
export function spi(record: RainRecord, months: number, method: GammaMethod): readonly MonthSpi[] {
  if (!Number.isInteger(months) || months < 1 || months > 24) throw new RangeError('spi: months must be 1 to 24');
  const totals = monthTotals(record);
  const sums = totals.map((_, i) => {
    if (i + 1 < months) return null;
    const parts = totals.slice(i + 1 - months, i + 1).map((one) => one.total_mm);
    return parts.reduce((sum, part) => (sum === null || part === null ? null : sum + part), 0);
  });
  const found: (number | null)[] = totals.map(() => null);
  for (let month = 1; month <= 12; month++) {
    const places = totals.flatMap((one, i) => (one.month === month && sums[i] !== null ? [i] : []));
    const indices = standardisedSums(
      places.map((i) => sums[i]!),
      method,
    );
    for (const [k, i] of places.entries()) found[i] = indices[k]!;
  }
  return totals.map(({ year, month }, i) => ({ year, month, sum_mm: sums[i]!, spi: found[i]! }));
}

/**
 * What is a month with this index called?
 *
 * @param index - standardised precipitation index [number], not NaN
 * @returns one of seven classes, from extremely dry to extremely wet
 * @source wmo-1090, classes of the index
 * @example
 * spiClass(-2) // → 'extremelyDry'
 * spiClass(-1.2) // → 'moderatelyDry'
 * spiClass(0.99) // → 'nearNormal'
 * spiClass(1.5) // → 'veryWet'
 */
export function spiClass(index: number): SpiClass {
  if (Number.isNaN(index)) throw new RangeError('spiClass: index is NaN');
  if (index <= -2) return 'extremelyDry';
  if (index <= -1.5) return 'severelyDry';
  if (index <= -1) return 'moderatelyDry';
  if (index < 1) return 'nearNormal';
  if (index < 1.5) return 'moderatelyWet';
  return index < 2 ? 'veryWet' : 'extremelyWet';
}
