import type { Danger } from '../../kernel/index.ts';

/** What of a kind of piece is to be carried. */
export interface Piece {
  readonly partId: string;
  readonly name: string;
  /** Kind of the part, for the order of loads; where it is `other`, that of what it is counted by. */
  readonly kind: string;
  /** So many of the part are in one piece: more than one in a closed pack, and a share of one where it travels in several pieces; of what is sold by the metre, the kilogram or the litre, so much. */
  readonly each_count: number;
  readonly mass_kg: number | null;
  /** Length, width and height as packed; null where not known. */
  readonly sides_m: readonly (number | null)[];
  /** The volume it takes where not every side is known. */
  readonly bulk_L: number | null;
  readonly isFragile: boolean;
  readonly danger: Danger | null;
  readonly count: number;
}
