import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import {
  everyRainFile,
  folderTableNames,
  folderTables,
  type Matchings,
  matchingOf,
  proposeColumns,
  rain,
  type Table,
} from '@eavewell/tables';
import type { ColumnsOfFolder } from './columnsSaved.ts';
import { chunk_bytes, fileChunks } from './fileChunks.ts';
import type { ProgrammeProposals, TableProposals } from './proposals.ts';
import { type CsvFile, readCsvFile } from './readCsvFile.ts';
import { fileSize, readFileBytes } from './readFileBytes.ts';
import { isStationCsv } from './stationCsv.ts';
import { isWorkbook } from './workbook/isWorkbook.ts';
import { workbookProposals } from './workbook/workbookProposals.ts';

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
 * Which headers of a programme's tables are not understood, and which columns are they likely to be? Writes nothing.
 *
 * @param folder - the programme folder, or a workbook [text]
 * @param saved - what was accepted before
 * @returns each file or sheet with its headers and what is proposed; rain files that are all alike stand as `rain/*.csv`
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export async function foldersProposals(folder: string, saved: ColumnsOfFolder): Promise<ProgrammeProposals> {
  if (await isWorkbook(folder)) return workbookProposals(folder, saved);
  const { matchings } = saved;
  const found: TableProposals[] = [];
  for (const name of folderTableNames)
    found.push(...(await proposalsOf(folder, folderTables[name].file, folderTables[name], matchings)));
  const ofRain: TableProposals[] = [];
  for (const name of await rainNames(folder))
    ofRain.push(...(await proposalsOf(folder, `rain/${name}`, rain, matchings)));
  const isAlike = ofRain.length > 1 && ofRain.every((one) => keyOf(one) === keyOf(ofRain[0]!));
  const tables = [...found, ...(isAlike ? [{ ...ofRain[0]!, file: everyRainFile }] : ofRain)];
  return { tables, sheets: [], others: [] };
}
