import type { stormProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says, wordFor, yes } from './telling.ts';

const years = (t: Told, name: string) => amount(t, [name], 'year');
const rate = (t: Told, name: string) => amount(t, [name], 'mm/h');
/** "10, 50 years": the unit stands behind the last. */
const statedYears = (t: Told) => {
  const stated = t.list('stated_years');
  return [...stated.slice(0, -1), t.numbers.quantity(Number(stated.at(-1)), 'year')].join(', ');
};
/** Which storm it is about. */
const of = (t: Told) => wordFor(t, 'storm', t.text('of')) ?? t.text('of');
const count = (t: Told) => ({ count: t.count('count') });

/** What room storm finds, in words. */
export const stormSentences: Sentences<keyof typeof stormProblems> = {
  'storm.no_intensity': (t) => says(t, 'storm.no_intensity', { years: years(t, 'returnPeriod_years') }),
  'storm.period_not_stated': (t) =>
    says(t, 'storm.period_not_stated', {
      wanted: years(t, 'returnPeriod_years'),
      stated: statedYears(t),
      hasBetween: yes(t.has('between_mm_per_h')),
      between: rate(t, 'between_mm_per_h'),
    }),
  'storm.intensity_unlikely': (t) =>
    says(t, 'storm.intensity_unlikely', {
      of: of(t),
      value: rate(t, 'value_mm_per_h'),
      least: amount(t, ['least_mm_per_h'], 'number'),
      most: rate(t, 'most_mm_per_h'),
    }),
  'storm.range_reversed': (t) =>
    says(t, 'storm.range_reversed', {
      value: rate(t, 'value_mm_per_h'),
      low: amount(t, ['low_mm_per_h'], 'number'),
      high: rate(t, 'high_mm_per_h'),
    }),
  'storm.source_missing': (t) => says(t, 'storm.source_missing', { of: of(t) }),
  'storm.coefficients_out_of_range': (t) =>
    says(t, 'storm.coefficients_out_of_range', {
      least: amount(t, ['least_years'], 'number'),
      most: years(t, 'most_years'),
      wanted: years(t, 'returnPeriod_years'),
    }),
  'storm.record_too_coarse': (t) => says(t, 'storm.record_too_coarse', count(t)),
  'storm.record_overlaps': (t) => says(t, 'storm.record_overlaps', count(t)),
  'storm.record_unlikely': (t) => says(t, 'storm.record_unlikely', { ...count(t), day: t.numbers.date(t.text('day')) }),
  'storm.years_left_out': (t) => {
    const [part, thin] = [t.list('partYears'), t.list('thinYears')];
    return says(t, 'storm.years_left_out', {
      hasPart: yes(part.length > 0),
      part: part.join(', '),
      hasBoth: yes(part.length > 0 && thin.length > 0),
      hasThin: yes(thin.length > 0),
      thin: thin.join(', '),
    });
  },
  'storm.too_few_years': (t) =>
    says(t, 'storm.too_few_years', { of: of(t), years: years(t, 'years'), least: years(t, 'leastYears') }),
  'storm.not_fitted': (t) => says(t, 'storm.not_fitted', { of: of(t), years: years(t, 'years') }),
  'storm.from_daily': (t) =>
    says(t, 'storm.from_daily', {
      years: years(t, 'years'),
      share: t.numbers.percent(t.number('share_fraction') ?? Number.NaN),
    }),
  'storm.other_gauge': (t) =>
    says(t, 'storm.other_gauge', { other: t.text('other'), distance: amount(t, ['distance_km'], 'km') }),
};
