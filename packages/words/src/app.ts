import { appLanguages as languages } from './languages/app.ts';
import { laterLanguages } from './languages/later.ts';
import { type LanguageCode, languageFor } from './messages/languageFor.ts';
import { numberForm } from './messages/numberForm.ts';
import { type ParsedNumber, parseNumber } from './messages/parseNumber.ts';
import { isPseudo } from './messages/pseudoTags.ts';
import { sayOf } from './messages/sayIn.ts';
import type { AppMessageKey, LanguageHead, LanguageTexts, SayOf } from './messages/texts.ts';
import type { NumberWords } from './numberWords.ts';
import { numberWordsOf } from './numberWordsOf.ts';

export { paperNames } from './languages/app.ts';
export { type LanguageChoice, languageChoices as appLanguages } from './messages/choices.ts';
export { languageFor } from './messages/languageFor.ts';
export type { ParsedNumber } from './messages/parseNumber.ts';
export type { AppMessageKey, MessageValues } from './messages/texts.ts';
export type { NumberWords } from './numberWords.ts';
export type { DrawnWords } from './sentences/drawnWords.ts';
export { roundedDown } from './sentences/roundedDown.ts';
export { flowWords, sectionFindings, unitLetters } from './sentences/sectionFindings.ts';
export { type MarkLetters, markWords, sectionWords } from './sentences/sectionWords.ts';
export { nameOfSource, type SourceOfRisk, sourceOfRisk, waterOfRisk } from './sentences/waterOfRisk.ts';

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
  /** Loads what the pages of the rollout say; `say` knows it from then on. */
  more(): Promise<void>;
}

async function textsOf(code: LanguageCode): Promise<{ readonly texts: LanguageTexts; readonly isWhole: boolean }> {
  const { language, missing, ...sections } = await languages[code].load();
  return { texts: { language, sections }, isWhole: missing.length === 0 };
}

/** What the app says later, in a language: English stands in for what it lacks. */
async function laterOf(code: LanguageCode): Promise<LanguageTexts['sections']> {
  const { missing, ...sections } = await laterLanguages[code].load();
  if (missing.length === 0) return sections;
  const { missing: _, ...english } = await laterLanguages.en.load();
  const own: LanguageTexts['sections'] = sections;
  return Object.fromEntries(Object.entries(english).map(([name, texts]) => [name, { ...texts, ...own[name] }]));
}

/**
 * The words of the app in a language, loaded when asked for. A tag with a region brings the numbers and dates of that
 * region; a language there is not is answered in English.
 *
 * @param tag - `es`, `es-PE`, …
 */
export async function loadAppLanguage(tag: string): Promise<AppLanguage> {
  const { code, region } = languageFor(tag) ?? { code: 'en', region: undefined };
  const { texts, isWhole } = await textsOf(code);
  if (region !== undefined && isPseudo(region)) {
    const { pseudoTexts } = await import('./messages/pseudo.ts');
    const later = async () => pseudoTexts({ ...texts, sections: await laterOf(code) }, region).sections;
    return appLanguageOf(pseudoTexts(texts, region), undefined, undefined, later);
  }
  const english = isWhole ? undefined : (await textsOf('en')).texts;
  return appLanguageOf(texts, english, region, () => laterOf(code));
}

/** The words of the app made of messages that are at hand: a language being written, or one made for a test. */
export function appLanguageOf(
  given: LanguageTexts,
  english?: LanguageTexts,
  region?: string,
  later?: () => Promise<LanguageTexts['sections']>,
): AppLanguage {
  // What comes later is put beside what is there.
  const sections: Record<string, LanguageTexts['sections'][string]> = { ...given.sections };
  const texts: LanguageTexts = { ...given, sections };
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
    more: async () => {
      if (later) Object.assign(sections, await later());
    },
  };
}
