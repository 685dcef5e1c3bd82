import type { EngineProblemCode } from '@eavewell/engine';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { numbers } from './numbers.ts';

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

/** A fact with its unit, else the other words. */
function amount(t: Told, name: string, unit: string, otherwise: string): string {
  const value = t.has(name) ? t.number(name) : null;
  return value === null ? otherwise : numbers.quantity(value, unit);
}

/** Who is at a site, what is asked for them, and by which target it is judged. */
export const peopleSentences = {
  'site.target_of_programme': (t) =>
    say(
      `The class ${t.text('siteClass')} has no target of its own; the programme's is used.`,
      'Add the class to targets.csv if more or less is asked of it.',
    ),
  'site.people_unknown': () =>
    say(
      'How many people drink here is not known.',
      'Fill in people in sites.csv, or households there and people_per_household in settings.json.',
    ),
  'site.people_from_households': (t) =>
    say(
      `The people were not counted; ${amount(t, 'households', 'household', 'the households')} of ${amount(t, 'people_per_household', 'person', 'so many')} each make ${amount(t, 'counted', 'person', 'them')}.`,
      'Count the people and fill in people in sites.csv.',
    ),
  'site.growth_not_used': (t) =>
    say(
      `Growth of ${amount(t, 'growthFraction_per_year', 'fraction', 'some share')} a year could not be reckoned with: ${t.text('missing') === 'designYear' ? 'neither a design year nor a hand-over day is known' : 'it is not known when the people were counted'}.`,
      `Fill in ${t.text('missing')} in sites.csv. Until then the people are taken as given${(t.number('growthFraction_per_year') ?? 0) > 0 ? ', and the site is tight at best' : ''}.`,
    ),
  'site.design_year_before_count': (t) =>
    say(
      `The design year ${t.text('designYear')} lies before the count of ${t.text('countYear')}; the people are taken as counted.`,
      'Correct designYear or peopleCountedOn in sites.csv.',
    ),
  'site.second_source': (t) =>
    say(
      `When the tank is empty people drink from ${t.text('name')} (${t.text('kind')}); its water is worse than a roof's and is not judged here.`,
      'It must be treated before anyone drinks it: ask the health authority. A site that needs it is tight at best.',
    ),
  'site.presence_gaps': (t) =>
    say(
      `The calendar ${t.text('calendarId')} says nothing of ${amount(t, 'days', 'day', 'some days')} of the year; everyone is taken to be there.`,
      'Nothing to do, unless people are away then: add a period to presence.csv.',
    ),
  'site.nobody_present': () =>
    say(
      'Nobody is there on any day on which drinking water is asked for.',
      'Check the shares in presence.csv and the months in demand.csv.',
    ),
  'site.demand_assumed': (t) =>
    say(
      `No demand is given; ${amount(t, 'litres_per_person_per_day', 'L_per_person_per_day', 'the setting')} is used for drinking and cooking.`,
      'Add demand.csv if more is promised.',
    ),
  'site.no_judged_demand': () =>
    say('No purpose of the demand is judged.', 'Mark drinking and cooking "yes" under judged in demand.csv.'),
} satisfies Partial<Readonly<Record<EngineProblemCode, (told: Told) => ProblemSentence>>>;
