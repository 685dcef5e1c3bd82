import type { PlannedTrip } from './problem.ts';

/** The trips of one crew, flat: what a search changes in place. Room is the caller's to keep. */
export interface CrewTrips {
  /** Jobs, trip after trip. */
  stops: Int32Array;
  /** Where each trip ends in `stops`; it begins where the one before ends. */
  ends: Int32Array;
  trips_count: number;
  /** The day before which each trip does not leave; null: none waits. */
  notBefore: Float64Array | null;
}

/**
 * The trips of a crew of a plan, flat.
 *
 * @param trips - the crew's trips in order [count]
 * @returns stops of all of them one after another, and where each trip ends [count]
 * @definition ours
 */
export function crewTripsOf(trips: readonly PlannedTrip[]): CrewTrips {
  const stops = Int32Array.from(trips.flatMap((trip) => trip.stops));
  const ends = new Int32Array(trips.length);
  let end = 0;
  for (const [at, trip] of trips.entries()) {
    end += trip.stops.length;
    ends[at] = end;
  }
  return { stops, ends, trips_count: trips.length, notBefore: Float64Array.from(trips, (trip) => trip.notBefore) };
}
