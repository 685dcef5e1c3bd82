import { chanceFor } from './chance.ts';

/** Where something stands. */
export interface Place {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

/** How many gauges a programme of that many sites has. */
export function gaugesFor(sites: number): number {
  return 3 + Math.floor(sites / 500);
}

/** The islands of the chain, two to a gauge, laid out in open ocean where no land is. */
export function islandPlaces(seed: number, count: number): Place[] {
  const chance = chanceFor(seed, 'islands');
  return Array.from({ length: count }, (_, i) => ({
    latitude_deg: -9 - 0.32 * (i % 32) + chance.between(-0.06, 0.06),
    longitude_deg: 83 + 0.1 * (i % 32) + 0.7 * Math.floor(i / 32) + chance.between(-0.08, 0.08),
  }));
}

/** Which of these places is nearest? Distances are short, so the plane will do. */
export function nearest(place: Place, places: readonly Place[]): number {
  let best = 0;
  let least = Infinity;
  const narrowing = Math.cos((place.latitude_deg * Math.PI) / 180);
  places.forEach((other, i) => {
    const north = other.latitude_deg - place.latitude_deg;
    const east = (other.longitude_deg - place.longitude_deg) * narrowing;
    const squared = north * north + east * east;
    if (squared < least) [best, least] = [i, squared];
  });
  return best;
}

/** A degree to four decimals, about ten metres. */
export function roundedPlace({ latitude_deg, longitude_deg }: Place): Place {
  return { latitude_deg: Math.round(latitude_deg * 1e4) / 1e4, longitude_deg: Math.round(longitude_deg * 1e4) / 1e4 };
}
