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
 * tried: the first day on which judged litres are asked and wholly met in the morning. Until then all that comes in is drunk.
 *
 * @param balance - inflow and demands by day [L]
 * @param firstDay - the record's first day [day]
 * @param tankVolume_L - usable volume [L]
 * @param handOverDay - the day the site is handed over, its tank empty [day]
 * @param years - the record's water years; a hand-over in a year that is not judged does not count
 * @param rules - order of the day and ration [fraction]
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
    const wait =
      rules.order === 'drawFirst' && !looksAtContent(rules)
        ? waitFrom(balance, start, tankVolume_L)
        : waitByRun(balance, start, tankVolume_L, rules);
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
    if (judged > 0 && content >= judged * (1 - metSlack_fraction)) return wait;
    // Short: the judged purposes take all there is, so only the day's own rain is there the next morning. On a day on which they ask
    // for nothing, nobody is served either; the other purposes draw, and the rest stays.
    const kept = judged > 0 ? 0 : Math.max(0, content - balance.other_L[day]!);
    content = Math.min(tankVolume_L, kept + balance.inflow_L[day]!);
  }
  return null;
}

/** The same by a plain run, for any other rules. */
function waitByRun(balance: Balance, start: number, tankVolume_L: number, rules: RunRules): number | null {
  const turned = turnedTo(balance, start);
  const { series } = dayByDay(turned, tankVolume_L, { ...rules, passes: 1, start: 'empty' }, true);
  const wait = turned.judged_L.findIndex(
    (judged, day) => judged > 0 && series!.judgedTaken_L[day]! >= judged * (1 - metSlack_fraction),
  );
  return wait < 0 ? null : wait;
}
