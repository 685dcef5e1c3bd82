import { mostPlaced_count } from './constants.ts';
import { type PackCase, type PackKind, roomsOf } from './packCase.ts';

/** What makes a piece be placed early, and a load the one for it. */
interface Way {
  readonly size: (shares: Shares) => number;
  /** Of a load with so much left, for a piece: the greatest is taken. */
  readonly fit: (left: Shares, piece: Shares) => number;
}

/** Mass and bulk as shares of a load. */
interface Shares {
  readonly byMass: number;
  readonly byBulk: number;
}

const sizes: readonly Way['size'][] = [
  ({ byMass, byBulk }) => Math.max(byMass, byBulk),
  ({ byMass, byBulk }) => byMass + byBulk,
  ({ byMass }) => byMass,
  ({ byBulk }) => byBulk,
];
const fits: readonly Way['fit'][] = [
  (left, piece) => Math.min(left.byMass - piece.byMass, left.byBulk - piece.byBulk),
  (left, piece) => left.byMass * piece.byMass + left.byBulk * piece.byBulk,
];
const ways = fits.flatMap((fit) => sizes.map((size): Way => ({ size, fit })));

/** Tries to spread everything evenly over so many loads, so that what is heavy and what is bulky lie together; null where no way of doing so works. */
export function evenPacked(all: PackCase, loads_count: number): number[][] | null {
  const pieces_count = all.kinds.reduce((sum, { count }) => sum + count, 0);
  if (pieces_count * loads_count > mostPlaced_count) return null;
  // Where bulk is not limited, the ways that look at it are those that do not.
  const tried = all.room_L === Number.POSITIVE_INFINITY ? ways.slice(0, 1) : ways;
  for (const way of tried) {
    const found = spread(all, loads_count, way);
    if (found !== null) return found;
  }
  return null;
}

function spread(all: PackCase, loads_count: number, way: Way): number[][] | null {
  const rooms = roomsOf(all);
  const shares = all.kinds.map((kind) => sharesOf(kind, rooms));
  const order = shares.map((_, index) => index).sort((a, b) => way.size(shares[b]!) - way.size(shares[a]!) || a - b);
  const left = Array.from({ length: loads_count }, () => ({ byMass: 1, byBulk: 1 }));
  const counts = Array.from({ length: loads_count }, () => new Array<number>(all.kinds.length).fill(0));
  for (const kind of order) {
    const own = shares[kind]!;
    const mayTake = counts.map((load) => load.every((count, other) => count === 0 || !all.apart[kind]![other]));
    for (let piece = 0; piece < all.kinds[kind]!.count; piece++) {
      let best = -1;
      let most = Number.NEGATIVE_INFINITY;
      for (let load = 0; load < loads_count; load++) {
        const room = left[load]!;
        if (!mayTake[load] || own.byMass > room.byMass || own.byBulk > room.byBulk) continue;
        const fit = way.fit(room, own);
        if (fit > most) [best, most] = [load, fit];
      }
      if (best < 0) return null;
      counts[best]![kind]! += 1;
      left[best]!.byMass -= own.byMass;
      left[best]!.byBulk -= own.byBulk;
      if (all.apart[kind]![kind]) mayTake[best] = false;
    }
  }
  // A load that nothing came into is none.
  return counts.filter((load) => load.some((count) => count > 0));
}

function sharesOf({ mass_kg, bulk_L }: PackKind, rooms: { readonly room_kg: number; readonly room_L: number }): Shares {
  return { byMass: mass_kg / rooms.room_kg, byBulk: bulk_L / rooms.room_L };
}
