import type { waterTestsProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room waterTests finds, in words. */
export const waterTestsSentences: Sentences<keyof typeof waterTestsProblems> = {
  'waterTests.none': (t) => says(t, 'waterTests.none'),
  'waterTests.before_handover': (t) => says(t, 'waterTests.before_handover'),
  'waterTests.handover_unknown': (t) => says(t, 'waterTests.handover_unknown'),
  'waterTests.found': (t) => says(t, 'waterTests.found'),
  'waterTests.all_positive': (t) => says(t, 'waterTests.all_positive'),
  'waterTests.rare': (t) => says(t, 'waterTests.rare'),
  'waterTests.portions_contradict': (t) => says(t, 'waterTests.portions_contradict'),
  'waterTests.few_clean': (t) => says(t, 'waterTests.few_clean'),
  'waterTests.inspection_none': (t) => says(t, 'waterTests.inspection_none'),
  'waterTests.inspection_contradicts': (t) => says(t, 'waterTests.inspection_contradicts'),
};
