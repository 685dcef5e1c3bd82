import type { HaulRun, TimedHaul } from '@eavewell/engine';
import type { RolloutHaulReport, RolloutLegReport, RolloutReport, RolloutTripAnswer } from '@eavewell/tables';
import { againstLimit, fuelOf_kg, loadOfTrip, type TripLoad, type TripLoaded } from './rolloutLoad.ts';
import { dayAt, lastDay, type Told } from './rolloutTold.ts';
import { legReport } from './rolloutTrips.ts';

const placeOfStore = ({ problem }: Told, store: number) => problem.placeIds[problem.stores[store]!.node]!;

const haulIdOf = (told: Told, { store, forCrew, forTrip }: TimedHaul) =>
  `${told.tripIdOf(forCrew, forTrip)}-${placeOfStore(told, store)}`;

/** What is brought to stores that others fill: by what, from when to when, for which trip, and how it stands against what may be carried. */
export function haulsOf(told: Told): RolloutHaulReport[] {
  const { problem, outcome, facts } = told;
  const placeOf = (store: number) => placeOfStore(told, store);
  const named = new Map(facts.rollout.places.map(({ placeId, filledBy }) => [placeId, filledBy]));
  const hauls = outcome.hauls.map((one): RolloutHaulReport => {
    const { store, leaves, arrives, back, trips_count, kg, fuel_L, forCrew, forTrip } = one;
    const filled = problem.stores[store]!.filledBy!;
    const [place, tripId] = [placeOf(store), told.tripIdOf(forCrew, forTrip)];
    const carrierId = named.get(place) ?? null;
    const limit_kg = Number.isFinite(filled.limit_kg) ? filled.limit_kg : null;
    const fuel_kg = fuelOf_kg(fuel_L);
    return {
      ...{ haulId: haulIdOf(told, one), store: place, from: placeOf(filled.store), carrierId },
      by: facts.kit.carriers.find((one) => one.carrierId === carrierId)?.name ?? null,
      ...{ leaves: dayAt(told, leaves), arrives: dayAt(told, lastDay(arrives)) },
      back: dayBack(told, back),
      ...{ trips_count, kg, fuel_L, fuel_kg, limit_kg, forTrip: tripId },
      ...againstLimit(kg, fuel_kg, limit_kg === null ? null : limit_kg * trips_count),
      runs: one.runs.map((run) => runOf(told, run)),
    };
  });
  return hauls.sort((a, b) => (a.leaves === b.leaves ? 0 : a.leaves < b.leaves ? -1 : 1));
}

/** Null: not within the days looked at. */
const dayBack = (told: Told, back: number) => (back > told.problem.horizon_days ? null : dayAt(told, lastDay(back)));

function runOf(told: Told, { leaves, arrives, returns, back }: HaulRun): RolloutHaulReport['runs'][number] {
  const home = dayBack(told, back);
  return {
    ...{ leaves: dayAt(told, leaves), arrives: dayAt(told, lastDay(arrives)) },
    ...{ returns: home === null ? null : dayAt(told, returns), back: home },
  };
}

/** The legs of what is brought for one trip, by the ids of the hauls. */
export function haulLegsOf(told: Told, tripId: string): ReadonlyMap<string, readonly RolloutLegReport[]> {
  const own = told.outcome.hauls.filter(({ forCrew, forTrip }) => told.tripIdOf(forCrew, forTrip) === tripId);
  return new Map(own.map((haul) => [haulIdOf(told, haul), told.haulLegsOf(haul).map((leg) => legReport(told, leg))]));
}

/** What is brought for one trip, in the order it goes. */
export const haulsFor = ({ hauls }: Pick<RolloutReport, 'hauls'>, tripId: string): RolloutHaulReport[] =>
  hauls.filter(({ forTrip }) => forTrip === tripId);

/**
 * How is loaded what is brought for a trip? As the trip itself is, by what brings it: of several runs all together, against what all of them take.
 *
 * @param answer - the trip, with what is aboard for each of its sites
 * @param haul - one of those that are brought for it
 * @returns loads of sites, and sums [kg, m, cm]; by boat where nobody says by what
 * @definition ours: docs/decisions/0401-runs-between-stores.md
 */
export function loadOfHaul(answer: TripLoaded, haul: RolloutTripAnswer['hauls'][number]): TripLoad {
  const { carrier, trips_count, limit_kg, fuel_kg, fuel_L, from, store: to, leaves, arrives } = haul;
  const ends = { from, to, leaves, arrives, hours_h: 0, porters_count: 0, limitBy: null, said: '' };
  const byRoad = { wayId: '', from, to, mode: 'road' as const, carrierId: haul.carrierId, hours_h: 0, changeOver_h: 0 };
  const stretches = carrier === null || carrier.mode === 'boat' ? [] : [byRoad];
  // Of several runs nobody knows what lies in which: no freeboard is told of any.
  const taken = carrier !== null && trips_count > 1 ? { ...carrier, limit_kg: null, freeboard_m: null } : carrier;
  return loadOfTrip({
    ...answer,
    ...{ fuel_kg, trip: { ...answer.trip, fuel_L }, carriers: taken === null ? [] : [taken] },
    legs: [{ ...ends, stretches, limit_kg: limit_kg === null ? null : limit_kg * trips_count }],
  });
}
