import type { LegTable, Travel } from './kernel/index.ts';
import type { Crew } from './programme/rollout/index.ts';
import type { LeftOutSite } from './programmeRolloutFacts.ts';
import { type DraftJob, leftOut } from './programmeRolloutJobs.ts';

/** Whose legs are looked at, and from where. */
export interface Reach {
  readonly crews: readonly Crew[];
  /** Nodes of their stores. */
  readonly storeNodes_positions: readonly number[];
  readonly travels: readonly Travel[];
}

/** Why no crew can bring a job's kit there in any period, by how little; null: one can. */
export function unreachable(
  job: DraftJob,
  node: number,
  { crews, storeNodes_positions, travels }: Reach,
): LeftOutSite | null {
  let least: LeftOutSite | null = null;
  for (const crew of crews) {
    if ((crew.skills & job.skills) !== job.skills) continue;
    const { nodes, byPeriod } = travels[crew.travel]!;
    for (const table of new Set(byPeriod)) {
      const at = storeNodes_positions[crew.store]! * nodes + node;
      if (table.landBefore_h[at] === Number.POSITIVE_INFINITY) continue;
      const over = overBy(job, crew, table.limits[table.limitOf[at]!]!);
      if (over === null) return null;
      if (least === null || (over.over_kg ?? 0) < (least.over_kg ?? 0)) least = over;
    }
  }
  return least ?? leftOut(job.siteId, 'noWay');
}

/** By how much a kit is too much for a leg; null: it is not. */
function overBy(job: DraftJob, crew: Crew, leg: LegTable['limits'][number]): LeftOutSite | null {
  const beyond = (own: number, limit: number) => (own > limit ? own - limit : null);
  const over_kg = beyond(job.kg, Math.min(crew.limit_kg, leg.kg));
  const over_L = beyond(job.litres, Math.min(crew.limit_L, leg.litres));
  const over_m = beyond(job.longest_m, Math.min(crew.longest_m, leg.longest_m));
  if (over_kg === null && over_L === null && over_m === null) return null;
  const reason = over_kg !== null ? 'tooHeavy' : over_L !== null ? 'tooBulky' : 'tooLong';
  return { siteId: job.siteId, reason, over_kg, over_L, over_m };
}

/** The legs between some of the nodes alone; periods that share a table go on sharing it. */
export function ofNodes({ nodes, byPeriod }: Travel, kept: readonly number[]): Travel {
  const made = new Map<LegTable, LegTable>();
  const part = <T extends Float32Array | Uint16Array | Uint8Array>(all: T, empty: T): T => {
    kept.forEach((from, a) => {
      kept.forEach((to, b) => {
        empty[a * kept.length + b] = all[from * nodes + to]!;
      });
    });
    return empty;
  };
  const size = kept.length ** 2;
  for (const table of new Set(byPeriod))
    made.set(table, {
      limits: table.limits,
      landBefore_h: part(table.landBefore_h, new Float32Array(size)),
      river_h: part(table.river_h, new Float32Array(size)),
      landAfter_h: part(table.landAfter_h, new Float32Array(size)),
      cost: part(table.cost, new Float32Array(size)),
      fuel_L: part(table.fuel_L, new Float32Array(size)),
      limitOf: part(table.limitOf, new Uint16Array(size)),
      areaOf: part(table.areaOf, new Uint8Array(size)),
    });
  return { nodes: kept.length, byPeriod: byPeriod.map((table) => made.get(table)!) };
}
