import { readFile, stat } from 'node:fs/promises';
import { extname } from 'node:path';
import { readPlainTable } from '@eavewell/formats';
import { readGuarded } from '@eavewell/tables';
import {
  headFor,
  type LanguageTexts,
  languageFileText,
  languageFor,
  languageFromFile,
  loadPaperTexts,
  loadTexts,
  paperLanguageFor,
  type SentText,
  type TranslationFault,
  translationRows,
  withTranslations,
} from '@eavewell/words';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { csvLine } from '../files/csvLine.ts';
import { writeWhole } from '../files/wholeFile.ts';
import { spoken } from '../language.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';

const { translate: words } = spoken.commandLine;

/** How many faults of a kind are told before they are only counted. Ours. */
const mostTold = 20;

/** The columns of a file of texts. */
const columns = ['key', 'english', 'about', 'translation'] as const;

export interface WordsExportOptions {
  readonly missing?: boolean;
  readonly from?: string;
  readonly overwrite?: boolean;
}

export interface WordsImportOptions {
  readonly into?: string;
  readonly name?: string;
  readonly direction?: string;
}

/** The tag as it should be written; refuses what is none. */
function tagOf(text: string): string {
  try {
    const { language, script, region } = new Intl.Locale(text.replaceAll('_', '-'));
    return [language, script, region].filter((part) => part !== undefined).join('-');
  } catch {
    throw new WrongUse(words.trouble.tag(text));
  }
}

/** The form of a file of texts, by its ending. */
function formOf(path: string): 'csv' | 'json' {
  const form = extname(path).slice(1).toLowerCase();
  if (form !== 'csv' && form !== 'json') throw new WrongUse(words.trouble.ending(path));
  return form;
}

async function bytesOf(path: string): Promise<Uint8Array> {
  return readFile(path).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT' || error.code === 'EISDIR') throw new WrongUse(words.trouble.noFile(path));
    throw error;
  });
}

function parsed(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return null;
  }
}

/** The language of a file. */
async function languageAt(path: string, tag: string): Promise<LanguageTexts> {
  const texts = languageFromFile(parsed(await bytesOf(path)));
  if (texts === null) throw new WrongUse(words.trouble.notALanguage(path));
  if (texts.language.code !== tag) throw new WrongUse(words.trouble.otherLanguage(path, texts.language.code));
  return texts;
}

/** A language that the program has; null where it has none of that tag. */
async function languageHere(tag: string): Promise<LanguageTexts | null> {
  const found = languageFor(tag);
  if (found !== null) return found.code === tag ? loadTexts(found.code) : null;
  const onPaper = paperLanguageFor(tag);
  return onPaper === tag ? loadPaperTexts(onPaper) : null;
}

/** Writes the texts of a language into one file, to be filled in by somebody who speaks it. */
export async function wordsExportCommand(
  language: string,
  file: string,
  options: WordsExportOptions,
  { around, look }: Context,
): Promise<ExitCode> {
  const tag = tagOf(language);
  const form = formOf(file);
  if (options.overwrite !== true && (await stat(file).catch(() => null)) !== null)
    throw new WrongUse(words.trouble.isThere(file));
  const texts = options.from === undefined ? await languageHere(tag) : await languageAt(options.from, tag);
  const rows = translationRows(texts, options.missing ? 'missing' : 'all').map(({ places, most, ...row }) => ({
    key: row.key,
    english: row.english,
    about: words.about(places, most),
    translation: row.translation,
  }));
  const sheet = new Sheet(look);
  if (rows.length === 0) sheet.line(words.allThere);
  else {
    const csv = () => csvLine(columns) + rows.map((row) => csvLine(columns.map((column) => row[column]))).join('');
    await writeWhole(file, form === 'csv' ? csv() : `${JSON.stringify({ language: tag, texts: rows }, null, 2)}\n`);
    sheet.line(words.written(rows.length, file), 0, 2);
  }
  await write(around.stdout, sheet.text());
  return exitCodes.done;
}

/** The texts of a file that was filled in. */
async function sentTexts(path: string): Promise<readonly SentText[]> {
  const bytes = await bytesOf(path);
  const found = formOf(path) === 'csv' ? sentInCsv(bytes) : sentInJson(parsed(bytes));
  if (found === null) throw new WrongUse(words.trouble.notATable(path));
  return found;
}

function sentInCsv(bytes: Uint8Array): readonly SentText[] | null {
  const rows = readPlainTable(bytes, columns);
  const header = rows?.[0]?.map((name) => name.trim().toLowerCase()) ?? [];
  const [key, english, translation] = ['key', 'english', 'translation'].map((name) => header.indexOf(name));
  if (!rows || key === undefined || key < 0 || translation === undefined || translation < 0) return null;
  const cell = (row: readonly string[], at: number) => readGuarded(row[at] ?? '');
  return rows.slice(1).map((row) => ({
    key: cell(row, key).trim(),
    translation: cell(row, translation),
    english: english === undefined || english < 0 ? null : cell(row, english),
  }));
}

function sentInJson(content: unknown): readonly SentText[] | null {
  if (typeof content !== 'object' || content === null || !('texts' in content) || !Array.isArray(content.texts))
    return null;
  return content.texts.flatMap((row: Readonly<Record<string, unknown>> | null) => {
    const { key, translation, english } = row ?? {};
    if (typeof key !== 'string' || typeof translation !== 'string') return [];
    return [{ key, translation, english: typeof english === 'string' ? english : null }];
  });
}

function tellFaults(sheet: Sheet, faults: readonly TranslationFault[], heading: (count: number) => string): void {
  if (faults.length === 0) return;
  sheet.heading(heading(new Set(faults.map(({ key }) => key)).size));
  for (const { key, fault } of faults.slice(0, mostTold)) sheet.line(`${key}: ${words.fault(fault)}`, 2, 2);
  if (faults.length > mostTold) sheet.line(words.more(faults.length - mostTold), 2);
}

/** Reads a file of texts back: says what is wrong in it, and keeps the rest where it is told to. */
export async function wordsImportCommand(
  language: string,
  file: string,
  { into, name, direction }: WordsImportOptions,
  { around, look }: Context,
): Promise<ExitCode> {
  const tag = tagOf(language);
  if (direction !== undefined && direction !== 'ltr' && direction !== 'rtl')
    throw new WrongUse(words.trouble.direction);
  if (into !== undefined && extname(into).toLowerCase() !== '.json') throw new WrongUse(words.trouble.ending(into));
  const isThere = into !== undefined && (await stat(into).catch(() => null)) !== null;
  const before = isThere ? await languageAt(into, tag) : await languageHere(tag);
  const head =
    before && name === undefined && direction === undefined ? before.language : headFor(tag, name, direction);
  const made = withTranslations({ ...before?.language, ...head }, before, await sentTexts(file));
  const sheet = new Sheet(look);
  sheet.line(words.taken(made.taken, made.missing), 0, 2);
  const refused = made.faults.filter(({ isTaken }) => !isTaken);
  tellFaults(sheet, refused, words.notTaken);
  tellFaults(
    sheet,
    made.faults.filter(({ isTaken }) => isTaken),
    words.looked,
  );
  sheet.blank();
  if (into === undefined) sheet.line(words.notKept, 0, 2);
  else {
    await writeWhole(into, languageFileText(made.texts));
    sheet.line(words.kept(into), 0, 2);
  }
  await write(around.stdout, sheet.text());
  return refused.length > 0 ? exitCodes.blocker : exitCodes.done;
}
