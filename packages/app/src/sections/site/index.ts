import { lazyRouteComponent } from '@tanstack/react-router';

/** The page of one site; loaded when one is opened. */
export const SitePage = lazyRouteComponent(() => import('./SitePage.tsx'), 'SitePage');

/** What is fitted there, to be printed. */
export const InstallationSheet = lazyRouteComponent(
  () => import('./installation/InstallationSheet.tsx'),
  'InstallationSheet',
);
