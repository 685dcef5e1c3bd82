import { loadPaperLanguage } from '@eavewell/words';
import { expect, it } from 'vitest';
import { textsOf } from '../reading/readBack.testing.ts';
import type { TripOnPaper } from './given.ts';
import { itineraryPaper } from './itinerary.ts';
import { options, trip } from './madeUpTrip.testing.ts';
import { manifestPaper } from './manifest.ts';
import { noticesPaper } from './notices.ts';

/** Of the second stop's kit something could not be counted, its water is not treated, and nobody states a stock of cement. */
const unsure: TripOnPaper = {
  ...trip,
  trip: {
    ...trip.trip,
    stops: trip.trip.stops.map((stop) =>
      stop.siteId === 'S2' ? { ...stop, isKitInPart: true, isUntreated: true } : stop,
    ),
  },
  aboard: trip.aboard.map((line) => ({ ...line, isPresumed: line.name.startsWith('cement') })),
};

const squeezed = (text: string) => text.replace(/\s/g, '');
const pagesOf = (paper: ReturnType<typeof manifestPaper>): readonly string[] => {
  if (paper.kind !== 'made') throw new Error(paper.said.join(' '));
  return textsOf(paper.bytes).map((page) => squeezed(page.join('')));
};

it.each(['en', 'es'])('a load of which not all is counted is at least so much in %s', async (code) => {
  const language = await loadPaperLanguage(code);
  const { say, numbers } = language;
  const of = (given: TripOnPaper) => pagesOf(manifestPaper(given, language, options)).join('');
  const whole = say('rolloutPapers.at_least', { mass: numbers.quantity(804, 'kg') });
  const told = [
    whole,
    say('rolloutPapers.total_left_most', { limit: numbers.quantity(1600, 'kg'), left: numbers.quantity(795, 'kg') }),
    say('rolloutPapers.kit_in_part', { sites: 'Ruvela' }),
    say('rolloutPapers.presumed', { name: 'cement, 25 kg' }),
    say('rolloutPapers.presumed_about', { count: 1 }),
  ].map(squeezed);
  const [own, other] = [of(unsure), of(trip)];
  expect(told.filter((one) => !own.includes(one))).toEqual([]);
  expect(told.filter((one) => other.includes(one))).toEqual([]);
});

it('an itinerary says at least of what is loaded, and of what is aboard until all of it is for stops that are counted', async () => {
  const language = await loadPaperLanguage('en');
  const of = (given: TripOnPaper) =>
    pagesOf(
      itineraryPaper(
        { programme: trip.programme, plan: trip.plan, crew: trip.crew, trips: [given] },
        language,
        options,
      ),
    ).join('');
  const atLeast = (text: string) =>
    text.split(squeezed(language.say('rolloutPapers.at_least', { mass: '' }))).length - 1;
  // The second stop's kit is not all counted: at the store, and after the first stop.
  expect([atLeast(of(unsure)), atLeast(of(trip))]).toEqual([2, 0]);
});

it('freeboard is not told of a load of which not all is counted', async () => {
  const language = await loadPaperLanguage('en');
  const of = (given: TripOnPaper) => pagesOf(manifestPaper(given, language, options)).join('');
  expect(of(trip)).toContain('44cm');
  expect(of(unsure)).not.toContain('44cm');
});

it('a village without treatment is told to go on treating, no other is', async () => {
  const language = await loadPaperLanguage('en');
  const said = squeezed(language.say('rolloutPapers.untreated'));
  const pages = pagesOf(noticesPaper([unsure], language, options));
  expect(pages.map((page) => page.includes(said))).toEqual(unsure.trip.stops.map(({ isUntreated }) => isUntreated));
});
