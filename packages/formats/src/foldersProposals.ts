import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import {
  everyRainFile,
  folderTableNames,
  folderTables,
  type Matchings,
  matchingOf,
  type Proposal,
  proposeColumns,
  rain,
  type Table,
} from '@eavewell/tables';
import { chunk_bytes, fileChunks } from './fileChunks.ts';
import { type CsvFile, readCsvFile } from './readCsvFile.ts';
import { fileSize, readFileBytes } from './readFileBytes.ts';
import { isStationCsv } from './stationCsv.ts';

/** What is thought of the headers of one file, or of all rain files where they are alike. */
export interface TableProposals {
  /** The file, or `rain/*.csv` [text]. */
  readonly file: string;
  readonly table: Table;
  /** The headers that stand there [text]. */
  readonly headers: readonly string[];
  readonly proposals: readonly Proposal[];
}

const newLine = 0x0a;

/** The bytes of a file; of a large one, the whole lines of its first piece: as many as are looked at. */
async function bytesOf(folder: string, file: string): Promise<Uint8Array | null> {
  const size = await fileSize(folder, file);
  if (size.size_bytes === null) return null;
  if (size.size_bytes <= chunk_bytes) return (await readFileBytes(folder, file)).bytes;
  for await (const bytes of fileChunks(join(folder, file))) return bytes.slice(0, bytes.lastIndexOf(newLine) + 1);
  return null;
}

async function csvOf(folder: string, file: string, table: Table, matchings: Matchings): Promise<CsvFile | null> {
  const bytes = await bytesOf(folder, file);
  if (bytes === null) return null;
  const columns = [...Object.keys(table.columns), ...(matchingOf(matchings, file)?.columns.keys() ?? [])];
  const csv = readCsvFile(bytes, { file, columns, needed: false });
  return csv.header.length === 0 || isStationCsv(csv.header) ? null : csv;
}

async function proposalsOf(
  folder: string,
  file: string,
  table: Table,
  matchings: Matchings,
): Promise<TableProposals[]> {
  const csv = await csvOf(folder, file, table, matchings);
  if (csv === null) return [];
  const proposals = proposeColumns(table, csv.header, csv.rows, matchingOf(matchings, file));
  return [{ file, table, headers: csv.header, proposals }];
}

/** What a proposal comes to, whatever its file's values. */
function keyOf({ proposals }: TableProposals): string {
  return JSON.stringify(proposals.map(({ header, match, open }) => [header, match, open]));
}

async function rainNames(folder: string): Promise<readonly string[]> {
  try {
    return (await readdir(join(folder, 'rain'))).filter((name) => /^[A-Za-z0-9_-]{1,64}\.csv$/.test(name)).sort();
  } catch {
    return [];
  }
}

/**
 * Which headers of a folder's tables are not understood, and which columns are they likely to be? Writes nothing.
 *
 * @param folder - the programme folder [text]
 * @param matchings - what was accepted before
 * @returns each file with its headers and what is proposed; rain files that are all alike stand as `rain/*.csv`
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export async function foldersProposals(folder: string, matchings: Matchings): Promise<readonly TableProposals[]> {
  const found: TableProposals[] = [];
  for (const name of folderTableNames)
    found.push(...(await proposalsOf(folder, folderTables[name].file, folderTables[name], matchings)));
  const ofRain: TableProposals[] = [];
  for (const name of await rainNames(folder))
    ofRain.push(...(await proposalsOf(folder, `rain/${name}`, rain, matchings)));
  const isAlike = ofRain.length > 1 && ofRain.every((one) => keyOf(one) === keyOf(ofRain[0]!));
  return [...found, ...(isAlike ? [{ ...ofRain[0]!, file: everyRainFile }] : ofRain)];
}
