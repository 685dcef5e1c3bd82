import { isoDay, planChanges, tripChanges } from '@eavewell/engine';
import type { RolloutReport } from '@eavewell/tables';
import { tripReport } from './rolloutChangedTrip.ts';
import { movedOf } from './rolloutChanges.ts';
import { comparedSites, slack_amount } from './rolloutComparison.ts';
import type { ReplannedGiven, Told } from './rolloutTold.ts';

type Report = NonNullable<RolloutReport['replanned']>;

/** What has happened of the plan there was, and what is otherwise in the new one than if nothing were done. */
export function replannedReport({ facts: plan, kept, unchanged }: ReplannedGiven, told: Told): Report {
  const { facts, problem, nameOf } = told;
  const moved = movedOf({ facts, problem, outcome: unchanged, planId: plan.planId });
  const past = [...kept.past.flat(), ...kept.otherPast];
  const before = { plan: kept.plan, outcome: unchanged };
  const { waiting_personDays, finish_days, cost } = planChanges(before, told);
  const sums = { waiting_personDays, finish_days, cost, fuel_L: told.outcome.fuel_L - unchanged.fuel_L };
  const sites = comparedSites({ problem, facts, a: before, b: told });
  const tripIds = told.plan.trips.map((own, crew) => own.map((_, at) => told.tripIdOf(crew, at)));
  const trips = tripChanges({ ...before, tripIds: kept.tripIds }, { ...told, tripIds });
  return {
    ...{ planId: plan.planId, name: plan.name },
    done_count: past.filter(({ state }) => state === 'done').length,
    underWay: past
      .filter(({ state }) => state === 'underWay')
      .map(({ tripId, crewId, back }) => ({ tripId, crewId, back: isoDay(back) })),
    toGo_count: kept.tripIds.flat().length,
    locked_count: kept.plan.trips.flat().filter(({ isLocked }) => isLocked).length,
    overdue: [...kept.overdue],
    dropped: kept.dropped.map(({ tripId, siteId, reason }) => ({
      ...{ tripId, siteId, name: nameOf.get(siteId) ?? siteId, reason },
      said: told.language.say(`rolloutReport.leftOut.${reason ?? 'notAsked'}`, { over: '' }),
    })),
    notPlaced: kept.notPlaced.map((siteId) => ({ siteId, name: nameOf.get(siteId) ?? siteId })),
    moved_count: moved.moved_count,
    later_count: moved.later.length,
    said: changesSaid(sums, sites, trips.length, told),
    ...sums,
    sites: sites.map(({ crewA, crewB, servedA, servedB, ...site }) => ({
      ...{ ...site, crewBefore: crewA, crewAfter: crewB, servedBefore: servedA, servedAfter: servedB },
    })),
    trips: trips.map((trip) => tripReport(trip, told)),
  };
}

/** What changes, in sentences. */
function changesSaid(
  { waiting_personDays, finish_days, cost }: Pick<Report, 'waiting_personDays' | 'finish_days' | 'cost'>,
  sites: ReturnType<typeof comparedSites>,
  trips_count: number,
  { facts, language: { say, numbers } }: Told,
): string[] {
  const { currency } = facts.settings;
  const isMore = (value: number) => (value > 0 ? 'yes' : 'no');
  const said: string[] = [];
  if (Math.abs(waiting_personDays) >= 0.5)
    said.push(
      say('rolloutReport.replanned.waiting', {
        days: Math.round(Math.abs(waiting_personDays)),
        isMore: isMore(waiting_personDays),
      }),
    );
  if (Math.abs(finish_days) >= 0.5)
    said.push(
      say('rolloutReport.replanned.finish', { days: Math.abs(Math.round(finish_days)), isMore: isMore(finish_days) }),
    );
  const amount = Math.abs(cost);
  if (amount > slack_amount)
    said.push(
      say('rolloutReport.replanned.cost', {
        cost: currency === null ? numbers.fixed(amount, 0) : numbers.money(amount, currency),
        isMore: isMore(cost),
      }),
    );
  const later = sites.filter(({ later_days }) => (later_days ?? 0) > 0).length;
  const sooner = sites.filter(({ later_days }) => (later_days ?? 0) < 0).length;
  if (sites.length > 0) said.push(say('rolloutReport.replanned.sites', { sites: sites.length, later, sooner }));
  return said.length + trips_count > 0 ? said : [say('rolloutReport.replanned.same')];
}
