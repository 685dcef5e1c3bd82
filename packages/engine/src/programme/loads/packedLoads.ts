import type { CarrierMode, PartsApart } from '../../kernel/index.ts';
import { besideFragile_kg } from './constants.ts';
import type { CarriedBy, Load, LoadLimits } from './foundLoads.ts';
import { putIn } from './loadOrder.ts';
import { arePartsApart } from './meetApart.ts';
import { named } from './namedPieces.ts';
import { packKinds } from './packKinds.ts';
import type { Piece } from './piece.ts';
import { pieceBulk_L, pieceLongest_m } from './pieceBulk.ts';
import type { SortedPieces } from './sortPieces.ts';

/** Loads of sorted pieces, in no order yet, with the number below which there is none. */
export function packedLoads(
  { together, alone, byTwo }: SortedPieces,
  limits: LoadLimits,
  mode: CarrierMode,
  keptApart: readonly PartsApart[],
): { readonly loads: readonly Load[]; readonly bound_count: number } {
  const isPeople = mode === 'person' || mode === 'twoPeople';
  const kinds = inPackOrder(together, limits);
  const apart = apartOf(kinds, keptApart, isPeople);
  const packed = packKinds({
    kinds: kinds.map((piece) => ({ mass_kg: piece.mass_kg!, bulk_L: pieceBulk_L(piece) ?? 0, count: piece.count })),
    apart,
    room_kg: limits.load_kg,
    room_L: limits.load_L ?? Number.POSITIVE_INFINITY,
  });
  const usual: CarriedBy = mode === 'twoPeople' ? 'two' : mode === 'person' ? 'one' : 'carrier';
  const loads = packed.byLoad_count.map((counts) =>
    loadOf(
      kinds.flatMap((piece, index) => (counts[index]! > 0 ? [{ ...piece, count: counts[index]! }] : [])),
      usual,
    ),
  );
  const single = [...oneByOne(alone, 'one'), ...oneByOne(byTwo, 'two')];
  return { loads: [...loads, ...single], bound_count: packed.bound_count + single.length };
}

function oneByOne(pieces: readonly Piece[], carriedBy: CarriedBy): readonly Load[] {
  return pieces.flatMap((piece) => new Array<Load>(piece.count).fill(loadOf([{ ...piece, count: 1 }], carriedBy)));
}

/** The largest first, as shares of a load; equal ones by mass and by id, so that the order they come in changes nothing. */
function inPackOrder(pieces: readonly Piece[], limits: LoadLimits): readonly Piece[] {
  const share = (piece: Piece) =>
    Math.max(piece.mass_kg! / limits.load_kg, limits.load_L === null ? 0 : (pieceBulk_L(piece) ?? 0) / limits.load_L);
  return [...pieces].sort(
    (a, b) =>
      share(b) - share(a) || b.mass_kg! - a.mass_kg! || (a.partId < b.partId ? -1 : a.partId > b.partId ? 1 : 0),
  );
}

/** Which kinds never meet: chlorine and fuel, the pairs of the programme, and, on people, what is fragile and what could crush it. */
function apartOf(kinds: readonly Piece[], keptApart: readonly PartsApart[], isPeople: boolean): boolean[][] {
  return kinds.map((one) =>
    kinds.map(
      (other) => arePartsApart(one, other, keptApart) || (isPeople && (crushes(one, other) || crushes(other, one))),
    ),
  );
}

function crushes(fragile: Piece, other: Piece): boolean {
  return fragile.isFragile && !other.isFragile && other.mass_kg! > besideFragile_kg;
}

function loadOf(pieces: readonly Piece[], carriedBy: CarriedBy): Load {
  const inside = putIn(pieces);
  const lengths = pieces.map(pieceLongest_m).filter((length) => length !== null);
  return {
    carriedBy,
    pieces: inside.map(named),
    mass_kg: pieces.reduce((sum, { mass_kg, count }) => sum + mass_kg! * count, 0),
    bulk_L: sumOrNull(pieces.map((piece) => ({ one: pieceBulk_L(piece), count: piece.count }))),
    longest_m: lengths.length === 0 ? null : Math.max(...lengths),
    isFragile: pieces.some(({ isFragile }) => isFragile),
  };
}

function sumOrNull(parts: readonly { readonly one: number | null; readonly count: number }[]): number | null {
  return parts.reduce<number | null>(
    (sum, { one, count }) => (sum === null || one === null ? null : sum + one * count),
    0,
  );
}
