import type { LoadPieces, LoadRule } from './foundLoads.ts';
import { putIn } from './loadOrder.ts';
import { named } from './namedPieces.ts';
import type { Piece } from './piece.ts';

/** A stop of a trip, and what is put ashore there. */
export interface Stop {
  readonly stopId: string;
  readonly pieces: readonly Piece[];
}

/** What is put aboard next, and by which rules it lies where it does. */
export interface Stowed extends LoadPieces {
  readonly stopId: string;
  readonly isFragile: boolean;
  readonly rules: readonly LoadRule[];
}

/**
 * In which order is a boat or a truck loaded for several stops? What goes off last is put in first, at each stop what is heavy first, low and in the
 * middle; what is fragile is put in after all of it, the heavier first, whichever stop it is for, and is set aside at the stops before.
 *
 * @param stops - stops in the order they are come to, with the pieces for each [kg]
 * @returns what is put in, the first first
 * @law every piece is stowed once; nothing that is put in after a fragile piece is heavier than it
 * @law what is not fragile lies in the way of no earlier stop
 * @definition ours: docs/decisions/0249-order-of-loads.md
 */
export function stowOrder(stops: readonly Stop[]): readonly Stowed[] {
  const lastFirst = [...stops].reverse();
  const aboard = lastFirst.flatMap(({ stopId, pieces }) => pieces.map((piece) => ({ ...piece, stopId })));
  const firm = lastFirst.flatMap(({ stopId }) =>
    putIn(aboard.filter((one) => one.stopId === stopId && !one.isFragile)),
  );
  const fragile = putIn(aboard.filter((one) => one.isFragile));
  const isOneStop = stops.length < 2;
  return [...firm, ...fragile].map((piece) => ({
    stopId: piece.stopId,
    ...named(piece),
    isFragile: piece.isFragile,
    rules: piece.isFragile
      ? ['fragileOnTop']
      : [...(isOneStop ? [] : ['lastStopFirst' as const]), 'heavyLow', 'heavyCentral'],
  }));
}
