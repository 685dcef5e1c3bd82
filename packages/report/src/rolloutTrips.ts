import type { TripLeg } from '@eavewell/engine';
import type { RolloutLegReport, RolloutTripReport } from '@eavewell/tables';
import { cautionsOfTrip } from './rolloutCautions.ts';
import { againstLimit, fuelOf_kg } from './rolloutLoad.ts';
import { dayAt, daysAt, lastDay, type Told } from './rolloutTold.ts';

/** One trip in full: its figures, its legs, what is aboard. */
export function tripReport(told: Told, crew: number, trip: number): RolloutTripReport {
  const legs = told.legsOf(crew, trip).map((leg) => legReport(told, leg));
  return {
    ...tripFigures(told, crew, trip),
    legs,
    aboard: told.aboardOf(crew, trip).map((one) => ({ ...one })),
    cautions: cautionsOfTrip(legs, told.language),
  };
}

/** The figures of one trip, and its stops. */
export function tripFigures(
  told: Told,
  crew: number,
  trip: number,
): Omit<RolloutTripReport, 'legs' | 'aboard' | 'cautions'> {
  const { plan, outcome } = told;
  const timed = outcome.trips[crew]![trip]!;
  const { nights_count, waitsFor, kg, litres, cost, fuel_L } = timed;
  const stops = stopsOf(told, crew, trip);
  return {
    tripId: told.tripIdOf(crew, trip),
    ...{ leaves: dayAt(told, timed.leaves), back: dayAt(told, lastDay(timed.back)) },
    ...{ nights_count, waitsFor, waited_days: Math.max(0, timed.leaves - timed.ready) },
    ...{ kg, loaded_kg: aboard_kg(kg, fuel_L), litres, cost, fuel_L },
    isLocked: plan.trips[crew]![trip]!.isLocked,
    stops,
    said: tripSaid(
      told,
      crew,
      trip,
      stops.map(({ name }) => name),
    ),
  };
}

/** Parts and fuel. */
const aboard_kg = (kg: number, fuel_L: number) => againstLimit(kg, fuelOf_kg(fuel_L), null).loaded_kg;

function stopsOf(told: Told, crew: number, trip: number): RolloutTripReport['stops'] {
  const { problem, outcome, nameOf } = told;
  return outcome.trips[crew]![trip]!.stops.map(({ job, arrives, starts, handOverDay, serviceDay }) => {
    const { siteId, people, serviceWaits } = problem.jobs[job]!;
    // Of a site whose wait for rain is not known the hand-over alone is told.
    const drawn = serviceWaits === null ? null : (told.drawnOf.get(job) ?? null);
    return {
      ...{ siteId, name: nameOf.get(siteId) ?? siteId, people },
      ...{ arrives: dayAt(told, arrives), starts: dayAt(told, starts) },
      ...{ handOver: dayAt(told, handOverDay), served: serviceWaits === null ? null : dayAt(told, serviceDay) },
      futures: drawn && daysAt(told, drawn),
      ...supplyOf(told, siteId),
    };
  });
}

/** Is all of its kit counted and weighed, and is its water treated? */
export const supplyOf = ({ leans, untreated }: Pick<Told, 'leans' | 'untreated'>, siteId: string) => ({
  isKitInPart: leans.kitInPart.has(siteId),
  isUnweighed: leans.unweighed.has(siteId),
  isUntreated: untreated.has(siteId),
});

function tripSaid(told: Told, crew: number, trip: number, names: readonly string[]): string {
  const { say, numbers } = told.language;
  const { leaves, back, nights_count, kg, fuel_L, waitsFor, stops } = told.outcome.trips[crew]![trip]!;
  const isAtLeast = stops.some(({ job }) => {
    const { isKitInPart, isUnweighed } = supplyOf(told, told.problem.jobs[job]!.siteId);
    return isKitInPart || isUnweighed;
  });
  return say('rolloutReport.trip', {
    ...{
      leaves: numbers.date(dayAt(told, leaves)),
      back: numbers.date(dayAt(told, lastDay(back))),
      nights: nights_count,
    },
    ...{ stops: names.join(', '), mass: numbers.quantity(Math.round(aboard_kg(kg, fuel_L)), 'kg'), waits: waitsFor },
    isAtLeast: isAtLeast ? 'yes' : 'no',
  });
}

export function legReport(told: Told, leg: TripLeg): RolloutLegReport {
  const { say, numbers } = told.language;
  const name = (id: string) => told.nameOf.get(id) ?? id;
  const all = leg.way?.stretches ?? [];
  // A tenth of an hour, and no leg of none.
  const hours = (time_h: number) => numbers.quantity(Math.max(0.1, Math.round(time_h * 10) / 10), 'h');
  const changes_h = all.reduce((sum, one) => sum + one.changeOver_h, 0);
  const hours_h = all.reduce((sum, one) => sum + one.hours_h, changes_h);
  const stretches = all.map((one) =>
    say('rolloutReport.stretch', { mode: one.mode, to: name(one.to), hours: hours(one.hours_h) }),
  );
  const porters_count = leg.way?.limit.porters_count ?? 0;
  const limit_kg = leg.way?.limit.kg ?? null;
  return {
    ...{ from: leg.from, to: leg.to, hours_h, porters_count },
    leaves: leg.leaves === null ? null : dayAt(told, leg.leaves),
    arrives: leg.arrives === null ? null : dayAt(told, lastDay(leg.arrives)),
    stretches: all.map(({ wayId, from, to, mode, carrierId, hours_h: own_h, changeOver_h }) => ({
      ...{ wayId, from, to, mode, carrierId, hours_h: own_h, changeOver_h },
    })),
    limit_kg: limit_kg !== null && Number.isFinite(limit_kg) ? limit_kg : null,
    limitBy: limitByOf(told, leg),
    said: say('rolloutReport.leg', {
      ...{ from: name(leg.from), to: name(leg.to), stretches: stretches.join('; ') },
      ...{ hours: hours(hours_h), porters: porters_count },
      ...{ isChanged: changes_h > 0 ? 'yes' : 'no', changes: hours(changes_h) },
    }),
  };
}

/** What lets no more pass than a leg's limit: a way that states it, else what carries there; null: nothing bounds it. */
function limitByOf({ facts, nameOf }: Told, { way }: TripLeg): RolloutLegReport['limitBy'] {
  const bound = way?.stretches?.find(({ wayId }) => wayId === way.boundBy.kg);
  if (way === null || bound === undefined) return null;
  const { wayId, mode, carrierId } = bound;
  const stated_kg = facts.rollout.ways.find((one) => one.wayId === wayId)?.limit_kg ?? null;
  const name = bound.name ?? `${nameOf.get(bound.from) ?? bound.from} – ${nameOf.get(bound.to) ?? bound.to}`;
  return { wayId, way: name, mode, carrierId, isOfWay: stated_kg === way.limit.kg };
}
