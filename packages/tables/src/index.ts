export * from './allTables.ts';
export { guardText, readGuarded } from './apostrophe.ts';
export {
  assembleProgramme,
  type ProgrammeJoined,
  type ProgrammeParts,
} from './assembleProgramme.ts';
export { idForm } from './columns.ts';
export { datapackage } from './datapackage.ts';
export { nearest } from './nearest.ts';
export { rain } from './rain.ts';
export { shown } from './readCell.ts';
export { type RainRead, readRain } from './readRain.ts';
export { type RawRow, type RowsOptions, readRows, type TableRead } from './readRows.ts';
export * from './report/index.ts';
export { readSettings, type SettingsRead } from './settings.ts';
export type { CellsOf, Column, ColumnKind, Columns, ForeignKey, Limits, Table } from './table.ts';
export * from './tableProblems.ts';
export { type Json, tableSchema } from './tableSchema.ts';
export { tablesPage } from './tablesPage.ts';
export type { TablesRead } from './tablesRead.ts';
