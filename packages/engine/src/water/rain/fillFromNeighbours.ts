import { type GapFilling, measured, neighbourDay, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { leastSharedDays_count, neighboursAsked_count } from './constants.ts';
import { inverseDistance_mm, normalRatio_mm } from './neighbourRain.ts';
import type { Neighbour } from './neighbours.ts';

/** The ways to fill from neighbours. */
export type NeighbourFilling = Exclude<GapFilling, 'otherYears'>;

/** A neighbour with the mean rain of both gauges over the days that both measured. */
interface PairedNeighbour extends Neighbour {
  readonly normal_mm: number;
  readonly ownNormal_mm: number;
}

/**
 * What rain may have fallen on the days nobody measured, to judge by the gauges near by? Each unknown day asks the three
 * nearest that measured it. Normals are the mean rain of both gauges over the days that both measured, so that records of
 * different times can be compared; a neighbour with too few such days is not asked. A day no neighbour measured stays
 * unknown. For the balance only.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param neighbours - the gauges near by as they were measured, nearest first, with distance_km [km]
 * @param method - normal ratio or inverse distance
 * @returns a record of the same days, days filled so marked `neighbourDay`: rain_mm [mm] by day
 * @law measured days never change; only measured days of neighbours are used
 * @source punmia-pande-lal, normal-ratio method; shepard-1968, weights by distance (from memory)
 */
export function fillFromNeighbours(
  record: RainRecord,
  neighbours: readonly Neighbour[],
  method: NeighbourFilling,
): RainRecord {
  if (neighbours.length === 0 || !record.state.includes(unknownDay)) return record;
  const pairs = neighbours.flatMap((neighbour) => pairOf(record, neighbour));
  const rain_mm = record.rain_mm.slice();
  const state = record.state.slice();
  for (let day = 0; day < state.length; day++) {
    if (state[day] !== unknownDay) continue;
    const told = pairs
      .filter((pair) => isMeasured(pair.record, record.firstDay + day))
      .slice(0, neighboursAsked_count)
      .map((pair) => ({ ...pair, rain_mm: pair.record.rain_mm[record.firstDay + day - pair.record.firstDay]! }));
    const found = method === 'normalRatio' ? normalRatio_mm(told) : inverseDistance_mm(told);
    if (found === null) continue;
    rain_mm[day] = found;
    state[day] = neighbourDay;
  }
  return { ...record, rain_mm, state };
}

function isMeasured({ firstDay, state }: RainRecord, day: number): boolean {
  return state[day - firstDay] === measured;
}

/** The neighbour with its normals; none where too few days were measured at both, or where one of them was all dry. */
function pairOf(record: RainRecord, neighbour: Neighbour): readonly PairedNeighbour[] {
  const from = Math.max(record.firstDay, neighbour.record.firstDay);
  const to = Math.min(record.firstDay + record.state.length, neighbour.record.firstDay + neighbour.record.state.length);
  let days = 0;
  let own_mm = 0;
  let other_mm = 0;
  for (let day = from; day < to; day++) {
    if (!isMeasured(record, day) || !isMeasured(neighbour.record, day)) continue;
    days++;
    own_mm += record.rain_mm[day - record.firstDay]!;
    other_mm += neighbour.record.rain_mm[day - neighbour.record.firstDay]!;
  }
  if (days < leastSharedDays_count || own_mm === 0 || other_mm === 0) return [];
  return [{ ...neighbour, normal_mm: other_mm / days, ownNormal_mm: own_mm / days }];
}
