import { type CrewFacts, isoDay, type PastTrip, type PlanTripFacts, type TripLeg } from '@eavewell/engine';
import type { SheetCrew, SheetTrip } from '@eavewell/tables';
import type { SheetTold } from './rolloutSheetTold.ts';
import { tightSaid } from './rolloutTight.ts';
import { brokenSaid, dayAt, isServed, lastDay } from './rolloutTold.ts';
import { supplyOf, tripFigures } from './rolloutTrips.ts';

/** Crews with their trips: those that left first, then those that are planned. Of crews that are not planned with only those that left. */
export function crewsOf(told: SheetTold): SheetCrew[] {
  const { facts, problem, past } = told;
  const wanted = facts.rollout.crews.filter(
    ({ crewId }) => problem.crews.some((crew) => crew.crewId === crewId) || past.some((trip) => trip.crewId === crewId),
  );
  return wanted.map((crew) => ({ ...crewFigures(told, crew), trips: tripsOf(told, crew.crewId) }));
}

/** A crew without its trips. */
export function crewFigures(
  { facts, problem, language }: Pick<SheetTold, 'facts' | 'problem' | 'language'>,
  crew: CrewFacts,
): Omit<SheetCrew, 'trips'> {
  const planned = problem.crews.find(({ crewId }) => crewId === crew.crewId);
  const carriers = facts.kit.carriers.filter(({ carrierId }) => crew.carrierIds.includes(carrierId));
  return {
    ...{ crewId: crew.crewId, name: crew.name, people: crew.people_count, base: crew.base, store: crew.store },
    goesBy: language.say('rolloutAnswers.goesBy', {
      carriers: carriers.map(({ name }) => name).join(', '),
      isBy: carriers.length > 0 ? 'yes' : 'no',
      porters: crew.porters_count,
    }),
    from: planned === undefined ? null : isoDay(problem.firstDay + planned.freeFrom),
  };
}

function tripsOf(told: SheetTold, crewId: string): SheetTrip[] {
  const { problem, outcome, past } = told;
  const crew = problem.crews.findIndex((one) => one.crewId === crewId);
  const gone = past.filter((trip) => trip.crewId === crewId).map((one) => pastTrip(told, one));
  const planned = crew < 0 ? [] : outcome.trips[crew]!.map((_, trip) => plannedTrip(told, crew, trip));
  return [...gone, ...planned];
}

/** A trip of the plan, as it is timed now. */
export function plannedTrip(told: SheetTold, crew: number, trip: number): SheetTrip {
  const { plan, problem, outcome, language, inForce } = told;
  const { waitsFor, waited_days, nights_count, kg, loaded_kg, litres, cost, fuel_L, isLocked, ...figures } =
    tripFigures(told, crew, trip);
  const tripId = told.tripIdOf(crew, trip);
  const row = inForce?.trips.find((one) => one.tripId === tripId) ?? null;
  const kept = new Map(row?.stops.map(({ siteId, handOver }) => [siteId, handOver]) ?? []);
  const { notBefore } = plan.trips[crew]![trip]!;
  const timed = outcome.trips[crew]![trip]!;
  const tight = tightSaid(told, crew, trip);
  const isOverdue = told.overdue.has(tripId);
  return {
    ...{ tripId, state: 'planned', order: row?.order ?? trip, isLocked },
    notBefore: notBefore > 0 ? isoDay(problem.firstDay + notBefore) : null,
    ...{ leaves: figures.leaves, back: figures.back, nights_count, waitsFor, waited_days },
    ...{ kg, loaded_kg, litres, cost, fuel_L },
    stops: figures.stops.map((stop, at) => {
      const isDone = isServed(timed.stops[at]!, problem);
      const was = kept.get(stop.siteId) ?? null;
      return {
        ...stop,
        ...(isDone ? {} : { starts: null, handOver: null, served: null }),
        ...{ kept: was === null ? null : isoDay(was), isHandedOver: false, isWayUp: isDone },
      };
    }),
    legs: told.legsOf(crew, trip).map((leg) => legShort(told, leg)),
    broken: outcome.broken
      .filter((one) => 'crew' in one && one.crew === crew && one.trip === trip)
      .map((one) => ({
        kind: one.kind,
        siteId: 'job' in one && one.job !== null ? problem.jobs[one.job]!.siteId : null,
        said: brokenSaid(told, one),
      })),
    ...{ isTight: tight !== null, tightSaid: tight, isOverdue },
    overdueSaid: isOverdue ? overdueSaid(told, row, figures.leaves) : null,
    said: `${language.say('rolloutAnswers.tripOf', { crew: crewName(told, crew) })} ${figures.said}`,
  };
}

/** When it was to leave, as worked out last, and when it can. */
function overdueSaid(
  { language: { say, numbers } }: SheetTold,
  row: PlanTripFacts | null,
  leaves: string,
): string | null {
  if (row?.leaves == null) return null;
  const due = Math.max(row.leaves, row.notBefore ?? row.leaves);
  return say('rolloutAnswers.overdue', { due: numbers.date(isoDay(due)), leaves: numbers.date(leaves) });
}

const crewName = ({ facts, problem }: SheetTold, crew: number) => {
  const { crewId } = problem.crews[crew]!;
  return facts.rollout.crews.find((one) => one.crewId === crewId)?.name ?? crewId;
};

function legShort(told: SheetTold, leg: TripLeg): SheetTrip['legs'][number] {
  const all = leg.way?.stretches ?? [];
  return {
    ...{ from: leg.from, to: leg.to },
    leaves: leg.leaves === null ? null : dayAt(told, leg.leaves),
    arrives: leg.arrives === null ? null : dayAt(told, lastDay(leg.arrives)),
    hours_h: all.reduce((sum, one) => sum + one.hours_h + one.changeOver_h, 0),
    wayIds: all.map(({ wayId }) => wayId),
  };
}

/** A trip that left: what was entered of it. */
export function pastTrip(told: SheetTold, { tripId, state, leftOn, back, stops, kept }: PastTrip): SheetTrip {
  const { nameOf, peopleOf, overdue, language } = told;
  const { numbers, say } = language;
  const [leaves, home] = [isoDay(leftOn), isoDay(back)];
  const isOverdue = overdue.has(tripId);
  const name = (siteId: string) => nameOf.get(siteId) ?? siteId;
  return {
    ...{ tripId, state, order: kept.order, isLocked: true, leaves, back: home },
    ...{ notBefore: kept.notBefore === null ? null : isoDay(kept.notBefore), nights_count: Math.max(0, back - leftOn) },
    ...{ waitsFor: 'nothing', waited_days: 0, kg: null, loaded_kg: null, litres: null, cost: null, fuel_L: null },
    stops: stops.map(({ siteId, handOver, kept: was }) => ({
      ...{ siteId, name: name(siteId), people: peopleOf.get(siteId) ?? 0, arrives: null, starts: null },
      ...{ handOver: handOver === null ? null : isoDay(handOver), served: null, futures: null },
      ...{ kept: was === null ? null : isoDay(was), isHandedOver: handOver !== null, isWayUp: true },
      ...supplyOf(told, siteId),
    })),
    ...{ legs: [], broken: [], isTight: false, tightSaid: null, isOverdue, overdueSaid: null },
    said: say('rolloutAnswers.gone', {
      ...{ isBack: state === 'done' ? 'yes' : 'no', isOverdue: isOverdue ? 'yes' : 'no' },
      leaves: numbers.date(leaves),
      back: numbers.date(isOverdue && kept.back !== null ? isoDay(kept.back) : home),
      stops: stops.map(({ siteId }) => name(siteId)).join(', '),
    }),
  };
}
