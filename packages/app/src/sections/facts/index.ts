import { lazyRouteComponent } from '@tanstack/react-router';
import { lazy } from 'react';

/** The facts of one site, to read and to change: `<SiteFacts programmeId siteId />`. Its forms are loaded when it is shown. */
export const SiteFacts = lazy(() => import('./SiteFacts.tsx').then((loaded) => ({ default: loaded.SiteFacts })));

/** The page of a site that is not there yet. */
export const NewSite = lazyRouteComponent(() => import('./NewSite.tsx'), 'NewSite');
