import { type GaugeShare, measured, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { neighboursAsked_count } from './constants.ts';
import type { Neighbour } from './neighbours.ts';

/** Rain at a place from the gauges around it. */
export interface RainByDistance {
  readonly record: RainRecord;
  /** The gauges that gave any, nearest first. */
  readonly shares: readonly GaugeShare[];
}

/**
 * What rain fell at a place without a gauge, to judge by the gauges within reach? Each day is the mean of the three nearest that
 * measured it, weighed by one over the square of the distance; a gauge at the very place counts alone. A day that none measured is
 * unknown. Such a mean has more wet days than any one gauge, with less rain on each.
 *
 * @param name - whose rain it is [text]: a name for its seeds
 * @param near - the gauges within reach as they were measured, nearest first, with distance_km [km], one at least
 * @returns a record from the first to the last day any of them measured: rain_mm [mm] by day, state by day; and each gauge's distance [km] and mean weight [fraction]
 * @law between the least and the greatest of the gauges each day; one gauge gives its own record; the weights add up to 1
 * @source shepard-1968, weights of one over the square of the distance (from memory)
 */
export function rainByDistance(name: string, near: readonly Neighbour[]): RainByDistance {
  const firstDay = Math.min(...near.map(({ record }) => record.firstDay));
  const end = Math.max(...near.map(({ record }) => record.firstDay + record.state.length));
  const rain_mm = new Float64Array(end - firstDay);
  const state = new Uint8Array(end - firstDay).fill(unknownDay);
  const given = new Float64Array(near.length);
  const weight = relativeWeights(near);
  let days = 0;
  for (let at = 0; at < state.length; at++) {
    let [asked, weights, sum] = [0, 0, 0];
    const used: number[] = [];
    for (let i = 0; i < near.length && asked < neighboursAsked_count; i++) {
      const { record } = near[i]!;
      const day = firstDay + at - record.firstDay;
      if (record.state[day] !== measured) continue;
      if (asked > 0 && near[used[0]!]!.distance_km === 0 && near[i]!.distance_km > 0) break;
      asked++;
      used.push(i);
      weights += weight[i]!;
      sum += weight[i]! * record.rain_mm[day]!;
    }
    if (asked === 0) continue;
    days++;
    rain_mm[at] = sum / weights;
    state[at] = measured;
    for (const i of used) given[i]! += weight[i]! / weights;
  }
  const shares = near.flatMap(({ record, distance_km }, i) =>
    given[i]! > 0 ? [{ gaugeId: record.gaugeId, distance_km, weight_fraction: given[i]! / days }] : [],
  );
  return { record: { gaugeId: name, firstDay, rain_mm, state }, shares };
}

/** One over the square of the distance, in units of the nearest that is not at the very place; there, 1. */
function relativeWeights(near: readonly Neighbour[]): readonly number[] {
  const away = near.find(({ distance_km }) => distance_km > 0)?.distance_km ?? 1;
  return near.map(({ distance_km }) => (distance_km === 0 ? 1 : (away / distance_km) ** 2));
}
