import { calendarDay, dayIndexOf, daysInMonth, measured, type RainRecord } from '../../kernel/index.ts';
import { normalNeedsYears_fraction, wetDayFrom_mm } from './constants.ts';
import { monthCompleteness } from './monthCompleteness.ts';

/** What a calendar month usually brings. Null where too few of its years can be used. */
export interface MonthlyNormal {
  readonly month: number;
  /** Years in which the record touches the month. */
  readonly years: number;
  /** Years with every day of the month measured. */
  readonly completeYears: number;
  readonly meanTotal_mm: number | null;
  readonly meanWetDays: number | null;
  readonly meanDaily_mm: number | null;
}

/** Sums over the years of one calendar month. */
interface MonthSums {
  years: number;
  completeYears: number;
  total_mm: number;
  wetDays: number;
  meanYears: number;
  dailyMeans_mm: number;
}

/**
 * How much rain and how many wet days does each calendar month usually bring? Totals and wet days come from months with
 * every day measured, mean daily rain from months that keep the 11-or-5 rule; each needs 80 % of the years in which the
 * record touches the month. Filled days count as missing.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @returns twelve normals, January first: years [year], completeYears [year], meanTotal_mm [mm], meanWetDays [day], meanDaily_mm [mm/day]; null where too few years
 * @source wmo-1203, completeness of normals; etccdi, wet day of 1 mm or more
 */
export function monthlyNormals(record: RainRecord): readonly MonthlyNormal[] {
  const sums: MonthSums[] = Array.from({ length: 12 }, () => ({
    years: 0,
    completeYears: 0,
    total_mm: 0,
    wetDays: 0,
    meanYears: 0,
    dailyMeans_mm: 0,
  }));
  const end = record.firstDay + record.rain_mm.length;
  let { year, month } = calendarDay(record.firstDay);
  while (dayIndexOf(year, month, 1) < end) {
    addMonth(sums[month - 1]!, record, dayIndexOf(year, month, 1), daysInMonth(year, month));
    if (month === 12) year++;
    month = (month % 12) + 1;
  }
  return sums.map((sum, i) => normalOf(i + 1, sum));
}

function addMonth(sum: MonthSums, record: RainRecord, firstDay: number, days: number): void {
  const missing: number[] = [];
  let total_mm = 0;
  let wetDays = 0;
  for (let i = 0; i < days; i++) {
    const at = firstDay + i - record.firstDay;
    if (record.state[at] !== measured) {
      missing.push(i + 1);
      continue;
    }
    const rain_mm = record.rain_mm[at]!;
    total_mm += rain_mm;
    if (rain_mm >= wetDayFrom_mm) wetDays++;
  }
  const { meanValid, totalValid } = monthCompleteness(missing);
  sum.years++;
  if (meanValid) {
    sum.meanYears++;
    sum.dailyMeans_mm += total_mm / (days - missing.length);
  }
  if (totalValid) {
    sum.completeYears++;
    sum.total_mm += total_mm;
    sum.wetDays += wetDays;
  }
}

function normalOf(month: number, sum: MonthSums): MonthlyNormal {
  const { years, completeYears, meanYears } = sum;
  const needed = Math.max(1, Math.ceil(normalNeedsYears_fraction * years));
  const totals = completeYears >= needed;
  return {
    month,
    years,
    completeYears,
    meanTotal_mm: totals ? sum.total_mm / completeYears : null,
    meanWetDays: totals ? sum.wetDays / completeYears : null,
    meanDaily_mm: meanYears >= needed ? sum.dailyMeans_mm / meanYears : null,
  };
}
