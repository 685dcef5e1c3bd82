import {
  type AboardPiece,
  type Carrier,
  type PastTrip,
  type ProgrammeFacts,
  peopleToLift,
  type TripLeg,
} from '@eavewell/engine';
import type { RolloutHaulReport, RolloutTripAnswer, SheetTrip } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { cautionsOfTrip } from './rolloutCautions.ts';
import { daysOfTrip, type TripDay } from './rolloutDays.ts';
import { haulLegsOf, haulsFor, haulsOf } from './rolloutHauls.ts';
import type { LeanedOn } from './rolloutLeans.ts';
import { type AboardLine, fuelOf_kg } from './rolloutLoad.ts';
import { nightsOf, noSleepIn } from './rolloutNights.ts';
import { sheetTold } from './rolloutSheet.ts';
import { crewFigures, pastTrip, plannedTrip } from './rolloutSheetCrews.ts';
import type { SheetGiven, SheetTold } from './rolloutSheetTold.ts';
import { legReport } from './rolloutTrips.ts';

/** What is found of one trip beside its plan. */
export interface TripGiven {
  readonly tripId: string;
  /** What is put aboard for sites, the first first. */
  readonly aboardFor: (siteIds: readonly string[]) => readonly AboardPiece[];
  readonly goneLegsOf: (trip: PastTrip) => readonly TripLeg[];
}

/** What a person weighs, and what they carry for themselves [kg]. Common practice, no source. */
const [person_kg, gear_kg] = [75, 15] as const;

/**
 * One trip in full: by which ways, what is aboard, what is done on which day, what may hurt.
 *
 * @param given - the plan it is of
 * @param trip - which trip, with what is found of it
 * @param language - of its sentences
 * @returns the trip; null: the plan has none of that id
 * @definition ours: docs/decisions/0356-what-is-told-of-a-trip.md
 */
export function rolloutTrip(given: SheetGiven, trip: TripGiven, language: Language): RolloutTripAnswer | null {
  const told = sheetTold(given, language);
  const { inForce: plan, facts } = told;
  const found = tripOf(told, trip);
  if (plan === null || found === null) return null;
  const crew = facts.rollout.crews.find(({ crewId }) => crewId === found.crewId);
  if (crew === undefined) return null;
  const legs = found.legs.map((leg) => legReport(told, leg));
  const aboard = trip.aboardFor(found.trip.stops.map(({ siteId }) => siteId)).map((one) => aboardOf(one, told.leans));
  const carriers = facts.kit.carriers.filter(({ carrierId }) => crew.carrierIds.includes(carrierId));
  const hauls = haulsWith(haulsFor({ hauls: haulsOf(told) }, trip.tripId), haulLegsOf(told, trip.tripId), facts);
  const nights = nightsOf({ ...told, noSleep: noSleepIn(facts) }, found.trip, found.legs, crew);
  const dated = { trip: found.trip, legs, aboard, days: nights };
  return {
    ...{ stamp: given.stamp, programme: facts.settings.programme, planId: plan.planId, plan: plan.name },
    ...{ isInForce: plan.isInForce, crew: crewFigures(told, crew), trip: found.trip, legs, aboard },
    carriers: carriers.map(carrierOf),
    hauls,
    places: placesOf(told, legs, hauls),
    ...massesBeside(crew.people_count, found.trip.fuel_L),
    cautions: cautionsOfTrip(legs, language),
    days: daysSaid(told, daysOfTrip(dated, crew.store), nights),
  };
}

/** What goes along beside the parts [kg]: the people with what they carry, and fuel. */
export const massesBeside = (people_count: number, fuel_L: number | null) => ({
  crew_kg: people_count > 0 ? people_count * (person_kg + gear_kg) : null,
  fuel_kg: fuel_L === null ? null : fuelOf_kg(fuel_L),
});

interface TripFound {
  readonly crewId: string;
  readonly trip: SheetTrip;
  readonly legs: readonly TripLeg[];
}

function tripOf(told: SheetTold, { tripId, goneLegsOf }: TripGiven): TripFound | null {
  const { past, problem, plan } = told;
  const gone = past.find((one) => one.tripId === tripId);
  if (gone !== undefined) return { crewId: gone.crewId, trip: pastTrip(told, gone), legs: goneLegsOf(gone) };
  for (const [crew, { crewId }] of problem.crews.entries())
    for (const trip of plan.trips[crew]!.keys())
      if (told.tripIdOf(crew, trip) === tripId)
        return { crewId, trip: plannedTrip(told, crew, trip), legs: told.legsOf(crew, trip) };
  return null;
}

/** A line of what is aboard, with how many lift one piece, and whether anybody says that it is there. */
export function aboardOf({ each_kg, ...line }: AboardPiece, { presumed }: LeanedOn): AboardLine {
  const lift_people = each_kg === null ? null : peopleToLift(each_kg);
  return { ...line, lift_people, isPresumed: presumed.has(line.partId) };
}

/** A carrier as the answer of a trip has it. */
export function carrierOf(carrier: Carrier): RolloutTripAnswer['carriers'][number] {
  const metres = (cm: number | null) => (cm === null ? null : cm / 100);
  return {
    ...{ carrierId: carrier.carrierId, name: carrier.name, mode: carrier.mode, limit_kg: carrier.limit_kg },
    leastFreeboard_m: metres(carrier.leastFreeboard_cm),
    freeboard_m: metres(carrier.freeboard_cm),
    freeboardEmpty_m: metres(carrier.freeboardEmpty_cm),
    length_m: carrier.length_m,
    limitSetBy: carrier.limitSetBy,
  };
}

/** What is brought for a trip, with all that is known of what it is brought by. */
export const haulsWith = (
  hauls: readonly RolloutHaulReport[],
  legsOf: ReturnType<typeof haulLegsOf>,
  { kit }: Pick<ProgrammeFacts, 'kit'>,
): RolloutTripAnswer['hauls'] =>
  hauls.map((haul) => {
    const found = kit.carriers.find(({ carrierId }) => carrierId === haul.carrierId);
    const legs = [...(legsOf.get(haul.haulId) ?? [])];
    return { ...haul, carrier: found === undefined ? null : carrierOf(found), legs };
  });

function placesOf(
  { nameOf }: SheetTold,
  legs: RolloutTripAnswer['legs'],
  hauls: RolloutTripAnswer['hauls'],
): RolloutTripAnswer['places'] {
  const all = [...legs, ...hauls.flatMap((haul) => haul.legs)];
  const ids = all.flatMap(({ from, to, stretches }) => [from, to, ...stretches.flatMap((one) => [one.from, one.to])]);
  ids.push(...hauls.flatMap(({ from, store }) => [from, store]));
  return [...new Set(ids)].map((placeId) => ({ placeId, name: nameOf.get(placeId) ?? placeId }));
}

/** Every day it is away: what is done, and where the night is spent. */
function daysSaid(
  told: SheetTold,
  events: readonly TripDay[],
  nights: RolloutTripAnswer['days'],
): RolloutTripAnswer['days'] {
  const own = new Map(events.map((one) => [one.day, one]));
  return nights.map((night) => {
    const found = own.get(night.day)?.events ?? [];
    const sites = found.flatMap((event) =>
      event.kind === 'work' || event.kind === 'handOver' ? [event.stop.siteId] : [],
    );
    return {
      ...night,
      said: [
        ...found.map((event) => eventSaid(told, event)),
        ...(night.isRest === true ? [told.language.say('rolloutAnswers.day.rest')] : []),
        ...night.said,
      ],
      siteIds: [...new Set([...night.siteIds, ...sites])],
    };
  });
}

function eventSaid({ language, nameOf }: SheetTold, event: TripDay['events'][number]): string {
  const { say } = language;
  const place = (id: string) => nameOf.get(id) ?? id;
  if (event.kind === 'load' || event.kind === 'home')
    return say(`rolloutAnswers.day.${event.kind}`, { place: place(event.placeId) });
  if (event.kind === 'go') return event.leg.said;
  return say(`rolloutAnswers.day.${event.kind}`, { site: event.stop.name });
}
