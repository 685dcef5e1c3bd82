import { calendarDay, type DayIndex } from '../../kernel/index.ts';
import type { RolloutProblem } from './problem.ts';

/** Days before each month of a leap year. */
const before_days = [0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335];

/** The day of a leap year of a day, from 0: 1 March is 60 in every year, as `serviceWait_days` counts them. */
export function leapDayOf(at: DayIndex): number {
  const { month, day } = calendarDay(at);
  return before_days[month - 1]! + day - 1;
}

/** The same of each day looked ahead. */
export function leapDays({ firstDay, horizon_days }: Pick<RolloutProblem, 'firstDay' | 'horizon_days'>): Uint16Array {
  return Uint16Array.from({ length: horizon_days }, (_, at) => leapDayOf(firstDay + at));
}
