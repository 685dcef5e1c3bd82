import { againstSaid, legSaid, loadOfHaul, massOf, type TripLoad, totalsOfHaul } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import type { HeadSaid } from '../document/heads.ts';
import type { Setter } from '../document/setter.ts';
import { type Band, paragraph } from '../flow/index.ts';
import { boatBand } from './boat.ts';
import { factsBand } from './facts.ts';
import { cautionsOf, namesOf, type PaperOptions, printedSaid, type TripOnPaper } from './given.ts';
import { type PaperPart, type RolloutPaper, rolloutPaper } from './laid.ts';
import { loadTable } from './loadTable.ts';
import { freeboardFact } from './manifest.ts';
import { signatures } from './signatures.ts';

type Haul = TripOnPaper['hauls'][number];

/**
 * What is brought to the store of a crew before a trip leaves: a sheet of its own for each run, to be loaded, signed and carried by who brings it.
 *
 * @param given - the trip
 * @param language - of the paper
 * @param options - when it is printed
 * @returns the file, or the letters no face has
 * @law every page has the cautions of boats: on stretches of a river whatever boat there is goes
 * @definition ours: docs/decisions/0401-runs-between-stores.md
 */
export function haulsPaper(given: TripOnPaper, language: Language, options: PaperOptions): RolloutPaper {
  const title = language.say('rolloutPapers.haul', { trip: given.trip.tripId });
  const parts = given.hauls.map((haul): PaperPart => {
    const load = loadOfHaul(given, haul);
    return {
      head: headOf(given, haul, language, options),
      // Whatever it goes by, a boat may take it over a stretch of the way.
      caution: cautionsOf([{ legs: [{ ...given.legs[0]!, stretches: [] }], cautions: [] }], language),
      sections: (setter, width) => [{ startsPage: true, bands: bandsOf(setter, width, given, haul, load, language) }],
    };
  });
  return rolloutPaper({ title, author: given.programme }, parts, language, options);
}

function headOf(given: TripOnPaper, haul: Haul, language: Language, options: PaperOptions): HeadSaid {
  const { say, numbers } = language;
  const name = namesOf(given);
  const title = say('rolloutPapers.haul', { trip: given.trip.tripId });
  const route = say('rolloutPapers.route', { from: name(haul.from), stops: name(haul.store) });
  return {
    number: (page, pages) => say('rolloutPapers.manifest_page', { title, page, pages }),
    ...{ name: route, laterName: route },
    right: [
      haul.by ?? say('rolloutPapers.haul_by_unknown'),
      haul.back === null
        ? say('rolloutPapers.haul_leaves', { leaves: numbers.date(haul.leaves) })
        : say('rolloutPapers.haul_days', { leaves: numbers.date(haul.leaves), back: numbers.date(haul.back) }),
    ],
    printed: printedSaid(given, options, language),
    plans: say('pack.plans'),
    name_fraction: 0.64,
  };
}

function bandsOf(
  setter: Setter,
  width: number,
  given: TripOnPaper,
  haul: Haul,
  load: TripLoad,
  language: Language,
): readonly Band[] {
  const { say, numbers } = language;
  const { trip, crew } = given;
  const unweighed_count = load.unweighed_count;
  const facts = [
    {
      figure: massOf({ mass_kg: load.loaded_kg, unweighed_count, isKitInPart: load.isKitInPart }, language),
      said: againstSaid(load, language),
    },
    ...(load.isAfloat ? [freeboardFact(load, language)] : []),
    { figure: numbers.given(haul.trips_count, ''), said: say('rolloutPapers.haul_runs') },
    { figure: numbers.date(haul.arrives), said: say('rolloutPapers.haul_arrives') },
  ];
  const who = load.isAfloat
    ? [say('rolloutPapers.sign_master'), say('rolloutPapers.sign_freeboard')]
    : [say('rolloutPapers.sign_driver'), say('rolloutPapers.sign_hours')];
  const waits = { trip: trip.tripId, crew: crew.name, leaves: numbers.date(trip.leaves) };
  return [
    ...paragraph(setter, width, say('rolloutPapers.haul_for', waits)),
    factsBand(setter, width, facts),
    ...waysSaid(given, haul, language).flatMap((said) => paragraph(setter, width, said)),
    ...(load.isAfloat && haul.trips_count === 1 ? [boatBand(setter, width, load, language)] : []),
    ...loadTable(
      setter,
      width,
      load,
      { head: say('rolloutPapers.haul_order'), totals: totalsOfHaul(load, haul, language) },
      language,
    ),
    signatures(setter, width, [say('rolloutPapers.sign_loaded'), ...who, say('rolloutPapers.sign_back')]),
  ];
}

/** By which ways it goes there and back, each told once with the days it is set out on. */
function waysSaid(given: TripOnPaper, { legs }: Haul, language: Language): readonly string[] {
  const daysOf = new Map<string, Set<string>>();
  for (const leg of legs) {
    const said = legSaid(leg, namesOf(given), language).join(' ');
    const days = daysOf.get(said) ?? new Set();
    if (leg.leaves !== null) days.add(language.numbers.date(leg.leaves));
    daysOf.set(said, days);
  }
  return [...daysOf].map(([said, days]) => `${[...days].join(', ')}: ${said}`);
}
