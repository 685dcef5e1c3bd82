import { litresFromCubicMetres } from '../../kernel/index.ts';
import { sidesOfBox_count } from './constants.ts';
import type { Piece } from './piece.ts';

/**
 * What volume does a piece take?
 *
 * @param piece - its sides as packed [m] and the volume stated for it [L]
 * @returns length × width × height where all three are known, else the volume stated [L]; null where neither is
 * @definition ours
 */
export function pieceBulk_L(piece: Pick<Piece, 'sides_m' | 'bulk_L'>): number | null {
  const { sides_m, bulk_L } = piece;
  const known = sides_m.filter((side) => side !== null);
  if (known.length < sidesOfBox_count) return bulk_L;
  return litresFromCubicMetres(known.reduce((product, side) => product * side, 1));
}

/**
 * How long is a piece?
 *
 * @param piece - its sides as packed [m]
 * @returns the longest side that is known [m]; null where none is
 * @definition ours
 */
export function pieceLongest_m(piece: Pick<Piece, 'sides_m'>): number | null {
  const known = piece.sides_m.filter((side) => side !== null);
  return known.length === 0 ? null : Math.max(...known);
}
