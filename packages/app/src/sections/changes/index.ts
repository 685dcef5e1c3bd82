import { lazyRouteComponent } from '@tanstack/react-router';

/** Who changed what. */
export const Changes = lazyRouteComponent(() => import('./Changes.tsx'), 'Changes');
