import { appLanguages } from './languages/app.ts';
import * as appEnglish from './languages/en/app.ts';
import * as laterEnglish from './languages/en/later.ts';
import * as restEnglish from './languages/en/rest.ts';
import { laterLanguages } from './languages/later.ts';
import { restLanguages } from './languages/rest.ts';
import type { LanguageCode } from './messages/languageFor.ts';
import type { LanguageHead, LanguageTexts, MessageKey } from './messages/texts.ts';

interface Half {
  readonly missing: readonly string[];
  readonly [section: string]: unknown;
}

/** The parts of a language, as its modules hold them, as one. */
function textsOf(app: Half & { readonly language: LanguageHead }, ...others: readonly Half[]): LanguageTexts {
  const { language, missing: _, ...sections } = app;
  const more = others.map(({ missing: __, ...own }) => own);
  return { language, sections: Object.assign({}, sections, ...more) as LanguageTexts['sections'] };
}

/** Every message in English. */
export const englishTexts = textsOf(appEnglish, laterEnglish, restEnglish);

/** Every message of a language, loaded when asked for. */
export async function loadTexts(code: LanguageCode): Promise<LanguageTexts> {
  if (code === 'en') return englishTexts;
  return textsOf(await appLanguages[code].load(), await laterLanguages[code].load(), await restLanguages[code].load());
}

/** Is there such a message? */
export function isMessage(key: string): key is MessageKey {
  const dot = key.indexOf('.');
  const section = englishTexts.sections[key.slice(0, dot)];
  return section !== undefined && Object.hasOwn(section, key.slice(dot + 1));
}
