import type { stormProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room storm finds, in words. */
export const stormSentences: Sentences<keyof typeof stormProblems> = {
  'storm.no_intensity': (t) => says(t, 'storm.no_intensity'),
};
