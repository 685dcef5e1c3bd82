import { quantile, type Range, type WaterYear } from '../../kernel/index.ts';
import { type Balance, dayByDay, daysOf, type RunRules } from './dayByDay.ts';
import type { DrawnYears } from './resample.ts';

/** What a year does to one content at its start. */
interface YearRun {
  readonly end_L: number;
  readonly dryDays: number;
}

/**
 * How far would the dry days a year spread, had other years been drawn, where the rules look at how full the tank is? Every drawn
 * record is run day by day, twice, the second run counted. A year that starts with a content it has started with before ends
 * as it did then, and tanks mostly start a year with one of few contents, so most years are looked up.
 *
 * @param balance - inflow and demands by day [L]
 * @param years - the record's water years
 * @param tankVolume_L - usable volume [L]
 * @param drawn - the drawn years
 * @param range_fraction - how much of the draws the range holds [fraction]
 * @param rules - order of the day and ration [fraction]
 * @returns dry days a year, as a range [day/year]
 * @law equals `dayByDay` over the drawn years joined end to end; under drawFirst without rationing, `resampledDryDays`
 * @definition ours: docs/methods/storage.md, sizes run one by one
 */
export function rerunDryDays(
  balance: Balance,
  years: readonly WaterYear[],
  tankVolume_L: number,
  drawn: DrawnYears,
  range_fraction: number,
  rules: RunRules,
): Range {
  const runs = years
    .filter((year) => year.judged)
    .map((year) => yearRunner(daysOf(balance, year.from, year.to), tankVolume_L, rules));
  if (runs.length === 0) throw new RangeError('rerunDryDays: needs a judged year');
  const { length, positions } = drawn;
  const dry_per_year = new Float64Array(drawn.draws);
  for (let draw = 0; draw < drawn.draws; draw++) {
    const first = draw * length;
    let content = rules.start === 'full' ? tankVolume_L : 0;
    let dryDays = 0;
    for (let pass = 1; pass <= rules.passes; pass++) {
      dryDays = 0;
      for (let i = first; i < first + length; i++) {
        const run = runs[positions[i]!]!(content);
        dryDays += run.dryDays;
        content = run.end_L;
      }
    }
    dry_per_year[draw] = dryDays / length;
  }
  dry_per_year.sort();
  const tail = (1 - range_fraction) / 2;
  return { low: quantile(dry_per_year, tail), high: quantile(dry_per_year, 1 - tail) };
}

/** Runs one year from any content, each content once. */
function yearRunner(days: Balance, tankVolume_L: number, rules: RunRules): (content_L: number) => YearRun {
  const known = new Map<number, YearRun>();
  return (content_L) => {
    const found = known.get(content_L);
    if (found) return found;
    const run = dayByDay(days, tankVolume_L, { ...rules, passes: 1, startContent_L: content_L });
    const one = { end_L: run.endContent_L, dryDays: run.dry.reduce((sum, day) => sum + day, 0) };
    known.set(content_L, one);
    return one;
  };
}
