import { min_per_h } from '../../kernel/index.ts';
import { leastLine_L, peak_min } from './constants.ts';

/** When people come for the litres of a day: two peaks, and the rest evenly between them. */
export interface PeakDay {
  readonly litres_L_per_day: number;
  /** Share of the day's litres asked for in the hour of the morning, and of the evening; together at most 1. */
  readonly morning_fraction: number;
  readonly evening_fraction: number;
  /** From the end of the morning's peak to the beginning of the evening's; above 0. */
  readonly between_h: number;
}

/** What comes of one peak. */
export interface PeakLine {
  readonly asked_L: number;
  /** What could be given in the hour: no more than this, however many come. */
  readonly possible_L: number;
  /** Litres still wanted when the most were waiting. */
  readonly longestLine_L: number;
  /** How long the one waits who comes when the line is longest; Infinity where nothing flows. */
  readonly lastWait_min: number;
  /** How long after the peak began the last of its line has been served; 0 where there was none, Infinity where nothing flows. */
  readonly goneAfter_min: number;
}

/**
 * How much do taps give at most, together?
 *
 * @param taps_count - taps open [count], 0 or more
 * @param tapFlow_L_per_min - flow of one tap [L/min], 0 or more
 * @param unitFlow_L_per_min - flow of the unit they hang on [L/min], 0 or more
 * @returns flow of all taps [L/min]
 * @law never falls with taps or flows
 * @definition the lesser of taps × flow of one and the unit's flow
 * @example
 * tapsFlow_L_per_min(2, 7.5, 10) // → 10
 */
export function tapsFlow_L_per_min(taps_count: number, tapFlow_L_per_min: number, unitFlow_L_per_min: number): number {
  return Math.min(taps_count * tapFlow_L_per_min, unitFlow_L_per_min);
}

/**
 * What is asked for in each minute of a day, from the beginning of the morning's peak to the end of the evening's?
 *
 * @param day - litres of the day [L/day], shares of the peaks [fraction], hours between them [h]
 * @returns litres asked for, minute by minute [L/min]
 * @law adds up to the litres of the day
 * @definition ours: docs/decisions/0204-peaks-at-the-taps.md
 */
export function peakArrivals_L_per_min(day: PeakDay): readonly number[] {
  const { litres_L_per_day, morning_fraction, evening_fraction, between_h } = day;
  const between_min = Math.max(1, Math.round(between_h * min_per_h));
  const rest_fraction = Math.max(0, 1 - morning_fraction - evening_fraction);
  const stretches = [
    [peak_min, morning_fraction],
    [between_min, rest_fraction],
    [peak_min, evening_fraction],
  ] as const;
  return stretches.flatMap(([minutes, share]) =>
    Array.from({ length: minutes }, () => (litres_L_per_day * share) / minutes),
  );
}

/**
 * How long is the line at the taps after each minute? What comes and is not given waits; nothing filtered is kept ahead.
 *
 * @param arrivals_L_per_min - litres asked for, minute by minute [L/min]
 * @param given_L_per_min - what the taps give together [L/min], 0 or more
 * @returns litres still wanted at the end of each minute [L]
 * @law never rises with what is given, never falls with what is asked for
 * @definition line after = max(0, line before + asked − given)
 * @example
 * lineByMinute_L([3, 3, 0, 0], 2) // → [1, 2, 0, 0]
 */
export function lineByMinute_L(arrivals_L_per_min: readonly number[], given_L_per_min: number): readonly number[] {
  let line_L = 0;
  return arrivals_L_per_min.map((asked_L) => {
    const left_L = line_L + asked_L - given_L_per_min;
    line_L = left_L < leastLine_L ? 0 : left_L;
    return line_L;
  });
}

/**
 * How long do people wait in the morning and in the evening, and when is the line gone? What the morning leaves is still served between the peaks, and what is
 * left then waits with the evening.
 *
 * @param day - litres of the day [L/day], shares of the peaks [fraction], hours between them [h]
 * @param given_L_per_min - what the taps give together [L/min], 0 or more
 * @returns of each peak: litres asked and possible, longest line [L], longest wait [min], when the line is gone [min]
 * @law more given never makes a longer line or a longer wait
 * @definition ours: docs/decisions/0204-peaks-at-the-taps.md
 */
export function peakLines(
  day: PeakDay,
  given_L_per_min: number,
): { readonly morning: PeakLine; readonly evening: PeakLine } {
  const arrivals = peakArrivals_L_per_min(day);
  const line = lineByMinute_L(arrivals, given_L_per_min);
  return {
    morning: peakLine(arrivals, line, 0, given_L_per_min),
    evening: peakLine(arrivals, line, arrivals.length - peak_min, given_L_per_min),
  };
}

function peakLine(
  arrivals_L_per_min: readonly number[],
  line_L: readonly number[],
  from_min: number,
  given_L_per_min: number,
): PeakLine {
  const to_min = from_min + peak_min;
  const longestLine_L = line_L
    .slice(from_min, to_min)
    .reduce((most, one) => Math.max(most, one), line_L[from_min - 1] ?? 0);
  return {
    asked_L: arrivals_L_per_min.slice(from_min, to_min).reduce((sum, one) => sum + one, 0),
    possible_L: given_L_per_min * peak_min,
    longestLine_L,
    lastWait_min: longestLine_L === 0 ? 0 : longestLine_L / given_L_per_min,
    goneAfter_min: goneAt_min(arrivals_L_per_min, line_L, from_min, given_L_per_min) - from_min,
  };
}

/** The moment at which the line of the peak that begins at a minute is gone for the first time after its last minute; the beginning where there was none. */
function goneAt_min(
  arrivals_L_per_min: readonly number[],
  line_L: readonly number[],
  from_min: number,
  given_L_per_min: number,
): number {
  const last = from_min + peak_min - 1;
  let minute = last;
  // No line at the end of the peak: it went within it, if there was one.
  while (minute > from_min && line_L[minute] === 0 && line_L[minute - 1] === 0) minute--;
  if (line_L[minute] === 0) return wentWithin_min(arrivals_L_per_min, line_L, minute, given_L_per_min);
  for (minute = last + 1; minute < line_L.length; minute++)
    if (line_L[minute] === 0) return wentWithin_min(arrivals_L_per_min, line_L, minute, given_L_per_min);
  return line_L.length + line_L.at(-1)! / given_L_per_min;
}

/** When within a minute the line before it was worked off. */
function wentWithin_min(
  arrivals_L_per_min: readonly number[],
  line_L: readonly number[],
  minute: number,
  given_L_per_min: number,
): number {
  const before_L = line_L[minute - 1] ?? 0;
  return before_L === 0 ? minute : minute + before_L / (given_L_per_min - arrivals_L_per_min[minute]!);
}
