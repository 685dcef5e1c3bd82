import type { RolloutSheet, SheetCrew, SheetStop, SheetTrip } from '@eavewell/tables';
import type { CrewAsMoved, StopAsMoved, TripAsMoved } from './moveAnswer.ts';
import { plannedOf } from './places.ts';

/** A trip that is not there yet is drawn under a name no row has: an id holds no space. */
const newName = (crewId: string, at: number) => `new ${crewId} ${at}`;

/** A crew of the sheet with its planned trips as they would be; what has left stays before them. */
function crewAsMoved(sheet: Pick<RolloutSheet, 'crews'>, crew: SheetCrew, moved: CrewAsMoved): SheetCrew {
  const left = crew.trips.filter(({ state }) => state !== 'planned');
  const all = sheet.crews.flatMap(({ trips }) => trips);
  const tripOf = new Map(all.map((trip) => [trip.tripId, trip]));
  const stopOf = new Map(all.flatMap(({ stops }) => stops.map((stop) => [stop.siteId, stop] as const)));
  const trips = moved.trips.flatMap((trip, at) => {
    const { leaves, back } = trip;
    if (leaves === null || back === null) return [];
    const known = trip.tripId === null ? undefined : tripOf.get(trip.tripId);
    const name = trip.tripId ?? newName(crew.crewId, at);
    return [tripAsMoved(known ?? plainTrip(name, leaves, back), { ...trip, leaves, back }, stopOf)];
  });
  return { ...crew, trips: [...left, ...trips] };
}

function tripAsMoved(
  known: SheetTrip,
  { leaves, back, nights_count, notBefore, stops }: TripAsMoved & { readonly leaves: string; readonly back: string },
  stopOf: ReadonlyMap<string, SheetStop>,
): SheetTrip {
  const stopsNow = stops.map((stop) => ({ ...(stopOf.get(stop.siteId) ?? plainStop(stop)), ...daysOf(stop) }));
  return { ...known, leaves, back, nights_count, notBefore, stops: stopsNow };
}

const daysOf = ({ arrives, handOver }: StopAsMoved) => ({ arrives, handOver, isWayUp: handOver !== null });

const plainStop = ({ siteId }: StopAsMoved): SheetStop => ({
  ...{ siteId, name: siteId, people: 0, arrives: null, starts: null, handOver: null, served: null, futures: null },
  ...{ kept: null, isHandedOver: false, isWayUp: true, isKitInPart: false, isUnweighed: false, isUntreated: false },
});

const plainTrip = (tripId: string, leaves: string, back: string): SheetTrip => ({
  ...{ tripId, leaves, back, state: 'planned', order: 0, notBefore: null, isLocked: false, nights_count: 0, stops: [] },
  ...{
    waitsFor: 'nothing',
    waited_days: 0,
    kg: null,
    loaded_kg: null,
    litres: null,
    cost: 0,
    fuel_L: 0,
    legs: [],
    broken: [],
  },
  ...{ isTight: false, tightSaid: null, isOverdue: false, overdueSaid: null, said: '' },
});

/**
 * The crews of a sheet as they would be.
 *
 * @param sheet - as it is
 * @param moved - crews that change; the others stay
 */
export function crewsAsMoved(sheet: Pick<RolloutSheet, 'crews'>, moved: readonly CrewAsMoved[]): readonly SheetCrew[] {
  const of = new Map(moved.map((crew) => [crew.crewId, crew]));
  return sheet.crews.map((crew) => {
    const change = of.get(crew.crewId);
    return change === undefined ? crew : crewAsMoved(sheet, crew, change);
  });
}

/** Ids of trips that would be otherwise than they are: other days, or other sites. */
export function tripsChanged(before: readonly SheetCrew[], after: readonly SheetCrew[]): ReadonlySet<string> {
  const look = (crew: SheetCrew, { leaves, back, stops }: SheetTrip) =>
    JSON.stringify([crew.crewId, leaves, back, stops.map(({ siteId, handOver }) => [siteId, handOver])]);
  const was = new Map(before.flatMap((crew) => crew.trips.map((trip) => [trip.tripId, look(crew, trip)])));
  const changed = after.flatMap((crew) =>
    plannedOf(crew).flatMap((trip) => (was.get(trip.tripId) === look(crew, trip) ? [] : [trip.tripId])),
  );
  return new Set(changed);
}
