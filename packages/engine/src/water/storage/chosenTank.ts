import type { DayIndex, JudgedRain, StorageFinding } from '../../kernel/index.ts';
import { listedRuns_count, metSlack_fraction } from './constants.ts';
import { type Balance, dayByDay, judgedRules, type RunRules } from './dayByDay.ts';
import { dryRuns } from './dryRuns.ts';
import { firstServiceDay } from './firstService.ts';
import type { SizeCurve } from './sizeCurve.ts';

/** What is told day by day of the chosen tank. */
export type ChosenTank = Pick<
  StorageFinding,
  | 'shortfall_L_per_year'
  | 'otherShortDays_per_year'
  | 'longestRun'
  | 'dryRuns'
  | 'years'
  | 'yieldBeforeSpill'
  | 'firstService'
>;

/**
 * How does the chosen tank fare: when was it dry, in which years, how many litres short, at the generous end, and when
 * does it first serve?
 *
 * @param balance - inflow and demands by day [L]
 * @param rain - rain with its water years
 * @param curve - every tank size of the same balance
 * @param tankVolume_L - usable volume [L]
 * @param handOverDay - the day the site is handed over [day], or null
 * @param rules - order of the day and ration [fraction]
 * @returns dry runs [day], years, litres short [L/year], days short of other purposes [day/year], the generous end and the first day of service
 * @definition ours: docs/methods/storage.md
 */
export function chosenTank(
  balance: Balance,
  rain: Pick<JudgedRain, 'record' | 'years' | 'judgedYears'>,
  curve: SizeCurve,
  tankVolume_L: number,
  handOverDay: DayIndex | null,
  rules: RunRules = judgedRules,
): ChosenTank {
  const { years } = rain;
  const { firstDay } = rain.record;
  const dry = dryAt(curve.critical_L, tankVolume_L);
  const spells = dryRuns(dry, years, firstDay);
  return {
    shortfall_L_per_year: curve.shortfall_L / rain.judgedYears,
    otherShortDays_per_year: curve.otherShortDays / rain.judgedYears,
    longestRun: spells.runs[0] ?? null,
    dryRuns: spells.runs.slice(0, listedRuns_count),
    years: years.map((year, index) => ({
      waterYear: year.label,
      firstDay: firstDay + year.from,
      judged: year.judged,
      dryDays: total(dry.subarray(year.from, year.to)),
      longestRun_days: spells.longestByYear_days[index]!,
      filledDays: year.missing_days,
    })),
    yieldBeforeSpill: generousEnd(balance, rain, curve, tankVolume_L, rules),
    firstService:
      handOverDay === null ? null : firstServiceDay(balance, firstDay, tankVolume_L, handOverDay, years, rules),
  };
}

/** The same tank with the rain let in before people draw. */
function generousEnd(
  balance: Balance,
  rain: Pick<JudgedRain, 'record' | 'years' | 'judgedYears'>,
  curve: SizeCurve,
  tankVolume_L: number,
  rules: RunRules,
): StorageFinding['yieldBeforeSpill'] {
  const { dry } = dayByDay(balance, tankVolume_L, { ...rules, order: 'ybs' });
  const { longestByYear_days } = dryRuns(dry, rain.years, rain.record.firstDay);
  let [dryDays, goodYears] = [0, 0];
  for (const [index, year] of rain.years.entries()) {
    if (!year.judged) continue;
    dryDays += total(dry.subarray(year.from, year.to));
    if (longestByYear_days[index]! <= curve.target.longestDryRun_days) goodYears++;
  }
  return { dryDays_per_year: dryDays / rain.judgedYears, goodYears };
}

function dryAt(critical_L: Float64Array, tankVolume_L: number): Uint8Array {
  const dry = new Uint8Array(critical_L.length);
  const enough_L = tankVolume_L * (1 + metSlack_fraction);
  for (let day = 0; day < dry.length; day++) if (critical_L[day]! > enough_L) dry[day] = 1;
  return dry;
}

function total(values: Float64Array | Uint8Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum;
}
