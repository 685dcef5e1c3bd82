import type { components } from '../../api/apiTypes.ts';

/** The list of sites as the server answers it. */
export type OverviewBody = components['schemas']['overview'];
export type OverviewHead = Omit<OverviewBody, 'sites'>;

/** One site in the list. */
export type SiteEntry = OverviewBody['sites'][number];
export type Stations = NonNullable<SiteEntry['stations']>;
export type Station = keyof Stations;

/** A verdict, or none as yet. */
export type Standing = 'short' | 'unknown' | 'tight' | 'holds' | 'notYet';

/** The stations along the water's path, in its order. */
export const stationsInOrder = [
  'roof',
  'gutter',
  'settling',
  'storage',
  'stand',
  'treatmentUnit',
  'tap',
  'cup',
] as const satisfies readonly Station[];

/** Worst first. */
export const standings: readonly Standing[] = ['short', 'unknown', 'tight', 'notYet', 'holds'];

/** Those that need a person: all but the ones that hold. */
export const exceptions: readonly Standing[] = standings.filter((one) => one !== 'holds');

/**
 * What a list is filtered and put in order by, a number for each site in its order. The thread that reads the list makes them: then
 * the page looks at ten thousand numbers at a press, and not at ten thousand sites.
 */
export interface ListNumbers {
  readonly form: number;
  /** The place of its standing in `standings`. */
  readonly standing: Uint8Array;
  /** A bit for each station with trouble, in the order of the water's path. */
  readonly trouble: Uint16Array;
  /** The place of its gate in `gates` and one; 0 where there is none of them. */
  readonly gate: Uint8Array;
  /** The place of its area, its name and its cost among all; the same for those that are the same, and last where there is none. */
  readonly areaRank: Uint32Array;
  readonly nameRank: Uint32Array;
  readonly costRank: Uint32Array;
  /** Areas there are, with how many sites lie in each, by name: the first has the rank 0. */
  readonly areas: readonly (readonly [area: string, sites: number])[];
  /** Sites with a stand nobody signed for. */
  readonly closed_count: number;
}

/** All that is known of the sites, in the order of the server: worst first. */
export interface Overview {
  readonly head: OverviewHead;
  readonly sites: readonly SiteEntry[];
  /** Where each site stands in `sites`, by its key. */
  readonly places: ReadonlyMap<string, number>;
  /** What it is filtered and put in order by, where the thread that read the list told it. */
  readonly numbers?: ListNumbers;
}

/** How a site stands. */
export const standingOf = ({ verdict }: SiteEntry): Standing => verdict ?? 'notYet';

/** The worst station of those that were judged; null where none was. */
export function worstStation({ stations, verdict }: SiteEntry): Station | null {
  if (stations === null || verdict === null) return null;
  return stationsInOrder.find((station) => stations[station] === verdict) ?? null;
}
