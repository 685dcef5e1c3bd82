import { id, required, text } from './columns.ts';
import { rain } from './rain.ts';
import { settingsColumns, targetColumns } from './settings.ts';
import { type Column, defineTable } from './table.ts';

/** The settings as a workbook has them: a row for each. */
export const settingsSheet = defineTable({
  name: 'settings',
  about: 'The settings, one to a row; a field within another has a point, as in target.longestDryRun_days.',
  key: ['field'],
  usedBy: ['Water'],
  optional: true,
  columns: { field: required(text('The name of the setting.')), value: text('Its value; empty: the default.') },
});

/** The rain as a workbook has it where one sheet holds all gauges. */
export const rainSheet = defineTable({
  name: 'rain',
  about: 'The daily readings of all gauges.',
  key: ['gaugeId', 'date'],
  foreignKeys: [{ fields: ['gaugeId'], table: 'gauges', tableFields: ['gaugeId'] }],
  usedBy: ['Water'],
  columns: { gaugeId: required(id('The gauge.')), ...rain.columns },
});

/**
 * The column of a setting, by its name as a workbook has it.
 *
 * @param field - the name, `target.` before those of the target [text]
 * @returns the column; undefined where there is no such setting
 * @definition ours
 */
export function settingColumn(field: string): Column<unknown> | undefined {
  const columns: Readonly<Record<string, Column<unknown>>> = settingsColumns;
  const ofTarget: Readonly<Record<string, Column<unknown>>> = targetColumns;
  const key = field.replace(/^target\./, '');
  const known = key === field ? columns : ofTarget;
  return Object.hasOwn(known, key) ? known[key] : undefined;
}
