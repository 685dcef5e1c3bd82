import type { CurveFacts, MonthsFacts, RecordFacts, YearsFacts } from '@eavewell/drawing';
import type { AppLanguage } from '@eavewell/words/app';
import { monthName } from './chartWords.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers' | 'code'>;

/** What the trace finds, in a sentence. */
export function traceTitle(
  { longestRun, runsOver, dryDays }: RecordFacts,
  limit_days: number,
  { say, numbers }: Words,
): string {
  if (longestRun === null && dryDays > 0) return say('water.title_dry_not_judged', { days: numbers.days(dryDays) });
  if (longestRun === null) return say('water.title_never_dry');
  const run = { days: numbers.days(longestRun.days), day: numbers.date(longestRun.from) };
  return runsOver === 0
    ? say('water.title_runs_short', { ...run, limit: numbers.days(limit_days) })
    : say('water.title_runs', { ...run, limit: numbers.days(limit_days), count: runsOver });
}

/** When in the year it fails, in a sentence. */
export function rasterTitle({ worstMonths, dryDays }: RecordFacts, language: Words): string {
  const { say, code } = language;
  if (dryDays === 0 || worstMonths.length === 0) return say('water.title_no_dry_day');
  const names = inYearOrder(worstMonths).map((month) => monthName(language, month, 'long'));
  const list = new Intl.ListFormat(code, { type: 'conjunction' }).format(names);
  return say('water.title_months_dry', { months: list });
}

/** Which sizes would do, in a sentence. */
export function curveTitle(facts: CurveFacts, hasSource: boolean, words: Words): string {
  const said = sizesSaid(facts, words);
  return hasSource ? `${said} ${words.say('water.title_without_source')}` : said;
}

function sizesSaid(facts: CurveFacts, { say, numbers }: Words): string {
  const { isExact, tankForDays_L, tankForRuns_L, catalogueForTarget_L } = facts;
  const litres = numbers.tankLitres;
  if (!isExact)
    return catalogueForTarget_L === null
      ? say('water.title_points_none')
      : say('water.title_points', { litres: litres(catalogueForTarget_L) });
  if (tankForDays_L === null && tankForRuns_L === null) return say('water.title_size_none');
  if (tankForRuns_L === null) return say('water.title_size_days', { litres: litres(tankForDays_L!) });
  if (tankForDays_L === null) return say('water.title_size_runs', { litres: litres(tankForRuns_L) });
  return say('water.title_size_both', { forDays: litres(tankForDays_L), forRuns: litres(tankForRuns_L) });
}

/** Which year was worst, in a sentence. */
export function yearsTitle(facts: YearsFacts, { say, numbers }: Words): string {
  const { worst, judgedYears, yearsWithoutDryDay, notJudgedDryDays } = facts;
  if (worst === null && notJudgedDryDays > 0)
    return say('water.title_dry_not_judged', { days: numbers.days(notJudgedDryDays) });
  if (worst === null) return say('water.title_no_dry_day');
  const said = { year: String(worst.waterYear), days: numbers.days(worst.dryDays) };
  if (yearsWithoutDryDay === 0) return say('water.title_worst_year_each', said);
  return say('water.title_worst_year', {
    ...said,
    without: numbers.ofYears(yearsWithoutDryDay, judgedYears),
  });
}

/** Where the litres go, in a sentence. */
export function monthsTitle({ ofYear_L, shortest, mostSpilled }: MonthsFacts, language: Words): string {
  const { say, numbers } = language;
  const caught = numbers.litres(ofYear_L.caught);
  const spilled = numbers.litres(ofYear_L.spilled);
  const name = (month: number) => monthName(language, month, 'long');
  if (shortest === null) return say('water.title_litres', { caught, spilled });
  if (mostSpilled === null) return say('water.title_litres_short', { caught, month: name(shortest) });
  return say('water.title_litres_both', { caught, spilled, spilledIn: name(mostSpilled), month: name(shortest) });
}

/** Months in the order they follow one another, the longest gap of the year between the last and the first. */
function inYearOrder(months: readonly number[]): readonly number[] {
  const ascending = [...months].sort((a, b) => a - b);
  const gapBefore = ascending.map((month, i) => (month - ascending.at(i - 1)! + 12) % 12);
  const first = gapBefore.indexOf(Math.max(...gapBefore));
  return [...ascending.slice(first), ...ascending.slice(0, first)];
}
