import type { Problem } from '@eavewell/engine';
import type { MapLine, TablesRead } from '@eavewell/tables';
import { readColumnsFile } from './columnsSaved.ts';
import { entriesOf } from './folderEntries.ts';
import { readSettingsFile } from './readSettingsFile.ts';
import { readTables } from './readTables.ts';
import { readWayLines } from './wayLines.ts';

/** What of a folder bears on a map: its tables and lines, without the rain. */
export interface PositionsOfFolder {
  readonly programme: string;
  readonly tables: TablesRead;
  readonly lines: readonly MapLine[];
  readonly problems: readonly Problem[];
}

/**
 * Which positions and ways are in a folder? Its rain is not read.
 *
 * @param folder - the programme folder [text]
 * @returns tables, lines and their problems; or the problem of the folder itself
 * @problem folder.missing - there is no such folder
 * @definition ours
 */
export async function readPositions(folder: string): Promise<PositionsOfFolder | { readonly problem: Problem }> {
  const entries = await entriesOf(folder);
  if (!('length' in entries)) return { problem: entries };
  const { matchings } = await readColumnsFile(folder);
  const found = await readTables(folder, entries, matchings);
  const ways = await readWayLines(folder);
  const { settings } = await readSettingsFile(folder);
  const { tables } = found;
  const problems = [...found.problems, ...ways.problems];
  return { programme: settings.programme, tables, lines: ways.lines ?? [], problems };
}
