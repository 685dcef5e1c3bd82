import type { settlingProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room settling finds, in words. */
export const settlingSentences: Sentences<keyof typeof settlingProblems> = {
  'settling.diameter_unknown': (t) => says(t, 'settling.diameter_unknown'),
};
