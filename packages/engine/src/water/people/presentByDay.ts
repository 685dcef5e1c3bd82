import type { PresenceCalendar, PresencePeriod } from '../../kernel/index.ts';
import { daysOfYear_count } from './constants.ts';

/** Who is there on each day of a year. */
export interface PresentByDay {
  /** Share of the people who are there, by calendar day from 1 January on. */
  readonly presentFraction: Float64Array;
  /** Days of the year that no period is about: everyone is taken to be there. */
  readonly withoutPeriod_days: number;
}

/**
 * Which share of the people is there on each calendar day?
 *
 * @param presence - the calendar: periods by day of the year [day], 1 to 365, and shares [fraction]; null: everyone, always
 * @returns share by calendar day [fraction], 365 of them, and how many days no period is about [day]
 * @law a day that no period is about has everyone
 * @definition ours: a period whose last day comes before its first runs over the year's end
 * @example
 * presentByDay({ calendarId: 'A', periods: [{ from_dayOfYear: 365, to_dayOfYear: 2, presentFraction: 0.5, reason: null }] }).presentFraction.slice(0, 3) // → Float64Array.of(0.5, 0.5, 1)
 */
export function presentByDay(presence: PresenceCalendar | null): PresentByDay {
  const presentFraction = new Float64Array(daysOfYear_count).fill(1);
  if (presence === null) return { presentFraction, withoutPeriod_days: 0 };
  let withoutPeriod_days: number = daysOfYear_count;
  for (const period of presence.periods)
    for (const day of daysOfPeriod(period)) {
      presentFraction[day - 1] = period.presentFraction;
      withoutPeriod_days--;
    }
  return { presentFraction, withoutPeriod_days };
}

/**
 * Which calendar days are in a period?
 *
 * @param period - its first and last day of the year [day], 1 to 365
 * @returns days of the year [day], 1 to 365, in their order
 * @law at least one day, and none twice
 * @definition ours: a period whose last day comes before its first runs over the year's end
 * @example
 * daysOfPeriod({ from_dayOfYear: 364, to_dayOfYear: 1 }) // → [364, 365, 1]
 */
export function daysOfPeriod(period: Pick<PresencePeriod, 'from_dayOfYear' | 'to_dayOfYear'>): readonly number[] {
  const { from_dayOfYear, to_dayOfYear } = period;
  const last = to_dayOfYear < from_dayOfYear ? to_dayOfYear + daysOfYear_count : to_dayOfYear;
  return Array.from({ length: last - from_dayOfYear + 1 }, (_, i) => ((from_dayOfYear + i - 1) % daysOfYear_count) + 1);
}
