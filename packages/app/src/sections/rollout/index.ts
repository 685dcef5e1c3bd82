import { lazyRouteComponent } from '@tanstack/react-router';
import { moreWords } from '../../language/LanguageProvider.tsx';

export { choosingAskedOf } from './choosing/choosingAsked.ts';
export { plansComparedOf, rolloutAskedOf } from './rolloutAsked.ts';

/** A page with its words. */
async function withWords<Page>(page: Promise<Page>): Promise<Page> {
  await moreWords();
  return page;
}

/** Who goes where, when, by which way; loaded when it is opened. */
export const Rollout = lazyRouteComponent(() => withWords(import('./Rollout.tsx')), 'Rollout');

/** One trip: what is aboard, who goes, by which way. */
export const TripSheet = lazyRouteComponent(() => withWords(import('./trip/TripSheet.tsx')), 'TripSheet');

/** What a crew does, day by day: to be read on a phone, without a network. */
export const CrewItinerary = lazyRouteComponent(() => withWords(import('./crew/CrewItinerary.tsx')), 'CrewItinerary');

/** Which sites go in, and which do not, and why. */
export const ChooseSites = lazyRouteComponent(() => withWords(import('./choosing/ChooseSites.tsx')), 'ChooseSites');

/** What happened: trips that left or came back, boats that broke, stock that came, ways that closed. */
export const EnterHappened = lazyRouteComponent(
  () => withWords(import('./happened/EnterHappened.tsx')),
  'EnterHappened',
);

/** Plans that are kept, and two of them side by side. */
export const ComparePlans = lazyRouteComponent(() => withWords(import('./plans/ComparePlans.tsx')), 'ComparePlans');
