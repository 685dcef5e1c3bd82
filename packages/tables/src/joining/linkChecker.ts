import type { Place, Problem } from '@eavewell/engine';
import { nearest } from '../reading/nearest.ts';
import type { TableRow } from '../reading/readRows.ts';
import { type NotUsed, type TableProblemCode, tableProblem } from '../reading/tableProblems.ts';

/** For how many unknown ids of one kind the nearest known one is sought, so that a wrong file does not take minutes. Ours. */
const mostSought = 500;

type Row = Pick<TableRow, 'row' | 'cells'>;

/** A link from a row to another. */
export interface Link {
  readonly table: string;
  readonly file: string;
  readonly row: Row;
  readonly column: string;
  readonly id: string;
  readonly siteId: string | null;
  readonly code: TableProblemCode;
  /** Is the whole row of no use without it? */
  readonly wholeRow: boolean;
}

/** Gathers the links that lead nowhere. */
export class LinkChecker {
  readonly unlinked = new Set<string>();
  readonly problems: Problem[] = [];
  readonly notUsed: NotUsed[] = [];
  private sought = 0;

  refuse(link: Link, known: Iterable<string>, expected: string): void {
    const likely = this.sought++ < mostSought ? (nearest(link.id, known) ?? '') : '';
    this.fault(link, { expected, likely });
  }

  fault(link: Link, facts: Problem['facts']): void {
    const { table, file, row, column, id, siteId, code, wholeRow } = link;
    const place: Place = { file, row: row.row, column, ...(siteId === null ? {} : { siteId }) };
    this.problems.push(tableProblem(code, place, { value: id, column, ...facts }));
    this.unlinked.add(wholeRow ? `${table} ${row.row}` : `${table} ${row.row} ${column}`);
    const listed = { file, row: row.row, value: id, code, cells: row.cells };
    this.notUsed.push(wholeRow ? listed : { ...listed, column });
  }

  /** Not used for a fault that was told at another row. */
  leave({ table, file, row, id, code }: Link): void {
    this.unlinked.add(`${table} ${row.row}`);
    this.notUsed.push({ file, row: row.row, value: id, code, cells: row.cells });
  }

  /** Told, with nothing left out. */
  remark({ file, row, column, id, siteId, code }: Link, facts: Problem['facts'] = {}): void {
    const place: Place = { file, row: row.row, column, ...(siteId === null ? {} : { siteId }) };
    this.problems.push(tableProblem(code, place, { value: id, column, ...facts }));
  }

  /** The table linked to could not be read: its rows cannot be told from unknown ones, so one problem stands for all. */
  unchecked(file: string, expected: string, column: string, rows: readonly { readonly row: number }[]): void {
    if (rows.length === 0) return;
    const place = { file, row: rows[0]!.row, column };
    this.problems.push(tableProblem('link.not_checked', place, { value: file, expected, count: rows.length }));
  }
}

/** Ids of the rows of a table, those that could not be used among them. */
export function idsOf(
  table: { readonly rows: readonly { values: object }[]; readonly lost: readonly { keys: object }[] } | undefined,
  key: string,
): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const { values } of table?.rows ?? []) ids.add((values as Record<string, string>)[key]!);
  for (const { keys } of table?.lost ?? []) {
    const id = (keys as Record<string, string | undefined>)[key];
    if (id !== undefined) ids.add(id);
  }
  return ids;
}

/** Ids within their sites. */
export function pairsOf(
  table: { readonly rows: readonly { values: object }[]; readonly lost: readonly { keys: object }[] } | undefined,
  second: string,
): ReadonlyMap<string, ReadonlySet<string>> {
  const pairs = new Map<string, Set<string>>();
  const rows = [...(table?.rows ?? []).map(({ values }) => values), ...(table?.lost ?? []).map(({ keys }) => keys)];
  for (const values of rows as readonly Record<string, string | undefined>[]) {
    const [siteId, id] = [values['siteId'], values[second]];
    if (siteId === undefined || id === undefined) continue;
    pairs.set(siteId, (pairs.get(siteId) ?? new Set()).add(id));
  }
  return pairs;
}
