import type { Place, Problem } from '@eavewell/engine';
import {
  type FolderTableName,
  folderTableNames,
  folderTables,
  type Matchings,
  matchingOf,
  type NotUsed,
  readRows,
  type Table,
  type TableRead,
  type TablesRead,
  tableProblem,
} from '@eavewell/tables';
import { nearFile } from './nearFile.ts';
import { readCsvFile } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';

/** The tables of a folder, with what is wrong with their files. */
export interface TablesOfFolder {
  readonly tables: TablesRead;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly files: readonly { readonly file: string; readonly rows: number }[];
  readonly doubtsOfAll: readonly Place[];
}

/** Tables whose faults as a whole file put every site in doubt, or one station of each: without them sites would be judged on what was left. */
export const bearOnSites: readonly FolderTableName[] = [
  'sites',
  'roofs',
  'diverters',
  'tanks',
  'demand',
  'parts',
  'targets',
  'presence',
  'secondSources',
  'gutters',
  'downpipes',
  'pipes',
  'storms',
  'stormCoefficients',
];

interface FileOfTable {
  readonly read: TableRead | null;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

function missing(file: string, table: Table, entries: readonly string[]): readonly Problem[] {
  if (table.optional) return [];
  const others = entries.filter((name) => !folderTableNames.some((one) => folderTables[one].file === name));
  const likely = nearFile(file, others) ?? '';
  return [tableProblem('file.missing', { file }, { value: file, expected: file, likely })];
}

async function readTable(
  folder: string,
  table: Table,
  entries: readonly string[],
  matchings: Matchings,
): Promise<FileOfTable> {
  const { file } = table;
  const matching = matchingOf(matchings, file);
  const found = await readFileBytes(folder, file);
  if (found.bytes === null) {
    const problems = found.problem ? [found.problem] : missing(file, table, entries);
    return { read: null, problems, notUsed: [] };
  }
  const columns = [...Object.keys(table.columns), ...(matching?.columns.keys() ?? [])];
  const csv = readCsvFile(found.bytes, { file, columns, needed: !table.optional });
  if (csv.header.length === 0) return { read: null, problems: csv.problems, notUsed: csv.notUsed };
  const read = readRows(table, csv.header, csv.rows, { file, decimalComma: csv.decimalComma, matching });
  return { read, problems: csv.problems, notUsed: csv.notUsed };
}

/**
 * Which tables stand in a folder, and what is wrong with each file?
 *
 * @param folder - the programme folder [text]
 * @param entries - the names in it, to propose one where a table is missing [text]
 * @param matchings - what was accepted for the headers of each file
 * @returns the tables that could be read, the problems of files and rows, and the faults that put every site in doubt
 * @problem file.missing - a table that may not be left out
 * @definition ours
 */
export async function readTables(
  folder: string,
  entries: readonly string[],
  matchings: Matchings,
): Promise<TablesOfFolder> {
  const tables: Partial<Record<FolderTableName, TableRead>> = {};
  const problems: (readonly Problem[])[] = [];
  const notUsed: (readonly NotUsed[])[] = [];
  const files: { file: string; rows: number }[] = [];
  const doubtsOfAll: Place[] = [];
  for (const name of folderTableNames) {
    const { file } = folderTables[name];
    const found = await readTable(folder, folderTables[name], entries, matchings);
    problems.push(found.problems, found.read?.problems ?? []);
    notUsed.push(found.notUsed, found.read?.notUsed ?? []);
    if (bearOnSites.includes(name))
      for (const { severity, code, place } of found.problems)
        if (severity === 'blocker' && code !== 'file.missing') doubtsOfAll.push(place);
    if (found.read === null) continue;
    tables[name] = found.read;
    files.push({ file, rows: found.read.count + found.notUsed.length });
  }
  return {
    tables: tables as TablesRead,
    problems: problems.flat(),
    notUsed: notUsed.flat(),
    files,
    doubtsOfAll,
  };
}
