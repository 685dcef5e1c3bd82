import type { ApiProblem, RowChange } from '../api/client.ts';

/** A cell that somebody else changed while a change of it was kept here. */
export interface Clash {
  readonly table: string;
  readonly key: string;
  readonly column: string;
  /** What stood there when the change was made here. */
  readonly before: string | null;
  /** What stands there now. */
  readonly stands: string | null;
  /** What it was changed to here; null where the row was to go. */
  readonly after: string | null;
}

/** Changes that were asked for while the program did not answer: one record, once it does. */
export interface KeptChange {
  /** What its sending is called, so that it is never made twice. */
  readonly sendId: string;
  readonly programmeId: string;
  readonly by: string;
  readonly at: string;
  readonly changes: readonly RowChange[];
  /** `clash`: somebody else changed the same; `refused`: the program says what is wrong. Both wait for the person's word. */
  readonly state: 'waits' | 'clash' | 'refused';
  /** She said to send it although somebody else changed the same. */
  readonly isSure: boolean;
  readonly clashes: readonly Clash[];
  readonly problems: readonly ApiProblem[];
}

/** The next to be sent: in the order they were made, and none past one of its programme that waits for a word. */
export function nextToSend(kept: readonly KeptChange[]): KeptChange | null {
  const held = new Set<string>();
  for (const one of kept) {
    if (held.has(one.programmeId)) continue;
    if (one.state === 'waits') return one;
    held.add(one.programmeId);
  }
  return null;
}

/** Cells of rows by table and key, as they stand. */
export type RowsNow = (table: string, key: string) => Readonly<Record<string, string>> | null;

/**
 * Which cells of these changes did somebody else change since they were seen? A row that is gone, or there already, is for the
 * program to say.
 */
export function clashesOf(changes: readonly RowChange[], now: RowsNow): readonly Clash[] {
  return changes.flatMap((change) => {
    if (change.kind === 'added') return [];
    const row = now(change.table, change.key);
    if (row === null) return [];
    const { table, key } = change;
    // Where a row was to go, cells that it has got since count as well.
    const columns = Object.keys(change.kind === 'removed' ? { ...change.before, ...row } : change.before);
    return columns.flatMap((column) => {
      const before = change.before[column] ?? null;
      const stands = row[column] ?? null;
      const after = change.kind === 'edited' ? (change.after[column] ?? null) : null;
      const isSame = stands === before || (change.kind === 'edited' && stands === after);
      return isSame ? [] : [{ table, key, column, before, stands, after }];
    });
  });
}

/**
 * The changes as they follow what is kept before them: what an earlier one put into a cell is what stood there before, so that
 * a person does not clash with herself.
 */
export function followingOn(earlier: readonly KeptChange[], changes: readonly RowChange[]): readonly RowChange[] {
  return changes.map((change) => {
    if (change.kind === 'added') return change;
    let before: Readonly<Record<string, string | null>> = change.before;
    for (const past of earlier.flatMap((one) => one.changes)) {
      if (past.table !== change.table || past.key !== change.key || past.kind === 'removed') continue;
      const put = Object.entries(past.after).filter(([column]) => change.kind === 'removed' || column in change.after);
      before = { ...before, ...Object.fromEntries(put) };
    }
    if (change.kind === 'edited') return { ...change, before: { ...before } };
    const cells = Object.entries(before).filter((cell): cell is [string, string] => cell[1] !== null);
    return { ...change, before: Object.fromEntries(cells) };
  });
}

/** A row of a table. */
export interface TableRow {
  readonly table: string;
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

/**
 * Rows as they would stand with what is kept here put in; the very same where nothing kept touches them.
 *
 * @param isWanted - is this new row one of these rows?
 */
export function withKept(
  rows: readonly TableRow[],
  kept: readonly KeptChange[],
  isWanted: (row: TableRow) => boolean,
): readonly TableRow[] {
  let put = rows;
  for (const change of kept.flatMap((one) => one.changes)) {
    const isThis = ({ table, key }: TableRow) => table === change.table && key === change.key;
    const known = put.find(isThis);
    if (change.kind === 'added') {
      const row = { table: change.table, key: change.key, cells: change.after };
      if (known === undefined && isWanted(row)) put = [...put, row];
    } else if (known !== undefined) {
      const { after = null } = change.kind === 'edited' ? change : {};
      put =
        after === null
          ? put.filter((row) => row !== known)
          : put.map((row) => (row === known ? edited(row, after) : row));
    }
  }
  return put;
}

function edited(row: TableRow, after: Readonly<Record<string, string | null>>): TableRow {
  const cells = Object.entries({ ...row.cells, ...after }).filter((cell): cell is [string, string] => cell[1] !== null);
  return { ...row, cells: Object.fromEntries(cells) };
}
