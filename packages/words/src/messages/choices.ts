import { appLanguages } from '../languages/app.ts';
import type { LanguageHead } from './texts.ts';

/** A language that can be chosen. */
export interface LanguageChoice {
  readonly code: string;
  readonly name: string;
  readonly direction: LanguageHead['direction'];
}

/** The languages there are, English first, each by the name it calls itself. */
export const languageChoices: readonly LanguageChoice[] = Object.entries(appLanguages).map(
  ([code, { name, direction }]) => ({ code, name, direction }),
);
