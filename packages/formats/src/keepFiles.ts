import { columnsFile, folderTableNames, folderTables, type Matchings, wayLinesFile } from '@eavewell/tables';
import { readFileBytes } from './readFileBytes.ts';

/** The files of a programme as they stood, so that what was not understood can be written again. */
export interface Kept {
  /** The bytes of the tables, settings and rain files, by path within the folder [byte]. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** What settings.json holds, where it can be read. */
  readonly settings: unknown;
  readonly matchings: Matchings;
  /** Files too large to be kept, or that could not be read [text]. */
  readonly left: readonly string[];
}

/**
 * Keeps the files of a folder as they stand: tables, settings, accepted matchings, and everything in its folder of rain.
 *
 * @param folder - the programme folder [text]
 * @param rainEntries - the names in its folder of rain [text]
 * @param settings - what settings.json holds
 * @param matchings - what was accepted for headers
 * @returns the bytes by path [byte], and what was left
 * @definition ours: docs/decisions/0081-everything-kept.md
 */
export async function keepFiles(
  folder: string,
  rainEntries: readonly string[],
  settings: { readonly given: unknown },
  matchings: Matchings,
): Promise<Kept> {
  const files = new Map<string, Uint8Array>();
  const left: string[] = [];
  const tables = folderTableNames.map((name): string => folderTables[name].file);
  const rain = rainEntries.filter((name) => /\.(?:csv|dly)$/i.test(name)).map((name) => `rain/${name}`);
  for (const path of [...tables, 'settings.json', columnsFile, wayLinesFile, ...rain]) {
    const found = await readFileBytes(folder, path);
    if (found.bytes !== null) files.set(path, found.bytes);
    else if (found.problem !== null) left.push(path);
  }
  return { files, settings: settings.given, matchings, left };
}
