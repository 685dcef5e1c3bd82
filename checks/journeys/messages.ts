import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { repository } from '../rules/repository.ts';

/** The messages of a language as they stand in its file, without its head, and without sections that are not asked for. */
export function messagesOf(code: string, without: readonly string[] = []): readonly string[] {
  const file = join(repository, `packages/words/languages/${code}.json`);
  const { language: _, ...sections } = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Record<string, string>>;
  const asked = Object.entries(sections).filter(([name]) => !without.includes(name));
  return asked.flatMap(([, messages]) => Object.values(messages));
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
