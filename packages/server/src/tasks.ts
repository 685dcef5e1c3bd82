import type { Problem } from '@eavewell/engine';
import { type ProgrammeRead, type RowsByTable, readProgramme, rowsOfProgramme, tablesAsRead } from '@eavewell/formats';
import { designTask } from './designs/designTask.ts';
import { keepExportTask } from './keptExports.ts';

/** What a folder is asked for. */
export interface ReadAsked {
  readonly folder: string;
}

/** What stands in a folder, as rows of records, and what is wrong in it. */
export interface FolderRows {
  readonly rows: RowsByTable;
  /** The columns each table's file has, by table. */
  readonly columns: ReadonlyMap<string, readonly string[]>;
  readonly problems: readonly Problem[];
  readonly notUsed: ProgrammeRead['notUsed'];
  readonly files: ProgrammeRead['files'];
}

/** Reads a folder into rows of records. */
export async function readTask({ folder }: ReadAsked): Promise<FolderRows> {
  const read = await readProgramme(folder);
  const { programme } = await tablesAsRead(folder);
  const columns = new Map<string, readonly string[]>();
  for (const [name, rows] of Object.entries(programme.tables))
    columns.set(name, [...new Set((rows ?? []).flatMap((row) => Object.keys(row)))]);
  const { problems, notUsed, files } = read;
  return { rows: rowsOfProgramme(programme), columns, problems, notUsed, files };
}

/** The long jobs of the server, by name. */
export const tasks = { read: readTask, design: designTask, keepExport: keepExportTask };
