import type { chlorineProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room chlorine finds, in words. */
export const chlorineSentences: Sentences<keyof typeof chlorineProblems> = {
  'chlorine.residual_unknown': (t) => says(t, 'chlorine.residual_unknown'),
  'chlorine.contact_unknown': (t) => says(t, 'chlorine.contact_unknown'),
  'chlorine.ph_unknown': (t) => says(t, 'chlorine.ph_unknown'),
  'chlorine.temperature_unknown': (t) => says(t, 'chlorine.temperature_unknown'),
  'chlorine.outside_table': (t) => says(t, 'chlorine.outside_table'),
  'chlorine.residual_low': (t) => says(t, 'chlorine.residual_low'),
  'chlorine.residual_high': (t) => says(t, 'chlorine.residual_high'),
  'chlorine.ph_high': (t) => says(t, 'chlorine.ph_high'),
  'chlorine.too_turbid': (t) => says(t, 'chlorine.too_turbid'),
  'chlorine.turbidity_unknown': (t) => says(t, 'chlorine.turbidity_unknown'),
  'chlorine.stock_differs': (t) => says(t, 'chlorine.stock_differs'),
  'chlorine.stock_recipe': (t) => says(t, 'chlorine.stock_recipe'),
};
