import type { JudgedRain, Target } from '../../kernel/index.ts';
import { metSlack_fraction } from './constants.ts';
import { askedDaysOf, goodYearsNeeded } from './curve.ts';
import { type Balance, dayByDay, type RunRules, type TankSeries } from './dayByDay.ts';
import { dryRuns } from './dryRuns.ts';
import type { DryDays, SizeCurve } from './sizeCurve.ts';

/**
 * What does one tank do under rules that look at how full it is? A curve that is right at this one size: a dry day is one that
 * no tank would meet, any other is met by all, so that every question about this tank is asked the same way as everywhere.
 *
 * @param balance - inflow and demands by day [L]
 * @param rain - the rain's water years
 * @param target - what "enough" means
 * @param tankVolume_L - the tank [L], 0 or more
 * @param rules - order of the day and ration [fraction]
 * @returns critical volumes and needs of 0 or Infinity [L], shortfall [L] and counts as `sizeCurve` has them; no smallest tank, since one
 *   run knows none
 * @definition ours: docs/methods/storage.md, sizes run one by one
 */
export function runCurve(
  balance: Balance,
  rain: Pick<JudgedRain, 'years' | 'judgedYears'>,
  target: Target,
  tankVolume_L: number,
  rules: RunRules,
): SizeCurve {
  const { dry, series } = dayByDay(balance, tankVolume_L, rules, true);
  return {
    ...dryDaysOf(dry, balance, rain, target),
    ...shortOf(balance, rain.years, series!),
    tankForDays_L: null,
    tankForRuns_L: null,
    tankForTarget_L: null,
  };
}

/**
 * Which days are dry in one tank? As `runCurve`, without what falls short, in one quick run.
 *
 * @param balance - inflow and demands by day [L]
 * @param rain - the rain's water years
 * @param target - what "enough" means
 * @param tankVolume_L - the tank [L], 0 or more
 * @param rules - order of the day and ration [fraction]
 * @returns critical volumes and needs of 0 or Infinity [L], and counts
 * @definition ours: docs/methods/storage.md, sizes run one by one
 */
export function runDryDays(
  balance: Balance,
  rain: Pick<JudgedRain, 'years' | 'judgedYears'>,
  target: Target,
  tankVolume_L: number,
  rules: RunRules,
): DryDays {
  return dryDaysOf(dayByDay(balance, tankVolume_L, rules).dry, balance, rain, target);
}

function dryDaysOf(
  dry: Uint8Array,
  balance: Balance,
  { years, judgedYears }: Pick<JudgedRain, 'years' | 'judgedYears'>,
  target: Target,
): DryDays {
  const { longestByYear_days } = dryRuns(dry, years, 0);
  const needs = years.flatMap(({ judged }, index) => {
    if (!judged) return [];
    return [longestByYear_days[index]! > target.longestDryRun_days ? Infinity : 0];
  });
  let dryDays = 0;
  for (const { from, to, judged } of years) if (judged) for (let day = from; day < to; day++) dryDays += dry[day]!;
  return {
    target,
    get critical_L() {
      return Float64Array.from(dry, (isDry) => (isDry === 1 ? Infinity : 0));
    },
    sorted: () => ({ least_L: 0, critical_L: new Float64Array(dryDays).fill(Infinity) }),
    needs_L: Float64Array.from(needs),
    years,
    judgedYears,
    goodYearsNeeded: goodYearsNeeded(judgedYears, target.goodYears_fraction),
    askedDays: askedDaysOf((balance.whole ?? balance).judged_L, years),
  };
}

/** What a run falls short of in the judged years. */
function shortOf(
  { judged_L, other_L }: Balance,
  years: JudgedRain['years'],
  { judgedTaken_L, otherTaken_L }: TankSeries,
): Pick<SizeCurve, 'shortfall_L' | 'otherShortDays'> {
  let [shortfall_L, otherShortDays] = [0, 0];
  for (const { from, to, judged } of years) {
    if (!judged) continue;
    for (let day = from; day < to; day++) {
      shortfall_L += judged_L[day]! - judgedTaken_L[day]!;
      if (otherTaken_L[day]! < other_L[day]! * (1 - metSlack_fraction)) otherShortDays++;
    }
  }
  return { shortfall_L: Math.max(0, shortfall_L), otherShortDays };
}
