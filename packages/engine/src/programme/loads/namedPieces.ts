import type { LoadPieces } from './foundLoads.ts';
import type { Piece } from './piece.ts';

/** Pieces by their names alone. */
export function named({ partId, name, each_count, count }: Piece): LoadPieces {
  return { partId, name, each_count, count };
}

/** Names and count of pieces, as facts of a problem. */
export function partsNamed(which: readonly LoadPieces[]): {
  readonly parts: readonly string[];
  readonly count: number;
} {
  return { parts: which.map(({ name }) => name), count: which.reduce((sum, { count }) => sum + count, 0) };
}
