import {
  isoDay,
  type ProgrammeFacts,
  planChanges,
  type RolloutProblem,
  serviceDaysOf,
  waitingByGroup,
} from '@eavewell/engine';
import type { RolloutComparison } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { ComparisonGiven, PlanTimed } from './comparisonGiven.ts';
import { anewReport } from './rolloutAnew.ts';
import { planReport } from './rolloutSheet.ts';
import { servedPoints } from './rolloutSums.ts';

/**
 * Two plans side by side: what differs, for whom, what it costs.
 *
 * @param given - both, timed on the same rollout
 * @param language - of its sentences
 * @returns sums of b less those of a [day, person-day, money, L], sites that move, waiting by area
 * @law a plan compared with itself moves no site
 * @definition ours: docs/methods/rollout.md, The search for plans of crews
 */
export function rolloutComparison(given: ComparisonGiven, language: Language): RolloutComparison {
  const { problem, a, b, facts } = given;
  const changes = planChanges(a, b);
  const trips = ({ outcome }: PlanTimed) => outcome.trips.flat().filter(({ stops }) => stops.length > 0).length;
  const sums = {
    ...{ finish_days: changes.finish_days, waiting_personDays: changes.waiting_personDays, cost: changes.cost },
    ...{ fuel_L: b.outcome.fuel_L - a.outcome.fuel_L, trips_count: trips(b) - trips(a) },
  };
  const sites = comparedSites(given);
  return {
    ...{ stamp: given.stamp, a: planReport(a.facts), b: planReport(b.facts) },
    said: differencesSaid(given, sums, sites, language),
    people_count: problem.jobs.reduce((sum, { people }) => sum + people, 0),
    servedA: servedPoints({ problem, outcome: a.outcome }),
    servedB: servedPoints({ problem, outcome: b.outcome }),
    anew: given.anew && anewReport(given, given.anew, sums, language),
    ...{ ...sums, sites, byArea: byArea(problem, facts, a, b) },
  };
}

type Sites = RolloutComparison['sites'];

/** Sites whose crew or first day of service is another. */
export function comparedSites({
  problem,
  facts,
  a,
  b,
}: Pick<ComparisonGiven, 'problem' | 'facts'> & {
  readonly a: Pick<PlanTimed, 'outcome'>;
  readonly b: Pick<PlanTimed, 'outcome'>;
}): Sites {
  const [was, is] = [crewsOf(problem, a), crewsOf(problem, b)];
  const [daysA, daysB] = [serviceDaysOf(problem, a.outcome), serviceDaysOf(problem, b.outcome)];
  const names = new Map(facts.sites.map(({ siteId, name }) => [siteId, name]));
  const day = (at: number) => (at >= problem.horizon_days ? null : isoDay(problem.firstDay + Math.floor(at)));
  return problem.jobs
    .flatMap(({ siteId, people }, job): Sites => {
      const [crewA, crewB] = [was.get(job) ?? null, is.get(job) ?? null];
      const [servedA, servedB] = [day(daysA[job]!), day(daysB[job]!)];
      if (crewA === crewB && servedA === servedB) return [];
      const later_days =
        servedA === null || servedB === null ? null : Math.floor(daysB[job]!) - Math.floor(daysA[job]!);
      return [{ siteId, name: names.get(siteId) ?? siteId, people, crewA, crewB, servedA, servedB, later_days }];
    })
    .sort((one, other) => rank(other) - rank(one) || (one.siteId < other.siteId ? -1 : 1));
}

/** Those that gain or lose a day altogether first, then by person-days. */
const rank = ({ later_days, people }: Sites[number]) =>
  later_days === null ? Number.POSITIVE_INFINITY : Math.abs(later_days) * people;

function crewsOf({ crews }: RolloutProblem, { outcome }: Pick<PlanTimed, 'outcome'>): ReadonlyMap<number, string> {
  return new Map(
    outcome.trips.flatMap((trips, crew) =>
      trips.flatMap(({ stops }) => stops.map(({ job }) => [job, crews[crew]!.crewId] as const)),
    ),
  );
}

function byArea(
  problem: RolloutProblem,
  { rollout }: ProgrammeFacts,
  a: PlanTimed,
  b: PlanTimed,
): RolloutComparison['byArea'] {
  const areas = new Map(rollout.work.map(({ siteId, area }) => [siteId, area]));
  const groupOf = (job: number) => areas.get(problem.jobs[job]!.siteId) ?? null;
  const after = new Map(waitingByGroup(problem, b.outcome, groupOf).map((one) => [one.group, one.mean_days]));
  return waitingByGroup(problem, a.outcome, groupOf).map(({ group, people_count, mean_days }) => ({
    ...{ area: group, people: people_count, meanA_days: mean_days },
    meanB_days: after.get(group) ?? mean_days,
  }));
}

/** Sums smaller than this are no difference: what rounding leaves. */
export const slack_amount = 1e-6;

function differencesSaid(
  { facts, a, b }: ComparisonGiven,
  sums: Pick<RolloutComparison, 'finish_days' | 'waiting_personDays' | 'cost' | 'trips_count'>,
  sites: Sites,
  { say, numbers }: Language,
): string[] {
  const names = { a: a.facts.name, b: b.facts.name };
  const { currency } = facts.settings;
  const isMore = (value: number) => (value > 0 ? 'yes' : 'no');
  const told: string[] = [];
  const { waiting_personDays: waiting, finish_days, cost, trips_count } = sums;
  if (Math.abs(waiting) >= 0.5)
    told.push(
      say('rolloutAnswers.compared.waiting', {
        ...names,
        days: Math.round(Math.abs(waiting)),
        isMore: isMore(waiting),
      }),
    );
  const days = Math.floor(b.outcome.finish) - Math.floor(a.outcome.finish);
  if (Math.abs(finish_days) > slack_amount && days !== 0)
    told.push(say('rolloutAnswers.compared.finish', { ...names, days: Math.abs(days), isMore: isMore(days) }));
  const amount = Math.abs(cost);
  if (amount > slack_amount)
    told.push(
      say('rolloutAnswers.compared.cost', {
        ...names,
        cost: currency === null ? numbers.fixed(amount, 0) : numbers.money(amount, currency),
        isMore: isMore(cost),
      }),
    );
  if (trips_count !== 0)
    told.push(
      say('rolloutAnswers.compared.trips', { ...names, trips: Math.abs(trips_count), isMore: isMore(trips_count) }),
    );
  const later = sites.filter(({ later_days }) => (later_days ?? 0) > 0).length;
  const sooner = sites.filter(({ later_days }) => (later_days ?? 0) < 0).length;
  if (sites.length > 0)
    told.push(say('rolloutAnswers.compared.sites', { ...names, sites: sites.length, later, sooner }));
  return told.length > 0 ? told : [say('rolloutAnswers.compared.same', names)];
}
