import { calendarDay, type DayIndex, dayIndexOf, median, type ShortReading } from '../../kernel/index.ts';
import {
  edgeOfYear_days,
  leastWetDays_fraction,
  leastYearsToCompare_count,
  minutesOfDay_min,
  missedByFixedIntervals_fraction,
  mostIntensity_mm_per_h,
  storm_min,
} from './constants.ts';
import { greatestIntensity_mm_per_h } from './greatestIntensity.ts';

/** The most rain in five minutes of one year. */
export interface YearOfFiveMinutes {
  readonly year: number;
  /** In the fullest window of whole intervals, as measured. */
  readonly measured_mm: number;
  /** The same with what such windows miss, on the mean. */
  readonly depth_mm: number;
}

/** What a short record tells of five minutes, and what of it was left aside. */
export interface FiveMinuteMaxima {
  readonly maxima: readonly YearOfFiveMinutes[];
  /** Years that the record only begins or ends in. */
  readonly partYears: readonly number[];
  /** Years with far fewer days of rain than the others: the gauge stood still for part of them. */
  readonly thinYears: readonly number[];
  /** Rows of intervals too long for five minutes, or that five minutes are no whole number of. */
  readonly coarse_count: number;
  /** Rows that begin before the one before them has ended. */
  readonly overlapping_count: number;
  /** Rows with more rain than can be believed. */
  readonly unlikely_count: number;
  /** The first of them. */
  readonly firstUnlikelyDay: DayIndex | null;
}

/**
 * What was the most rain in five minutes of each year? Windows of five minutes are made of whole intervals of one length; a window that begins and
 * ends by the clock misses part of the hardest five minutes, and is made up for it by n ÷ (n − 1/8), n intervals to a window. The record has rows only
 * where it rained: it is taken to have been kept from its first day to its last, but for years with far fewer days of rain than the others.
 *
 * @param rows - intervals of rain, in any order
 * @returns the most of each whole year of the calendar [mm], in their order, and what was left aside
 * @law the order of the rows changes nothing; twice the rain gives twice the maxima
 * @source weiss-1964 (from memory), for what fixed windows miss; the years that count are ours: docs/decisions/0173-years-of-a-short-record.md
 */
export function fiveMinuteMaxima(rows: readonly ShortReading[]): FiveMinuteMaxima {
  const fine = rows.filter(({ interval_min }) => isFine(interval_min));
  const most_mm = (mostIntensity_mm_per_h * storm_min) / 60;
  const likely = fine.filter(({ rain_mm }) => rain_mm >= 0 && rain_mm <= most_mm);
  const unlikely = fine.filter(({ rain_mm }) => !(rain_mm >= 0 && rain_mm <= most_mm));
  const { whole, partYears, thinYears } = yearsOf(likely);
  const { best, overlapping_count } = greatestByYear(likely);
  return {
    maxima: whole.flatMap((year) => best.get(year) ?? []),
    partYears,
    thinYears,
    coarse_count: rows.length - fine.length,
    overlapping_count,
    unlikely_count: unlikely.length,
    firstUnlikelyDay:
      unlikely.length === 0 ? null : unlikely.reduce((day, row) => Math.min(day, row.day), unlikely[0]!.day),
  };
}

/** Are five minutes a whole number of these intervals? */
export function isFine(interval_min: number): boolean {
  return interval_min > 0 && interval_min <= storm_min && Number.isInteger(storm_min / interval_min);
}

/**
 * By how much is the hardest stretch of rain more than the fullest window of so many whole intervals, on the mean?
 *
 * @param intervals_count - intervals to a window [count], whole, 1 or more
 * @returns the factor [number], above 1
 * @law nears 1 as the intervals get shorter
 * @source weiss-1964 (from memory), n ÷ (n − 1/8)
 * @example
 * fixedWindowFactor(1) // → 1.143
 */
export function fixedWindowFactor(intervals_count: number): number {
  return intervals_count / (intervals_count - missedByFixedIntervals_fraction);
}

/** Rows of one length of interval that follow each other within five minutes, as depths of one interval after the other. */
interface Shower {
  readonly year: number;
  readonly interval_min: number;
  readonly depths_mm: readonly number[];
}

function greatestByYear(rows: readonly ShortReading[]) {
  const best = new Map<number, YearOfFiveMinutes>();
  const { showers, overlapping_count } = showersOf(rows);
  for (const { year, interval_min, depths_mm } of showers) {
    const intensity = greatestIntensity_mm_per_h(depths_mm, interval_min, storm_min)!;
    const measured_mm = (intensity * storm_min) / 60;
    const depth_mm = measured_mm * fixedWindowFactor(storm_min / interval_min);
    if (depth_mm > (best.get(year)?.depth_mm ?? 0)) best.set(year, { year, measured_mm, depth_mm });
  }
  return { best, overlapping_count };
}

/** Showers of each length of interval, each with room for a whole window before and behind. It belongs to the year it begins in. */
function showersOf(rows: readonly ShortReading[]): { showers: readonly Shower[]; overlapping_count: number } {
  const showers: { year: number; interval_min: number; depths_mm: number[] }[] = [];
  let overlapping_count = 0;
  for (const interval_min of new Set(rows.map((row) => row.interval_min))) {
    const steps = storm_min / interval_min;
    const sorted = rows
      .filter((row) => row.interval_min === interval_min)
      .sort((a, b) => endOf(a) - endOf(b) || b.rain_mm - a.rain_mm);
    let last = Number.NEGATIVE_INFINITY;
    for (const row of sorted) {
      const end = endOf(row);
      const stepsOn = (end - last) / interval_min;
      if (stepsOn < 1 - 1e-9) {
        overlapping_count++;
        continue;
      }
      const shower = showers.at(-1);
      const padding = new Array<number>(steps - 1).fill(0);
      if (last !== Number.NEGATIVE_INFINITY && stepsOn <= steps && shower) {
        // Its own zeros to the next row take the place of those behind it.
        shower.depths_mm.length -= steps - 1;
        for (let i = Math.round(stepsOn); i > 1; i--) shower.depths_mm.push(0);
        shower.depths_mm.push(row.rain_mm, ...padding);
      } else
        showers.push({
          year: calendarDay(row.day).year,
          interval_min,
          depths_mm: [...padding, row.rain_mm, ...padding],
        });
      last = end;
    }
  }
  return { showers, overlapping_count };
}

function endOf({ day, minuteOfDay }: ShortReading): number {
  return day * minutesOfDay_min + minuteOfDay;
}

/** Which years of the calendar was the gauge kept in throughout? */
function yearsOf(rows: readonly ShortReading[]) {
  const wetDays = new Map<number, Set<DayIndex>>();
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { day } of rows) {
    first = Math.min(first, day);
    last = Math.max(last, day);
    const { year } = calendarDay(day);
    wetDays.set(year, (wetDays.get(year) ?? new Set()).add(day));
  }
  if (first > last) return { whole: [], partYears: [], thinYears: [] };
  const years = Array.from(
    { length: calendarDay(last).year - calendarDay(first).year + 1 },
    (_, i) => calendarDay(first).year + i,
  );
  const isPart = (year: number) =>
    first >= dayIndexOf(year, 1, 1) + edgeOfYear_days || last < dayIndexOf(year + 1, 1, 1) - edgeOfYear_days;
  const daysOf = (year: number) => wetDays.get(year)?.size ?? 0;
  const whole = years.filter((year) => !isPart(year));
  const middle = whole.length < leastYearsToCompare_count ? 0 : median(whole.map(daysOf));
  const isThin = (year: number) => daysOf(year) === 0 || daysOf(year) < leastWetDays_fraction * middle;
  return {
    whole: whole.filter((year) => !isThin(year)),
    partYears: years.filter(isPart),
    thinYears: whole.filter(isThin),
  };
}
