import type { loadsProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says, yes } from './telling.ts';

const carrier = (t: Told) => ({ carrier: t.text('carrierName') });
const parts = (t: Told) => ({ ...carrier(t), parts: t.text('parts'), count: t.count('count') });
const over = (t: Told, name: string, unit: string) => (t.has(name) ? amount(t, [name], unit) : '');

/** What room loads finds, in words. */
export const loadsSentences: Sentences<keyof typeof loadsProblems> = {
  'loads.no_limit': (t) => says(t, 'loads.no_limit', { ...carrier(t), isBoat: yes(t.text('mode') === 'boat') }),
  'loads.too_many': (t) => says(t, 'loads.too_many', { ...carrier(t), loads: t.count('loads') }),
  'loads.figure_unusable': (t) =>
    says(t, 'loads.figure_unusable', { of: t.text('of'), column: t.text('column'), value: t.text('value') }),
  'loads.mass_unknown': (t) => says(t, 'loads.mass_unknown', parts(t)),
  'loads.bulk_unknown': (t) => says(t, 'loads.bulk_unknown', parts(t)),
  'loads.length_unknown': (t) => says(t, 'loads.length_unknown', parts(t)),
  'loads.cannot_carry': (t) =>
    says(t, 'loads.cannot_carry', {
      ...carrier(t),
      part: t.text('part'),
      count: t.count('count'),
      isHeavy: yes(t.has('over_kg')),
      isBulky: yes(t.has('over_L')),
      isLong: yes(t.has('over_m')),
      mass: over(t, 'over_kg', 'kg'),
      bulk: over(t, 'over_L', 'L'),
      length: over(t, 'over_m', 'm'),
    }),
  'loads.limit_over_lifting': (t) =>
    says(t, 'loads.limit_over_lifting', {
      ...carrier(t),
      limit: amount(t, ['limit_kg'], 'kg'),
      most: amount(t, ['most_kg'], 'kg'),
    }),
  'loads.not_least': (t) =>
    says(t, 'loads.not_least', { ...carrier(t), loads: t.count('loads'), most: t.count('most') }),
  'loads.freeboard_short': (t) =>
    says(t, 'loads.freeboard_short', {
      ...carrier(t),
      is: amount(t, ['freeboard_cm'], 'cm'),
      least: amount(t, ['leastFreeboard_cm'], 'cm'),
    }),
  'loads.kit_kept_apart': (t) => says(t, 'loads.kit_kept_apart', carrier(t)),
};
