import type { PartsApart } from '../../kernel/index.ts';
import type { Piece } from './piece.ts';

/** Are two pieces never to travel together: chlorine and fuel, or a pair that the programme keeps apart? */
export function arePartsApart(
  one: Pick<Piece, 'partId' | 'danger'>,
  other: Pick<Piece, 'partId' | 'danger'>,
  keptApart: readonly PartsApart[],
): boolean {
  if (one.danger !== null && other.danger !== null && one.danger !== other.danger) return true;
  return keptApart.some(
    ({ partId, otherPartId }) =>
      (partId === one.partId && otherPartId === other.partId) ||
      (partId === other.partId && otherPartId === one.partId),
  );
}

/** Is there such a pair among them? A part that is kept apart from itself is one where there is more than one of it. */
export function meetApart(pieces: readonly Piece[], keptApart: readonly PartsApart[]): boolean {
  return pieces.some((one, index) =>
    pieces.slice(index).some((other) => (one !== other || one.count > 1) && arePartsApart(one, other, keptApart)),
  );
}
