import { isoDay } from '@eavewell/engine';
import type { RolloutSheet, SheetCandidate } from '@eavewell/tables';
import { isHandedOver, type SheetTold } from './rolloutSheetTold.ts';
import { leftOut } from './rolloutSums.ts';
import { dayAt, isServed } from './rolloutTold.ts';

/** Every site that is not handed over: in a trip, or why not. */
export function candidatesOf(told: SheetTold): RolloutSheet['candidates'] {
  const { facts, today, problem, past, language } = told;
  const { say, numbers } = language;
  const works = new Map(facts.rollout.work.map((work) => [work.siteId, work]));
  const inTrip = tripsBySite(told);
  const under = new Map(
    past.flatMap(({ tripId, stops, state }) => stops.map(({ siteId }) => [siteId, { tripId, state }] as const)),
  );
  const reasons = new Map(
    leftOut(told)
      .filter(({ reason }) => reason !== 'noTrip')
      .map((one) => [one.siteId, one]),
  );
  const isJob = new Set(problem.jobs.map(({ siteId }) => siteId));
  const day = (at: number | null | undefined) => (at === null || at === undefined ? null : isoDay(at));
  return facts.sites
    .filter((site) => !isHandedOver(site, today))
    .map((site): SheetCandidate => {
      const { siteId, name } = site;
      const work = works.get(siteId);
      const gone = under.get(siteId);
      const planned = inTrip.get(siteId);
      const against = reasons.get(siteId);
      const said = () => {
        if (planned !== undefined)
          return say('rolloutAnswers.planned', {
            ...{ trip: planned.tripId, isDone: planned.handOver === null ? 'no' : 'yes' },
            day: planned.handOver === null ? '' : numbers.date(planned.handOver),
          });
        if (gone?.state === 'underWay') return say('rolloutAnswers.underWay', { trip: gone.tripId });
        if (gone !== undefined && isJob.has(siteId)) return say('rolloutAnswers.goneNotDone', { trip: gone.tripId });
        return against?.said ?? say('rolloutAnswers.mayBe');
      };
      return {
        ...{ siteId, name, area: work?.area ?? null, people: told.peopleOf.get(siteId) ?? null },
        verdict: told.verdictOf.get(siteId) ?? null,
        ...{ priority_factor: work?.priority_factor ?? 1, priorityReason: work?.priorityReason ?? null },
        ...{ agreedOn: day(work?.agreedOn), readyFrom: day(work?.readyFrom), finishBy: day(work?.finishBy) },
        tripId: planned?.tripId ?? gone?.tripId ?? null,
        reason: against?.reason ?? null,
        isUntreated: told.untreated.has(siteId),
        said: said(),
      };
    });
}

function tripsBySite(
  told: SheetTold,
): ReadonlyMap<string, { readonly tripId: string; readonly handOver: string | null }> {
  const { problem, outcome } = told;
  return new Map(
    outcome.trips.flatMap((trips, crew) =>
      trips.flatMap(({ stops }, trip) =>
        stops.map((stop) => {
          const handOver = isServed(stop, problem) ? dayAt(told, stop.handOverDay) : null;
          return [problem.jobs[stop.job]!.siteId, { tripId: told.tripIdOf(crew, trip), handOver }] as const;
        }),
      ),
    ),
  );
}
