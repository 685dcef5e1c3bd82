import { neededOrder } from './constants.ts';
import type { Load } from './foundLoads.ts';
import type { Piece } from './piece.ts';

/**
 * In which order are pieces put into a load? What is heavy first, at the bottom and in the middle; what is fragile last, on top, the heavier first,
 * so that nothing lies under something heavier that could break it.
 *
 * @param pieces - what is in the load [kg]
 * @returns the same pieces, the first to be put in first
 * @law nothing that is put in after a fragile piece is heavier than it
 * @definition ours: docs/decisions/0249-order-of-loads.md
 */
export function putIn<P extends Pick<Piece, 'partId' | 'mass_kg' | 'isFragile'>>(pieces: readonly P[]): readonly P[] {
  return [...pieces].sort(
    (a, b) =>
      Number(a.isFragile) - Number(b.isFragile) || (b.mass_kg ?? 0) - (a.mass_kg ?? 0) || byText(a.partId, b.partId),
  );
}

/** Loads in the order they are wanted on site: by the part in them that is needed first, then the heavier; loads with fragile pieces last. */
export function inOrderNeeded(loads: readonly Load[], pieces: readonly Piece[]): readonly Load[] {
  const order = new Map(pieces.map(({ partId, kind }) => [partId, neededPlace(kind)]));
  const first = (load: Load) => Math.min(...load.pieces.map(({ partId }) => order.get(partId)!));
  const ranked = loads.map((load) => ({
    load,
    place: first(load),
    key: load.pieces.map(({ partId }) => partId).join(),
  }));
  ranked.sort(
    (a, b) =>
      Number(a.load.isFragile) - Number(b.load.isFragile) ||
      a.place - b.place ||
      b.load.mass_kg - a.load.mass_kg ||
      byText(a.key, b.key),
  );
  return ranked.map(({ load }) => load);
}

/** When a kind of part is needed, counted from 0; what is not in the list comes last. */
function neededPlace(kind: string): number {
  const place = (neededOrder as readonly string[]).indexOf(kind);
  return place < 0 ? neededOrder.length : place;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
