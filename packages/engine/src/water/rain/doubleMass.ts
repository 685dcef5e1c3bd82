import { type DayIndex, dayIndexOf, engineProblem, isoDay, type Problem } from '../../kernel/index.ts';
import { doubleMassBend_fraction, doubleMassNeeds_months } from './constants.ts';
import type { MonthTotal } from './monthTotals.ts';

/** A gauge's rain beside that of the gauges near by, in the earlier and the later half of the months they share. */
export interface DoubleMass {
  /** The later half's rain to the neighbours', over the earlier half's. 1 where nothing changed. */
  readonly slopeRatio_fraction: number;
  readonly months: number;
  /** First day of the later half. */
  readonly bendDay: DayIndex;
}

/**
 * By how much did a gauge change beside the others? The slope of its summed rain over theirs in the later half of the time,
 * over the same slope in the earlier half. Of an odd number the one in the middle is left out.
 *
 * @param own_mm - rain of the gauge by year or month [mm], oldest first
 * @param base_mm - mean or sum of the other gauges over the same times [mm], oldest first
 * @returns later slope ÷ earlier slope [fraction]; null where a half has no rain at one of them
 * @law the same whatever the unit of either; the two halves exchanged give one over it
 * @source punmia-pande-lal, Example 4.6, double-mass curve in two straight parts
 * @example
 * slopeRatio([10, 10, 20, 20], [5, 5, 5, 5]) // → 2
 */
export function slopeRatio(own_mm: readonly number[], base_mm: readonly number[]): number | null {
  const half = Math.floor(own_mm.length / 2);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const early = [sum(own_mm.slice(0, half)), sum(base_mm.slice(0, half))] as const;
  const late = [sum(own_mm.slice(-half)), sum(base_mm.slice(-half))] as const;
  if (half === 0 || base_mm.length !== own_mm.length || [...early, ...late].some((one) => !(one > 0))) return null;
  return late[0] / late[1] / (early[0] / early[1]);
}

/**
 * Did a gauge change its ways beside the gauges near by? Over the months with a total here and at one of the others at
 * least, in two halves. Where one of the others has no total, the rest stand in for it in proportion to what they usually
 * bring in that calendar month, so that a gauge that comes or goes makes no bend.
 *
 * @param own - months of the gauge, oldest first: total_mm [mm] or null
 * @param others - months of each gauge near by
 * @returns slope ratio [fraction], months [month] and the day of the bend; null where fewer than 120 months are shared
 * @source punmia-pande-lal, Example 4.6, double-mass curve; standing in is ours
 */
export function doubleMass(own: readonly MonthTotal[], others: readonly (readonly MonthTotal[])[]): DoubleMass | null {
  const bases = others.map(monthsByName);
  const usual = others.map(usualByMonth);
  const shared = own.flatMap(({ year, month, total_mm }) => {
    if (total_mm === null) return [];
    const base_mm = baseOf(bases, usual, year, month);
    return base_mm === null ? [] : [{ year, month, total_mm, base_mm }];
  });
  if (shared.length < doubleMassNeeds_months) return null;
  const ratio = slopeRatio(
    shared.map((one) => one.total_mm),
    shared.map((one) => one.base_mm),
  );
  if (ratio === null) return null;
  const { year, month } = shared[shared.length - Math.floor(shared.length / 2)]!;
  return { slopeRatio_fraction: ratio, months: shared.length, bendDay: dayIndexOf(year, month, 1) };
}

/**
 * Is a gauge's change beside its neighbours worth a note?
 *
 * @param gaugeId - the gauge [text]
 * @param found - what doubleMass found, or null
 * @param others - ids of the gauges near by
 * @returns the note, or none
 * @problem rain.double_mass_bends - the slope changed by more than a fifth, up or down
 * @definition ours: a fifth
 */
export function doubleMassProblems(
  gaugeId: string,
  found: DoubleMass | null,
  others: readonly string[],
): readonly Problem[] {
  if (!found) return [];
  const { slopeRatio_fraction, months, bendDay } = found;
  const bend_fraction = Math.max(slopeRatio_fraction, 1 / slopeRatio_fraction) - 1;
  if (bend_fraction <= doubleMassBend_fraction) return [];
  const facts = { slopeRatio_fraction, months, others, limit_fraction: doubleMassBend_fraction };
  return [engineProblem('rain.double_mass_bends', { gaugeId, day: isoDay(bendDay) }, facts)];
}

const nameOf = (year: number, month: number) => year * 12 + month;

function monthsByName(months: readonly MonthTotal[]): ReadonlyMap<number, number | null> {
  return new Map(months.map(({ year, month, total_mm }) => [nameOf(year, month), total_mm]));
}

/** Mean total of each calendar month [mm], January first; null where it never has one. */
function usualByMonth(months: readonly MonthTotal[]): readonly (number | null)[] {
  return Array.from({ length: 12 }, (_, i) => {
    const totals = months.flatMap(({ month, total_mm }) => (month === i + 1 && total_mm !== null ? [total_mm] : []));
    return totals.length === 0 ? null : totals.reduce((sum, total) => sum + total, 0) / totals.length;
  });
}

/** The others' rain of a month [mm], those without a total stood in for; null where none has one. */
function baseOf(
  bases: readonly ReadonlyMap<number, number | null>[],
  usual: readonly (readonly (number | null)[])[],
  year: number,
  month: number,
): number | null {
  let present_mm = 0;
  let usualPresent_mm = 0;
  let usualAll_mm = 0;
  for (const [i, base] of bases.entries()) {
    const usual_mm = usual[i]![month - 1] ?? 0;
    const total_mm = base.get(nameOf(year, month)) ?? null;
    usualAll_mm += usual_mm;
    if (total_mm === null) continue;
    present_mm += total_mm;
    usualPresent_mm += usual_mm;
  }
  return usualPresent_mm > 0 ? (present_mm * usualAll_mm) / usualPresent_mm : null;
}
