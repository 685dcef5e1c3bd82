import type { Language } from './language.ts';
import { languageOf, loadLanguage } from './languageOf.ts';
import { paperLanguages, paperSections } from './languages/paper.ts';
import { type LanguageChoice, languageChoices } from './messages/choices.ts';
import { canonicalTag, languageFor, nearest } from './messages/languageFor.ts';
import type { LanguageTexts } from './messages/texts.ts';

export { paperSections };

/** A language that only what is printed is said in. */
type PaperCode = keyof typeof paperLanguages;

const isForPaper = (code: string): code is PaperCode => Object.hasOwn(paperLanguages, code);

/** The languages there are for what is printed: those of the pages, and those for paper alone. */
export const paperChoices: readonly LanguageChoice[] = [
  ...languageChoices,
  ...Object.entries(paperLanguages).map(([code, { name, direction }]) => ({ code, name, direction })),
];

/** The language for paper alone that comes nearest to a tag; null where that is a language of the pages, or none. */
export function paperLanguageFor(tag: string): PaperCode | null {
  const canonical = canonicalTag(tag);
  if (canonical === null || languageFor(tag) !== null) return null;
  return nearest(canonical, isForPaper);
}

/** The messages of a language for paper alone, loaded when asked for. */
export async function loadPaperTexts(code: PaperCode): Promise<LanguageTexts> {
  const { language, missing: _, ...sections } = await paperLanguages[code].load();
  return { language, sections };
}

/**
 * The language that comes nearest to a tag for what is printed: one of the pages, or one for paper alone, which says all else in English.
 *
 * @param tag - `es`, `ar`, `hi-IN`, …
 * @param lacks - told the key of each message that a language for paper alone does not say itself
 */
export async function loadPaperLanguage(tag: string, lacks?: (key: string) => void): Promise<Language> {
  const code = paperLanguageFor(tag);
  if (code === null) return loadLanguage(tag);
  const canonical = canonicalTag(tag);
  return languageOf(
    await loadPaperTexts(code),
    canonical === null || canonical === code ? undefined : canonical,
    lacks,
  );
}
