import type { EngineProblemCode } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, part, type Sentences, says, yes } from './telling.ts';

/** Months by their numbers, as names. */
const months = (t: Told, name: string) =>
  t
    .list(name)
    .map((month) => t.numbers.quantity(Number(month), 'month'))
    .join(', ');

/** What may be wrong with a month of normals, by the fact that names the months. */
type WrongMonths = 'noRain' | 'noWetDays' | 'tooManyWetDays' | 'rainWithoutWetDays' | 'wetDaysTooDry';

/** What is wrong with each of some months: "No wet days: May, June". */
const monthsBy = (t: Told, ...reasons: readonly WrongMonths[]) => {
  const text = reasons
    .flatMap((name) => (t.list(name).length > 0 ? [part(t, `months.${name}`, { months: months(t, name) })] : []))
    .join('; ');
  return text.slice(0, 1).toUpperCase() + text.slice(1);
};

/** "G1 (12.3 km, weight 0.80) and G2 (24 km, weight 0.20)", at most four by name. */
function gaugesByDistance(t: Told): string {
  const [gauges, distances, weights] = [t.list('gauges'), t.list('distances_km'), t.list('weights_fraction')];
  const shown = gauges.slice(0, 4).map((gauge, i) =>
    part(t, 'gaugeByDistance', {
      gauge,
      distance: String(distances[i]),
      weight: t.numbers.percent(Number(weights[i])),
    }),
  );
  const more = gauges.length - shown.length;
  return more > 0 ? part(t, 'andMore', { shown: shown.join(', '), more }) : shown.join(', ');
}

/** "1,400 mm on 120 days"; the rain alone where wet days were not compared. */
const rainAndDays = (t: Told, rain: string, wetDays: string) =>
  t.has(wetDays)
    ? part(t, 'rainOnDays', { rain: amount(t, [rain], 'mm'), days: amount(t, [wetDays], 'day') })
    : amount(t, [rain], 'mm');

/** What is said of rain that no gauge of the site's own measured. */
export const siteRainSentences = {
  'rain.made_up': (t) =>
    says(t, 'rain.made_up', {
      years: amount(t, ['years'], 'year'),
      hasSource: yes(!t.text('source').startsWith('(')),
      source: t.text('source'),
      hasYearFrom: yes(t.has('yearFrom')),
      yearFrom: t.text('yearFrom'),
      yearTo: t.text('yearTo'),
    }),
  'rain.record_set_aside': (t) => says(t, 'rain.record_set_aside', { days: amount(t, ['count', 'days'], 'day') }),
  'rain.normals_incomplete': (t) => says(t, 'rain.normals_incomplete', { months: monthsBy(t, 'noRain', 'noWetDays') }),
  'rain.normals_impossible': (t) =>
    says(t, 'rain.normals_impossible', {
      months: monthsBy(t, 'tooManyWetDays', 'rainWithoutWetDays', 'wetDaysTooDry'),
    }),
  'rain.normals_differ': (t) =>
    says(t, 'rain.normals_differ', {
      months: amount(t, ['months'], 'number'),
      given: rainAndDays(t, 'given_mm', 'givenWetDays'),
      record: rainAndDays(t, 'record_mm', 'recordWetDays'),
    }),
  'site.gauge_by_distance': (t) => {
    const values = {
      gauges: gaugesByDistance(t),
      hasOthers: yes(t.list('without').length > 0),
      others: t.text('without'),
    };
    return t.list('gauges').length === 1
      ? says(t, 'site.gauge_by_distance', values)
      : says(t, 'site.gauge_by_distance.otherwise', values);
  },
  'site.gauge_too_far': (t) =>
    says(t, 'site.gauge_too_far', {
      reach: amount(t, ['reach_km'], 'km'),
      gaugeId: t.text('gaugeId'),
      distance: amount(t, ['distance_km'], 'km'),
    }),
} satisfies Partial<Sentences<EngineProblemCode>>;
