import { roomOf } from '../../parts/index.ts';

/** Pieces of one sort, which are told apart by nothing. */
export interface PackKind {
  readonly mass_kg: number;
  /** 0 where it is not known. */
  readonly bulk_L: number;
  readonly count: number;
}

/** What is to be packed into loads of one size. Every piece fits a load by itself. */
export interface PackCase {
  /** The largest first, as shares of a load. */
  readonly kinds: readonly PackKind[];
  /** For each kind, which others, or whether more of its own, are never in one load with it. */
  readonly apart: readonly (readonly boolean[])[];
  readonly room_kg: number;
  /** Without end where bulk is not limited. */
  readonly room_L: number;
}

/** Hair's breadth over the limits: the same that bounds are reckoned with. */
export function roomsOf({ room_kg, room_L }: PackCase): { readonly room_kg: number; readonly room_L: number } {
  return { room_kg: roomOf(room_kg), room_L: room_L === Number.POSITIVE_INFINITY ? room_L : roomOf(room_L) };
}
