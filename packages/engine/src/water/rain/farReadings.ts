import { engineProblem, isoDay, type Place, type Problem, type RainReading } from '../../kernel/index.ts';
import { daysNamed_count, farFromOthers_days, mostFar_count } from './constants.ts';

/** Readings that belong together, and those set aside. */
export interface NearReadings {
  readonly readings: readonly RainReading[];
  readonly problems: readonly Problem[];
}

/**
 * Which readings lie so far from all others that their year is likely mistyped? A handful, over five years from the rest, tell of no year
 * that could be judged; kept, they would stretch the record by years in which nothing was read.
 *
 * @param readings - the readings in the order of their file: day [day]
 * @param shift_days - how many days earlier the rain fell than it was read [day], 0 or 1
 * @param place - file and gauge, for the place of the problem
 * @returns the readings without those, in the same order, and the problem where there are any
 * @problem rain.day_far - a few days over five years from all others; not used
 * @law the largest stretch of readings is always kept
 * @definition ours: docs/decisions/0108-readings-far-from-all-others.md
 */
export function nearReadings(readings: readonly RainReading[], shift_days: number, place: Place): NearReadings {
  const days = Float64Array.from(readings, ({ day }) => day).sort();
  const all = { readings, problems: [] };
  if (days.length === 0 || days.at(-1)! - days[0]! + 1 - days.length <= farFromOthers_days) return all;
  const starts = [0];
  for (let i = 1; i < days.length; i++) if (days[i]! - days[i - 1]! > farFromOthers_days) starts.push(i);
  const stretches = starts.map((start, index) => ({
    from: days[start]!,
    to: days[(starts[index + 1] ?? days.length) - 1]!,
    count: (starts[index + 1] ?? days.length) - start,
  }));
  const largest = Math.max(...stretches.map(({ count }) => count));
  const far = stretches.filter(({ count }) => count < largest && count <= mostFar_count);
  if (far.length === 0) return all;
  const isFar = ({ day }: RainReading) => far.some(({ from, to }) => day >= from && day <= to);
  const aside = readings.filter(isFar);
  const { day, row, rain_mm } = aside[0]!;
  const named = aside.slice(0, daysNamed_count).map((one) => isoDay(one.day - shift_days));
  const facts = { count: aside.length, days: named, ...(rain_mm === null ? {} : { value: rain_mm }) };
  const at = { ...place, row, column: 'date', day: isoDay(day - shift_days) };
  return {
    readings: readings.filter((one) => !isFar(one)),
    problems: [engineProblem('rain.day_far', at, facts)],
  };
}
