import type { standProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room stand finds, in words. */
export const standSentences: Sentences<keyof typeof standProblems> = {
  'stand.not_signed': (t) => says(t, 'stand.not_signed'),
};
