import type { wearProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says, yes } from './telling.ts';

const unit = (t: Told) => ({ unit: t.text('unit') });
const latest = (t: Told) => ({
  hasLatest: yes(t.has('latest')),
  latest: t.has('latest') ? t.numbers.date(t.text('latest')) : '',
});
const day = (t: Told) => ({ day: t.numbers.date(t.text('day')) });
const count = (t: Told) => ({ count: t.count('count') });

/** What room wear finds, in words. */
export const wearSentences: Sentences<keyof typeof wearProblems> = {
  'wear.water_unknown': (t) => says(t, 'wear.water_unknown'),
  'wear.set_day_unknown': (t) => says(t, 'wear.set_day_unknown', unit(t)),
  'wear.rating_unknown': (t) => says(t, 'wear.rating_unknown', unit(t)),
  'wear.rated_turbidity_unknown': (t) => says(t, 'wear.rated_turbidity_unknown', { ...unit(t), ...latest(t) }),
  'wear.flow_not_rated': (t) => says(t, 'wear.flow_not_rated', unit(t)),
  'wear.temperature': (t) => says(t, 'wear.temperature', { value: amount(t, ['value'], 'C') }),
  'wear.turbidity_unknown': (t) => says(t, 'wear.turbidity_unknown', latest(t)),
  'wear.source_turbidity_unknown': (t) =>
    says(t, 'wear.source_turbidity_unknown', { ...unit(t), source: t.text('source') }),
  'wear.too_turbid': (t) =>
    says(t, 'wear.too_turbid', {
      ...unit(t),
      water: t.text('water'),
      source: t.text('source'),
      value: amount(t, ['value_NTU'], 'NTU'),
      most: amount(t, ['most_NTU'], 'NTU'),
    }),
  'wear.life_unknown': (t) => says(t, 'wear.life_unknown', unit(t)),
  'wear.failures_unknown': (t) => says(t, 'wear.failures_unknown'),
  'wear.meter_backwards': (t) =>
    says(t, 'wear.meter_backwards', {
      ...unit(t),
      ...day(t),
      value: amount(t, ['value'], 'L'),
      before: amount(t, ['before'], 'L'),
    }),
  'wear.reading_before_set': (t) => says(t, 'wear.reading_before_set', { ...unit(t), ...day(t) }),
  'wear.readings_not_used': (t) => says(t, 'wear.readings_not_used', { ...unit(t), ...count(t) }),
  'wear.readings_disagree': (t) => says(t, 'wear.readings_disagree', { ...unit(t), ...count(t) }),
  'wear.beyond_sight': (t) => says(t, 'wear.beyond_sight', { ...unit(t), years: t.numbers.years(t.count('years')) }),
  'wear.overdue': (t) => says(t, 'wear.overdue', { ...unit(t), days: t.numbers.days(t.count('days')) }),
};
