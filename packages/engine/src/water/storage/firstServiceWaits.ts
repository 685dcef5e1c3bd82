import {
  calendarDay,
  type DayIndex,
  dayIndexOf,
  daysInMonth,
  neverServes_days,
  notJudged_days,
  quantile,
  type WaitsByYear,
  type WaterYear,
} from '../../kernel/index.ts';
import { firstRun_days, leapYear, leapYear_days, metSlack_fraction } from './constants.ts';
import { type Balance, dayByDay, judgedRules, type RunRules } from './dayByDay.ts';
import { looksAtContent } from './dayRules.ts';

/**
 * For a tank that is empty at hand-over, how many days pass to the first day of service, for each day on which it may be handed over, in each year of the record? What
 * `firstServiceDay` says of one day, for all of them in one pass.
 *
 * @param balance - inflow and demands by day [L]
 * @param firstDay - the record's first day [day]
 * @param tankVolume_L - usable volume [L]
 * @param years - the record's water years; a hand-over in a year that is not judged does not count
 * @param rules - order of the day and ration [fraction]
 * @returns the wait [day] by calendar year and day of a leap year; the years of the record [count]
 * @law each is the wait from that day of the record on
 * @definition ours: docs/methods/storage.md, first day of service
 */
export function firstServiceWaits(
  balance: Balance,
  firstDay: DayIndex,
  tankVolume_L: number,
  years: readonly Pick<WaterYear, 'from' | 'to' | 'judged'>[],
  rules: RunRules = judgedRules,
): WaitsByYear {
  const days = balance.inflow_L.length;
  const isJudged = new Uint8Array(days);
  for (const { from, to, judged } of years) if (judged) isJudged.fill(1, Math.max(0, from), Math.max(0, to));
  const isPlain = rules.order === 'drawFirst' && !looksAtContent(rules);
  const waits = isPlain ? allWaits(balance, tankVolume_L) : null;
  const waitOn = (start: number) => waits?.[start] ?? waitByRuns(balance, start, tankVolume_L, rules);
  const firstYear = calendarDay(firstDay).year;
  const years_count = calendarDay(firstDay + days).year - firstYear + 1;
  const wait_days = new Uint16Array(years_count * leapYear_days).fill(notJudged_days);
  const opens = dayIndexOf(leapYear, 1, 1);
  for (let ofYear = 0; ofYear < leapYear_days; ofYear++) {
    const { month, day } = calendarDay(opens + ofYear);
    for (let at = 0; at < years_count; at++) {
      const year = firstYear + at;
      const start = dayIndexOf(year, month, Math.min(day, daysInMonth(year, month))) - firstDay;
      if (start < 0 || start >= days || isJudged[start] === 0) continue;
      const wait = waitOn(start);
      wait_days[ofYear * years_count + at] = wait < days ? Math.min(wait, neverServes_days - 1) : neverServes_days;
    }
  }
  return { firstYear, years_count, wait_days };
}

/**
 * The wait from hand-over to service that is as likely shorter as longer, over the years of a record.
 *
 * @param waits - the waits by year [day]
 * @returns the median wait [day] by day of a leap year, 366 of them, 29 February the sixtieth; null where it never serves
 * @law each is the wait of `firstServiceDay` for a hand-over on that day
 * @definition ours: docs/methods/storage.md, first day of service
 */
export function middleWaits(waits: WaitsByYear): readonly (number | null)[] {
  const { years_count, wait_days } = waits;
  return Array.from({ length: leapYear_days }, (_, ofYear) => {
    const found: number[] = [];
    for (let at = 0; at < years_count; at++) {
      const wait = wait_days[ofYear * years_count + at]!;
      if (wait === neverServes_days) return null;
      if (wait !== notJudged_days) found.push(wait);
    }
    return found.length === 0 ? null : Math.ceil(quantile(found, 0.5));
  });
}

/**
 * Waits from an empty tank, for every start. After a day on which judged litres were asked and not met nothing is left but that day's rain, and after
 * a first day neither: so the wait from a day on hangs on the rain of the day before alone, and is known from the back.
 */
function allWaits({ inflow_L, judged_L, other_L }: Balance, tankVolume_L: number): Float64Array {
  const days = inflow_L.length;
  const at = (day: number) => day % days;
  // From the morning of a day on, with what came in the day before. The record is a loop: the second round knows what the first could not.
  const after = new Float64Array(days).fill(Number.POSITIVE_INFINITY);
  for (let round = 0; round < 2; round++)
    for (let day = days - 1; day >= 0; day--) {
      let content = Math.min(tankVolume_L, inflow_L[at(day + days - 1)]!);
      let asked = 0;
      // Days on which nothing is asked: the other purposes draw, the rest stays.
      for (; asked < days && !(judged_L[at(day + asked)]! > 0); asked++) {
        const kept = Math.max(0, content - other_L[at(day + asked)]!);
        content = Math.min(tankVolume_L, kept + inflow_L[at(day + asked)]!);
      }
      const isMet = asked < days && content >= judged_L[at(day + asked)]! * (1 - metSlack_fraction);
      after[day] = isMet ? asked : asked + 1 + after[at(day + asked + 1)]!;
    }
  return Float64Array.from(after, (_, day) => 1 + after[at(day + 1)]!);
}

/** The same by a plain run, for any other rules: over few days first, as most waits are short. */
function waitByRuns(balance: Balance, start: number, tankVolume_L: number, rules: RunRules): number {
  const days = balance.inflow_L.length;
  for (let length = Math.min(days, firstRun_days); ; length = Math.min(days, length * length)) {
    const part = partOf(balance, start, length);
    const { series } = dayByDay(part, tankVolume_L, { ...rules, passes: 1, start: 'empty' }, true);
    const wait = part.judged_L.findIndex(
      (judged, day) => judged > 0 && series!.judgedTaken_L[day]! >= judged * (1 - metSlack_fraction),
    );
    if (wait >= 0) return wait;
    if (length === days) return Number.POSITIVE_INFINITY;
  }
}

function partOf({ inflow_L, judged_L, other_L }: Balance, start: number, length: number): Balance {
  const of = (values: Float64Array) =>
    Float64Array.from({ length }, (_, day) => values[(start + day) % values.length]!);
  return { inflow_L: of(inflow_L), judged_L: of(judged_L), other_L: of(other_L) };
}
