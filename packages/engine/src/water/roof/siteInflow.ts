import type { RainRecord } from '../../kernel/index.ts';
import { yieldsKept_count } from './constants.ts';
import { roofYield_mm } from './roofYield.ts';
import type { RoofCatch } from './siteRoofs.ts';

/** Yields per m² already worked out, by rain record. Held by the caller; it forgets a record when the caller does. */
export type YieldsByRecord = WeakMap<RainRecord, Map<string, Float64Array>>;

/**
 * How many litres reach the tank each day? Over all roofs, plan area × guttered share × net depth of roofYield_mm, the
 * record run twice and the second pass given back. Sites that share rain, factor, runoff fraction and first flush share
 * the net depth through `yields`.
 *
 * @param record - the rain, gaps filled: rain_mm [mm] by day
 * @param roofs - the roofs, from siteRoofs
 * @param rainFactor - what the gauge's rain is multiplied by at the site [fraction], 0 or more
 * @param yields - yields [mm] already worked out, by record; added to; the answer is the same without it
 * @returns litres by day [L], 0 or more, as long as the record
 * @law twice the area of every roof gives twice the litres; the order of roofs changes nothing but rounding
 * @definition ours; 1 mm on 1 m² is 1 L
 */
export function siteInflow_L(
  record: RainRecord,
  roofs: readonly RoofCatch[],
  rainFactor: number,
  yields?: YieldsByRecord,
): Float64Array {
  const inflow_L = new Float64Array(record.rain_mm.length);
  for (const roof of roofs) {
    const drained_m2 = roof.roofPlanArea_m2 * roof.gutteredFraction;
    if (drained_m2 === 0) continue;
    const net_mm = sharedYield(record, roof, rainFactor, yields);
    for (let day = 0; day < inflow_L.length; day++) inflow_L[day]! += drained_m2 * net_mm[day]!;
  }
  return inflow_L;
}

function sharedYield(record: RainRecord, roof: RoofCatch, rainFactor: number, yields?: YieldsByRecord): Float64Array {
  const { runoffFraction, firstFlush_mm, drainHole } = roof;
  const work = () => roofYield_mm(record.rain_mm, { runoffFraction, firstFlush_mm, drainHole, rainFactor, passes: 2 });
  if (!yields) return work();
  let ofRecord = yields.get(record);
  if (!ofRecord) {
    ofRecord = new Map();
    yields.set(record, ofRecord);
  }
  const key = `${runoffFraction}|${firstFlush_mm}|${drainHole}|${rainFactor}`;
  const known = ofRecord.get(key);
  if (known) return known;
  const net_mm = work();
  for (const oldest of ofRecord.keys()) {
    if (ofRecord.size < yieldsKept_count) break;
    ofRecord.delete(oldest);
  }
  ofRecord.set(key, net_mm);
  return net_mm;
}
