import { join } from 'node:path';
import type { Place, Problem } from '@eavewell/engine';
import { columnsFile, columnsToSave, type Matchings, readColumns, tableProblem } from '@eavewell/tables';
import { readJsonFile } from './readJsonFile.ts';
import { writeFileWhole } from './writeFileWhole.ts';

/** The matchings accepted for a folder, and the faults in them. */
export interface ColumnsOfFolder {
  readonly matchings: Matchings;
  readonly problems: readonly Problem[];
  /** A matching that cannot be read may have said of any column that it is in feet. */
  readonly doubtsOfAll: readonly Place[];
}

/**
 * Which matchings of headers to columns were accepted for the folder? None where there is no columns.json.
 *
 * @param folder - the programme folder [text]
 * @returns the matchings by file, the problems, and those that bear on every site
 * @problem columns.not_json - it cannot be read; every site is in doubt, for a unit may have been said there
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export async function readColumnsFile(folder: string): Promise<ColumnsOfFolder> {
  const found = await readJsonFile(folder, columnsFile, {
    encoding: (place, facts) => tableProblem('file.wrong_encoding', place, facts),
    notJson: (place, facts) => tableProblem('columns.not_json', place, facts),
  });
  const isRead = found.isThere && !found.problems.some(({ severity }) => severity === 'blocker');
  const read = isRead ? readColumns(found.given) : { matchings: new Map(), problems: [] };
  const twice = found.twice.map(({ key, line }) => {
    const facts = { value: key, file: '', header: key, line, expected: 'once' };
    return tableProblem('columns.wrong_entry', { file: columnsFile }, facts);
  });
  const problems = [...found.problems, ...twice, ...read.problems];
  const grave = problems.filter(({ severity }) => severity === 'blocker');
  return { matchings: read.matchings, problems, doubtsOfAll: grave.map(({ place }) => place) };
}

/**
 * Keeps accepted matchings in the folder's columns.json, in place of those that stood there.
 *
 * @param folder - the programme folder [text]
 * @param matchings - by file, by header
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export async function saveColumns(folder: string, matchings: Matchings): Promise<void> {
  await writeFileWhole(join(folder, columnsFile), `${JSON.stringify(columnsToSave(matchings), null, 2)}\n`);
}
