import type { EngineProblemCode } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { numbers } from './numbers.ts';
import { amount, capital, type Sentences, say } from './sentences.ts';

/** Months by their numbers, as names. */
const months = (t: Told, name: string) =>
  t
    .list(name)
    .map((month) => numbers.quantity(Number(month), 'month'))
    .join(', ');

/** What is wrong with each of some months: "no wet days: May, June". */
const monthsBy = (t: Told, reasons: readonly (readonly [name: string, words: string])[]) =>
  reasons.flatMap(([name, words]) => (t.list(name).length > 0 ? [`${words}: ${months(t, name)}`] : [])).join('; ');

/** "G1 (12.3 km, weight 0.80) and G2 (24 km, weight 0.20)", at most four by name. */
function gaugesByDistance(t: Told): string {
  const [gauges, distances, weights] = [t.list('gauges'), t.list('distances_km'), t.list('weights_fraction')];
  const shown = gauges
    .slice(0, 4)
    .map((gauge, i) => `${gauge} (${distances[i]} km, weight ${numbers.percent(Number(weights[i]))})`);
  const more = gauges.length - shown.length;
  return more > 0 ? `${shown.join(', ')} and ${numbers.quantity(more, 'number')} more` : shown.join(', ');
}

/** "1,400 mm on 120 days"; the rain alone where wet days were not compared. */
const rainAndDays = (t: Told, rain: string, wetDays: string) =>
  `${amount(t, [rain], 'mm', 'rain')}${t.has(wetDays) ? ` on ${amount(t, [wetDays], 'day', '')}` : ''}`;

/** What is said of rain that no gauge of the site's own measured. */
export const siteRainSentences = {
  'rain.made_up': (t) =>
    say(
      `Nobody's readings: ${amount(t, ['years'], 'year', 'its years')} of rain are made up from the normals of normals.csv${t.text('source').startsWith('(') ? '' : ` (${t.text('source')}${t.has('yearFrom') ? `, ${t.text('yearFrom')} to ${t.text('yearTo')}` : ''})`}.`,
      'Made-up years are more alike than real ones, so droughts are understated: its sites are tight at best. Look for daily readings.',
    ),
  'rain.record_set_aside': (t) =>
    say(
      `The record is too short to judge (${amount(t, ['count', 'days'], 'day', 'its days')}); rain made up from normals stands in for it.`,
      'Add earlier or later readings; as soon as one whole water year can be judged, the record counts instead.',
    ),
  'rain.normals_incomplete': (t) =>
    say(
      `No rain can be made up from its normals. ${capital(
        monthsBy(t, [
          ['noRain', 'no rain'],
          ['noWetDays', 'no wet days'],
        ]),
      )}.`,
      'Fill in both for every month in normals.csv: rain alone does not say how long it stays away.',
    ),
  'rain.normals_impossible': (t) =>
    say(
      `No rain can be made up from its normals. ${capital(
        monthsBy(t, [
          ['tooManyWetDays', 'more wet days than days'],
          ['rainWithoutWetDays', 'rain but no wet day'],
          ['wetDaysTooDry', 'too little rain for the wet days, which have more than 1 mm each'],
        ]),
      )}.`,
      'Check rain_mm and wetDays against their source: a wet day is one of 1 mm or more.',
    ),
  'rain.normals_differ': (t) =>
    say(
      `Its normals say something else than its record: over ${amount(t, ['months'], 'number', 'the')} months ${rainAndDays(t, 'given_mm', 'givenWetDays')}, against ${rainAndDays(t, 'record_mm', 'recordWetDays')} in the record.`,
      'The record counts. Check that both are of this gauge, of like years and in mm.',
    ),
  'site.gauge_by_distance': (t) => {
    const left = t.list('without').length > 0 ? ` Within reach but without a record: ${t.text('without')}.` : '';
    return t.list('gauges').length === 1
      ? say(
          `No gauge is given; the one within reach is taken: ${gaugesByDistance(t)}.${left}`,
          'Nothing to do if it is the right one. Else give the site its gaugeId.',
        )
      : say(
          `No gauge is given; its rain is the mean of those within reach: ${gaugesByDistance(t)}.${left}`,
          'A mean of gauges has more wet days and less rain on each than any of them, and its dry runs are shorter. Give a gaugeId where one gauge is known to be right.',
        );
  },
  'site.gauge_too_far': (t) =>
    say(
      `No gauge is within ${amount(t, ['reach_km'], 'km', 'reach')}: the nearest, ${t.text('gaugeId')}, is ${amount(t, ['distance_km'], 'km', 'further')} away.`,
      'Name a gauge for the site in sites.csv, or widen gaugeReach_km in settings.json, if its rain is known to be alike.',
    ),
} satisfies Partial<Sentences<EngineProblemCode>>;
