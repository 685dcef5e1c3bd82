import { filesOfProgramme, programmeOfRows } from '@eavewell/formats';
import { recordText } from '@eavewell/records';
import { strToU8, zipSync } from 'fflate';
import { recordsFile } from './imports/unpack.ts';
import type { OpenProgramme } from './openProgramme.ts';

/** The time every entry bears: the same programme gives the same zip. The earliest a zip can hold. */
const time = new Date(1980, 0, 1);

/**
 * A whole programme as a zip: the folder of tables, and its records.
 *
 * @param programme - the programme
 * @returns the zip [byte]
 * @law brought in again, it changes nothing
 * @definition ours: docs/decisions/0105-imports.md
 */
export function exportZip(programme: Pick<OpenProgramme, 'facts' | 'records'>): Uint8Array {
  const files: Record<string, Uint8Array> = {};
  for (const [path, content] of filesOfProgramme(programmeOfRows(programme.facts)))
    files[path] = typeof content === 'string' ? strToU8(content) : content;
  const lines = programme.records.map((record) => `${recordText(record)}\n`);
  files[recordsFile] = strToU8(lines.join(''));
  return zipSync(files, { mtime: time });
}
