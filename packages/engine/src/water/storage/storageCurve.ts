import type { Range, SizePoint, StorageFinding } from '../../kernel/index.ts';
import { bandSizes_count, beyondSizes_count } from './constants.ts';
import { allowedDryDays, goodYearsAt } from './curve.ts';
import type { SizeCurve } from './sizeCurve.ts';
import { type DoubtCase, sizeDoubt } from './sizeDoubt.ts';

/** What is drawn of every size at once: the finding's sizes as an exact curve, with the doubt about it. */
export interface StorageCurve {
  /** Is every size known? Where sizes were run one by one there are points alone: no curve, no band. */
  readonly isExact: boolean;
  /** Critical volumes of all judged days, ascending [L]: a day is dry in tanks smaller than its own; 0 in none, Infinity in all. */
  readonly critical_L: Float64Array;
  /** Volume from which each judged year is good, ascending [L]. */
  readonly needs_L: Float64Array;
  /** Days of the judged years on which judged litres are asked. */
  readonly askedDays: number;
  readonly judgedYears: number;
  readonly goodYearsNeeded: number;
  /** Dry days a year that the target still allows. */
  readonly daysAllowed_per_year: number;
  readonly tankForDays_L: number | null;
  readonly tankForRuns_L: number | null;
  readonly tankToHold_L: number | null;
  /** The catalogue's sizes and the tank there is, smallest first. */
  readonly sizes: readonly SizePoint[];
}

/** How sure a tank of one size is. */
export interface BandAtSize {
  readonly tankVolume_L: number;
  readonly dryDays_per_year: Range;
  /** Good ones of as many coming years as were judged. */
  readonly comingGood_years: Range;
}

/** A tank as every question about its size is asked of it: without a second source, which would cover the dry days of any. */
export interface SizedTank {
  readonly curve: SizeCurve;
  readonly doubted: DoubtCase;
  readonly isExact: boolean;
}

/**
 * What do tanks of every size do here, as one drawing has it?
 *
 * @param sized - the tank and its curve
 * @param finding - what the storage station found of it [L]
 * @returns critical volumes and needs ascending [L], and the sizes of the finding [L]
 * @law the point of a size, read off the curve, is that of the finding
 * @definition ours: docs/methods/storage.md, every size at once; docs/decisions/0155-one-run-for-verdict-and-drawing.md
 */
export function storageCurve(sized: SizedTank, finding: StorageFinding): StorageCurve {
  const { curve, isExact } = sized;
  const { judgedYears, goodYearsNeeded, askedDays, target } = curve;
  const { tankForDays_L, tankForRuns_L, tankToHold_L, sizes } = finding;
  return {
    isExact,
    critical_L: isExact ? judgedAscending(curve) : new Float64Array(0),
    needs_L: isExact ? curve.needs_L.slice().sort() : new Float64Array(0),
    askedDays,
    judgedYears,
    goodYearsNeeded,
    daysAllowed_per_year: allowedDryDays(askedDays, target.daysMet_fraction) / judgedYears,
    tankForDays_L,
    tankForRuns_L,
    tankToHold_L,
    sizes,
  };
}

/**
 * How sure is a tank of this size?
 *
 * @param sized - the tank, its curve and what its doubt is worked out from
 * @param tankVolume_L - the size asked about [L], 0 or more
 * @returns the ranges of dry days a year [day/year] and of good years to come [year] at that size [L]; null where sizes are run one by one
 * @law the ranges hold the point of the size; at the tank there is they are the finding's own, where there is no second source
 * @definition ours: docs/methods/storage.md, how sure
 */
export function bandAtSize(sized: SizedTank, tankVolume_L: number): BandAtSize | null {
  const { curve, doubted, isExact } = sized;
  if (!isExact) return null;
  const goodYears = goodYearsAt(curve.needs_L, tankVolume_L);
  const { dryDays_per_year, comingGood_years } = sizeDoubt(curve, doubted, tankVolume_L, goodYears);
  return { tankVolume_L, dryDays_per_year, comingGood_years };
}

/**
 * At which sizes is a band worked out, for a drawing of some hundred px?
 *
 * @param finding - the tank there is, and the smallest that would do [L]
 * @returns some forty sizes, smallest first, beyond the largest that is told of [L]; closer together where tanks are small, since there the
 *   curve is steep; the tank there is among them
 * @definition ours
 * @example
 * bandSizes_L({ tankVolume_L: 1000, tankForTarget_L: null, tankToHold_L: null }).length // → 41
 */
export function bandSizes_L(
  finding: Pick<StorageFinding, 'tankVolume_L' | 'tankForTarget_L' | 'tankToHold_L'>,
): readonly number[] {
  const { tankVolume_L, tankForTarget_L, tankToHold_L } = finding;
  const most_L = beyondSizes_count * Math.max(tankVolume_L, tankForTarget_L ?? 0, tankToHold_L ?? 0);
  const even = Array.from({ length: bandSizes_count }, (_, i) => most_L * ((i + 1) / bandSizes_count) ** 2);
  return [...new Set([...even, tankVolume_L])].sort((a, b) => a - b);
}

/** Critical volumes of the judged days, ascending. */
function judgedAscending({ critical_L, years }: SizeCurve): Float64Array {
  const judged = years.filter((year) => year.judged);
  const ascending_L = new Float64Array(judged.reduce((days, { from, to }) => days + to - from, 0));
  let end = 0;
  for (const { from, to } of judged) {
    ascending_L.set(critical_L.subarray(from, to), end);
    end += to - from;
  }
  return ascending_L.sort();
}
