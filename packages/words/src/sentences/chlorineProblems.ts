import type { chlorineProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says } from './telling.ts';

const mg = (t: Told, name: string) => amount(t, [name], 'mg/L');
const strength = (t: Told, name: string) => amount(t, [name], 'g/L');
const number = (t: Told, name: string) => amount(t, [name], 'number');

/** What room chlorine finds, in words. */
export const chlorineSentences: Sentences<keyof typeof chlorineProblems> = {
  'chlorine.residual_unknown': (t) => says(t, 'chlorine.residual_unknown'),
  'chlorine.contact_unknown': (t) => says(t, 'chlorine.contact_unknown'),
  'chlorine.contact_short': (t) =>
    says(t, 'chlorine.contact_short', {
      contact: amount(t, ['contact_min'], 'min'),
      wait: amount(t, ['wait_min'], 'min'),
    }),
  'chlorine.ph_unknown': (t) => says(t, 'chlorine.ph_unknown'),
  'chlorine.temperature_unknown': (t) => says(t, 'chlorine.temperature_unknown', { value: amount(t, ['value'], 'C') }),
  'chlorine.outside_table': (t) =>
    says(t, 'chlorine.outside_table', {
      outside: t.text('outside'),
      value: t.text('outside') === 'acidity' ? number(t, 'value') : amount(t, ['value'], 'C'),
    }),
  'chlorine.residual_low': (t) =>
    says(t, 'chlorine.residual_low', {
      residual: mg(t, 'residual_mg_per_L'),
      wanted: mg(t, 'wanted_mg_per_L'),
    }),
  'chlorine.residual_high': (t) =>
    says(t, 'chlorine.residual_high', {
      residual: mg(t, 'residual_mg_per_L'),
      wanted: mg(t, 'wanted_mg_per_L'),
      most: mg(t, 'most_mg_per_L'),
      drinkable: t.text('drinkable'),
    }),
  'chlorine.residual_over_dose': (t) =>
    says(t, 'chlorine.residual_over_dose', {
      residual: mg(t, 'residual_mg_per_L'),
      dose: mg(t, 'dose_mg_per_L'),
    }),
  'chlorine.ph_high': (t) => says(t, 'chlorine.ph_high', { value: number(t, 'value') }),
  'chlorine.too_turbid': (t) =>
    says(t, 'chlorine.too_turbid', {
      turbidity: amount(t, ['turbidity_NTU'], 'NTU'),
      most: amount(t, ['most_NTU'], 'NTU'),
    }),
  'chlorine.turbidity_unknown': (t) => says(t, 'chlorine.turbidity_unknown'),
  'chlorine.stock_differs': (t) =>
    says(t, 'chlorine.stock_differs', {
      stock: strength(t, 'stock_g_per_L'),
      most: strength(t, 'most_g_per_L'),
    }),
  'chlorine.stock_recipe': (t) =>
    says(t, 'chlorine.stock_recipe', {
      recipe: amount(t, ['recipe_mL'], 'mL'),
      makes: strength(t, 'makes_g_per_L'),
    }),
};
