import type { headProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room head finds, in words. */
export const headSentences: Sentences<keyof typeof headProblems> = {
  'head.pipe_not_measured': (t) => says(t, 'head.pipe_not_measured'),
};
