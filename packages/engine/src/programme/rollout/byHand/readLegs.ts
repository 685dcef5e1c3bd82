import type { LegLimit, LegTable, RolloutProblem, Travel } from '../problem.ts';
import { endless, Once, type PackedLegs, type PackedTable, type PackedTravel } from './packedForm.ts';
import { limitKey } from './packLegs.ts';

/** Travels of the pairs that were packed. */
export function readLegs({ travels }: PackedLegs): readonly Travel[] {
  return travels.map(({ nodes, keySteps, byPeriod, tables }) => {
    const read = tables.map(readTable);
    return { nodes, pairs: { keys: readKeys(keySteps) }, byPeriod: byPeriod.map((at) => read[at]!) };
  });
}

/**
 * The rollout with more legs beside those it has. Where a leg is in both, the new one counts.
 *
 * @param problem - the rollout, with legs of some pairs [h]
 * @param more - legs of the same rollout, as JSON carried them [h]
 * @returns the rollout with all of them; null where they are of another rollout (then it is to be read anew) [h]
 * @law with the legs of a plan and those of a site, any place for the site is timed as by all legs
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function withLegs(problem: RolloutProblem, more: PackedLegs): RolloutProblem | null {
  if (problem.travels.length !== more.travels.length) return null;
  const travels = problem.travels.map((travel, at) => withMore(travel, more.travels[at]!));
  if (travels.some((travel) => travel === null)) return null;
  return { ...problem, travels: travels.flatMap((travel) => travel ?? []) };
}

function withMore(travel: Travel, packed: PackedTravel): Travel | null {
  const { nodes, pairs, byPeriod } = travel;
  const tables = [...new Set(byPeriod)];
  const isSame =
    nodes === packed.nodes &&
    tables.length === packed.tables.length &&
    byPeriod.length === packed.byPeriod.length &&
    byPeriod.every((table, period) => tables.indexOf(table) === packed.byPeriod[period]);
  if (!isSame) return null;
  if (pairs === undefined || packed.keySteps.length === 0) return travel;
  const merged = mergedKeys(pairs.keys, readKeys(packed.keySteps));
  const made = tables.map((table, at) => mergedTable(table, readTable(packed.tables[at]!), merged));
  return { nodes, pairs: { keys: merged.keys }, byPeriod: packed.byPeriod.map((at) => made[at]!) };
}

interface MergedKeys {
  readonly keys: Float64Array;
  /** Where each stood among the old ones, and among the new ones; -1: it did not. */
  readonly old: Int32Array;
  readonly more: Int32Array;
}

function mergedKeys(old: ArrayLike<number>, more: ArrayLike<number>): MergedKeys {
  const keys = Float64Array.from(new Set([...Array.from(old), ...Array.from(more)])).sort();
  const within = (list: ArrayLike<number>) => {
    let at = 0;
    return Int32Array.from(keys, (key) => {
      while (at < list.length && list[at]! < key) at++;
      return list[at] === key ? at : -1;
    });
  };
  return { keys, old: within(old), more: within(more) };
}

function mergedTable(old: LegTable, more: LegTable, merged: MergedKeys): LegTable {
  const size = merged.keys.length;
  const limits = new Once<LegLimit>();
  const both = {
    old: old.limits.map((one) => limits.place(one, limitKey(one))),
    more: more.limits.map((one) => limits.place(one, limitKey(one))),
  };
  const column = (of: (table: LegTable) => ArrayLike<number>) => (at: number) =>
    merged.more[at]! >= 0 ? of(more)[merged.more[at]!]! : of(old)[merged.old[at]!]!;
  const hours = (of: (table: LegTable) => ArrayLike<number>) =>
    Float32Array.from({ length: size }, (_, at) => column(of)(at));
  return {
    landBefore_h: hours(({ landBefore_h }) => landBefore_h),
    river_h: hours(({ river_h }) => river_h),
    landAfter_h: hours(({ landAfter_h }) => landAfter_h),
    cost: hours(({ cost }) => cost),
    fuel_L: hours(({ fuel_L }) => fuel_L),
    areaOf: Uint8Array.from({ length: size }, (_, at) => column(({ areaOf }) => areaOf)(at)),
    limitOf: Uint16Array.from({ length: size }, (_, at) =>
      merged.more[at]! >= 0 ? both.more[more.limitOf[merged.more[at]!]!]! : both.old[old.limitOf[merged.old[at]!]!]!,
    ),
    limits: limits.list,
  };
}

function readKeys(keySteps: readonly number[]): Float64Array {
  let key = 0;
  return Float64Array.from(keySteps, (step) => {
    key += step;
    return key;
  });
}

function readTable(table: PackedTable): LegTable {
  const column = (list: readonly (number | null)[]) => Float32Array.from(list, endless);
  return {
    ...{ landBefore_h: column(table.landBefore_h), river_h: column(table.river_h) },
    ...{ landAfter_h: column(table.landAfter_h), cost: column(table.cost), fuel_L: column(table.fuel_L) },
    ...{ limitOf: Uint16Array.from(table.limitOf), areaOf: Uint8Array.from(table.areaOf) },
    limits: table.limits.map(({ kg, litres, longest_m, porters_count }) => ({
      ...{ kg: endless(kg), litres: endless(litres), longest_m: endless(longest_m) },
      porters_count: endless(porters_count),
    })),
  };
}
