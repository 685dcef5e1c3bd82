import { type ChangeRecord, compareRecords, type RowChange } from './changeRecord.ts';

/** A cell that a change would set back to what stood there before somebody changed it; or a row somebody removed that would come again. */
export interface StepBack {
  readonly table: string;
  readonly key: string;
  /** Null: the row as a whole. */
  readonly column: string | null;
  /** What stands, and what the change would put; null is an empty cell, or no row. */
  readonly stands: string | null;
  readonly older: string | null;
  /** The record that put what stands. */
  readonly since: ChangeRecord;
}

/** What a cell, or a row, was before its last change. */
interface Past {
  value: string | null;
  readonly older: Set<string | null>;
  since: ChangeRecord;
}

/** The past of one row. */
interface RowPast {
  readonly cells: Map<string, Past>;
  /** The record it came with. */
  addedBy: ChangeRecord | null;
  /** The record that removed it, where it is not there. */
  removedBy: ChangeRecord | null;
}

/**
 * Which of these changes only bring back what stood before somebody changed it? What was taken back by an undo is none: who undoes
 * a file takes it in again on purpose.
 *
 * @param records - all records, in any order
 * @param changes - changes worked out from the facts the records come to
 * @returns the steps back, in the order of the changes
 * @law a value the cell never had is no step back
 * @definition ours: docs/decisions/0137-steps-back.md
 */
export function stepsBack(records: Iterable<ChangeRecord>, changes: readonly RowChange[]): readonly StepBack[] {
  const pasts = pastsOf(records, new Set(changes.map(rowOf)));
  return changes.flatMap((change) => {
    const past = pasts.get(rowOf(change));
    if (past === undefined || change.kind === 'removed') return [];
    return change.kind === 'added' ? rowBack(change, past) : cellsBack(change, past);
  });
}

/**
 * Changes without some cells and rows.
 *
 * @param changes - the changes
 * @param left - what is to stay as it stands: cells, and rows by a column of null
 * @returns the others; a row of which nothing is left to change goes
 * @definition ours
 */
export function changesWithout(
  changes: readonly RowChange[],
  left: readonly Pick<StepBack, 'table' | 'key' | 'column'>[],
): readonly RowChange[] {
  if (left.length === 0) return changes;
  const names = new Set(left.map((one) => cellName(one)));
  const stays = (change: RowChange, column: string | null) => names.has(cellName({ ...change, column }));
  return changes.flatMap((change): readonly RowChange[] => {
    if (change.kind !== 'edited') return stays(change, null) ? [] : [change];
    const columns = Object.keys(change.after).filter((column) => !stays(change, column));
    if (columns.length === 0) return [];
    const only = <T>(cells: Readonly<Record<string, T>>) =>
      Object.fromEntries(columns.map((column) => [column, cells[column]!]));
    return [{ ...change, before: only(change.before), after: only(change.after) }];
  });
}

const rowOf = ({ table, key }: Pick<RowChange, 'table' | 'key'>) => `${table}/${key}`;
const cellName = ({ table, key, column }: Pick<StepBack, 'table' | 'key' | 'column'>) =>
  JSON.stringify([table, key, column]);

function rowBack({ table, key }: RowChange, { removedBy }: RowPast): readonly StepBack[] {
  if (removedBy === null || removedBy.source.kind === 'undo') return [];
  return [{ table, key, column: null, stands: null, older: null, since: removedBy }];
}

function cellsBack(change: Extract<RowChange, { kind: 'edited' }>, { cells }: RowPast): readonly StepBack[] {
  const { table, key } = change;
  return Object.entries(change.after).flatMap(([column, older]) => {
    const past = cells.get(column);
    if (past === undefined || past.since.source.kind === 'undo' || !past.older.has(older)) return [];
    return [{ table, key, column, stands: past.value, older, since: past.since }];
  });
}

function pastsOf(records: Iterable<ChangeRecord>, wanted: ReadonlySet<string>): ReadonlyMap<string, RowPast> {
  const pasts = new Map<string, RowPast>();
  for (const record of [...records].sort(compareRecords)) {
    for (const change of record.changes) {
      const name = rowOf(change);
      if (!wanted.has(name)) continue;
      const past: RowPast = pasts.get(name) ?? { cells: new Map(), addedBy: null, removedBy: null };
      pasts.set(name, past);
      past.removedBy = change.kind === 'removed' ? record : null;
      if (change.kind === 'added') {
        past.cells.clear();
        past.addedBy = record;
      }
      if (change.kind !== 'removed') for (const cell of Object.entries(change.after)) note(past, cell, record);
    }
  }
  return pasts;
}

/** A cell that a row came without was empty. */
function note(
  { cells, addedBy }: RowPast,
  [column, value]: readonly [string, string | null],
  since: ChangeRecord,
): void {
  const past = cells.get(column);
  if (past === undefined) {
    cells.set(column, { value, older: new Set(since === addedBy ? [] : [null]), since });
    return;
  }
  if (past.value !== value) past.older.add(past.value);
  [past.value, past.since] = [value, since];
}
