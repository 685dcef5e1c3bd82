import { Near } from './frame.ts';
import { type MapSites, type MapVerdict, mapVerdicts } from './mapSites.ts';

/** A site of a test. */
export interface FewSite {
  readonly key: string;
  readonly verdict: MapVerdict;
  readonly name?: string;
  readonly latitude_deg?: number | null;
  readonly longitude_deg?: number | null;
}

/** A few sites, written down one by one, as the map takes them: for tests. */
export const fewSites = (sites: readonly FewSite[]): MapSites => ({
  count: sites.length,
  latitude_deg: Float64Array.from(sites, ({ latitude_deg }) => latitude_deg ?? Number.NaN),
  longitude_deg: Float64Array.from(sites, ({ longitude_deg }) => longitude_deg ?? Number.NaN),
  verdict: Uint8Array.from(sites, ({ verdict }) => mapVerdicts.indexOf(verdict)),
  keyAt: (place) => sites[place]!.key,
  nameAt: (place) => sites[place]!.name ?? sites[place]!.key,
  placeOf: (key) => sites.findIndex((site) => site.key === key),
});

/** The same with their points on the plane [km]. */
export const nearOf = (sites: readonly (FewSite & { readonly point: readonly [number, number] })[]): Near =>
  new Near(
    fewSites(sites),
    Uint32Array.from(sites, (_, place) => place),
    Float64Array.from(sites, ({ point }) => point[0]),
    Float64Array.from(sites, ({ point }) => point[1]),
  );
