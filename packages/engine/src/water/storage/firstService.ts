import {
  calendarDay,
  type DayIndex,
  dayIndexOf,
  daysInMonth,
  type FirstService,
  quantile,
  type WaterYear,
} from '../../kernel/index.ts';
import { metSlack_fraction } from './constants.ts';
import { type Balance, dayByDay, judgedRules, type RunRules, turnedTo } from './dayByDay.ts';
import { looksAtContent } from './dayRules.ts';

/**
 * When does a tank that is empty at hand-over first serve? Each hand-over's day of the year that lies in a judged year is
 * tried: the first day whose judged litres are wholly met in the morning. Until then all that comes in is drunk.
 *
 * @param balance - inflow and demands by day [L], drawFirst
 * @param firstDay - the record's first day [day]
 * @param tankVolume_L - usable volume [L]
 * @param handOverDay - the day the site is handed over, its tank empty [day]
 * @param years - the record's water years; a hand-over in a year that is not judged does not count
 * @param rules - order of the day and ration [fraction]; `ybs` comes as its net balance
 * @returns median wait over the years tried and its middle eight in ten [day], and the day itself; null where it never serves
 * @law a larger tank or more inflow never makes the wait longer
 * @definition ours: docs/methods/storage.md, first day of service
 */
export function firstServiceDay(
  balance: Balance,
  firstDay: DayIndex,
  tankVolume_L: number,
  handOverDay: DayIndex,
  years: readonly Pick<WaterYear, 'from' | 'to' | 'judged'>[],
  rules: RunRules = judgedRules,
): FirstService | null {
  const days = balance.inflow_L.length;
  const { month, day } = calendarDay(handOverDay);
  const waits: number[] = [];
  for (let year = calendarDay(firstDay).year; ; year++) {
    const start = dayIndexOf(year, month, Math.min(day, daysInMonth(year, month))) - firstDay;
    if (start >= days) break;
    if (!years.some(({ from, to, judged }) => judged && start >= from && start < to)) continue;
    const wait = looksAtContent(rules)
      ? waitByRun(balance, start, tankVolume_L, rules)
      : waitFrom(balance, start, tankVolume_L);
    if (wait === null) return null;
    waits.push(wait);
  }
  if (waits.length === 0) return null;
  const wait_days = Math.ceil(quantile(waits, 0.5));
  return {
    handOverDay,
    wait_days,
    wait_days_range: { low: Math.floor(quantile(waits, 0.1)), high: Math.ceil(quantile(waits, 0.9)) },
    firstServiceDay: handOverDay + wait_days,
  };
}

/** Days from an empty tank on day `start` to the first morning that meets the judged litres; the record is a loop. */
function waitFrom(balance: Balance, start: number, tankVolume_L: number): number | null {
  const days = balance.inflow_L.length;
  let content = 0;
  for (let wait = 0; wait < days; wait++) {
    const day = (start + wait) % days;
    const judged = balance.judged_L[day]!;
    if (content >= judged * (1 - metSlack_fraction)) return wait;
    // Short: the judged purposes take all there is, so only the day's own rain is there the next morning.
    content = Math.min(tankVolume_L, balance.inflow_L[day]!);
  }
  return null;
}

/** The same by a plain run, where the rules look at how full the tank is. */
function waitByRun(balance: Balance, start: number, tankVolume_L: number, rules: RunRules): number | null {
  const { dry } = dayByDay(turnedTo(balance, start), tankVolume_L, { ...rules, passes: 1, start: 'empty' });
  const wait = dry.indexOf(0);
  return wait < 0 ? null : wait;
}
