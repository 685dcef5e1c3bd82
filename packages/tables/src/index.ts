export * from './contract/allTables.ts';
export { idForm } from './contract/columns.ts';
export { rain } from './contract/rain.ts';
export type { CellsOf, Column, ColumnKind, Columns, ForeignKey, Limits, Table } from './contract/table.ts';
export { rainSheet, settingColumn, settingsSheet } from './contract/workbookSheets.ts';
export { datapackage } from './describing/datapackage.ts';
export { type Json, tableSchema } from './describing/tableSchema.ts';
export { tablesPage } from './describing/tablesPage.ts';
export {
  assembleProgramme,
  type ProgrammeJoined,
  type ProgrammeParts,
} from './joining/assembleProgramme.ts';
export type { TablesRead } from './joining/tablesRead.ts';
export { guardText, readGuarded } from './reading/apostrophe.ts';
export { nearest } from './reading/nearest.ts';
export { shown } from './reading/readCell.ts';
export { type RainRead, readRain } from './reading/readRain.ts';
export { type RawRow, type RowsOptions, readRows, type TableRead } from './reading/readRows.ts';
export { readSettings, type SettingsRead } from './reading/readSettings.ts';
export { readStationRain, type StationLine, type StationValue } from './reading/readStationRain.ts';
export * from './reading/tableProblems.ts';
export type { CellRefusal } from './reading/workbookProblems.ts';
export * from './report/index.ts';
