import { cellEntry, type Entry, type PageNumbers, type Said } from './cellEntry.ts';
import { type Draft, type DraftRow, type RowChange, type RowName, type RowNow, rowId } from './draft.ts';
import type { FormTable } from './formTables.ts';

/** Something that stands against saving: it is said beside its field and in the summary. */
export interface FieldFault {
  readonly row: RowName;
  readonly column: string;
  /** `stale`: somebody changed the cell since it was seen here. */
  readonly kind: 'wrong' | 'asks' | 'stale';
  readonly said: Said;
}

/** What a draft comes to against the facts as they stand. */
export interface Outcome {
  readonly changes: readonly RowChange[];
  readonly faults: readonly FieldFault[];
  /** Rows and cells that are not saved yet [count]. */
  readonly unsaved: number;
}

/** What a draft is judged by. */
export interface Judging {
  readonly rows: readonly RowNow[];
  readonly tableOf: (name: string) => FormTable | null;
  readonly numbers: PageNumbers;
}

/**
 * Which changes would a draft make, and what stands against them? A cell that is typed as it stands is no change; one that
 * somebody changed since it was seen is asked about.
 *
 * @param draft - what was typed
 * @param judging - the rows as they stand, the tables, the numbers of the language
 */
export function outcomeOf(draft: Draft, judging: Judging): Outcome {
  const rows = new Map(judging.rows.map((row) => [rowId(row), row]));
  const taken = new Set(rows.keys());
  const all = Object.values(draft.rows).map((row) => {
    const table = judging.tableOf(row.table);
    if (table === null) return { changes: [], faults: [], unsaved: 0 };
    if (row.state === 'added') return added(row, table, taken, judging.numbers);
    const now = rows.get(rowId(row));
    if (now === undefined) return gone(row, table);
    return row.state === 'removed' ? removed(now) : edited(row, now, table, judging.numbers);
  });
  return {
    changes: all.flatMap(({ changes }) => changes),
    faults: all.flatMap(({ faults }) => faults),
    unsaved: all.reduce((sum, { unsaved }) => sum + unsaved, 0),
  };
}

function gone(row: DraftRow, table: FormTable): Outcome {
  const column = Object.keys(row.cells)[0] ?? table.key.at(-1) ?? '';
  const said = { key: 'forms.fault_row_gone', values: { row: row.key } } as const;
  // A row that is gone and was to go: nothing is left to do.
  return { changes: [], faults: row.state === 'removed' ? [] : [{ row, column, kind: 'stale', said }], unsaved: 1 };
}

function removed({ table, key, cells }: RowNow): Outcome {
  return { changes: [{ kind: 'removed', table, key, before: { ...cells } }], faults: [], unsaved: 1 };
}

/** Why an entry cannot be saved; null where it can. */
export function faultOf(entry: Entry): Pick<FieldFault, 'kind' | 'said'> | null {
  if (entry.kind === 'wrong') return { kind: 'wrong', said: entry.said };
  if (entry.kind === 'asks') return { kind: 'asks', said: { key: 'forms.fault_two_numbers', values: {} } };
  return null;
}

function edited(row: DraftRow, now: RowNow, table: FormTable, numbers: PageNumbers): Outcome {
  const before: Record<string, string | null> = {};
  const after: Record<string, string | null> = {};
  const faults: FieldFault[] = [];
  let unsaved = 0;
  for (const [column, { typed, chosen, seen }] of Object.entries(row.cells)) {
    const contract = table.columns[column];
    if (contract === undefined) continue;
    const entry = cellEntry(contract, typed, numbers, chosen);
    const present = now.cells[column] ?? null;
    if (entry.kind === 'cell' && entry.cell === present) continue;
    unsaved += 1;
    const fault = faultOf(entry);
    if (fault !== null) faults.push({ row, column, ...fault });
    else if (present !== seen)
      faults.push({ row, column, kind: 'stale', said: { key: 'forms.fault_changed_since', values: {} } });
    else if (entry.kind === 'cell') [before[column], after[column]] = [present, entry.cell];
  }
  const isChange = Object.keys(after).length > 0;
  const { table: name, key } = now;
  return { changes: isChange ? [{ kind: 'edited', table: name, key, before, after }] : [], faults, unsaved };
}

function added(row: DraftRow, table: FormTable, taken: Set<string>, numbers: PageNumbers): Outcome {
  const after: Record<string, string> = {};
  const faults: FieldFault[] = [];
  for (const [column, contract] of Object.entries(table.columns)) {
    const { typed = '', chosen = null } = row.cells[column] ?? {};
    const entry = cellEntry(contract, typed, numbers, chosen);
    const fault = faultOf(entry);
    if (fault !== null) faults.push({ row, column, ...fault });
    else if (entry.kind === 'cell' && entry.cell !== null) after[column] = entry.cell;
  }
  // The cells of the key, joined as the records join them; the program refuses another.
  const key = table.key.map((column) => after[column] ?? '').join('/');
  const id = rowId({ table: table.name, key });
  const column = table.key.at(-1) ?? '';
  if (taken.has(id) && faults.every((fault) => fault.column !== column))
    faults.push({ row, column, kind: 'wrong', said: { key: 'forms.fault_taken', values: { row: key } } });
  taken.add(id);
  const unsaved = row.isOffered === true ? 0 : 1;
  return { changes: [{ kind: 'added', table: table.name, key, after }], faults, unsaved };
}
