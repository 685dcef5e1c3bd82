export type { MapSite } from './frame.ts';
export { LazyMapPage as MapPage, LazySitesMap as SitesMap } from './lazyMap.tsx';
export type { SitesMapProps } from './SitesMap.tsx';
export { inSlices } from './slices.ts';
