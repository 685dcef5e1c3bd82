import { lazyRouteComponent } from '@tanstack/react-router';

export { kitAskedOf } from './kitAsked.ts';

/** What goes in the boat, what is to be bought, and what it costs; loaded when it is opened. */
export const ProgrammeKit = lazyRouteComponent(() => import('./ProgrammeKit.tsx'), 'ProgrammeKit');

/** The kit, the loads and the cost of one site; loaded when it is opened. */
export const SiteKit = lazyRouteComponent(() => import('./site/SiteKit.tsx'), 'SiteKit');
