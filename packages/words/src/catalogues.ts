import { appLanguages } from './languages/app.ts';
import * as appEnglish from './languages/en/app.ts';
import * as restEnglish from './languages/en/rest.ts';
import { restLanguages } from './languages/rest.ts';
import type { LanguageCode } from './messages/languageFor.ts';
import type { LanguageHead, LanguageTexts, MessageKey } from './messages/texts.ts';

interface Half {
  readonly missing: readonly string[];
  readonly [section: string]: unknown;
}

/** The two halves of a language, as its modules hold them, as one. */
function textsOf(app: Half & { readonly language: LanguageHead }, rest: Half): LanguageTexts {
  const { language, missing: _, ...sections } = app;
  const { missing: __, ...others } = rest;
  return { language, sections: { ...sections, ...others } as LanguageTexts['sections'] };
}

/** Every message in English. */
export const englishTexts = textsOf(appEnglish, restEnglish);

/** Every message of a language, loaded when asked for. */
export async function loadTexts(code: LanguageCode): Promise<LanguageTexts> {
  if (code === 'en') return englishTexts;
  return textsOf(await appLanguages[code].load(), await restLanguages[code].load());
}

/** Is there such a message? */
export function isMessage(key: string): key is MessageKey {
  const dot = key.indexOf('.');
  const section = englishTexts.sections[key.slice(0, dot)];
  return section !== undefined && Object.hasOwn(section, key.slice(dot + 1));
}
