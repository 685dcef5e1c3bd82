import { type DayIndex, isoDay, type PlanFacts, pastTrips, sinceTold } from '@eavewell/engine';
import type { RolloutComparison } from '@eavewell/tables';
import type { AnewGiven, ComparisonGiven } from './comparisonGiven.ts';
import { isHandedOver } from './rolloutSheetTold.ts';

type ToldDayOf = (siteId: string) => DayIndex | null | undefined;

/** The hand-over each site was told: the day that is kept with the plan, or the one it had before something changed. */
export function toldOf({ trips }: PlanFacts, { since, before }: Pick<AnewGiven, 'since' | 'before'>): ToldDayOf {
  const kept = new Map<string, DayIndex>();
  const keep = (siteId: string, day: DayIndex | null) => {
    if (day !== null) kept.set(siteId, day);
  };
  for (const { siteId, was } of since?.takenOut ?? []) keep(siteId, was === null ? null : Date.parse(was) / day_ms);
  for (const { siteId, handOver } of trips.flatMap(({ stops }) => stops)) keep(siteId, handOver);
  return (siteId) => kept.get(siteId) ?? before?.handOvers.get(siteId);
}

const day_ms = 86_400_000;

type Sites = NonNullable<RolloutComparison['anew']>['toldOtherwise'];

/** Sites that the plan that was found hands over on another day than they were told: the later first, by people and days. */
export function toldOtherwise(given: ComparisonGiven, anew: AnewGiven, toldDayOf: ToldDayOf): Sites {
  const { problem, b, facts } = given;
  const { firstDay, horizon_days } = problem;
  const nameOf = new Map(facts.sites.map(({ siteId, name }) => [siteId, name]));
  const planned = sinceTold(problem, b.outcome, toldDayOf).otherwise.map(({ job, ...days }) => {
    const { siteId, people } = problem.jobs[job]!;
    return { siteId, people, ...days };
  });
  const gone = goneSites(given, anew).flatMap((siteId) => {
    const told = toldDayOf(siteId) ?? null;
    if (told === null) return [];
    return [{ siteId, people: anew.peopleOf.get(siteId) ?? null, toldDay: told - firstDay, newDay: null }];
  });
  const iso = (day: number | null) => (day === null ? null : isoDay(firstDay + day));
  return [...planned, ...gone]
    .map((site) => ({ ...site, by_days: (site.newDay ?? horizon_days) - (site.toldDay ?? horizon_days) }))
    .sort(
      (one, other) =>
        Number(one.by_days < 0) - Number(other.by_days < 0) ||
        (other.people ?? 0) * Math.abs(other.by_days) - (one.people ?? 0) * Math.abs(one.by_days) ||
        (one.siteId < other.siteId ? -1 : 1),
    )
    .map(({ siteId, people, toldDay, newDay, by_days }) => ({
      ...{ siteId, name: nameOf.get(siteId) ?? siteId, people, toldDay: iso(toldDay), newDay: iso(newDay) },
      later_days: toldDay === null || newDay === null ? null : by_days,
    }));
}

/** Sites of the plan's trips still to go, and those taken out of them, that can be planned no more and have no water. */
function goneSites({ problem, facts, a }: ComparisonGiven, { since, today }: AnewGiven): readonly string[] {
  const left = pastTrips(facts, a.facts, today);
  const leftIds = new Set(left.map(({ tripId }) => tripId));
  const jobs = new Set(problem.jobs.map(({ siteId }) => siteId));
  const underWay = new Set(
    left.filter(({ state }) => state === 'underWay').flatMap(({ stops }) => stops.map(({ siteId }) => siteId)),
  );
  const toGo = a.facts.trips.filter(({ tripId }) => !leftIds.has(tripId)).flatMap(({ stops }) => stops);
  const told = new Set([...toGo, ...(since?.takenOut ?? [])].map(({ siteId }) => siteId));
  return facts.sites
    .filter((site) => told.has(site.siteId) && !jobs.has(site.siteId))
    .filter((site) => !underWay.has(site.siteId) && !isHandedOver(site, today))
    .map(({ siteId }) => siteId);
}
