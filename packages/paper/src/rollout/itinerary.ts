import { tripDaysSaid } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import type { Setter } from '../document/setter.ts';
import { mm } from '../document/sheetSize.ts';
import { type Band, columns, heading, paragraph } from '../flow/index.ts';
import { cautionsOf, namesOf, type PaperOptions, printedSaid, type TripOnPaper } from './given.ts';
import { type RolloutPaper, rolloutPaper } from './laid.ts';

/** A crew with its trips, in the order they go. */
export interface CrewOnPaper {
  readonly programme: string;
  readonly plan: string;
  readonly crew: TripOnPaper['crew'];
  readonly trips: readonly TripOnPaper[];
}

/**
 * What a crew does, day by day, trip by trip.
 *
 * @param given - the crew and its trips
 * @param language - of the paper
 * @param options - when it is printed
 * @returns the file, or the letters no face has
 * @law every page has the cautions of boats where one of its trips goes on a river, or may
 * @definition ours: docs/decisions/0368-paper-of-a-trip.md
 */
export function itineraryPaper(given: CrewOnPaper, language: Language, options: PaperOptions): RolloutPaper {
  const { say, numbers } = language;
  const { crew, trips, programme } = given;
  const first = trips[0];
  const last = trips.at(-1);
  const when =
    first === undefined || last === undefined
      ? []
      : [`${numbers.date(first.trip.leaves)} – ${numbers.date(last.trip.back)}`];
  const head = {
    number: (page: number, pages: number) => say('rolloutPapers.itinerary_page', { page, pages }),
    ...{ name: crew.name, laterName: crew.name },
    right: [say('rolloutPapers.trips_of', { count: numbers.given(trips.length, '') }), ...when],
    printed: printedSaid(given, options, language),
    plans: say('pack.plans'),
  };
  const part = {
    ...{ head, caution: cautionsOf(trips, language) },
    sections: (setter: Setter, width: number) =>
      trips.length === 0
        ? [{ startsPage: true, bands: paragraph(setter, width, say('rolloutPapers.no_trip')) }]
        : trips.map((trip) => ({ startsPage: false, bands: tripBands(setter, width, trip, language) })),
  };
  const title = `${say('rolloutPapers.itinerary')}: ${crew.name}`;
  return rolloutPaper({ title, author: programme }, [part], language, options);
}

const dayWidth_share = 22;

function tripBands(setter: Setter, width: number, given: TripOnPaper, language: Language): readonly Band[] {
  const { say, numbers } = language;
  const { trip, crew } = given;
  const [leaves, back] = [numbers.date(trip.leaves), numbers.date(trip.back)];
  return [
    heading(setter, width, say('rolloutPapers.trip', { trip: trip.tripId, leaves, back })),
    ...tripDaysSaid(given, crew.store, namesOf(given), language).map((day, nth) =>
      dayBand(setter, width, day, language, nth),
    ),
  ];
}

/** A day beside what is done on it. A day on a river says so where the hand is. */
function dayBand(
  setter: Setter,
  width: number,
  day: ReturnType<typeof tripDaysSaid>[number],
  { say, numbers }: Language,
  nth: number,
): Band {
  const doing = (own: number) => [
    ...(day.isOnRiver
      ? paragraph(setter, own, say('rolloutPapers.day_river'), { weight: 'strong', before_pt: 1 })
      : []),
    ...day.said.flatMap((text) => paragraph(setter, own, text, { before_pt: 1 })),
  ];
  return columns(
    setter,
    width,
    mm(4),
    [
      { share: dayWidth_share, bands: (own) => paragraph(setter, own, numbers.date(day.day), { weight: 'strong' }) },
      { share: 100 - dayWidth_share, bands: doing },
    ],
    nth === 0 ? 2 : 7,
  );
}
