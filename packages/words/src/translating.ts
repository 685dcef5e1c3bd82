import { englishTexts } from './catalogues.ts';
import { paperSections } from './languages/paper.ts';
import { type MessageFault, messageFaults, messageParts, mostLength } from './messages/checkMessage.ts';
import type { LanguageHead, LanguageTexts } from './messages/texts.ts';

const onPaper: ReadonlySet<string> = new Set(paperSections);

/** One text for somebody to say in their language. */
export interface TranslationRow {
  /** `section.key`. */
  readonly key: string;
  readonly english: string;
  /** Its places, which must stay as they are, and how long it may be. */
  readonly places: readonly string[];
  readonly most: number;
  /** What it is in the language; empty where that is not known yet. */
  readonly translation: string;
}

/** What is wrong with one text that was sent back. Where `isTaken`, it was used all the same. */
export interface TranslationFault {
  readonly key: string;
  readonly fault: MessageFault | { readonly kind: 'keyUnknown' } | { readonly kind: 'englishChanged' };
  readonly isTaken: boolean;
}

/** A text that was sent back: its key, what it says, and the English it was made from where that was sent too. */
export interface SentText {
  readonly key: string;
  readonly translation: string;
  readonly english: string | null;
}

/** A language with what was sent back in it, and what is wrong with that. */
export interface Translated {
  readonly texts: LanguageTexts;
  readonly faults: readonly TranslationFault[];
  readonly taken: number;
  readonly missing: number;
}

function eachMessage({ sections }: LanguageTexts): readonly { section: string; name: string; message: string }[] {
  return Object.entries(sections).flatMap(([section, messages]) =>
    Object.entries(messages).map(([name, message]) => ({ section, name, message })),
  );
}

/**
 * Every text, or those alone that a language lacks, to be said in that language. A language for paper alone lacks only what paper says.
 *
 * @param texts - the language as far as it is; null for a new one
 * @param which - all of them, or the missing ones
 */
export function translationRows(texts: LanguageTexts | null, which: 'all' | 'missing'): readonly TranslationRow[] {
  const isWanted = (section: string) => texts?.language.for !== 'paper' || onPaper.has(section);
  return eachMessage(englishTexts).flatMap(({ section, name, message }) => {
    const translation = texts?.sections[section]?.[name] ?? '';
    if (which === 'missing' && !isWanted(section)) return [];
    if (which === 'missing' && translation !== '') return [];
    const places = [...messageParts(message).names];
    return [{ key: `${section}.${name}`, english: message, places, most: mostLength(message), translation }];
  });
}

/** Faults with which a text cannot be used: it would say less than English, or nothing. */
const refused: readonly TranslationFault['fault']['kind'][] = ['broken', 'placesLost', 'placesUnknown', 'formsUnknown'];

function faultsOf({ key, translation, english }: SentText, own: string | undefined, code: string): TranslationFault[] {
  if (own === undefined) return [{ key, fault: { kind: 'keyUnknown' }, isTaken: false }];
  const faults: TranslationFault['fault'][] = [...messageFaults(translation, own, code)];
  if (english !== null && english !== own) faults.push({ kind: 'englishChanged' });
  const isTaken = !faults.some(({ kind }) => refused.includes(kind));
  return faults.map((fault) => ({ key, fault, isTaken }));
}

/**
 * A language with the texts that were sent back. A text that cannot be used leaves what stood there; nothing else is lost.
 *
 * @param head - the language
 * @param before - it as it was; null for a new one
 * @param sent - what was sent back; an empty text says nothing
 */
export function withTranslations(
  head: LanguageHead,
  before: LanguageTexts | null,
  sent: readonly SentText[],
): Translated {
  const made = new Map<string, Map<string, string>>();
  for (const [section, messages] of Object.entries(before?.sections ?? {}))
    made.set(section, new Map(Object.entries(messages)));
  const faults: TranslationFault[] = [];
  let taken = 0;
  for (const one of sent) {
    if (one.translation.trim() === '') continue;
    const dot = one.key.indexOf('.');
    const [section, name] = [one.key.slice(0, dot), one.key.slice(dot + 1)];
    const messages = Object.hasOwn(englishTexts.sections, section) ? englishTexts.sections[section]! : {};
    const own = faultsOf(one, Object.hasOwn(messages, name) ? messages[name] : undefined, head.code);
    faults.push(...own);
    if (own.some(({ isTaken }) => !isTaken)) continue;
    made.set(section, (made.get(section) ?? new Map()).set(name, one.translation));
    taken++;
  }
  const sections = inOrder(made);
  const { for: whatFor, ...whole } = head;
  // A language that says more than paper does is on its way to be one of the pages.
  const isForPaper = whatFor === 'paper' && Object.keys(sections).every((section) => onPaper.has(section));
  const texts = { language: isForPaper ? head : whole, sections };
  return { texts, faults, taken, missing: translationRows(texts, 'missing').length };
}

/** Sections by name, keys in the order of English, and only those that English has. */
function inOrder(made: ReadonlyMap<string, ReadonlyMap<string, string>>): LanguageTexts['sections'] {
  const byName = Object.entries(englishTexts.sections).sort(([one], [other]) => (one < other ? -1 : 1));
  const sections = byName.map(([section, messages]) => {
    const own = made.get(section);
    const names = Object.keys(messages).filter((name) => own?.has(name));
    return [section, Object.fromEntries(names.map((name) => [name, own!.get(name)!]))] as const;
  });
  return Object.fromEntries(sections.filter(([, messages]) => Object.keys(messages).length > 0));
}

/** The file of a language: its head and its sections, one message a line. */
export function languageFileText({ language, sections }: LanguageTexts): string {
  return `${JSON.stringify({ language, ...sections }, null, 2)}\n`;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The head of a language for its tag: what it calls itself, and the way its script runs, as far as the runtime knows. */
export function headFor(code: string, name?: string, direction?: string): LanguageHead {
  const own = name ?? new Intl.DisplayNames([code], { type: 'language', fallback: 'code' }).of(code) ?? code;
  const { language, script } = new Intl.Locale(code).maximize();
  const runsLeft = direction === undefined ? script !== undefined && rightToLeft.includes(script) : direction === 'rtl';
  return { code: code === language ? language : code, name: own, direction: runsLeft ? 'rtl' : 'ltr' };
}

/** Scripts that run from right to left (ISO 15924). Source: Unicode CLDR, script metadata (from memory). */
const rightToLeft = ['Adlm', 'Arab', 'Hebr', 'Mand', 'Mend', 'Nkoo', 'Rohg', 'Samr', 'Syrc', 'Thaa'];

/** A language from what its file holds; null where that is no language. */
export function languageFromFile(content: unknown): LanguageTexts | null {
  if (!isRecord(content) || !isRecord(content['language'])) return null;
  const { language: head, ...sections } = content;
  const { code, name, direction, forms, groups, for: whatFor } = head as Readonly<Record<string, unknown>>;
  if (typeof code !== 'string' || typeof name !== 'string') return null;
  if (direction !== 'ltr' && direction !== 'rtl') return null;
  try {
    Intl.getCanonicalLocales([code, ...(typeof forms === 'string' ? [forms] : [])]);
  } catch {
    return null;
  }
  const kept = Object.entries(sections).filter((entry): entry is [string, Record<string, string>] => {
    const [, messages] = entry;
    return isRecord(messages) && Object.values(messages).every((message) => typeof message === 'string');
  });
  const language: LanguageHead = {
    ...{ code, name, direction },
    ...(typeof forms === 'string' ? { forms } : {}),
    ...(groups === 'space' ? { groups } : {}),
    ...(whatFor === 'paper' ? { for: whatFor } : {}),
  };
  return { language, sections: Object.fromEntries(kept) };
}
