import type { AppMessageKey, SayOf } from '../messages/texts.ts';
import type { NumberWords } from '../numberWords.ts';

/** What a drawing is lettered with: messages that pages and paper both have, and numbers. */
export interface DrawnWords {
  readonly say: SayOf<AppMessageKey>;
  readonly numbers: NumberWords;
}
