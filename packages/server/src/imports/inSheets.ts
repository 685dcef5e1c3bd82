import type { Problem } from '@eavewell/engine';
import type { NotUsed } from '@eavewell/tables';
import type { Unpacked } from './unpack.ts';

/** A row of a file that was laid out from a workbook, and the number it has in its sheet. */
export interface RowInSheet {
  readonly file: string;
  readonly row: number;
  readonly inSheet: number;
}

/** Facts of problems that are the numbers of rows. */
const rowFacts: Readonly<Record<string, readonly string[]>> = {
  'link.periods_overlap': ['other'],
  'row.key_twice': ['firstRow'],
  'row.twice_same': ['firstRow'],
  'rainFile.days_again': ['lastRow'],
  'rainFile.more': ['lastRow'],
  'rainFile.not_listed': ['lastRow'],
};

/** The number a row of a file has in the sheet it was laid out from; null where it comes from none. */
export function rowInSheet(files: Unpacked['files'], file: string | undefined, row: number | undefined): number | null {
  if (file === undefined || row === undefined) return null;
  return files.get(file)?.sheet?.rows[row - 2] ?? null;
}

/**
 * A problem as it is told of a workbook: other rows it names are those of the sheet. Its own place stays that of the file, where it
 * is mended.
 */
export function toldOfSheet(files: Unpacked['files'], problem: Problem): Problem {
  const { file } = problem.place;
  const names = rowFacts[problem.code];
  if (names === undefined || file === undefined || files.get(file)?.sheet === undefined) return problem;
  const facts = Object.entries(problem.facts).map(([name, value]) => {
    const row = names.includes(name) ? rowInSheet(files, file, Number(value)) : null;
    return [name, row === null ? value : typeof value === 'number' ? row : String(row)];
  });
  return { ...problem, facts: Object.fromEntries(facts) };
}

/** Where the rows that something is said of stand in their sheets. */
export function rowsInSheets(
  files: Unpacked['files'],
  problems: readonly Problem[],
  notUsed: readonly NotUsed[],
): readonly RowInSheet[] {
  const places = [...problems.map(({ place }) => place), ...notUsed];
  const found = new Map<string, RowInSheet>();
  for (const { file, row } of places) {
    const inSheet = rowInSheet(files, file, row);
    if (inSheet !== null) found.set(`${row} ${file}`, { file: file!, row: row!, inSheet });
  }
  return [...found.values()];
}
