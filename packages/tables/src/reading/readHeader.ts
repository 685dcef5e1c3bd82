import type { Problem } from '@eavewell/engine';
import type { Table } from '../contract/table.ts';
import { folded, nearest } from './nearest.ts';
import { shown } from './readCell.ts';
import { tableProblem } from './tableProblems.ts';

/** Where each column of a table stands in a file. */
export interface HeaderReading {
  /** Place of each column that can be used, counted from 0. */
  readonly at: ReadonlyMap<string, number>;
  /** How many cells a row should have. */
  readonly width: number;
  readonly problems: readonly Problem[];
  /** False where a needed column is not there: then no row can be used. */
  readonly usable: boolean;
}

function neededColumns(table: Table): readonly string[] {
  return Object.keys(table.columns).filter((name) => table.columns[name]!.required);
}

function withoutEmptyEnd(header: readonly string[]): readonly string[] {
  const names = header.map((name) => name.trim());
  let width = names.length;
  while (width > 0 && names[width - 1] === '') width--;
  return names.slice(0, width);
}

/** A column of the table, as it is and as it was likely written. */
function likelyHeader(column: string, unknown: readonly string[]): string {
  const same = unknown.find((name) => folded(name) === folded(column));
  return same ?? nearest(column, unknown) ?? '';
}

/**
 * Which column of a file is which of the table's? By its exact name only: a name that is nearly right is pointed out, never
 * taken, and a name that stands twice is not used at all.
 *
 * @param table - the table
 * @param header - the cells of the first line [text]
 * @param file - the name of the file, for the places of problems [text]
 * @param needed - columns without which no row can be used [text]
 * @param row - the row the header stands in
 * @returns where each column stands, and whether the rows can be used
 * @problem header.column_missing - a needed column is not there
 * @problem header.column_misspelt - a column that may be left out is there under nearly its name
 * @definition ours: docs/tables.md
 */
export function readHeader(
  table: Table,
  header: readonly string[],
  file: string,
  needed: readonly string[] = neededColumns(table),
  row = 1,
): HeaderReading {
  const names = withoutEmptyEnd(header);
  const known = Object.keys(table.columns);
  const problems: Problem[] = [];
  const at = new Map<string, number>();
  for (const column of known) {
    const count = names.filter((name) => name === column).length;
    const place = { file, row, column };
    if (count > 1)
      problems.push(tableProblem('header.column_twice', place, { value: column, count, expected: 'once' }));
    if (count === 1) at.set(column, names.indexOf(column));
  }
  const unknown = names.filter((name) => name !== '' && !known.includes(name));
  const absent = known.filter((column) => !names.includes(column));
  const meant = new Map<string, string>();
  for (const column of absent) {
    const likely = likelyHeader(column, unknown);
    if (likely !== '' && !meant.has(likely)) meant.set(likely, column);
    const facts = { value: '', expected: column, likely: shown(likely), found: names.map(shown) };
    if (needed.includes(column)) problems.push(tableProblem('header.column_missing', { file, row, column }, facts));
  }
  for (const name of new Set(unknown)) {
    const expected = meant.get(name);
    const place = { file, row, column: shown(name) };
    if (expected === undefined)
      problems.push(tableProblem('header.column_unknown', place, { value: shown(name), expected: known }));
    else if (!needed.includes(expected))
      problems.push(tableProblem('header.column_misspelt', place, { value: shown(name), expected }));
  }
  names.forEach((name, i) => {
    if (name === '')
      problems.push(
        tableProblem('header.column_unnamed', { file, row }, { value: '', number: i + 1, expected: known }),
      );
  });
  const usable = needed.every((column) => at.has(column));
  return { at, width: names.length, problems, usable };
}
