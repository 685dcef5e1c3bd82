import { open, readdir, readFile, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { ProgrammeEntry } from '@eavewell/database';
import type { Checked } from '@eavewell/engine';
import { limitedZip, writeFileWhole } from '@eavewell/formats';
import { type ChangeRecord, recordProblem } from '@eavewell/records';
import { readRecords, recordsFile } from './imports/unpack.ts';

/** Within a data folder: the exports the program keeps by itself, a folder for each programme. */
export const exportsFolder = 'exports';

/** Beside the exports of a programme: which it is. */
const entryFile = 'programme.json';

/** Exports of a programme that are kept: the newest. Ours. */
const mostKept = 3;

/** What an export of our own may hold: far more than a programme does, and no zip bomb [byte]. Ours. */
const limits = { most_entries: 10_000, largestEntry_bytes: 1e9, largest_bytes: 1.5e9, most_ratio: 1100 };

/** An export that is kept. */
export interface KeptExport {
  readonly path: string;
  /** When it was made, ISO 8601 in UTC, to the second. */
  readonly at: string;
  /** The records it holds [count]. */
  readonly version: number;
}

/** What is in an export. */
export interface ExportRead {
  readonly records: readonly ChangeRecord[];
  readonly files: ReadonlyMap<string, Uint8Array>;
}

const nameForm = /^(\d{4}-\d\d-\d\d)T(\d\d)(\d\d)(\d\d)Z-(\d+)\.zip$/;
const nameOf = (at: string, version: number) => `${at.slice(0, 19).replaceAll(':', '')}Z-${version}.zip`;
const namesIn = (folder: string): Promise<string[]> => readdir(folder).catch(() => []);

/** The exports in a programme's own folder, that with most records first: clocks may go back, records do not. */
export async function keptIn(folder: string): Promise<readonly KeptExport[]> {
  const found = (await namesIn(folder)).flatMap((name) => {
    const [, day, h, min, s, version] = nameForm.exec(name) ?? [];
    return day ? [{ path: join(folder, name), at: `${day}T${h}:${min}:${s}Z`, version: Number(version) }] : [];
  });
  return found.sort((a, b) => b.version - a.version || (a.at < b.at ? 1 : -1));
}

/** Puts what was written into the folder's own list on the disk, where the system lets a folder be opened. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

/**
 * Keeps an export of a programme: wholly on the disk under its name, or not at all; then lets the oldest go.
 *
 * @param folder - the data folder [text]
 * @param entry - the programme
 * @param at - the instant, ISO 8601 in UTC
 * @param version - its records [count]
 * @param zip - the export [byte]
 * @definition ours: docs/decisions/0119-last-good-export.md
 */
export async function keepExport(
  folder: string,
  entry: ProgrammeEntry,
  at: string,
  version: number,
  zip: Uint8Array,
): Promise<void> {
  const own = join(folder, exportsFolder, entry.programmeId);
  const { programmeId, name, madeAt } = entry;
  await writeFileWhole(join(own, entryFile), `${JSON.stringify({ programmeId, name, madeAt })}\n`);
  await writeFileWhole(join(own, nameOf(at, version)), zip);
  await syncFolder(own);
  await syncFolder(join(folder, exportsFolder));
  await syncFolder(folder);
  for (const { path } of (await keptIn(own)).slice(mostKept)) await rm(path, { force: true });
  // What an earlier end of the program left half written.
  for (const left of await namesIn(own)) if (left.endsWith('.unfinished')) await rm(join(own, left), { force: true });
}

/** Which programme the exports in a folder are of; null where that does not say so. */
export async function entryIn(folder: string): Promise<ProgrammeEntry | null> {
  try {
    const { programmeId, name, madeAt } = JSON.parse(await readFile(join(folder, entryFile), 'utf8'));
    const texts = [programmeId, name, madeAt];
    return texts.every((text) => typeof text === 'string' && text !== '') ? { programmeId, name, madeAt } : null;
  } catch {
    return null;
  }
}

/**
 * Reads an export: its records, and its tables as they stand in it.
 *
 * @param path - the zip [text]
 * @returns what it holds
 * @problem export.unreadable - it cannot be read, or holds no history
 */
export async function readExport(path: string): Promise<Checked<ExportRead>> {
  const unreadable = (reason: string) =>
    ({ ok: false, problems: [recordProblem('export.unreadable', { file: path }, { value: path, reason })] }) as const;
  const bytes = await readFile(path).catch(() => null);
  if (bytes === null) return unreadable('not_there');
  const zip = limitedZip(bytes, limits, () => true);
  if ('fault' in zip) return unreadable(zip.fault.code);
  const content = zip.entries.get(recordsFile);
  const records = content ? readRecords(content) : null;
  if (records === null) return unreadable('no_records');
  if (!records.ok) return unreadable('record');
  return records.value.length === 0
    ? unreadable('no_records')
    : { ok: true, value: { records: records.value, files: zip.entries }, problems: [] };
}

/** The newest export of a programme that can be read, with what it holds. */
export interface LastExport {
  readonly entry: ProgrammeEntry;
  readonly kept: KeptExport;
  readonly read: ExportRead;
}

/**
 * The last good export of each programme: the newest one that can be read from end to end.
 *
 * @param exports - the folder of exports of a data folder [text]
 * @returns them, by name of programme
 */
export async function lastExports(exports: string): Promise<readonly LastExport[]> {
  const found: LastExport[] = [];
  for (const name of await namesIn(exports)) {
    const own = join(exports, name);
    const entry = await entryIn(own);
    if (entry === null) continue;
    for (const kept of await keptIn(own)) {
      const read = await readExport(kept.path);
      if (!read.ok) continue;
      found.push({ entry, kept, read: read.value });
      break;
    }
  }
  return found.sort((a, b) => (a.entry.name < b.entry.name ? -1 : 1));
}

const quoted = (path: string) => (/^[\w./:\\-]+$/.test(path) ? path : `"${path}"`);

/** What to type to open the exports of a data folder in a new one beside it. */
export async function commandFor(folder: string): Promise<string> {
  const path = resolve(folder);
  const isThere = (name: string) => stat(name).then(Boolean, () => false);
  let number = 2;
  while (await isThere(`${path}-${number}`)) number++;
  return `eavewell serve --data ${quoted(`${path}-${number}`)} --from ${quoted(join(path, exportsFolder))}`;
}
