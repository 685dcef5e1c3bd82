/** Verdicts by the number a map is given of each, worst first. */
export const mapVerdicts = ['short', 'unknown', 'tight', 'notJudged', 'holds'] as const;
export type MapVerdict = (typeof mapVerdicts)[number];

/** Sites as the map is given them, those that need her most first: few large things, of ten thousand as of ten. */
export interface MapSites {
  readonly count: number;
  /** Not a number where it is not known. */
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;
  /** The place of each one's verdict in `mapVerdicts`. */
  readonly verdict: Uint8Array;
  keyAt(place: number): string;
  nameAt(place: number): string;
  /** The place of a site by its key; -1 where there is none. */
  placeOf(key: string): number;
}
