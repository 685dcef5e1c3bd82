import type { Carrier } from '../../kernel/index.ts';
import type { Piece } from './piece.ts';

/** A piece as a test wants it, pipes of a kilogram where nothing else is said. */
export function piece(partId: string, mass_kg: number | null, count = 1, more: Partial<Piece> = {}): Piece {
  const plain = {
    each_count: 1,
    sides_m: [null, null, null],
    bulk_L: null,
    isFragile: false,
    danger: null,
    kind: 'pipe',
  };
  return { partId, name: partId, mass_kg, count, ...plain, ...more };
}

/** A carrier as a test wants it, with no limit where none is said. */
export function carrier(mode: Carrier['mode'], limit_kg: number | null, more: Partial<Carrier> = {}): Carrier {
  const open = { limit_L: null, longest_m: null, stowage_fraction: 1, carriers_count: 1 };
  const boat = {
    freeboard_cm: null,
    leastFreeboard_cm: null,
    freeboardEmpty_cm: null,
    length_m: null,
    limitSetBy: null,
    limitSetOn: null,
  };
  return { carrierId: 'C1', name: 'Carrier', mode, limit_kg, ...open, ...boat, ...more };
}
