export type { MapSite } from './frame.ts';
export { LazyMapPage as MapPage, LazySitesMap as SitesMap } from './lazyMap.tsx';
export type { PlanePoint } from './plane.ts';
export type { MapOn, OwnMap, SitesMapProps } from './SitesMap.tsx';
export { inSlices } from './slices.ts';
export { pathOf, type WayLine } from './ways.ts';
