import { lazyRouteComponent } from '@tanstack/react-router';

export { waterAskedOf } from './waterAsked.ts';

/** The water of a whole programme, year by year; loaded when it is opened. */
export const ProgrammeWater = lazyRouteComponent(() => import('./ProgrammeWater.tsx'), 'ProgrammeWater');
