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

/** How a site stands. */
export const standingOf = ({ verdict }: SiteEntry): Standing => verdict ?? 'notYet';

/** The worst station of those that were judged; null where none was. */
export function worstStation({ stations, verdict }: SiteEntry): Station | null {
  if (stations === null || verdict === null) return null;
  return stationsInOrder.find((station) => stations[station] === verdict) ?? null;
}
