import { readFile } from 'node:fs/promises';
import {
  english,
  type Language,
  languageChoices,
  languageFor,
  languageFromFile,
  languageOf,
  loadLanguage,
  paperChoices,
  paperLanguageFor,
} from '@eavewell/words';
import { WrongUse } from './exitCodes.ts';

let chosen: Language = english;

/** Commands that print something for a site, which may be in a language for paper alone. */
const printing: ReadonlySet<string> = new Set(['pack']);

/** The command of a line: its first word that is no option, nor the value of --language. */
const commandOf = (args: readonly string[]) =>
  args.find((arg, at) => !arg.startsWith('-') && args[at - 1] !== '--language') ?? '';

/** The language asked for: by --language, else by EAVEWELL_LANGUAGE; null where neither says one. */
function tagAsked(args: readonly string[], env: Readonly<Record<string, string | undefined>>): string | null {
  const ended = args.indexOf('--');
  const own = ended < 0 ? args : args.slice(0, ended);
  const at = own.findIndex((arg) => arg === '--language' || arg.startsWith('--language='));
  if (at >= 0) return own[at]!.includes('=') ? own[at]!.slice('--language='.length) : (own[at + 1] ?? '');
  return env['EAVEWELL_LANGUAGE'] || null;
}

/** A language that is being written: its own file. */
async function languageOfFile(path: string): Promise<Language> {
  const { translate } = english.commandLine;
  const text = await readFile(path, 'utf8').catch(() => null);
  if (text === null) throw new WrongUse(translate.trouble.noFile(path));
  const texts = languageFromFile(contentOf(text));
  if (texts === null) throw new WrongUse(translate.trouble.notALanguage(path));
  return languageOf(texts);
}

function contentOf(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}

/** Speaks the language this run is asked for from now on, English where it asks for none. */
export async function speakAsAsked(
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): Promise<void> {
  const tag = tagAsked(args, env);
  chosen = english;
  if (tag === null) return;
  if (tag.endsWith('.json')) {
    chosen = await languageOfFile(tag);
    return;
  }
  // A language for paper alone says nothing in the terminal: the command loads it for its sheets.
  if (printing.has(commandOf(args)) && paperLanguageFor(tag) !== null) return;
  if (languageFor(tag) === null) {
    const there = printing.has(commandOf(args)) ? paperChoices : languageChoices;
    const known = there.map(({ code, name }) => `${code} (${name})`).join(', ');
    throw new WrongUse(english.commandLine.trouble.noLanguage(tag, known));
  }
  chosen = await loadLanguage(tag);
}

/** What `part` is in the language that is spoken when it is asked, however early it was named. */
function live<T extends object>(part: () => T): T {
  return new Proxy({} as T, {
    get: (_, name) => {
      const value = Reflect.get(part(), name) as unknown;
      return typeof value === 'object' && value !== null && !Array.isArray(value)
        ? live(() => Reflect.get(part(), name) as object)
        : value;
    },
    has: (_, name) => Reflect.has(part(), name),
    ownKeys: () => Reflect.ownKeys(part()),
    getOwnPropertyDescriptor: (_, name) => {
      const own = Reflect.getOwnPropertyDescriptor(part(), name);
      return own && { ...own, configurable: true };
    },
  });
}

/** The words of this run. Modules may take parts of it before the language is chosen. */
export const spoken: Language = live(() => chosen);
