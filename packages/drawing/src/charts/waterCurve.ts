import { dryDaysAt, goodYearsAt, type SizePoint } from '@eavewell/engine';

/** A range of days or years at one size of tank. */
export interface BandPoint {
  readonly tankVolume_L: number;
  readonly low: number;
  readonly high: number;
}

/** What every size of tank would do at one body of water, ready to be drawn. */
export interface WaterCurve {
  /** Critical volumes of the days of the judged years, ascending [L]: a day is dry exactly in smaller tanks. Infinity: in all. */
  readonly critical_L: Float64Array;
  /** What each judged year needs to have no run over the target's, ascending [L]. Infinity: no tank would do. */
  readonly needs_L: Float64Array;
  /** Days of the judged years on which judged litres are asked. */
  readonly askedDays: number;
  readonly judgedYears: number;
  readonly goodYearsNeeded: number;
  /** Dry days a mean year may have. */
  readonly daysAllowed_per_year: number;
  /** Dry days a year, nine draws in ten, by size. */
  readonly band: readonly BandPoint[];
  /** Good years of as many as were judged, nine draws in ten, by size; null where they are not drawn. */
  readonly yearsBand: readonly BandPoint[] | null;
  readonly tankForDays_L: number | null;
  readonly tankForRuns_L: number | null;
  readonly tankToHold_L: number | null;
  /** The catalogue's sizes and the chosen one, smallest first. */
  readonly sizes: readonly SizePoint[];
  /** False where sizes were run one by one: then `sizes` alone is known, and the lists of volumes stand empty. */
  readonly isExact: boolean;
}

/** What one size does. */
export interface AtSize {
  readonly dryDays_per_year: number | null;
  readonly goodYears: number | null;
}

/**
 * What does a tank of this size do? As the engine counts it.
 *
 * @param curve - every size
 * @param tankVolume_L - usable volume [L], 0 or more
 * @returns dry days in a mean judged year [day/year] and good years [year]; null where sizes were run one by one and not this one, or no year is judged
 * @definition days whose critical volume, and years whose need, is above the volume
 */
export function readCurve(curve: WaterCurve, tankVolume_L: number): AtSize {
  return readSizes(curve, [tankVolume_L])[0]!;
}

/** As `readCurve`, for many sizes at once, smallest first. */
export function readSizes(curve: WaterCurve, ascending_L: readonly number[]): readonly AtSize[] {
  const { critical_L, needs_L, judgedYears, sizes, isExact } = curve;
  if (!isExact)
    return ascending_L.map((volume) => {
      const known = sizes.find((size) => size.tankVolume_L === volume);
      return { dryDays_per_year: known?.dryDays_per_year ?? null, goodYears: known?.goodYears ?? null };
    });
  if (judgedYears === 0) return ascending_L.map(() => ({ dryDays_per_year: null, goodYears: null }));
  const all = [{ label: 0, from: 0, to: critical_L.length, missing_days: 0, judged: true }];
  const dry = dryDaysAt(critical_L, all, ascending_L);
  return ascending_L.map((volume, index) => ({
    dryDays_per_year: dry[index]! / judgedYears,
    goodYears: goodYearsAt(needs_L, volume),
  }));
}

/** The range at a size, straight between the sizes it was drawn at; null outside them. */
export function bandAt(
  band: readonly BandPoint[],
  tankVolume_L: number,
): { readonly low: number; readonly high: number } | null {
  const next = band.findIndex((point) => point.tankVolume_L >= tankVolume_L);
  if (next < 0) return null;
  const above = band[next]!;
  if (above.tankVolume_L === tankVolume_L) return above;
  const below = band[next - 1];
  if (!below) return null;
  const share = (tankVolume_L - below.tankVolume_L) / (above.tankVolume_L - below.tankVolume_L);
  return { low: below.low + share * (above.low - below.low), high: below.high + share * (above.high - below.high) };
}
