export * from './allTables.ts';
export { guardText, readGuarded } from './apostrophe.ts';
export { idForm } from './columns.ts';
export { datapackage } from './datapackage.ts';
export { rain } from './rain.ts';
export * from './report/index.ts';
export type { CellsOf, Column, ColumnKind, Columns, ForeignKey, Limits, Table } from './table.ts';
export * from './tableProblems.ts';
export { type Json, tableSchema } from './tableSchema.ts';
