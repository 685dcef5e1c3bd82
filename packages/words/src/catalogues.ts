import * as appEnglish from './languages/en/app.ts';
import * as restEnglish from './languages/en/rest.ts';
import * as appSpanish from './languages/es/app.ts';
import * as restSpanish from './languages/es/rest.ts';
import type { LanguageHead, LanguageTexts, MessageKey } from './messages/texts.ts';

interface Half {
  readonly missing: readonly string[];
  readonly [section: string]: unknown;
}

/** The two halves of a language, as its modules hold them, as one. */
export function textsOf(app: Half & { readonly language: LanguageHead }, rest: Half): LanguageTexts {
  const { language, missing: _, ...sections } = app;
  const { missing: __, ...others } = rest;
  return { language, sections: { ...sections, ...others } as LanguageTexts['sections'] };
}

/** Every message in English. */
export const englishTexts = textsOf(appEnglish, restEnglish);

/** Every message in Spanish. */
export const spanishTexts = textsOf(appSpanish, restSpanish);

/** Is there such a message? */
export function isMessage(key: string): key is MessageKey {
  const dot = key.indexOf('.');
  const section = englishTexts.sections[key.slice(0, dot)];
  return section !== undefined && Object.hasOwn(section, key.slice(dot + 1));
}
