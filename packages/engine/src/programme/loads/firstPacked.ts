import { type PackCase, roomsOf } from './packCase.ts';

interface OpenLoad {
  readonly counts: number[];
  left_kg: number;
  left_L: number;
}

/** Loads by best fit, the largest first: of each kind as many as there is room for in the load that is fullest, then in new ones. */
export function firstPacked(all: PackCase): number[][] {
  const rooms = roomsOf(all);
  const loads: OpenLoad[] = [];
  const apart = all.apart.map((row) => row.flatMap((isApart, other) => (isApart ? [other] : [])));
  all.kinds.forEach((kind, index) => {
    let left = kind.count;
    const put = (load: OpenLoad, most: number) => {
      const some = Math.min(most, left);
      load.counts[index]! += some;
      load.left_kg -= some * kind.mass_kg;
      load.left_L -= some * kind.bulk_L;
      left -= some;
    };
    const fit = loads
      .map((load) => ({ load, most: mostOf(all, load, index, apart[index]!) }))
      .filter(({ most }) => most > 0);
    fit.sort((a, b) => fullness(all, b.load) - fullness(all, a.load));
    for (const { load, most } of fit) if (left > 0) put(load, most);
    while (left > 0) {
      const load = {
        counts: new Array<number>(all.kinds.length).fill(0),
        left_kg: rooms.room_kg,
        left_L: rooms.room_L,
      };
      loads.push(load);
      put(load, Math.max(1, mostOf(all, load, index, apart[index]!)));
    }
  });
  return loads.map(({ counts }) => counts);
}

/** How many of a kind still go into a load. */
function mostOf(
  { kinds }: PackCase,
  { counts, left_kg, left_L }: OpenLoad,
  index: number,
  apart: readonly number[],
): number {
  const kind = kinds[index]!;
  if (kind.mass_kg > left_kg || kind.bulk_L > left_L) return 0;
  for (const other of apart) if (counts[other]! > 0) return 0;
  const byMass = kind.mass_kg > 0 ? Math.floor(left_kg / kind.mass_kg) : kind.count;
  const byBulk = kind.bulk_L > 0 ? Math.floor(left_L / kind.bulk_L) : kind.count;
  const most = Math.min(byMass, byBulk);
  return apart.includes(index) ? Math.min(1, most) : most;
}

function fullness({ room_kg, room_L }: PackCase, { left_kg, left_L }: OpenLoad): number {
  const byMass = 1 - left_kg / room_kg;
  return room_L === Number.POSITIVE_INFINITY ? byMass : Math.max(byMass, 1 - left_L / room_L);
}
