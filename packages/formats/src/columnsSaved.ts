import { basename, dirname, join } from 'node:path';
import type { Place, Problem } from '@eavewell/engine';
import {
  columnsFile,
  columnsToSave,
  type Matchings,
  readColumns,
  type SavedWhere,
  tableProblem,
} from '@eavewell/tables';
import { readJsonFile } from './readJsonFile.ts';
import { isWorkbook } from './workbook/isWorkbook.ts';
import { writeFileWhole } from './writeFileWhole.ts';

/** The matchings accepted for a programme, and the faults in them. */
export interface ColumnsOfFolder {
  readonly matchings: Matchings;
  /** Of a workbook: the sheet of ours that a sheet of another name stands for; null for one that is left alone. */
  readonly sheets: ReadonlyMap<string, string | null>;
  readonly problems: readonly Problem[];
  /** A matching that cannot be read may have said of any column that it is in feet. */
  readonly doubtsOfAll: readonly Place[];
}

/** Where the matchings of a programme are kept. */
export interface ColumnsPlace extends SavedWhere {
  readonly folder: string;
}

/**
 * Where are the matchings of headers kept: in the folder, or beside the workbook?
 *
 * @param path - the programme folder, or a workbook [text]
 * @returns the folder and the name of the file: `columns.json`, or `plan.columns.json` beside `plan.xlsx` [text]
 * @definition ours: docs/decisions/0074-columns-of-workbooks.md
 */
export async function columnsPlace(path: string): Promise<ColumnsPlace> {
  if (!(await isWorkbook(path))) return { folder: path, file: columnsFile, isWorkbook: false };
  const name = basename(path).replace(/\.[^.]*$/, '');
  return { folder: dirname(path), file: `${name}.${columnsFile}`, isWorkbook: true };
}

/**
 * Which matchings of headers to columns were accepted for a programme? None where none were saved.
 *
 * @param path - the programme folder, or a workbook [text]
 * @returns the matchings by file or sheet, the problems, and those that bear on every site
 * @problem columns.not_json - it cannot be read; every site is in doubt, for a unit may have been said there
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export async function readColumnsFile(path: string): Promise<ColumnsOfFolder> {
  const where = await columnsPlace(path);
  const found = await readJsonFile(where.folder, where.file, {
    encoding: (place, facts) => tableProblem('file.wrong_encoding', place, facts),
    notJson: (place, facts) => tableProblem('columns.not_json', place, facts),
  });
  const isRead = found.isThere && !found.problems.some(({ severity }) => severity === 'blocker');
  const read = isRead ? readColumns(found.given, where) : { matchings: new Map(), sheets: new Map(), problems: [] };
  const twice = found.twice.map(({ key, line }) => {
    const facts = { value: key, file: '', header: key, line, expected: 'once' };
    return tableProblem('columns.wrong_entry', { file: where.file }, facts);
  });
  const problems = [...found.problems, ...twice, ...read.problems];
  const grave = problems.filter(({ severity }) => severity === 'blocker');
  const { matchings, sheets } = read;
  return { matchings, sheets, problems, doubtsOfAll: grave.map(({ place }) => place) };
}

/**
 * Keeps accepted matchings in the folder's columns.json, or beside the workbook, in place of those that stood there.
 *
 * @param path - the programme folder, or a workbook [text]
 * @param accepted - by file or sheet, by header; and the sheets that stand for ours
 * @returns the file they are kept in [text]
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export async function saveColumns(
  path: string,
  { matchings, sheets }: Pick<ColumnsOfFolder, 'matchings' | 'sheets'>,
): Promise<string> {
  const { folder, file } = await columnsPlace(path);
  const saved = join(folder, file);
  await writeFileWhole(saved, `${JSON.stringify(columnsToSave(matchings, sheets), null, 2)}\n`);
  return saved;
}
