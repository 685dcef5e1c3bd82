import { calendarDay, quantile, type StorageSeries, type WaterYear } from '@eavewell/engine';
import { startMonthOf } from './record.ts';
import { monthStarts } from './scales.ts';

/** What is told of each month, in the order of the water. */
export const monthFlows = ['caught', 'judgedTaken', 'otherTaken', 'spilled', 'secondSource', 'short'] as const;
export type MonthFlow = (typeof monthFlows)[number];

/** One month of the calendar in one water year: litres of each kind. */
export interface MonthOfYear {
  readonly waterYear: number;
  /** Of the calendar. */
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly days: number;
  readonly litres: Readonly<Record<MonthFlow, number>>;
}

/** A month of the calendar over the years of the record [L]: mean, and the range eight years in ten lie in. */
export interface MonthMean {
  readonly mean_L: number;
  readonly low_L: number;
  readonly high_L: number;
}

/** Months in the order of the water year. */
export interface MonthTotals {
  readonly months: readonly number[];
  /** Water years of the record that the means are over, years not judged among them. */
  readonly years: number;
  readonly each: readonly MonthOfYear[];
  /** By flow, by place in `months`. */
  readonly means: Readonly<Record<MonthFlow, readonly MonthMean[]>>;
}

/** The middle eight years in ten: shares cut off at each end [fraction]. */
const lowShare_fraction = 0.1;
const highShare_fraction = 0.9;

/**
 * How many litres were caught, taken, spilled, brought and short, by month?
 *
 * @param input - a tank's days [L] and the record's water years
 * @returns months in the order of the water year, their litres in each year, and mean and range over the years [L]
 * @law the means of the months × years are the sums of the days
 * @definition ours: docs/decisions/0153; quantiles straight between the sorted years
 */
export function monthTotals({
  series,
  years,
}: {
  readonly series: StorageSeries;
  readonly years: readonly WaterYear[];
}): MonthTotals {
  const first = startMonthOf({ series, years });
  const months = Array.from({ length: 12 }, (_, index) => ((first - 1 + index) % 12) + 1);
  const each = years.flatMap((year) => monthsOfYear(series, year));
  const means = Object.fromEntries(
    monthFlows.map((flow) => [flow, months.map((month) => meanOf(each, month, flow, years.length))]),
  ) as unknown as Record<MonthFlow, readonly MonthMean[]>;
  return { months, years: years.length, each, means };
}

function monthsOfYear(series: StorageSeries, { label, from, to }: WaterYear): readonly MonthOfYear[] {
  if (to <= from) return [];
  const firstDay = series.firstDay + from;
  const lastDay = series.firstDay + to - 1;
  const starts = monthStarts(firstDay, lastDay).map(({ day, month, year }) => ({ day, month, year }));
  const { month: firstMonth, year: firstYear } = calendarDay(firstDay);
  if (starts[0]?.day !== firstDay) starts.unshift({ day: firstDay, month: firstMonth, year: firstYear });
  return starts.map(({ day, month, year }, index) => {
    const end = starts[index + 1]?.day ?? lastDay + 1;
    return {
      waterYear: label,
      year,
      month,
      days: end - day,
      litres: litresOf(series, day - series.firstDay, end - series.firstDay),
    };
  });
}

function litresOf(series: StorageSeries, from: number, to: number): Record<MonthFlow, number> {
  const sum = { caught: 0, judgedTaken: 0, otherTaken: 0, spilled: 0, secondSource: 0, short: 0 };
  for (let day = from; day < to; day++) {
    const [taken, given] = [series.judgedTaken_L[day]!, series.secondSource_L[day]!];
    sum.caught += series.inflow_L[day]!;
    sum.judgedTaken += taken;
    sum.otherTaken += series.otherTaken_L[day]!;
    sum.spilled += series.spill_L[day]!;
    sum.secondSource += given;
    sum.short += Math.max(0, series.judgedAsked_L[day]! - taken - given);
  }
  return sum;
}

function meanOf(each: readonly MonthOfYear[], month: number, flow: MonthFlow, years: number): MonthMean {
  const own = each.filter((one) => one.month === month).map((one) => one.litres[flow]);
  if (own.length === 0 || years === 0) return { mean_L: 0, low_L: 0, high_L: 0 };
  const sum = own.reduce((total, litres) => total + litres, 0);
  return { mean_L: sum / years, low_L: quantile(own, lowShare_fraction), high_L: quantile(own, highShare_fraction) };
}
