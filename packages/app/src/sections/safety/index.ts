import { lazyRouteComponent } from '@tanstack/react-router';

export { safetyAskedOf } from './cups.ts';
export { lastWords, reasonsOfReport } from './cupWords.ts';
export { CupOfBefore, useIsCupOfBefore } from './ofBefore.tsx';

/** Whether the water of each site is fit to drink; loaded when it is opened. */
export const Safety = lazyRouteComponent(() => import('./Safety.tsx'), 'Safety');

/** One site's safety, roof to cup; loaded when it is opened. */
export const SiteSafety = lazyRouteComponent(() => import('./site/SiteSafety.tsx'), 'SiteSafety');

/** One site's water-safety page, to be printed; loaded when it is opened. */
export const WaterSafetySheet = lazyRouteComponent(() => import('./paper/WaterSafetySheet.tsx'), 'WaterSafetySheet');
