import { calendarDay, type DayIndex, dayIndexOf, dayOfPlainYear } from '../../kernel/index.ts';

/** A stretch of the days ahead that lies in one water year. */
export interface YearAhead {
  readonly from: number;
  readonly to: number;
  /** Days of that water year before it. */
  readonly skipped_days: number;
}

/**
 * In which water years do the days ahead lie?
 *
 * @param firstDay - the first day ahead [day]
 * @param startMonth - month a water year begins in [month], 1 to 12
 * @param count - days ahead [day], whole, 0 or more
 * @returns stretches one after another: the first day and the day after the last, counted from the first day ahead [day], and the days of the year before it [day]
 * @law the stretches make up the days ahead, and each begins where its year does, but for the first
 * @definition ours: docs/decisions/0209-futures-of-a-set.md
 * @example
 * yearsAhead(0, 1, 400) // → [{ from: 0, to: 365, skipped_days: 0 }, { from: 365, to: 400, skipped_days: 0 }]
 * yearsAhead(10, 1, 360) // → [{ from: 0, to: 355, skipped_days: 10 }, { from: 355, to: 360, skipped_days: 0 }]
 */
export function yearsAhead(firstDay: DayIndex, startMonth: number, count: number): readonly YearAhead[] {
  const { year, month } = calendarDay(firstDay);
  const found: YearAhead[] = [];
  let started = dayIndexOf(month >= startMonth ? year : year - 1, startMonth, 1);
  for (let from = 0; from < count; ) {
    const next = dayIndexOf(calendarDay(started).year + 1, startMonth, 1);
    const to = Math.min(count, next - firstDay);
    found.push({ from, to, skipped_days: Math.max(0, firstDay - started) });
    from = to;
    started = next;
  }
  return found;
}

/**
 * How many litres will be asked on each day ahead, as people grow more year by year? Each day asks what its calendar day does; 29 February asks what 28 February
 * does.
 *
 * @param byDay_L - litres by calendar day from 1 January on [L], 365 of them
 * @param askedIn_year - year of the calendar they are asked in [year]
 * @param growthFraction_per_year - growth of the people [fraction/year], above −1
 * @param firstDay - the first day ahead [day]
 * @param count - days ahead [day], whole, 0 or more
 * @returns litres by day ahead [L]
 * @law without growth the same calendar days ask the same litres in every year
 * @definition litres × (1 + growth) ^ (year of the calendar − year they are asked in), as people of the design year are counted
 * @example
 * askedAhead_L(new Float64Array(365).fill(100), 1970, 0.1, 364, 2) // → [100, 110]
 */
export function askedAhead_L(
  byDay_L: Float64Array,
  askedIn_year: number,
  growthFraction_per_year: number,
  firstDay: DayIndex,
  count: number,
): Float64Array {
  const asked_L = new Float64Array(count);
  let grown_year = Number.NaN;
  let grown = 1;
  for (let day = 0; day < count; day++) {
    const date = calendarDay(firstDay + day);
    if (date.year !== grown_year) {
      grown_year = date.year;
      grown = (1 + growthFraction_per_year) ** (grown_year - askedIn_year);
    }
    asked_L[day] = byDay_L[dayOfPlainYear(date.month, date.day) - 1]! * grown;
  }
  return asked_L;
}
