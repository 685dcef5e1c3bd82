import type { RolloutSheet } from '@eavewell/tables';
import type { SheetTold } from './rolloutSheetTold.ts';
import { optimal_fraction, waiting } from './rolloutSums.ts';
import { dayAt, daysAt, dayWithin, isServed, type Told } from './rolloutTold.ts';

/** When all sites of the plan drink. */
export function drinkingOf(told: Told): NonNullable<RolloutSheet['finish']> {
  const { outcome, problem, futures } = told;
  const days = outcome.trips
    .flat()
    .flatMap(({ stops }) => stops.filter((stop) => isServed(stop, problem)).map(({ serviceDay }) => serviceDay));
  const last = days.reduce((most, day) => Math.max(most, day), -1);
  const drawn = futures?.allServed ?? null;
  return {
    likely: last < 0 ? null : dayAt(told, last),
    futures: drawn && daysAt(told, drawn),
    runs_count: futures?.replicates_count ?? 0,
    p90Between: drawn && [dayWithin(told, drawn.p90.from), dayWithin(told, drawn.p90.to)],
  };
}

/** When all sites of the plan drink, and how sure that is, in a sentence; null: no trip serves a site. */
export function drinkingSaid(told: Told): string | null {
  const { problem, outcome, language } = told;
  const { say, numbers } = language;
  const trips = outcome.trips.flat();
  const sites = trips.reduce((sum, { stops }) => sum + stops.filter((stop) => isServed(stop, problem)).length, 0);
  if (sites === 0) return null;
  const { likely, futures } = drinkingOf(told);
  const date = (day: string | null) => (day === null ? '' : numbers.date(day));
  const isTreated = trips.some(({ stops }) => stops.some(({ job }) => told.untreated.has(problem.jobs[job]!.siteId)))
    ? 'no'
    : 'yes';
  if (futures === null) return say('rolloutAnswers.likely', { sites, day: date(likely), isTreated });
  return say('rolloutAnswers.sure', {
    ...{ sites, half: date(futures.p50), ninth: date(futures.p90) },
    isTreated,
    isHalf: futures.p50 === null ? 'no' : 'yes',
    isNinth: futures.p90 === null ? 'no' : 'yes',
  });
}

/** The first thing that is said of a plan: when all drink, and how sure that is. */
export function sentenceOf(told: SheetTold): string {
  const { planId, problem, past, language } = told;
  const { say } = language;
  if (planId === null) return say('rolloutAnswers.none', { sites: problem.jobs.length });
  const said = drinkingSaid(told);
  if (said !== null) return said;
  const underWay = past.filter(({ state }) => state === 'underWay');
  const sites = (trips: typeof past) => trips.reduce((sum, { stops }) => sum + stops.length, 0);
  if (underWay.length > 0) return say('rolloutAnswers.lastUnderWay', { sites: sites(underWay) });
  if (past.length > 0) return say('rolloutAnswers.allDone', { sites: sites(past) });
  return say('rolloutAnswers.empty', { sites: problem.jobs.length });
}

const boundSaid = (gap: number, { say, numbers }: SheetTold['language']): string =>
  say('rolloutAnswers.bound', {
    isOptimal: gap <= optimal_fraction ? 'yes' : 'no',
    gap: numbers.percentAtMost(gap),
  });

/** What is worth a line below it: how far from the best plan possible, and sites that no trip goes to. */
export function restOf(told: SheetTold): string {
  const { planId, problem, outcome, language } = told;
  if (planId === null || problem.jobs.length === 0) return '';
  const left = outcome.broken.filter(({ kind }) => kind === 'leftOut').length;
  const bound = left > 0 ? null : waiting(told).bound;
  return [
    ...(left > 0 ? [language.say('rolloutAnswers.notInTrips', { sites: left })] : []),
    ...(bound === null ? [] : [boundSaid(bound.gap_fraction, language)]),
  ].join(' ');
}
