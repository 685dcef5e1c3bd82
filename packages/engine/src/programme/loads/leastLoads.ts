import { binBounds } from '../../parts/index.ts';
import { mostGroups_count } from './constants.ts';
import type { PackCase } from './packCase.ts';

/**
 * The least number of loads there can be, before anything is packed: by mass, by bulk, and by what is kept apart. Where every kind of one group is kept
 * apart from every kind of another, no load has both, and what each of the two needs is added up.
 */
export function leastLoads(all: PackCase): number {
  const kinds = all.kinds.map((_, index) => index);
  return leastOfGroups(all, kinds, 1);
}

function leastOfGroups(all: PackCase, kinds: readonly number[], deeper_count: number): number {
  let least_count = leastOf(all, kinds);
  const groups = alikeApart(all, kinds);
  if (groups.length < 2 || groups.length > mostGroups_count) return least_count;
  for (const group of groups) {
    const others = kinds.filter((kind) => group.every((own) => all.apart[own]![kind] && own !== kind));
    if (others.length === 0) continue;
    const beside_count = deeper_count > 0 ? leastOfGroups(all, others, deeper_count - 1) : leastOf(all, others);
    least_count = Math.max(least_count, leastOf(all, group) + beside_count);
  }
  return least_count;
}

/** Kinds that are kept apart from the same others. */
function alikeApart({ apart }: PackCase, kinds: readonly number[]): readonly (readonly number[])[] {
  const groups = new Map<string, number[]>();
  for (const kind of kinds) {
    const key = kinds.map((other) => (apart[kind]![other] ? '1' : '0')).join('');
    groups.set(key, [...(groups.get(key) ?? []), kind]);
  }
  return [...groups.values()];
}

/** By mass and by bulk alone; of a kind that is kept apart from itself, a load each. */
function leastOf({ kinds, apart, room_kg, room_L }: PackCase, some: readonly number[]): number {
  const sizesOf = (of: 'mass_kg' | 'bulk_L') =>
    some.flatMap((kind) => new Array<number>(kinds[kind]!.count).fill(kinds[kind]![of]));
  const alone_count = Math.max(0, ...some.map((kind) => (apart[kind]![kind] ? kinds[kind]!.count : 0)));
  const byMass_count = binBounds(sizesOf('mass_kg'), room_kg)?.byLarge_count ?? 0;
  if (room_L === Number.POSITIVE_INFINITY) return Math.max(alone_count, byMass_count);
  return Math.max(alone_count, byMass_count, binBounds(sizesOf('bulk_L'), room_L)?.byLarge_count ?? 0);
}
