export { LazyMapPage as MapPage, LazySitesMap as SitesMap } from './lazyMap.tsx';
export type { SitesMapProps } from './SitesMap.tsx';
