import type { JudgedRain, Target } from '../../kernel/index.ts';
import { goodYearsNeeded, judgedDays, yearNeeds } from './curve.ts';
import { type Balance, dayByDay, type RunRules } from './dayByDay.ts';
import type { SizeCurve } from './sizeCurve.ts';

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
  const { years, judgedYears } = rain;
  const run = dayByDay(balance, tankVolume_L, rules);
  const critical_L = Float64Array.from(run.dry, (dry) => (dry === 1 ? Infinity : 0));
  return {
    target,
    shortfall_L: Math.max(0, balance.judged_L.reduce((sum, asked) => sum + asked, 0) - run.judgedTaken_L),
    otherShortDays: run.otherShortDays,
    critical_L,
    needs_L: yearNeeds(critical_L, years, target.longestDryRun_days),
    years,
    judgedYears,
    goodYearsNeeded: goodYearsNeeded(judgedYears, target.goodYears_fraction),
    judgedDays: judgedDays(years),
    tankForDays_L: null,
    tankForRuns_L: null,
    tankForTarget_L: null,
  };
}
