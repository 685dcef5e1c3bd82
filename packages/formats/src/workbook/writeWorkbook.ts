import { stat } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { folderTableNames, folderTables, tableProblem } from '@eavewell/tables';
import write from 'write-excel-file/node';
import type { CellValue, ProgrammeTables, RawFile } from '../programmeTables.ts';
import { settingsLost } from '../settingsLost.ts';
import { columnsOf } from '../tableColumns.ts';
import { writeFileWhole } from '../writeFileWhole.ts';
import { WriteRefused } from '../writeRefused.ts';
import { type Row, rainSheets, type SheetToWrite, sheetOf } from './sheetsToWrite.ts';

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

function sheetsOf(programme: ProgrammeTables): readonly SheetToWrite[] {
  const inRows = (programme.rawFiles ?? []).flatMap((file) => file.inRows ?? []);
  const tables = folderTableNames.flatMap((name) => {
    const rows =
      programme.tables[name] ??
      (inRows.find((one) => 'table' in one && one.table === name)?.rows as readonly Row[] | undefined);
    const { columns } = folderTables[name];
    return rows === undefined ? [] : sheetOf(name, columnsOf(Object.keys(columns), rows), columns, rows);
  });
  const settings = sheetOf('settings', ['field', 'value'], {}, settingRows(programme.settings));
  return [
    ...tables,
    settings,
    ...rainSheets([...programme.rain, ...inRows.flatMap((one) => ('gaugeId' in one ? one : []))]),
  ];
}

/** What a workbook does not hold of a file that is to be written as it is. */
function notHeld({ path, inRows }: RawFile, { settings }: ProgrammeTables): readonly Problem[] {
  const place = { file: path };
  const facts = { value: path, expected: 'a table' };
  if (path === 'settings.json') {
    const isLost = settings['target'] === settingsLost(path)['target'];
    return isLost ? [tableProblem('carried.settings_left', place, { ...facts, expected: 'settings' })] : [];
  }
  if (inRows !== undefined && 'gaugeId' in inRows && inRows.isStation)
    return [tableProblem('carried.station_days', { ...place, gaugeId: inRows.gaugeId }, facts)];
  if (inRows !== undefined) return [];
  const isTable = path.startsWith('rain/') || folderTableNames.some((name) => folderTables[name].file === path);
  return [tableProblem(isTable ? 'carried.table_left' : 'carried.file_left', place, facts)];
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
 * @returns the names of the sheets, and what of the programme a workbook cannot hold [text]
 * @problem workbook.already_there - thrown as WriteRefused when the file is there and overwrite is not asked for
 * @law readProgramme gives of the workbook what it gives of the folder that writeProgramme writes
 * @source ecma-376, Part 1 (from memory)
 */
export async function writeWorkbook(
  path: string,
  programme: ProgrammeTables,
  options: { readonly overwrite?: boolean } = {},
): Promise<{ readonly sheets: readonly string[]; readonly told: readonly Problem[] }> {
  await refuseWhatIsThere(path, options.overwrite === true);
  const sheets = sheetsOf(programme);
  const bytes = await write([...sheets]).toBuffer();
  await writeFileWhole(path, bytes);
  return {
    sheets: sheets.map(({ sheet }) => sheet),
    told: (programme.rawFiles ?? []).flatMap((file) => notHeld(file, programme)),
  };
}
