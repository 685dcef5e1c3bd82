import { languageFor, paperChoices, paperLanguageFor } from '@eavewell/words';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';

/** The language that is asked of paper, or a word on which there are. */
export function paperLanguageOf(tag: string): string {
  if (languageFor(tag) !== null || paperLanguageFor(tag) !== null) return tag;
  const known = paperChoices.map((one) => `${one.code} (${one.name})`).join(', ');
  throw new WrongUse(spoken.commandLine.trouble.noLanguage(tag, known));
}
