import { calendarDay, dayIndexOf, daysInMonth, measured, type RainRecord } from '../../kernel/index.ts';

/** The rain of one month of a record. */
export interface MonthTotal {
  readonly year: number;
  readonly month: number;
  /** Null where a day of the month was not measured. */
  readonly total_mm: number | null;
}

/**
 * How much did it rain in each month? Every month the record touches, in order; a month with a day that was not measured
 * has no total.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @returns months in order, none left out: year [year], month [month], total_mm [mm] or null
 * @source wmo-100, totals of rain (quoted by other open sources)
 */
export function monthTotals(record: RainRecord): readonly MonthTotal[] {
  const totals: MonthTotal[] = [];
  const end = record.firstDay + record.rain_mm.length;
  let { year, month } = calendarDay(record.firstDay);
  while (dayIndexOf(year, month, 1) < end) {
    totals.push({ year, month, total_mm: totalOf(record, dayIndexOf(year, month, 1), daysInMonth(year, month)) });
    if (month === 12) year++;
    month = (month % 12) + 1;
  }
  return totals;
}

function totalOf(record: RainRecord, firstDay: number, days: number): number | null {
  let total_mm = 0;
  for (let at = firstDay - record.firstDay; at < firstDay - record.firstDay + days; at++) {
    if (record.state[at] !== measured) return null;
    total_mm += record.rain_mm[at]!;
  }
  return total_mm;
}
