import { type Database, openDatabase, type ProgrammeListed } from '@eavewell/database';
import type { Checked } from '@eavewell/engine';
import { programmeOfRows, writeProgramme } from '@eavewell/formats';
import { compareRecords, type Facts, foldRecords } from '@eavewell/records';
import { folderTables, readCell } from '@eavewell/tables';

/** The programmes there are, where none is named and there is not just one. */
export interface SeveralThere {
  readonly ids: readonly string[];
}

/** A programme of a data folder, with what it holds; null where its records cannot be read. */
export interface ProgrammeThere extends ProgrammeListed {
  readonly sites: number | null;
  readonly people: number | null;
  /** Sites whose people are not known. */
  readonly withoutPeople_count: number | null;
}

/** How many sites facts have [count], for how many people [person] as far as they are known, and at how many they are not [count]. */
export function sitesAndPeople(facts: Facts): {
  readonly sites: number;
  readonly people: number;
  readonly withoutPeople_count: number;
} {
  let [sites, people, withoutPeople_count] = [0, 0, 0];
  for (const [key, cells] of facts.rowsAsEntered('sites')) {
    // A second row of one id is not used.
    if (key !== cells['siteId']) continue;
    sites++;
    const own = readCell(folderTables.sites.columns.people, cells['people'] ?? '', { decimalComma: false }).value;
    people += own ?? 0;
    if (own === null) withoutPeople_count++;
  }
  return { sites, people, withoutPeople_count };
}

async function withDatabase<T>(
  dataFolder: string,
  work: (database: Database) => Promise<Checked<T>>,
): Promise<Checked<T>> {
  const opened = await openDatabase(dataFolder);
  if (!opened.ok) return opened;
  try {
    return await work(opened.value);
  } finally {
    await opened.value.close();
  }
}

async function factsOf(database: Database, programmeId: string): Promise<Checked<Facts>> {
  const records = await database.records(programmeId);
  return records.ok ? { ...records, value: foldRecords([...records.value].sort(compareRecords)) } : records;
}

/**
 * Writes a programme of a data folder as its folder of tables, the one its export holds.
 *
 * @param dataFolder - the data folder [text]
 * @param programmeId - which of its programmes; null: the only one that is not set aside [text]
 * @param folder - a folder that is not there yet [text]
 * @returns null once it stands; or the ids there are, where nobody can tell which is meant
 * @problem database.in_use - another program has the data folder open; and the other codes of openDatabase
 * @problem database.programme_unknown - there is none of that id
 * @definition ours
 */
export function writeKept(
  dataFolder: string,
  programmeId: string | null,
  folder: string,
): Promise<Checked<null | SeveralThere>> {
  return withDatabase<null | SeveralThere>(dataFolder, async (database) => {
    const ids = (await database.listed()).filter(({ isSetAside }) => !isSetAside).map((entry) => entry.programmeId);
    const id = programmeId ?? (ids.length === 1 ? ids[0]! : null);
    if (id === null) return { ok: true, value: { ids }, problems: [] };
    const facts = await factsOf(database, id);
    if (!facts.ok) return facts;
    await writeProgramme(folder, programmeOfRows(facts.value));
    return { ok: true, value: null, problems: [] };
  });
}

/**
 * Which programmes are in a data folder?
 *
 * @param dataFolder - the data folder [text]
 * @returns them with their sites [count] and people [person], those set aside among them
 * @problem database.in_use - another program has the data folder open; and the other codes of openDatabase
 * @definition ours
 */
export function listKept(dataFolder: string): Promise<Checked<readonly ProgrammeThere[]>> {
  return withDatabase<readonly ProgrammeThere[]>(dataFolder, async (database) => {
    const found: ProgrammeThere[] = [];
    for (const entry of await database.listed()) {
      const facts = await factsOf(database, entry.programmeId);
      found.push({
        ...entry,
        ...(facts.ok ? sitesAndPeople(facts.value) : { sites: null, people: null, withoutPeople_count: null }),
      });
    }
    return { ok: true, value: found, problems: [] };
  });
}
