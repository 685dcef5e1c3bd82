import { kg, loadOfTrip, massOf, type TripLoad, totalsOfLoad } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import type { HeadSaid } from '../document/heads.ts';
import { Setter } from '../document/setter.ts';
import { bodyWidth_pt } from '../document/sheetSize.ts';
import { type Band, heading, paragraph, table, text } from '../flow/index.ts';
import { boatBand } from './boat.ts';
import { type FactSaid, factsBand } from './facts.ts';
import { cautionsOf, namesOf, type PaperOptions, printedSaid, type TripOnPaper } from './given.ts';
import { type PaperPart, type RolloutPaper, rolloutPaper } from './laid.ts';
import { loadTable } from './loadTable.ts';
import { signatures } from './signatures.ts';

/**
 * The manifest of a trip: what is aboard in the order it is put in, the boat from the side, boxes to tick, who signs; and behind it how all of it
 * lies, large.
 *
 * @param given - the trip
 * @param language - of the paper
 * @param options - when it is printed
 * @returns the file, or the letters no face has
 * @law every page of a trip that goes on a river, or may, has the cautions of boats
 * @definition ours: docs/decisions/0368-paper-of-a-trip.md
 */
export function manifestPaper(given: TripOnPaper, language: Language, options: PaperOptions): RolloutPaper {
  const load = loadOfTrip(given);
  const part: PaperPart = {
    head: headOf(given, load, language, options),
    caution: cautionsOf([given], language),
    sections: (setter, width) => [
      { startsPage: true, bands: manifestBands(setter, width, given, load, language) },
      { startsPage: true, bands: stowingBands(setter, width, load, language) },
    ],
  };
  return rolloutPaper({ title: titleOf(given, load, language), author: given.programme }, [part], language, options);
}

const titleOf = ({ trip }: TripOnPaper, { isAfloat }: TripLoad, { say }: Language): string =>
  say('rolloutPapers.manifest', { isAfloat: isAfloat ? 'yes' : 'no', trip: trip.tripId });

/** Share of the width the name of the way may take. */
const name_fraction = 0.64;

function headOf(given: TripOnPaper, load: TripLoad, language: Language, options: PaperOptions): HeadSaid {
  const { say, numbers } = language;
  const { trip, crew } = given;
  const title = titleOf(given, load, language);
  const carrier = load.carrier?.name;
  return {
    number: (page, pages) => say('rolloutPapers.manifest_page', { title, page, pages }),
    name: routeSaid(given, language),
    laterName: routeSaid(given, language, 0.5, 'compact'),
    right: [
      carrier === undefined ? crew.name : say('rolloutPapers.by_crew', { carrier, crew: crew.name }),
      say('rolloutPapers.trip', {
        trip: trip.tripId,
        leaves: numbers.date(trip.leaves),
        back: numbers.date(trip.back),
      }),
    ],
    printed: printedSaid(given, options, language),
    plans: say('pack.plans'),
    name_fraction,
  };
}

/** From where to where: as many names as one line holds, and how many more. The table has all of them. */
function routeSaid(
  given: TripOnPaper,
  { say, direction }: Language,
  share = name_fraction,
  size: 'title' | 'compact' = 'title',
): string {
  const name = namesOf(given);
  const from = name(given.legs[0]?.from ?? given.crew.base);
  const stops = given.trip.stops.map((stop) => stop.name);
  // Tried on a setter of its own: letters no face has are told where they are drawn.
  const trial = new Setter(direction);
  for (let shown = stops.length; shown > 0; shown--) {
    const more = shown < stops.length ? ` +${stops.length - shown}` : '';
    const said = say('rolloutPapers.route', { from, stops: `${stops.slice(0, shown).join(', ')}${more}` });
    const { lines } = trial.lines(said, size, bodyWidth_pt * share, size === 'title' ? 'plain' : 'strong');
    if (lines.length === 1 || shown === 1) return said;
  }
  return given.trip.tripId;
}

function manifestBands(
  setter: Setter,
  width: number,
  given: TripOnPaper,
  load: TripLoad,
  language: Language,
): readonly Band[] {
  const { say } = language;
  const who = load.isAfloat
    ? [say('rolloutPapers.sign_master'), say('rolloutPapers.sign_freeboard')]
    : [say('rolloutPapers.sign_driver'), say('rolloutPapers.sign_hours')];
  const totals = totalsOfLoad(load, given, language);
  return [
    factsBand(setter, width, factsOf(given, load, language)),
    ...(load.isAfloat ? [boatBand(setter, width, load, language)] : []),
    ...loadTable(setter, width, load, { head: say('rolloutPapers.order'), totals }, language),
    signatures(setter, width, [say('rolloutPapers.sign_loaded'), ...who, say('rolloutPapers.sign_back')]),
  ];
}

function factsOf(given: TripOnPaper, load: TripLoad, language: Language): readonly FactSaid[] {
  const { say, numbers } = language;
  const { trip, crew, legs } = given;
  const { limit_kg, left_kg, longest } = load;
  const limit = limit_kg === null ? null : kg(limit_kg, language);
  const mass =
    limit === null || left_kg === null
      ? say('rolloutPapers.fact_limit_unknown')
      : left_kg < 0
        ? say('rolloutPapers.fact_over', { limit, over: kg(-left_kg, language) })
        : say('rolloutPapers.fact_left', { limit, left: kg(Math.floor(left_kg), language) });
  const porters = Math.max(0, ...legs.map(({ porters_count }) => porters_count));
  const people = {
    figure: numbers.given(crew.people, ''),
    said: say('rolloutPapers.fact_people', { porters: numbers.given(porters, '') }),
  };
  const unweighed_count = load.unweighed_count + (load.fuel_kg === null ? 1 : 0);
  return [
    {
      figure: massOf({ mass_kg: load.loaded_kg, unweighed_count, isKitInPart: load.isKitInPart }, language),
      said: mass,
    },
    load.isAfloat ? freeboardFact(load, language) : people,
    longest === null
      ? { figure: '?', said: say('rolloutPapers.fact_longest_none') }
      : {
          figure: numbers.quantity(longest.length_m, 'm'),
          said: say('rolloutPapers.fact_longest', { name: longest.name }),
        },
    {
      figure: numbers.given(trip.nights_count, ''),
      said: say('rolloutPapers.fact_back', { day: numbers.date(trip.back) }),
    },
  ];
}

/** With this load, as far as it is known; else a line to write on, for it is measured before leaving. */
export function freeboardFact({ freeboard, carrier }: TripLoad, { say, numbers }: Language): FactSaid {
  const cm = (value: number) => say('rolloutPapers.cm', { amount: numbers.fixed(value, 0) });
  const least_m = carrier?.leastFreeboard_m ?? null;
  const least = least_m === null ? say('rolloutPapers.cm', { amount: '……' }) : cm(least_m * 100);
  return freeboard === null
    ? {
        figure: say('rolloutPapers.cm', { amount: '………' }),
        said: say('rolloutPapers.fact_freeboard_unknown', { least }),
      }
    : {
        figure: cm(Math.floor(freeboard.freeboard_cm)),
        said: say('rolloutPapers.fact_freeboard', { how: freeboard.from, least }),
      };
}

/** The picture large, and each stop in a line that is read from two steps away. */
function stowingBands(setter: Setter, width: number, load: TripLoad, language: Language): readonly Band[] {
  const { say, numbers } = language;
  const rows = load.stops.map((stop) => {
    const pieces = stop.lines.reduce((sum, { count }) => sum + count, 0);
    return [
      text(numbers.given(stop.nth, ''), 'strong'),
      text(stop.name, 'strong'),
      text(massOf(stop, language)),
      text(say('rolloutPapers.pieces', { count: numbers.given(pieces, '') })),
    ];
  });
  const columns = [10, 46, 22, 22].map((share, at) => ({
    head: '',
    share,
    ...(at > 1 ? { align: 'figures' as const } : {}),
  }));
  return [
    heading(setter, width, say('rolloutPapers.stowing'), 0),
    ...(load.isAfloat ? [boatBand(setter, width, load, language, 1.45)] : []),
    ...table(setter, width, { columns, rows, isHeadless: true, before_pt: 14, size_pt: 15 }),
    ...rules.flatMap((rule, nth) =>
      paragraph(setter, width, language.say(`loads.rule.${rule}`), { before_pt: nth === 0 ? 14 : 3, size: 13 }),
    ),
  ];
}

const rules = ['lastStopFirst', 'heavyLow', 'heavyCentral', 'fragileOnTop', 'evenAndLashed'] as const;
