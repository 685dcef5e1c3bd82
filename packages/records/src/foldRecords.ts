import { type Cells, type ChangeRecord, compareRecords, type RowChange, recordName } from './changeRecord.ts';

/** A cell that two people changed without seeing each other's change. The later record stands until somebody settles it. */
export interface CellConflict {
  readonly kind: 'cell';
  readonly table: string;
  readonly key: string;
  readonly column: string;
  /** What stands, and what it stands over; null is an empty cell. */
  readonly stands: string | null;
  readonly standsBy: string;
  readonly over: string | null;
  readonly overBy: string;
}

/** A row that one removed while another changed it: it stays, for a removal takes away only what its maker saw. */
export interface RowConflict {
  readonly kind: 'row';
  readonly table: string;
  readonly key: string;
  readonly removedBy: string;
  readonly changedBy: string;
}

export type Conflict = CellConflict | RowConflict;

interface CellState {
  value: string | null;
  by: string;
  conflict: CellConflict | null;
}

interface RowState {
  readonly cells: Map<string, CellState>;
  stands: boolean;
  /** The record that last removed it. */
  removedBy: string;
  conflict: RowConflict | null;
}

/** Present facts, and what is not settled. */
export class Facts {
  private readonly tables = new Map<string, Map<string, RowState>>();
  private last: Pick<ChangeRecord, 'clock' | 'device' | 'number'> | null = null;

  /** Takes in the next record of the order. Throws where it does not come after all that were taken in: that is our mistake. */
  add(record: ChangeRecord): void {
    if (this.last && compareRecords(this.last, record) >= 0)
      throw new RangeError(`${recordName(record)} does not come after ${recordName(this.last)}`);
    this.last = record;
    for (const change of record.changes) this.change(change, recordName(record));
  }

  /** The cells of a row; null where there is no such row. */
  row(table: string, key: string): Cells | null {
    const row = this.tables.get(table)?.get(key);
    return row?.stands ? cellsOf(row) : null;
  }

  /** The record that last set a cell, or emptied it; null where none did. */
  setBy(table: string, key: string, column: string): string | null {
    return this.tables.get(table)?.get(key)?.cells.get(column)?.by ?? null;
  }

  /** The rows of a table by key, in the order of their keys. */
  *rows(table: string): Generator<readonly [string, Cells], void> {
    const rows = this.tables.get(table);
    if (!rows) return;
    for (const key of [...rows.keys()].sort()) {
      const cells = this.row(table, key);
      if (cells) yield [key, cells];
    }
  }

  /** The same rows in the order in which they were first entered: that of the file they came from. */
  *rowsAsEntered(table: string): Generator<readonly [string, Cells], void> {
    for (const [key, row] of this.tables.get(table) ?? []) if (row.stands) yield [key, cellsOf(row)];
  }

  tableNames(): readonly string[] {
    return [...this.tables.keys()].filter((table) => !this.rows(table).next().done).sort();
  }

  /** What two people said that cannot both be so, by table and key. */
  conflicts(): readonly Conflict[] {
    const found: Conflict[] = [];
    for (const table of [...this.tables.keys()].sort()) {
      for (const [key, row] of [...this.tables.get(table)!].sort(([a], [b]) => (a < b ? -1 : 1))) {
        if (!this.row(table, key)) continue;
        if (row.conflict) found.push(row.conflict);
        for (const column of [...row.cells.keys()].sort()) {
          const { conflict } = row.cells.get(column)!;
          if (conflict) found.push(conflict);
        }
      }
    }
    return found;
  }

  private change(change: RowChange, by: string): void {
    const { table, key } = change;
    const row = this.rowState(table, key);
    if (change.kind === 'removed') {
      this.remove(row, change, by);
      return;
    }
    if (change.kind === 'edited') this.stay(row, change, by);
    else if (!row.stands) {
      // A row that is added where one went is a new row.
      row.cells.clear();
      row.conflict = null;
    }
    row.stands = true;
    for (const [column, after] of Object.entries(change.after)) {
      const before = change.kind === 'edited' ? (change.before[column] ?? null) : null;
      setCell(row, change, column, before, after, by);
    }
  }

  /** A change to a row that another removed brings it back as it was: what somebody found counts for more than a removal. */
  private stay(row: RowState, { table, key }: RowChange, by: string): void {
    if (!row.stands && row.removedBy !== '')
      row.conflict = { kind: 'row', table, key, removedBy: row.removedBy, changedBy: by };
    else row.conflict = null;
  }

  private remove(row: RowState, change: Extract<RowChange, { kind: 'removed' }>, by: string): void {
    if (!row.stands) return;
    const { table, key, before } = change;
    const unseen = [...row.cells].find(([column, { value }]) => value !== (before[column] ?? null));
    if (unseen) row.conflict = { kind: 'row', table, key, removedBy: by, changedBy: unseen[1].by };
    else [row.stands, row.removedBy] = [false, by];
  }

  private rowState(table: string, key: string): RowState {
    const rows = this.tables.get(table) ?? new Map<string, RowState>();
    this.tables.set(table, rows);
    const row = rows.get(key) ?? { cells: new Map(), stands: false, removedBy: '', conflict: null };
    rows.set(key, row);
    return row;
  }
}

function setCell(
  row: RowState,
  { table, key }: RowChange,
  column: string,
  before: string | null,
  after: string | null,
  by: string,
): void {
  const present = row.cells.get(column);
  const value = present?.value ?? null;
  const unseen = present !== undefined && value !== before && value !== after;
  const over = { stands: after, standsBy: by, over: value, overBy: present?.by ?? '' };
  const conflict: CellConflict | null = unseen ? { kind: 'cell', table, key, column, ...over } : null;
  row.cells.set(column, { value: after, by, conflict });
}

function cellsOf(row: RowState): Cells {
  const cells: Record<string, string> = {};
  for (const [column, { value }] of row.cells) if (value !== null) cells[column] = value;
  return cells;
}

/**
 * What are the facts now? All records in their order, each cell standing as the last record left it. A removal takes away only
 * a row its maker saw as it is, and a cell that two changed unseen is a conflict until it is changed again.
 *
 * @param records - in any order; each name once
 * @returns the present facts and what is not settled
 * @law the order of arrival changes nothing
 * @definition ours: docs/decisions/0100-change-records.md
 */
export function foldRecords(records: Iterable<ChangeRecord>): Facts {
  const facts = new Facts();
  for (const record of [...records].sort(compareRecords)) facts.add(record);
  return facts;
}
