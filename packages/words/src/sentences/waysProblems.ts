import type { waysProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says, wordFor } from './telling.ts';

const way = (t: Told) => ({ way: t.text('way') });
const mode = (t: Told) => ({ mode: wordFor(t, 'wayMode', t.text('mode')) ?? t.text('mode') });
const speed = (t: Told) => ({ speed: amount(t, ['speed_km_per_h'], 'km/h') });

/** What room ways finds, in words. */
export const waysSentences: Sentences<keyof typeof waysProblems> = {
  'ways.ends_nowhere': (t) => says(t, 'ways.ends_nowhere', { ...way(t), end: t.text('end') }),
  'ways.figure_unusable': (t) =>
    says(t, 'ways.figure_unusable', { of: t.text('of'), column: t.text('column'), value: t.text('value') }),
  'ways.hours_contradict': (t) =>
    says(t, 'ways.hours_contradict', {
      ...way(t),
      hours: amount(t, ['hours_h'], 'h'),
      length: amount(t, ['length_km'], 'km'),
      most: amount(t, ['most_km_per_h'], 'km/h'),
    }),
  'ways.closure_unused': (t) => says(t, 'ways.closure_unused', { closure: t.text('closure'), of: t.text('of') }),
  'ways.carrier_unknown': (t) => says(t, 'ways.carrier_unknown', { carrier: t.text('carrier'), of: t.text('of') }),
  'ways.carrier_no_limit': (t) => says(t, 'ways.carrier_no_limit', { carrier: t.text('carrier') }),
  'ways.level_without_gauge': (t) => says(t, 'ways.level_without_gauge', { ...way(t), carrier: t.text('carrier') }),
  'ways.levels_short': (t) => says(t, 'ways.levels_short', { gauge: t.text('gauge') }),
  'ways.areas_many': (t) => says(t, 'ways.areas_many', { most: t.count('most') }),
  'ways.longer_than_day': (t) =>
    says(t, 'ways.longer_than_day', {
      ...way(t),
      ...{ from: t.text('from'), to: t.text('to') },
      ...{ hours: amount(t, ['hours_h'], 'h'), most: amount(t, ['most_h'], 'h') },
    }),
  'ways.no_hours': (t) => says(t, 'ways.no_hours', { ...way(t), ...mode(t) }),
  'ways.walking_assumed': (t) => says(t, 'ways.walking_assumed', speed(t)),
  'ways.fuel_unknown': (t) => says(t, 'ways.fuel_unknown', { carrier: t.text('carrier') }),
  'ways.periods_merged': (t) => says(t, 'ways.periods_merged', { periods: t.count('periods'), days: t.count('days') }),
  'ways.stop_unknown': (t) => says(t, 'ways.stop_unknown', { stop: t.text('stop'), place: t.text('place') }),
  'ways.closed_always': (t) => says(t, 'ways.closed_always', way(t)),
  'ways.in_pieces': (t) =>
    says(t, 'ways.in_pieces', { places: t.text('places'), count: t.count('count'), pieces: t.count('pieces') }),
};
