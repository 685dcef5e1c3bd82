import type { wearProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room wear finds, in words. */
export const wearSentences: Sentences<keyof typeof wearProblems> = {
  'wear.water_unknown': (t) => says(t, 'wear.water_unknown'),
  'wear.set_day_unknown': (t) => says(t, 'wear.set_day_unknown'),
  'wear.rating_unknown': (t) => says(t, 'wear.rating_unknown'),
  'wear.rated_turbidity_unknown': (t) => says(t, 'wear.rated_turbidity_unknown'),
  'wear.turbidity_unknown': (t) => says(t, 'wear.turbidity_unknown'),
  'wear.source_turbidity_unknown': (t) => says(t, 'wear.source_turbidity_unknown'),
  'wear.too_turbid': (t) => says(t, 'wear.too_turbid'),
  'wear.life_unknown': (t) => says(t, 'wear.life_unknown'),
  'wear.failures_unknown': (t) => says(t, 'wear.failures_unknown'),
  'wear.meter_backwards': (t) => says(t, 'wear.meter_backwards'),
  'wear.readings_disagree': (t) => says(t, 'wear.readings_disagree'),
  'wear.overdue': (t) => says(t, 'wear.overdue'),
};
