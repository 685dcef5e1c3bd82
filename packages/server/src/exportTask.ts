import { writeFile } from 'node:fs/promises';
import { recordsBeside } from '@eavewell/database';
import { filesOfProgramme, programmeOfRows } from '@eavewell/formats';
import { compareRecords, foldRecords, recordText } from '@eavewell/records';
import type { JobAround } from '@eavewell/work';
import { strToU8, zipSync } from 'fflate';
import { recordsFile } from './imports/unpack.ts';

/** The time every entry bears: the same programme gives the same zip. The earliest a zip can hold. */
const time = new Date(1980, 0, 1);

/** What an export is asked of. */
export interface ExportAsked {
  readonly dataFolder: string;
  readonly programmeId: string;
  readonly version: number;
  /** The file it is to be written into. */
  readonly file: string;
}

/**
 * Packs a whole programme as a zip: the folder of tables, and its records.
 *
 * @param asked - the programme, and where the zip is to stand
 * @param around - told how far it is
 * @returns the size of the zip [byte]
 * @law brought in again, it changes nothing
 * @definition ours: docs/decisions/0105-imports.md
 */
export async function exportTask(asked: ExportAsked, around: JobAround): Promise<number> {
  const records = [...recordsBeside(asked.dataFolder, asked.programmeId, asked.version)];
  const facts = foldRecords(records);
  around.report(0.2);
  const files: Record<string, Uint8Array> = {};
  for (const [path, content] of filesOfProgramme(programmeOfRows(facts)))
    files[path] = typeof content === 'string' ? strToU8(content) : content;
  records.sort(compareRecords);
  files[recordsFile] = strToU8(records.map((record) => `${recordText(record)}\n`).join(''));
  around.report(0.5);
  const zip = zipSync(files, { mtime: time });
  await writeFile(asked.file, zip);
  around.report(1);
  return zip.length;
}
