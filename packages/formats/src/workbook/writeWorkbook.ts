import { stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { type Column, folderTableNames, folderTables, rain, tableProblem } from '@eavewell/tables';
import write, { type SheetData } from 'write-excel-file/node';
import type { CellValue, ProgrammeTables } from '../programmeTables.ts';
import { columnsOf } from '../tableColumns.ts';
import { writeFileWhole } from '../writeFileWhole.ts';
import { WriteRefused } from '../writeRefused.ts';
import { sheetCell, textCell, type WrittenCell } from './writtenCells.ts';

/** Rows a sheet can have, and letters its name can have. Source: ECMA-376 names no limit; those of spreadsheets, common practice. */
const [mostRows, longestName] = [1_048_576, 31];
/** Width of a column [character]; ours. */
const [leastWidth, mostWidth] = [10, 30];

type Row = Readonly<Record<string, CellValue>>;
interface SheetToWrite {
  readonly sheet: string;
  readonly data: SheetData;
  readonly columns: { readonly width: number }[];
  readonly stickyRowsCount: number;
}

function sheetOf(
  sheet: string,
  names: readonly string[],
  columns: Readonly<Record<string, Column<unknown>>>,
  rows: Iterable<Row>,
): SheetToWrite {
  const header = names.map((name): WrittenCell => ({ ...textCell(name), fontWeight: 'bold' }));
  const data: (WrittenCell | null)[][] = [header];
  const kinds = names.map((name) => (Object.hasOwn(columns, name) ? columns[name]! : null));
  for (const row of rows) data.push(names.map((name, i) => sheetCell(row[name] ?? null, kinds[i]!)));
  if (data.length > mostRows) {
    const facts = { value: sheet, limit: 'rows', found: data.length, most: mostRows, expected: 'fewer rows' };
    throw new WriteRefused(tableProblem('workbook.over_limit', { file: sheet }, facts));
  }
  const width = (name: string) => Math.min(mostWidth, Math.max(leastWidth, name.length + 2));
  return { sheet, data: data as SheetData, columns: names.map((name) => ({ width: width(name) })), stickyRowsCount: 1 };
}

function settingText(value: unknown): CellValue {
  if (typeof value === 'number' || typeof value === 'string') return value;
  return JSON.stringify(value) ?? String(value);
}

function* settingRows(settings: Readonly<Record<string, unknown>>): Generator<Row> {
  for (const [field, value] of Object.entries(settings)) {
    const isTarget = field === 'target' && typeof value === 'object' && value !== null && !Array.isArray(value);
    if (isTarget)
      for (const [key, inner] of Object.entries(value)) yield { field: `target.${key}`, value: settingText(inner) };
    // An empty value stands for the default, which is what null means here and nowhere else.
    else if (value !== null || field !== 'waterYearStartMonth') yield { field, value: settingText(value) };
  }
}

function* rowsOfGauge({ gaugeId, rows }: ProgrammeTables['rain'][number]): Generator<Row> {
  for (const row of rows) yield { gaugeId, ...row };
}

/** One sheet for all gauges where they fit into it; else a sheet for each whose id leaves room for it in a name. */
function rainSheets(gauges: ProgrammeTables['rain']): readonly SheetToWrite[] {
  if (gauges.length === 0) return [];
  const columns = { gaugeId: folderTables.gauges.columns.gaugeId, ...rain.columns };
  const rows = gauges.reduce((sum, gauge) => sum + gauge.rows.length, 0);
  const taken = new Set<string>();
  const hasOwn = (gaugeId: string) => {
    const name = `rain ${gaugeId}`.toLowerCase();
    if (rows < mostRows || name.length > longestName || taken.has(name)) return false;
    taken.add(name);
    return true;
  };
  const own = gauges.filter(({ gaugeId }) => hasOwn(gaugeId));
  const others = gauges.filter((gauge) => !own.includes(gauge));
  const ofAll = sheetOf(
    'rain',
    Object.keys(columns),
    columns,
    others.flatMap((gauge) => [...rowsOfGauge(gauge)]),
  );
  const sheets = own.map((gauge) =>
    sheetOf(`rain ${gauge.gaugeId}`, Object.keys(rain.columns), rain.columns, rowsOfGauge(gauge)),
  );
  return others.length === 0 ? sheets : [ofAll, ...sheets];
}

function sheetsOf(programme: ProgrammeTables): readonly SheetToWrite[] {
  const tables = folderTableNames.flatMap((name) => {
    const rows = programme.tables[name];
    const { columns } = folderTables[name];
    return rows === undefined ? [] : sheetOf(name, columnsOf(Object.keys(columns), rows), columns, rows);
  });
  const settings = sheetOf('settings', ['field', 'value'], {}, settingRows(programme.settings));
  return [...tables, settings, ...rainSheets(programme.rain)];
}

async function refuseWhatIsThere(path: string, overwrite: boolean): Promise<void> {
  const found = await stat(path).catch(() => null);
  const facts = { value: basename(path), expected: 'a new file' };
  if (found?.isDirectory()) throw new WriteRefused(tableProblem('file.not_a_file', { file: path }, facts));
  if (found && !overwrite) throw new WriteRefused(tableProblem('workbook.already_there', { file: path }, facts));
}

/**
 * Writes a programme as one workbook: the tables as sheets with a bold first row that stays in sight, numbers and days as such,
 * ids and texts as text. The file is whole or not there.
 *
 * @param path - the file to write [text]
 * @param programme - settings, tables of values and rain, written as given
 * @param options - `overwrite`: may it replace a file that is there?
 * @returns the names of the sheets, and of the files of the programme that a workbook cannot hold [text]
 * @problem workbook.already_there - thrown as WriteRefused when the file is there and overwrite is not asked for
 * @law readProgramme gives of the workbook what it gives of the folder that writeProgramme writes
 * @source ecma-376, Part 1 (from memory)
 */
export async function writeWorkbook(
  path: string,
  programme: ProgrammeTables,
  options: { readonly overwrite?: boolean } = {},
): Promise<{ readonly sheets: readonly string[]; readonly left: readonly string[] }> {
  await refuseWhatIsThere(path, options.overwrite === true);
  const sheets = sheetsOf(programme);
  const bytes = await write([...sheets]).toBuffer();
  await writeFileWhole(path, bytes);
  return { sheets: sheets.map(({ sheet }) => sheet), left: (programme.rawFiles ?? []).map((file) => file.path) };
}
