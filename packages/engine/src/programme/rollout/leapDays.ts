import { calendarDay } from '../../kernel/index.ts';
import type { RolloutProblem } from './problem.ts';

/** Days before each month of a leap year. */
const before_days = [0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335];

/** The day of a leap year of each day looked ahead, from 0: 1 March is 60 in every year, as `serviceWait_days` counts them. */
export function leapDays({ firstDay, horizon_days }: Pick<RolloutProblem, 'firstDay' | 'horizon_days'>): Uint16Array {
  return Uint16Array.from({ length: horizon_days }, (_, at) => {
    const { month, day } = calendarDay(firstDay + at);
    return before_days[month - 1]! + day - 1;
  });
}
