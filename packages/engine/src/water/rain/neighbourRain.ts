/** What a neighbour says of one day: its rain, and the usual rain there and here over the same time. */
export interface RatioNeighbour {
  readonly rain_mm: number;
  readonly normal_mm: number;
  readonly ownNormal_mm: number;
}

/**
 * How much may it have rained here, if each neighbour's rain is to its usual rain as ours is to ours? The mean over the
 * neighbours of own normal ÷ neighbour's normal × neighbour's rain.
 *
 * @param neighbours - rain of the day or the month [mm], normal there [mm] above 0, and normal here [mm] over the same time
 * @returns the rain [mm], 0 or more; null where there is no neighbour
 * @law 0 where no neighbour had rain; twice the rain everywhere gives twice the rain
 * @source punmia-pande-lal, Examples 4.3 and 4.40, normal-ratio method
 */
export function normalRatio_mm(neighbours: readonly RatioNeighbour[]): number | null {
  if (neighbours.length === 0) return null;
  const sum = neighbours.reduce(
    (total, { rain_mm, normal_mm, ownNormal_mm }) => total + (ownNormal_mm / normal_mm) * rain_mm,
    0,
  );
  return sum / neighbours.length;
}

/** What a neighbour says of one day by its distance. */
export interface DistanceNeighbour {
  readonly rain_mm: number;
  readonly distance_km: number;
}

/**
 * How much may it have rained here, if the nearer neighbour is to be believed the more? The mean of the neighbours' rain,
 * weighed by one over the square of the distance. Neighbours at the very place count alone.
 *
 * @param neighbours - rain [mm] and distance [km], 0 or more
 * @returns the rain [mm], between the least and the greatest of the neighbours; null where there is none
 * @law between the neighbours' least and greatest
 * @source shepard-1968, weights of one over the square of the distance (from memory)
 */
export function inverseDistance_mm(neighbours: readonly DistanceNeighbour[]): number | null {
  if (neighbours.length === 0) return null;
  const here = neighbours.filter(({ distance_km }) => distance_km === 0);
  const told = here.length > 0 ? here : neighbours;
  const nearest_km = Math.min(...told.map(({ distance_km }) => distance_km));
  let weights = 0;
  let sum = 0;
  for (const { rain_mm, distance_km } of told) {
    const weight = here.length > 0 ? 1 : (nearest_km / distance_km) ** 2;
    weights += weight;
    sum += weight * rain_mm;
  }
  return sum / weights;
}
