import { appLanguages as languages } from './languages/app.ts';
import { numberForm } from './messages/numberForm.ts';
import { type ParsedNumber, parseNumber } from './messages/parseNumber.ts';
import { sayOf } from './messages/sayIn.ts';
import type { AppMessageKey, LanguageHead, LanguageTexts, SayOf } from './messages/texts.ts';
import type { NumberWords } from './numberWords.ts';
import { numberWordsOf } from './numberWordsOf.ts';

export type { ParsedNumber } from './messages/parseNumber.ts';
export type { AppMessageKey, MessageValues } from './messages/texts.ts';
export type { NumberWords } from './numberWords.ts';

/** Numbers as the pages of the app show and read them. */
export interface AppNumbers extends NumberWords {
  /** A moment as date and time of day, in the reader's own time; what is no moment stands as it is. */
  moment(at: string): string;
  /** What number was typed, with a comma or a point. */
  parse(text: string): ParsedNumber;
  /** The mark between whole and part, to show in a field. */
  readonly decimalMark: string;
}

/** The words of the app in one language. */
export interface AppLanguage {
  /** The tag that was asked for, to be put on the page. */
  readonly code: string;
  readonly name: string;
  readonly direction: LanguageHead['direction'];
  readonly say: SayOf<AppMessageKey>;
  readonly numbers: AppNumbers;
}

/** A language that can be chosen. */
export interface LanguageChoice {
  readonly code: string;
  readonly name: string;
  readonly direction: LanguageHead['direction'];
}

/** The languages there are, English first, each by the name it calls itself. */
export const appLanguages: readonly LanguageChoice[] = Object.entries(languages).map(([code, { name, direction }]) => ({
  code,
  name,
  direction,
}));

type Known = keyof typeof languages;
const isKnown = (code: string): code is Known => Object.hasOwn(languages, code);

/** The language that comes nearest to a tag: `es-PE` is answered in `es`, with the numbers of Peru; null where none does. */
export function languageFor(tag: string): string | null {
  const [canonical] = canonicalTag(tag);
  if (canonical === undefined) return null;
  for (let part = canonical; part !== ''; part = part.slice(0, Math.max(0, part.lastIndexOf('-'))))
    if (isKnown(part)) return part;
  return null;
}

function canonicalTag(tag: string): readonly string[] {
  try {
    return Intl.getCanonicalLocales(tag.replaceAll('_', '-'));
  } catch {
    return [];
  }
}

async function textsOf(code: Known): Promise<{ readonly texts: LanguageTexts; readonly isWhole: boolean }> {
  const { language, missing, ...sections } = await languages[code].load();
  return { texts: { language, sections }, isWhole: missing.length === 0 };
}

/**
 * The words of the app in a language, loaded when asked for. A tag with a region brings the numbers and dates of that
 * region; a language there is not is answered in English.
 *
 * @param tag - `es`, `es-PE`, …
 */
export async function loadAppLanguage(tag: string): Promise<AppLanguage> {
  const code = languageFor(tag) ?? 'en';
  const { texts, isWhole } = await textsOf(code as Known);
  const english = isWhole ? undefined : (await textsOf('en')).texts;
  const region = languageFor(tag) === null || tag === code ? undefined : canonicalTag(tag)[0];
  return appLanguageOf(texts, english, region);
}

/** The words of the app made of messages that are at hand: a language being written, or one made for a test. */
export function appLanguageOf(texts: LanguageTexts, english?: LanguageTexts, region?: string): AppLanguage {
  const form = numberForm(texts.language, region);
  const say = sayOf<AppMessageKey>(texts, english, form);
  const { code, name, direction } = texts.language;
  return {
    code: region ?? code,
    name,
    direction,
    say,
    numbers: {
      ...numberWordsOf(say, form),
      moment: (at) => {
        const moment = new Date(at);
        return Number.isNaN(moment.getTime()) ? at : form.moment(moment);
      },
      parse: (text) => parseNumber(text, form),
      decimalMark: form.decimalMark,
    },
  };
}
