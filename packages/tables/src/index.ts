export * from './allTables.ts';
export type { CellsOf, Column, ColumnKind, Columns, ForeignKey, Limits, Table } from './table.ts';
export * from './tableProblems.ts';
