import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { repository } from '../rules/repository.ts';

/** A language as it stands in its file: a head and sections of messages. */
export interface LanguageFile {
  readonly language: Readonly<Record<string, string>>;
  readonly sections: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

export function languageFile(code: string): LanguageFile {
  const file = join(repository, `packages/words/languages/${code}.json`);
  const { language, ...sections } = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Record<string, string>>;
  return { language: language!, sections };
}

/**
 * A message with every text a person would read in it changed; names of places, plurals and choices stay (ICU MessageFormat).
 *
 * @param message - `{count, plural, one {# site} other {# sites}}`
 * @param change - is given each text between the places
 */
export function changedTexts(message: string, change: (text: string) => string): string {
  let at = 0;
  const texts = (): string => {
    let [done, text] = ['', ''];
    const flush = () => {
      done += text === '' ? '' : change(text);
      text = '';
    };
    while (at < message.length && message[at] !== '}') {
      if (message[at] === "'") text += quoted();
      else if (message[at] !== '{') text += message[at++];
      else {
        flush();
        done += place();
      }
    }
    flush();
    return done;
  };
  // Between apostrophes, braces are braces; two apostrophes are one.
  const quoted = (): string => {
    const [whole] = /^(?:''|'[{}#][^']*'|')/.exec(message.slice(at))!;
    at += whole.length;
    return whole;
  };
  const place = (): string => {
    let done = message[at++]!;
    const isNested = /^\{\s*\w+\s*,\s*(?:plural|select|selectordinal)\b/.test(message.slice(at - 1));
    while (at < message.length && message[at] !== '}') {
      done += message[at]!;
      if (message[at++] !== '{' || !isNested) continue;
      done += texts() + (message[at++] ?? '');
    }
    return done + (message[at++] ?? '');
  };
  return texts();
}

/** The texts of a message between its places, in one form of writing: `# sites`, `# site`. */
export function textsOf(message: string): readonly string[] {
  const found: string[] = [];
  changedTexts(message, (text) => {
    found.push(inOneForm(text));
    return text;
  });
  return found;
}

/** A text with each run of white space as one space, and none at its ends. */
export const inOneForm = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

const accents: Readonly<Record<string, string>> = {
  a: 'á',
  e: 'é',
  i: 'í',
  o: 'ó',
  u: 'ú',
  n: 'ñ',
  A: 'Á',
  E: 'É',
  O: 'Ó',
};

/** What a message made for trial begins and ends with. */
export const brackets = ['⟦', '⟧'] as const;

/**
 * A language for trial, as modules of the pages carry one: every message of English in brackets, with accents, some 40 % longer.
 *
 * @param direction - which way it runs
 * @returns the text of a module that exports a head, `missing` and each section
 */
export function trialLanguage(direction: 'ltr' | 'rtl'): string {
  const { sections } = languageFile('en');
  const longer = (text: string) => {
    const word = text.replaceAll(/[aeiounAEO]/g, (letter) => accents[letter]!);
    return word.replaceAll(/\p{L}{4,}/gu, (one) => one + one.slice(-Math.ceil(one.length * 0.4)));
  };
  const trial = (message: string) => `${brackets[0]}${changedTexts(message, longer)}${brackets[1]}`;
  const head = { code: direction === 'rtl' ? 'ar' : 'en', name: 'Trial', direction, forms: 'en' };
  const parts = Object.entries(sections).map(([name, messages]) => {
    const tried = Object.fromEntries(Object.entries(messages).map(([key, message]) => [key, trial(message)]));
    return `export const ${name} = ${JSON.stringify(tried)};`;
  });
  return [`export const language = ${JSON.stringify(head)};`, 'export const missing = [];', ...parts].join('\n');
}
