import { randomBytes } from 'node:crypto';
import { stat } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import type { Database, ProgrammeEntry, ProgrammeWhole } from '@eavewell/database';
import type { Checked, Problem } from '@eavewell/engine';
import { filesOfProgramme, programmeOfRows } from '@eavewell/formats';
import { compareRecords, foldRecords, recordProblem } from '@eavewell/records';
import { type ExportRead, entryIn, lastExports, readExport } from './exportFolder.ts';
import { recordsFile } from './imports/unpack.ts';

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** Are the tables of an export what its records come to? Somebody may have edited them. */
function isAsRecorded({ records, files }: ExportRead): boolean {
  const expected = filesOfProgramme(programmeOfRows(foldRecords([...records].sort(compareRecords))));
  const tables = [...files].filter(([path]) => path !== recordsFile);
  return (
    tables.length === expected.size &&
    tables.every(([path, bytes]) => {
      const content = expected.get(path);
      return content !== undefined && Buffer.from(content as Uint8Array).equals(bytes);
    })
  );
}

/** What a zip that stands by itself is called: as its tables say, else as its file. */
async function entryOf(path: string, read: ExportRead, at: string): Promise<ProgrammeEntry> {
  const kept = await entryIn(dirname(path));
  if (kept) return kept;
  const said = foldRecords(read.records).row('settings', 'programme')?.['value'];
  const name = said === undefined ? null : parsed(said);
  const programmeId = `p-${randomBytes(6).toString('hex')}`;
  return { programmeId, name: typeof name === 'string' && name !== '' ? name : basename(path, '.zip'), madeAt: at };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/**
 * Brings programmes with their history into a data folder that has none: from one export, or from the folder of exports that the
 * program keeps, the last good one of each programme. All of them, or none.
 *
 * @param database - the new data folder's
 * @param folder - its name, for a problem [text]
 * @param from - a zip, or a folder of exports [text]
 * @param at - the instant, ISO 8601 in UTC
 * @returns how many there are, with warnings
 * @problem export.folder_used - there are programmes already
 * @problem export.unreadable - nothing can be read there
 * @problem export.tables_differ - with the value: tables were edited since
 * @definition ours: docs/decisions/0119-last-good-export.md
 */
export async function bringIn(
  database: Database,
  folder: string,
  from: string,
  at: string,
): Promise<Checked<{ readonly programmes: number }>> {
  if ((await database.programmes()).length > 0)
    return refused(recordProblem('export.folder_used', {}, { value: folder }));
  const isFolder = await stat(from).then(
    (found) => found.isDirectory(),
    () => false,
  );
  const wholes: ProgrammeWhole[] = [];
  const problems: Problem[] = [];
  const add = (path: string, entry: ProgrammeEntry, read: ExportRead) => {
    wholes.push({ entry, records: [...read.records].sort(compareRecords) });
    if (!isAsRecorded(read)) problems.push(recordProblem('export.tables_differ', { file: path }, { value: path }));
  };
  if (isFolder) for (const { entry, kept, read } of await lastExports(from)) add(kept.path, entry, read);
  else {
    const read = await readExport(from);
    if (!read.ok) return read;
    add(from, await entryOf(from, read.value, at), read.value);
  }
  if (wholes.length === 0)
    return refused(recordProblem('export.unreadable', { file: from }, { value: from, reason: 'no_records' }));
  const brought = await database.bringIn(wholes);
  return brought.ok ? { ...brought, problems } : brought;
}
