import { lazy, Suspense } from 'react';
import type { SitesMapProps } from './SitesMap.tsx';

const Page = lazy(() => import('./MapPage.tsx').then(({ MapPage }) => ({ default: MapPage })));
const BesideList = lazy(() => import('./SitesMap.tsx').then(({ SitesMap }) => ({ default: SitesMap })));

/** The sites where they lie, beside the list. It comes as a piece of its own, so that the list need not wait for it. */
export function LazySitesMap(props: SitesMapProps) {
  return (
    <Suspense fallback={<div className="map-to-come" />}>
      <BesideList {...props} />
    </Suspense>
  );
}

/** The map on a page of its own. */
export function LazyMapPage() {
  return (
    <Suspense fallback={null}>
      <Page />
    </Suspense>
  );
}
