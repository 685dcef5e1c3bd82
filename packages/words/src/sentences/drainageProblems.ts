import type { drainageProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room drainage finds, in words. */
export const drainageSentences: Sentences<keyof typeof drainageProblems> = {
  'drainage.gutter_level': (t) => says(t, 'drainage.gutter_level'),
};
