/** The heaviest piece somebody has to carry, and how. */
export interface HeaviestPiece {
  readonly partId: string;
  readonly name: string;
  readonly mass_kg: number;
  /** Is it a part of this site, or the heaviest of the catalogue, as none of the site's has a mass? */
  readonly from: 'site' | 'catalogue';
  /** What one person may lift from the floor to the bed of a truck. */
  readonly liftingLimit_kg: number;
  /** Its mass ÷ that limit: above 1 a person alone may come to harm. */
  readonly liftingIndex_factor: number;
  /** One person, two, or more than two: what to carry it with is then to be thought of first. */
  readonly carriedBy: 'one' | 'two' | 'more';
}

/** Where the work at a site can hurt somebody: at height, on a roof that breaks, under a stand, by lifting. */
export const siteCautions = ['height', 'fragileRoof', 'stand', 'lifting'] as const;
export type SiteCaution = (typeof siteCautions)[number];
