export { LazyMapPage as MapPage, LazySitesMap as SitesMap } from './lazyMap.tsx';
export { type MapSites, mapVerdicts } from './mapSites.ts';
export type { PlanePoint } from './plane.ts';
export type { MapOn, OwnMap, SitesMapProps } from './SitesMap.tsx';
export { pathOf, type WayLine } from './ways.ts';
