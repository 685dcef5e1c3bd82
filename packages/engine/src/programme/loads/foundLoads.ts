import type { CarrierMode, Problem, WorkingLine } from '../../kernel/index.ts';

/** By whom or what a load is taken: one person, two, or the boat, truck, pallet or container. */
export type CarriedBy = 'one' | 'two' | 'carrier';

/** Pieces of one part in a load. */
export interface LoadPieces {
  readonly partId: string;
  readonly name: string;
  /** So many of the part are in one piece. */
  readonly each_count: number;
  readonly count: number;
}

/** What is taken in one go. */
export interface Load {
  readonly carriedBy: CarriedBy;
  /** In the order they are put in: what is heavy first, what is fragile last. */
  readonly pieces: readonly LoadPieces[];
  readonly mass_kg: number;
  /** Null where that of a piece is not known. */
  readonly bulk_L: number | null;
  readonly longest_m: number | null;
  readonly isFragile: boolean;
}

/** Pieces that no load takes, and by how much each is over a limit; null where that limit holds or is not stated. */
export interface NotCarried extends LoadPieces {
  readonly over_kg: number | null;
  readonly over_L: number | null;
  readonly over_m: number | null;
}

/** The limits that loads were made by; null where there is none. */
export interface LoadLimits {
  /** Of a load of several pieces. */
  readonly load_kg: number;
  /** Of a piece that is carried by itself. */
  readonly piece_kg: number;
  readonly load_L: number | null;
  readonly longest_m: number | null;
}

/** Where it can hurt somebody: by lifting, on a boat, on a load that moves, with what must stay apart. */
export const loadCautions = [
  'lifting',
  'lifeVests',
  'localSkipperDecides',
  'freeboardMark',
  'nobodyOnLoad',
  'lashed',
  'dangerApart',
] as const;
export type LoadCaution = (typeof loadCautions)[number];

/** A rule of the order in which loads go, or pieces are put in. */
export const loadRules = [
  'neededFirst',
  'fragileLast',
  'heavyLow',
  'heavyCentral',
  'fragileOnTop',
  'lastStopFirst',
  'evenAndLashed',
] as const;
export type LoadRule = (typeof loadRules)[number];

/** How a kit is carried. */
export interface CarrierLoads {
  readonly carrierId: string;
  readonly mode: CarrierMode;
  /** Null where nobody stated what the carrier holds: then there is no load. There is none either where there would be too many to read. */
  readonly limits: LoadLimits | null;
  /** In the order they are to go. */
  readonly loads: readonly Load[];
  /** No way of loading has fewer; null where no load was made. */
  readonly leastLoads_count: number | null;
  /** Is there no way with fewer? */
  readonly isLeast: boolean;
  readonly cannotCarry: readonly NotCarried[];
  /** Pieces whose mass is not known: they are in no load. */
  readonly noMass: readonly LoadPieces[];
  /** Pieces in loads whose bulk, or whose length, is not known though it is limited. */
  readonly noBulk: readonly LoadPieces[];
  readonly noLength: readonly LoadPieces[];
  readonly rules: readonly LoadRule[];
  readonly cautions: readonly LoadCaution[];
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** The limit that decides how many kits go in: of mass, of bulk, or a piece that goes in nowhere. */
export type BindingLimit = 'mass' | 'bulk' | 'longest' | 'keptApart';

/** How many whole kits go into a carrier. */
export interface KitsFound {
  readonly carrierId: string;
  /** Null where it is not known; then byMass_count is the most there can be. */
  readonly kits_count: number | null;
  /** The limit that decides; null where nothing is known to. Where both come to the same, mass. */
  readonly limitedBy: BindingLimit | null;
  /** By what is known of their mass; null where no mass is limited. */
  readonly byMass_count: number | null;
  /** By their bulk and the share of the room that can be filled; null where bulk is not limited, or something of it is not known. */
  readonly byBulk_count: number | null;
  /** Of one kit, what is known of it. */
  readonly kit_kg: number;
  readonly kit_L: number;
  readonly longest_m: number | null;
  readonly noMass: readonly LoadPieces[];
  readonly noBulk: readonly LoadPieces[];
  readonly working: readonly WorkingLine[];
}
