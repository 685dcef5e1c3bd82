export * from './contract/allTables.ts';
export { bearingOf, settingsBeside } from './contract/bearing.ts';
export { idForm } from './contract/columns.ts';
export { rain } from './contract/rain.ts';
export type { CellsOf, Column, ColumnKind, Columns, ForeignKey, Limits, Table } from './contract/table.ts';
export { wayLinesFile } from './contract/ways.ts';
export { rainSheet, settingColumn, settingsSheet } from './contract/workbookSheets.ts';
export { datapackage } from './describing/datapackage.ts';
export { type Json, tableSchema } from './describing/tableSchema.ts';
export { tablesPage } from './describing/tablesPage.ts';
export {
  assembleProgramme,
  type ProgrammeJoined,
  type ProgrammeParts,
  type RainOfGauge,
} from './joining/assembleProgramme.ts';
export { checkWays, lengthsOfLines, type WaysChecked } from './joining/checkWays.ts';
export {
  type MapContent,
  mapContent,
  positionTargets,
  type ShownPoint,
  type ShownWay,
  wayEnds,
  waysKnown,
} from './joining/mapContent.ts';
export type { MapLine, MapPoint, MapThing, MapThings, WayMode } from './joining/mapThings.ts';
export {
  type MatchLimits,
  matchPositions,
  type PositionMatch,
  type PositionsMatched,
  samePlace_km,
} from './joining/matchPositions.ts';
export type { MatchedBy, PositionTable, PositionTarget } from './joining/matchTargets.ts';
export type { TablesRead } from './joining/tablesRead.ts';
export { type WayEnd, type WayKnown, type WayOfLine, waysOfLines } from './joining/waysOfLines.ts';
export * from './matching/index.ts';
export * from './questions/index.ts';
export { guardText, readGuarded } from './reading/apostrophe.ts';
export { bare, hiddenIn } from './reading/hiddenCharacters.ts';
export { KeptReadings, mostKept } from './reading/keptReadings.ts';
export { nearest } from './reading/nearest.ts';
export { type CellHabit, isPercentSeen, readCell, shown } from './reading/readCell.ts';
export type { DateOrder } from './reading/readDate.ts';
export { readHeader } from './reading/readHeader.ts';
export { isDecimalComma } from './reading/readNumber.ts';
export { type RainRead, RainRows, readRain } from './reading/readRain.ts';
export { type RawRow, type RowsOptions, readRows, type TableRead } from './reading/readRows.ts';
export { readSettings, type SettingsRead } from './reading/readSettings.ts';
export { readStationRain, type StationLine, type StationValue } from './reading/readStationRain.ts';
export * from './reading/tableProblems.ts';
export type { CellRefusal } from './reading/workbookProblems.ts';
export * from './report/index.ts';
