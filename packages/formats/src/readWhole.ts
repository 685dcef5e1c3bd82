import { folderAsRead } from './folderAsRead.ts';
import type { ProgrammeRead } from './programmeRead.ts';
import type { ProgrammeTables } from './programmeTables.ts';
import { readProgramme } from './readProgramme.ts';

/** A folder as it was read, and every row of it as it stands. */
export interface WholeRead {
  readonly read: ProgrammeRead;
  readonly programme: ProgrammeTables;
}

/**
 * What does a folder come to, and what stands in it? Both of one reading.
 *
 * @param folder - the programme folder [text]
 * @returns facts and problems as readProgramme gives them, and the tables as tablesAsRead does
 * @problem folder.missing - no such folder; and the other codes of readProgramme
 * @definition ours
 */
export async function readWhole(folder: string): Promise<WholeRead> {
  const read = await readProgramme(folder, { keep: true });
  const none = { settings: {}, tables: {}, rain: [] };
  return { read, programme: read.kept === undefined ? none : folderAsRead(read) };
}
