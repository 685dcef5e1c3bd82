/** How something is carried. */
export const carrierModes = ['person', 'twoPeople', 'boat', 'truck', 'pallet', 'container'] as const;
export type CarrierMode = (typeof carrierModes)[number];

/** One who carries, or what is carried with; its limits are the user's. */
export interface Carrier {
  readonly carrierId: string;
  readonly name: string;
  readonly mode: CarrierMode;
  /** What may be put on it, people aside; null: nobody stated it. */
  readonly limit_kg: number | null;
  readonly limit_L: number | null;
  /** The longest piece it takes. */
  readonly longest_m: number | null;
  /** From the water to the lowest edge with the whole load aboard, and the least that is kept; boats only. */
  readonly freeboard_cm: number | null;
  readonly leastFreeboard_cm: number | null;
}

/** What of a kind of piece is to be carried. */
export interface Piece {
  readonly partId: string;
  readonly name: string;
  /** Kind of the part, for the order of loads. */
  readonly kind: string;
  readonly mass_kg: number | null;
  /** Length, width and height as packed; null where not known. */
  readonly sides_m: readonly (number | null)[];
  /** The volume it takes where not every side is known. */
  readonly bulk_L: number | null;
  readonly isFragile: boolean;
  readonly danger: 'chlorine' | 'fuel' | null;
  readonly count: number;
}

/** Two parts that are never in one load. */
export interface KeptApart {
  readonly partId: string;
  readonly otherPartId: string;
}
