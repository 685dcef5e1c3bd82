import type { Problem } from '@eavewell/engine';
import { type Facts, type RowChange, recordProblem, rowKey } from '@eavewell/records';
import { type FolderTableName, folderTables } from '@eavewell/tables';

/** Tables whose rows a form may change, beside those of the folder. */
const others = ['rain', 'settings', 'wayLines'];

const isFolderTable = (table: string): table is FolderTableName => Object.hasOwn(folderTables, table);

/**
 * Why may somebody not make this change by hand? What was seen before may differ from what stands: that is a conflict, told and
 * kept, not a refusal.
 *
 * @param facts - the present facts
 * @param change - what is asked for
 * @returns the problem; null where it may be made
 * @problem change.table_unknown - no table whose rows are changed by hand
 * @problem change.table_as_file - the table is kept letter for letter, so that no row of it would be written
 * @problem change.row_there - a row to be added is there
 * @problem change.row_gone - a row to be changed or removed is not
 * @problem change.key_differs - its key is not what its cells say
 * @definition ours
 */
export function refuseChange(facts: Facts, change: RowChange): Problem | null {
  const { table, key } = change;
  const row = facts.row(table, key);
  const value = `${table} ${key}`;
  if (!isFolderTable(table) && !others.includes(table))
    return recordProblem('change.table_unknown', {}, { value: table });
  if (facts.row('files', `${table}.csv`) !== null)
    return recordProblem('change.table_as_file', {}, { value: `${table}.csv` });
  if (change.kind === 'added' && row !== null) return recordProblem('change.row_there', {}, { value });
  if (change.kind !== 'added' && row === null) return recordProblem('change.row_gone', {}, { value });
  if (!isFolderTable(table) || change.kind === 'removed') return null;
  const named = folderTables[table].key;
  if (change.kind === 'edited') {
    const isKeyChanged = named.some((column) => Object.hasOwn(change.after, column));
    const cells = { ...row, ...change.after };
    const expected = rowKey(named.map((column) => cells[column] ?? ''));
    return isKeyChanged && expected !== key ? recordProblem('change.key_differs', {}, { value, expected }) : null;
  }
  const expected = rowKey(named.map((column) => change.after[column] ?? ''));
  return expected === key ? null : recordProblem('change.key_differs', {}, { value, expected });
}
