import { openDatabase } from '@eavewell/database';
import type { Checked } from '@eavewell/engine';
import { type ProgrammeRead, programmeOfRows, readProgramme, writeProgramme } from '@eavewell/formats';
import { foldRecords } from '@eavewell/records';

/** The programmes there are, where none is named and there is not just one. */
export interface SeveralThere {
  readonly ids: readonly string[];
}

/**
 * What does a programme of a data folder come to? It is read as its folder of tables would be.
 *
 * @param dataFolder - the data folder [text]
 * @param programmeId - which of its programmes; null: the only one [text]
 * @param folder - a folder that is not there yet, to write its tables into [text]
 * @returns facts, problems and what was not used; or the ids there are, where nobody can tell which is meant
 * @problem database.in_use - another program has the data folder open; and the other codes of openDatabase
 * @problem database.programme_unknown - there is none of that id
 * @definition ours
 */
export async function readKept(
  dataFolder: string,
  programmeId: string | null,
  folder: string,
): Promise<Checked<ProgrammeRead | SeveralThere>> {
  const opened = await openDatabase(dataFolder);
  if (!opened.ok) return opened;
  const database = opened.value;
  try {
    const ids = (await database.programmes()).map((entry) => entry.programmeId);
    const id = programmeId ?? (ids.length === 1 ? ids[0]! : null);
    if (id === null) return { ok: true, value: { ids }, problems: [] };
    const records = await database.records(id);
    if (!records.ok) return records;
    await writeProgramme(folder, programmeOfRows(foldRecords(records.value)));
    return { ok: true, value: await readProgramme(folder), problems: [] };
  } finally {
    await database.close();
  }
}
