import { lazyRouteComponent } from '@tanstack/react-router';

/** What this browser keeps; loaded when it is looked at. */
export const KeptPage = lazyRouteComponent(() => import('./KeptPage.tsx'), 'KeptPage');
