import type { CountedBy, PartFacts } from '../../kernel/index.ts';
import { hair_factor } from '../../parts/index.ts';
import { closedPack_kg, neededWith } from './constants.ts';
import type { Piece } from './piece.ts';
import { pieceBulk_L, pieceLongest_m } from './pieceBulk.ts';

/** A line of a kit, as far as carrying it goes. */
export interface CarriedLine {
  readonly partId: string;
  readonly name: string;
  readonly kind: string;
  /** In what the part is counted in; null where nobody knows. */
  readonly total_count: number | null;
  /** What counts it, the first first. */
  readonly counts: readonly { readonly countedBy: CountedBy }[];
}

/**
 * Which pieces are the lines of a kit, as they are carried? Parts one by one; small ones in the packs they are sold in, with the rest in one that was
 * opened; what travels in several pieces in those, each with its share; what is counted by the metre, the kilogram or the litre in the packs it is sold in, or in one.
 *
 * @param lines - parts and how many of each [count]
 * @param parts - the catalogue: masses [kg], sides [m]
 * @returns pieces with mass [kg], sides [m] and bulk [L]; a line of which no count is known gives none
 * @law of what is counted by the piece, pieces × each_count are the parts of the lines
 * @definition ours: docs/decisions/0251-packs-that-are-carried.md
 */
export function piecesOf(lines: readonly CarriedLine[], parts: readonly PartFacts[]): readonly Piece[] {
  const byId = new Map(parts.map((part) => [part.partId, part]));
  return lines.flatMap((line) => {
    const total = line.total_count;
    if (total === null || !(total > 0)) return [];
    const part = byId.get(line.partId);
    const one = onePiece(line, part);
    const pack = part?.kit.packSize_count ?? null;
    if ((part?.kit.countedIn ?? 'piece') !== 'piece') return [...packsOf(one, total, pack ?? total, true)];
    const pieces = part?.kit.pieces_count ?? 1;
    if (pieces > 1) return [inPieces(one, total, pieces)];
    const isSmall = pack !== null && pack > 1 && one.mass_kg !== null && one.mass_kg * pack <= closedPack_kg;
    return isSmall ? packsOf(one, total, pack, false) : [{ ...one, count: total }];
  });
}

/** One of a part, by itself. */
function onePiece({ partId, name, kind: own, counts }: CarriedLine, part: PartFacts | undefined): Piece {
  const countedBy = counts[0]?.countedBy;
  const kind = (own === 'other' && countedBy !== undefined ? neededWith[countedBy] : own) ?? own;
  const figures = part?.kit;
  // A kilogram weighs one, whatever else is said of it.
  const mass_kg = figures?.countedIn === 'kg' ? 1 : (part?.mass_kg ?? null);
  return {
    ...{ partId, name, kind, mass_kg, each_count: 1, count: 1 },
    sides_m: [part?.length_m ?? null, figures?.width_m ?? null, figures?.height_m ?? null],
    bulk_L: figures?.bulk_L ?? null,
    isFragile: figures?.isFragile ?? false,
    danger: figures?.danger ?? null,
  };
}

/** Shells of a tank: each with its share of mass and room, and as long as the longest of them. */
function inPieces(one: Piece, total: number, pieces: number): Piece {
  return packed(one, 1 / pieces, total * pieces);
}

/** Whole packs and what is left over: in one that was opened, or, of what is measured out, in one that is taken whole. */
function packsOf(one: Piece, total: number, pack: number, isWhole: boolean): readonly Piece[] {
  const whole_count = isWhole ? Math.ceil(total / pack - hair_factor) : Math.floor(total / pack);
  const rest = isWhole ? 0 : total - whole_count * pack;
  const packs = [
    { each_count: pack, count: whole_count },
    { each_count: rest, count: 1 },
  ].filter(({ each_count, count }) => each_count > 0 && count > 0);
  return packs.map(({ each_count, count }) => packed(one, each_count, count));
}

function packed(one: Piece, each_count: number, count: number): Piece {
  if (each_count === 1) return { ...one, count };
  const bulk_L = pieceBulk_L(one);
  return {
    ...one,
    ...{ each_count, count },
    mass_kg: one.mass_kg === null ? null : one.mass_kg * each_count,
    // It is as long as one of it; how they lie in it nobody says.
    sides_m: [pieceLongest_m(one), null, null],
    bulk_L: bulk_L === null ? null : bulk_L * each_count,
  };
}
