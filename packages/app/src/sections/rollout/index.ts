import { lazyRouteComponent } from '@tanstack/react-router';

export { choosingAskedOf } from './choosing/choosingAsked.ts';
export { plansComparedOf, rolloutAskedOf } from './rolloutAsked.ts';

/** Who goes where, when, by which way; loaded when it is opened. */
export const Rollout = lazyRouteComponent(() => import('./Rollout.tsx'), 'Rollout');

/** One trip: what is aboard, who goes, by which way. */
export const TripSheet = lazyRouteComponent(() => import('./trip/TripSheet.tsx'), 'TripSheet');

/** What a crew does, day by day: to be read on a phone, without a network. */
export const CrewItinerary = lazyRouteComponent(() => import('./crew/CrewItinerary.tsx'), 'CrewItinerary');

/** Which sites go in, and which do not, and why. */
export const ChooseSites = lazyRouteComponent(() => import('./choosing/ChooseSites.tsx'), 'ChooseSites');

/** What happened: trips that left or came back, boats that broke, stock that came, ways that closed. */
export const EnterHappened = lazyRouteComponent(() => import('./happened/EnterHappened.tsx'), 'EnterHappened');

/** Plans that are kept, and two of them side by side. */
export const ComparePlans = lazyRouteComponent(() => import('./plans/ComparePlans.tsx'), 'ComparePlans');
