import { defaultSettings } from '@eavewell/engine';
import { isNumber } from './cellEntry.ts';
import type { RowChange, RowNow } from './draft.ts';
import { formTable, settingFields } from './formTables.ts';

/** Rows of the table of settings: one a field, its value as JSON. */
interface SettingRow {
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

function settingValue(rows: readonly SettingRow[], key: string): unknown {
  const text = rows.find((row) => row.key === key)?.cells['value'];
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What stands for a setting that is not given; null where that is nothing. */
export function standardOf(field: string): number | string | null {
  const [name, within] = field.split('.');
  const standards: Readonly<Record<string, unknown>> = { ...defaultSettings };
  const value = within === undefined ? standards[name!] : (standards[name!] as Record<string, unknown>)[within];
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return field === 'programme' || (typeof value !== 'number' && typeof value !== 'string') ? null : value;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const textOf = (value: unknown): string | null =>
  value === undefined || value === null
    ? null
    : typeof value === 'boolean'
      ? value
        ? 'yes'
        : 'no'
      : typeof value === 'object'
        ? JSON.stringify(value)
        : String(value);

/** All settings as the cells of one row, so that they are asked for like the rows of a table. */
export function settingsRow(rows: readonly SettingRow[]): RowNow {
  const target = settingValue(rows, 'target');
  const cells = settingFields.flatMap((field) => {
    const [name, within] = field.split('.');
    const value = within === undefined ? settingValue(rows, name!) : isObject(target) ? target[within] : undefined;
    const text = textOf(value);
    return text === null ? [] : [[field, text] as const];
  });
  return { table: 'settings', key: '', cells: Object.fromEntries(cells) };
}

/**
 * A change of that one row, as changes of the rows that are kept: a row a field, those of the target in one.
 *
 * @param after - the cells that change; null is empty
 * @param rows - the rows that are kept
 */
export function settingsChanges(
  after: Readonly<Record<string, string | null>>,
  rows: readonly SettingRow[],
): readonly RowChange[] {
  const wanted = new Map<string, unknown>();
  const target = settingValue(rows, 'target');
  for (const [field, cell] of Object.entries(after)) {
    const [name, within] = field.split('.');
    const column = formTable('settings')!.columns[field]!;
    const value = cell === null ? undefined : isNumber(column) ? Number(cell) : cell;
    if (within === undefined) wanted.set(name!, value);
    else {
      const before = wanted.get('target') ?? (isObject(target) ? target : {});
      const { [within]: _, ...others } = before as Record<string, unknown>;
      wanted.set('target', value === undefined ? others : { ...others, [within]: value });
    }
  }
  return [...wanted].flatMap(([key, value]) => changeOf(key, value, rows));
}

function changeOf(key: string, value: unknown, rows: readonly SettingRow[]): readonly RowChange[] {
  const isNone = value === undefined || (isObject(value) && Object.keys(value).length === 0);
  const row = rows.find((one) => one.key === key);
  const before = row?.cells['value'] ?? null;
  const after = isNone ? null : JSON.stringify(value);
  if (before === after) return [];
  if (row === undefined)
    return after === null ? [] : [{ kind: 'added', table: 'settings', key, after: { value: after } }];
  if (after === null) return [{ kind: 'removed', table: 'settings', key, before: { ...row.cells } }];
  return [{ kind: 'edited', table: 'settings', key, before: { value: before }, after: { value: after } }];
}
