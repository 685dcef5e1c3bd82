import type { FolderTableName, folderTables } from '../contract/allTables.ts';
import type { Table } from '../contract/table.ts';
import type { TableRead } from '../reading/readRows.ts';

/** The tables as they were read; a table is left out where its file is not there or cannot be read at all. */
export type TablesRead = {
  readonly [K in FolderTableName]?: (typeof folderTables)[K] extends Table<infer C> ? TableRead<C> : never;
};
