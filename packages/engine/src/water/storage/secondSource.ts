import {
  type DayIndex,
  daysOfPlainYear,
  monthOfPlainYear,
  type SecondSourceFacts,
  type WaterYear,
} from '../../kernel/index.ts';
import { metSlack_fraction } from './constants.ts';
import { type Balance, dayByDay, judgedRules, type RunRules } from './dayByDay.ts';

/**
 * On which days does a second source give water?
 *
 * @param source - the months it gives water in [month], 1 to 12
 * @param firstDay - the record's first day [day]
 * @param count - its days [day], whole
 * @returns 1 on a day in its months, else 0, by day [count]
 * @definition ours: whole calendar months
 */
export function coveredDays(source: Pick<SecondSourceFacts, 'months'>, firstDay: DayIndex, count: number): Uint8Array {
  const covers = Uint8Array.from({ length: 366 }, (_, day) =>
    day > 0 && source.months.includes(monthOfPlainYear(day)) ? 1 : 0,
  );
  const days = daysOfPlainYear(firstDay, count);
  const covered = new Uint8Array(count);
  for (let i = 0; i < count; i++) covered[i] = covers[days[i]!]!;
  return covered;
}

/**
 * What a run left to a second source.
 *
 * @param balance - judged litres asked by day [L], and the days covered
 * @param judgedTaken_L - judged litres the tank gave, by day [L]
 * @returns judged litres it lacks on days covered, by day [L]
 * @law litres from the source and from the tank make what is asked on a covered day
 * @definition ours: docs/decisions/0097-second-source.md
 */
export function leftToSource_L(
  balance: Pick<Balance, 'judged_L' | 'covered'>,
  judgedTaken_L: Float64Array,
): Float64Array {
  const { judged_L, covered } = balance;
  const byDay_L = new Float64Array(judged_L.length);
  if (covered === undefined) return byDay_L;
  for (let day = 0; day < byDay_L.length; day++) {
    if (covered[day] !== 1 || judgedTaken_L[day]! >= judged_L[day]! * (1 - metSlack_fraction)) continue;
    byDay_L[day] = judged_L[day]! - judgedTaken_L[day]!;
  }
  return byDay_L;
}

/** What comes from a second source. */
export interface FromSecondSource {
  /** Days of the judged years on which judged litres come from it. */
  readonly days: number;
  /** The same of each judged year, in their order. */
  readonly days_by_year: readonly number[];
  /** Judged litres from it in those years. */
  readonly given_L: number;
  /** By day [L]. */
  readonly byDay_L: Float64Array;
}

/**
 * What does a tank leave to its second source? The judged litres it lacks on days on which the source gives water.
 *
 * @param balance - inflow and demands by day [L], and the days covered
 * @param tankVolume_L - usable volume [L]
 * @param years - the record's water years
 * @param rules - order of the day and ration [fraction]
 * @returns days and litres of the judged years [day] [L], and litres by day [L]; all 0 where no day is covered
 * @law litres from the source + litres short = judged litres asked less those the tank gave
 * @definition ours: docs/decisions/0097-second-source.md
 */
export function fromSecondSource(
  balance: Balance,
  tankVolume_L: number,
  years: readonly WaterYear[],
  rules: RunRules = judgedRules,
): FromSecondSource {
  const { covered, judged_L } = balance;
  if (covered === undefined) {
    const none = years.filter(({ judged }) => judged).map(() => 0);
    return { days: 0, days_by_year: none, given_L: 0, byDay_L: new Float64Array(judged_L.length) };
  }
  const byDay_L = leftToSource_L(balance, dayByDay(balance, tankVolume_L, rules, true).series!.judgedTaken_L);
  let given_L = 0;
  const days_by_year: number[] = [];
  for (const { from, to, judged } of years) {
    if (!judged) continue;
    let days = 0;
    for (const litres of byDay_L.subarray(from, to)) {
      given_L += litres;
      if (litres > 0) days++;
    }
    days_by_year.push(days);
  }
  return { days: days_by_year.reduce((sum, days) => sum + days, 0), days_by_year, given_L, byDay_L };
}
