import { type Balance, dayByDay, type RunRules } from './dayByDay.ts';
import type { DrawnYears, PoolYear } from './drawYears.ts';
import { poolDays } from './poolDays.ts';
import type { DrawnRecords } from './resample.ts';

/** What a year does to one content at its start. Runs of dry days are counted in days. */
interface YearRun {
  readonly end_L: number;
  readonly days: number;
  readonly dryDays: number;
  /** The dry run it begins with, the longest of all, and the one it ends with. */
  readonly firstRun_days: number;
  readonly longestRun_days: number;
  readonly lastRun_days: number;
}

/**
 * How would this tank have done, had other years been drawn, where the rules look at how full the tank is? Every drawn record is
 * run day by day, twice, the second run counted. A year that starts with a content it has started with before ends as it did
 * then, and tanks mostly start a year with one of few contents, so most years are looked up.
 *
 * @param balance - inflow and demands by day [L]
 * @param pool - the years to draw from
 * @param tankVolume_L - usable volume [L]
 * @param longestDryRun_days - longest dry run of a good year [day]
 * @param drawn - the drawn years
 * @param rules - order of the day and ration [fraction], two passes
 * @returns dry days a year [day/year] and share of good years [fraction] of each draw
 * @law equals `dayByDay` over the drawn years joined end to end, a dry run that crosses the seam being one; under drawFirst without
 *   rationing, `drawnRecords`
 * @definition ours: docs/methods/storage.md, sizes run one by one
 */
export function rerunRecords(
  balance: Balance,
  pool: readonly PoolYear[],
  tankVolume_L: number,
  longestDryRun_days: number,
  drawn: DrawnYears,
  rules: RunRules,
): DrawnRecords {
  if (pool.length === 0) throw new RangeError('rerunRecords: needs a year to draw');
  const runs = pool.map((one) => yearRunner(poolDays(balance, one), tankVolume_L, rules));
  const kept = { dryDays_per_year: new Float64Array(drawn.draws), goodYears_fraction: new Float64Array(drawn.draws) };
  const { length, positions } = drawn;
  for (let draw = 0; draw < drawn.draws; draw++) {
    const row = positions.subarray(draw * length, (draw + 1) * length);
    let content = rules.start === 'full' ? tankVolume_L : 0;
    for (let pass = 1; pass < rules.passes; pass++) for (const year of row) content = runs[year]!(content).end_L;
    const years: YearRun[] = [];
    for (const year of row) {
      const run = runs[year]!(content);
      years.push(run);
      content = run.end_L;
    }
    kept.dryDays_per_year[draw] = years.reduce((sum, { dryDays }) => sum + dryDays, 0) / length;
    kept.goodYears_fraction[draw] = 1 - badYears(years, longestDryRun_days) / length;
  }
  return kept;
}

/** Years in which a dry run has grown too long, days before the year included. The record is a loop: a run may cross its seam. */
function badYears(years: readonly YearRun[], longestDryRun_days: number): number {
  let run_days = 0;
  let bad = 0;
  // Round once to learn with which run the record begins, then once to count.
  for (let round = 0; round < 2; round++) {
    bad = 0;
    for (const year of years) {
      const begun_days = year.firstRun_days > 0 ? run_days + year.firstRun_days : 0;
      if (Math.max(begun_days, year.longestRun_days) > longestDryRun_days) bad++;
      run_days = year.firstRun_days === year.days ? begun_days : year.lastRun_days;
    }
  }
  return bad;
}

/** Runs one year from any content, each content once. */
function yearRunner(days: Balance, tankVolume_L: number, rules: RunRules): (content_L: number) => YearRun {
  const known = new Map<number, YearRun>();
  return (content_L) => {
    const found = known.get(content_L);
    if (found) return found;
    const run = dayByDay(days, tankVolume_L, { ...rules, passes: 1, startContent_L: content_L });
    const one = { end_L: run.endContent_L, days: run.dry.length, ...runsOf(run.dry) };
    known.set(content_L, one);
    return one;
  };
}

function runsOf(dry: Uint8Array): Omit<YearRun, 'end_L' | 'days'> {
  let [dryDays, run_days, longestRun_days] = [0, 0, 0];
  let firstRun_days = dry.indexOf(0);
  if (firstRun_days < 0) firstRun_days = dry.length;
  for (const isDry of dry) {
    dryDays += isDry;
    run_days = isDry === 1 ? run_days + 1 : 0;
    if (run_days > longestRun_days) longestRun_days = run_days;
  }
  return { dryDays, firstRun_days, longestRun_days, lastRun_days: run_days };
}
