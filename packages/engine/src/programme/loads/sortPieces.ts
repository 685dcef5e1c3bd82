import type { CarrierMode } from '../../kernel/index.ts';
import { roomOf, twoPeople_kg } from '../../parts/index.ts';
import { bothOf_count } from './constants.ts';
import type { LoadLimits, NotCarried } from './foundLoads.ts';
import { named } from './namedPieces.ts';
import type { Piece } from './piece.ts';
import { pieceBulk_L, pieceLongest_m } from './pieceBulk.ts';

/** Pieces by what becomes of them. */
export interface SortedPieces {
  /** Everything that goes into a load, in each of the ways below. */
  readonly carried: readonly Piece[];
  /** What is packed together. */
  readonly together: readonly Piece[];
  /** What one person carries by itself, and what two do. */
  readonly alone: readonly Piece[];
  readonly byTwo: readonly Piece[];
  readonly noMass: readonly Piece[];
  readonly cannotCarry: readonly NotCarried[];
}

/** Which pieces are packed together, which are carried by themselves, and which not at all? */
export function sortPieces(pieces: readonly Piece[], limits: LoadLimits, mode: CarrierMode): SortedPieces {
  const carried: Piece[] = [];
  const together: Piece[] = [];
  const alone: Piece[] = [];
  const byTwo: Piece[] = [];
  const noMass: Piece[] = [];
  const cannotCarry: NotCarried[] = [];
  // What is too heavy for one is carried by two: no more than two are to carry, nor than each of them is said to.
  const most_kg = mode === 'person' ? Math.min(twoPeople_kg, bothOf_count * limits.piece_kg) : limits.piece_kg;
  for (const piece of pieces) {
    const { mass_kg } = piece;
    const over = {
      over_kg: overOf(mass_kg, most_kg),
      over_L: overOf(pieceBulk_L(piece), limits.load_L),
      over_m: overOf(pieceLongest_m(piece), limits.longest_m),
    };
    if (Object.values(over).some((value) => value !== null)) {
      cannotCarry.push({ ...named(piece), ...over });
    } else if (mass_kg === null) {
      noMass.push(piece);
    } else {
      carried.push(piece);
      if (mass_kg <= roomOf(limits.load_kg)) together.push(piece);
      else if (mass_kg <= roomOf(limits.piece_kg)) alone.push(piece);
      else byTwo.push(piece);
    }
  }
  return { carried, together, alone, byTwo, noMass, cannotCarry };
}

/** By how much a figure is over a limit; null where it is not, or one of them is not known. */
function overOf(value: number | null, limit: number | null): number | null {
  return value === null || limit === null || value <= roomOf(limit) ? null : value - limit;
}
