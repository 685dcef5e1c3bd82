import { lazyRouteComponent } from '@tanstack/react-router';

/** Files that are looked at before they are taken in. */
export const TakeIn = lazyRouteComponent(() => import('./TakeIn.tsx'), 'TakeIn');
export const TakeInNew = lazyRouteComponent(() => import('./TakeIn.tsx'), 'TakeInNew');
