import type { LegLimit, LegTable, RolloutProblem, Travel } from '../problem.ts';
import { placeOf } from '../somePairs.ts';
import { ended, Once, type PackedLegs, type PackedLimit, type PackedTable, type PackedTravel } from './packedForm.ts';
import type { TravelPair } from './pairs.ts';

/**
 * Legs of some pairs, as JSON carries them. A pair of which the rollout knows nothing is left out.
 *
 * @param problem - the rollout [h, L, kg]
 * @param pairs - which legs, in any order [index]
 * @returns hours, cost, fuel and limits of these legs [h, L, kg, m]
 * @law what is read again is the same to the last bit
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function packLegs(problem: RolloutProblem, pairs: readonly TravelPair[]): PackedLegs {
  return { travels: problem.travels.map((travel, at) => packedTravel(travel, keysOf(problem, at, pairs))) };
}

function keysOf({ travels }: RolloutProblem, at: number, pairs: readonly TravelPair[]): readonly number[] {
  const { nodes, pairs: known } = travels[at]!;
  const isNode = (node: number) => Number.isInteger(node) && node >= 0 && node < nodes;
  const keys = new Set<number>();
  for (const { travel, from, to } of pairs)
    if (travel === at && isNode(from) && isNode(to)) keys.add(from * nodes + to);
  return [...keys].filter((key) => known === undefined || placeOf(known.keys, key) >= 0).sort((a, b) => a - b);
}

function packedTravel({ nodes, pairs, byPeriod }: Travel, keys: readonly number[]): PackedTravel {
  const places = pairs === undefined ? keys : keys.map((key) => placeOf(pairs.keys, key));
  const tables = [...new Set(byPeriod)];
  return {
    nodes,
    keySteps: keys.map((key, at) => key - (at === 0 ? 0 : keys[at - 1]!)),
    byPeriod: byPeriod.map((table) => tables.indexOf(table)),
    tables: tables.map((table) => packedTable(table, places)),
  };
}

function packedTable(table: LegTable, places: readonly number[]): PackedTable {
  const column = (list: Float32Array) => places.map((at) => shortest(list[at]!));
  const limits = new Once<PackedLimit>();
  const limitOf = places.map((at) => {
    const limit = table.limits[table.limitOf[at]!]!;
    return limits.place(packedLimit(limit), limitKey(limit));
  });
  return {
    ...{ landBefore_h: column(table.landBefore_h), river_h: column(table.river_h) },
    ...{ landAfter_h: column(table.landAfter_h), cost: column(table.cost), fuel_L: column(table.fuel_L) },
    ...{ limitOf, areaOf: places.map((at) => table.areaOf[at]!), limits: limits.list },
  };
}

/** Limits of one key are the same. */
export function limitKey({ kg, litres, longest_m, porters_count }: LegLimit): string {
  return `${kg} ${litres} ${longest_m} ${porters_count}`;
}

function packedLimit({ kg, litres, longest_m, porters_count }: LegLimit): PackedLimit {
  return { kg: ended(kg), litres: ended(litres), longest_m: ended(longest_m), porters_count: ended(porters_count) };
}

/** The shortest decimal that is this number of 32 bits again; nine digits always are (IEEE 754). */
function shortest(value: number): number | null {
  if (value === Number.POSITIVE_INFINITY) return null;
  if (Number.isInteger(value)) return value;
  for (let digits = 1; digits < 9; digits++) {
    const short = Number(value.toPrecision(digits));
    if (Math.fround(short) === value) return short;
  }
  return Number(value.toPrecision(9));
}
