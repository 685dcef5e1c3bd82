import type { waterTestsProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says } from './telling.ts';

const per100mL = (t: Told, name: string) => amount(t, [name], 'per_100mL');
const sample = (t: Told) => ({
  test: t.text('test'),
  point: t.text('point'),
  day: t.numbers.date(t.text('day')),
});
const share = (t: Told, name: string) => amount(t, [name], 'fraction');

/** What room waterTests finds, in words. */
export const waterTestsSentences: Sentences<keyof typeof waterTestsProblems> = {
  'waterTests.none': (t) => says(t, 'waterTests.none'),
  'waterTests.before_handover': (t) =>
    says(t, 'waterTests.before_handover', { tests: t.text('tests'), count: t.count('count') }),
  'waterTests.handover_unknown': (t) => says(t, 'waterTests.handover_unknown'),
  'waterTests.found': (t) =>
    says(t, 'waterTests.found', { ...sample(t), found: per100mL(t, 'count_per_100mL'), band: t.text('band') }),
  'waterTests.found_uncounted': (t) => says(t, 'waterTests.found_uncounted', sample(t)),
  'waterTests.all_positive': (t) =>
    says(t, 'waterTests.all_positive', { ...sample(t), least: per100mL(t, 'least_per_100mL') }),
  'waterTests.rare': (t) => says(t, 'waterTests.rare', { test: t.text('test'), share: share(t, 'rarity_fraction') }),
  'waterTests.scatter': (t) =>
    says(t, 'waterTests.scatter', { test: t.text('test'), share: share(t, 'scatter_fraction') }),
  'waterTests.portions_contradict': (t) =>
    says(t, 'waterTests.portions_contradict', {
      test: t.text('test'),
      kind: t.text('kind'),
      volume: amount(t, ['volume_mL'], 'mL'),
    }),
  'waterTests.few_clean': (t) =>
    says(t, 'waterTests.few_clean', {
      count: t.count('count'),
      wanted: t.count('wanted'),
      below: per100mL(t, 'below_per_100mL'),
    }),
  'waterTests.inspection_none': (t) => says(t, 'waterTests.inspection_none'),
  'waterTests.inspection_contradicts': (t) =>
    says(t, 'waterTests.inspection_contradicts', { risks: t.text('risks'), questions: t.text('questions') }),
};
