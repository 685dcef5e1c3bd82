import type { GeoPosition, Problem } from '@eavewell/engine';

/** How a way is gone, as the table says it. */
export type WayMode = 'road' | 'river' | 'foot';

/** What a map file says of a point or a line, beside where it is. */
export interface MapThing {
  /** Which of the file's things it is, counted from 1. */
  readonly number: number;
  /** What the file calls it; null where it has no name. */
  readonly name: string | null;
  /** What may be an id of ours: the thing's own id and its properties id, siteId, gaugeId, placeId, wayId. */
  readonly ids: readonly string[];
  /** What is noted beside the name; it may be an id of ours, as in the GPX written here. */
  readonly comment?: string;
}

/** A point of a map file. */
export interface MapPoint extends MapThing {
  /** What it is, as the file says: site, gauge, or a kind of place; null where it does not. */
  readonly kind: string | null;
  readonly position: GeoPosition;
}

/** A line of a map file, in one piece or several. */
export interface MapLine extends MapThing {
  readonly mode: WayMode | null;
  readonly pieces: readonly (readonly GeoPosition[])[];
}

/** What a map file holds that can be used, and what is wrong in it. */
export interface MapThings {
  readonly points: readonly MapPoint[];
  readonly lines: readonly MapLine[];
  readonly problems: readonly Problem[];
}
