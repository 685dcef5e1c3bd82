import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { isoDay, type Problem } from '@eavewell/engine';
import { folderTableNames, folderTables, idForm, type RawRow, rain, tableProblem } from '@eavewell/tables';
import { decodeText } from './decodeText.ts';
import type { CellValue, ProgrammeTables } from './programmeTables.ts';
import { readCsvFile } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';
import { readRainFile } from './readRainFile.ts';
import { rainRows, rowsAsRead, type TablesAsRead } from './rowsAsRead.ts';
import { settingsLost } from './settingsLost.ts';
import { isStationCsv } from './stationCsv.ts';
import { isWorkbook } from './workbook/isWorkbook.ts';
import { workbookAsRead } from './workbook/workbookAsRead.ts';

type Row = Readonly<Record<string, CellValue>>;

/** Gathers a folder file by file. */
class FolderGatherer {
  readonly told: Problem[] = [];
  private readonly folder: string;
  constructor(folder: string) {
    this.folder = folder;
  }

  async table(name: (typeof folderTableNames)[number]): Promise<readonly Row[] | null> {
    const { file, columns } = folderTables[name];
    const found = await readFileBytes(this.folder, file);
    if (found.bytes === null) {
      if (found.problem) this.told.push(found.problem);
      return null;
    }
    const csv = readCsvFile(found.bytes, { file, columns: Object.keys(columns), needed: false });
    this.told.push(...csv.problems);
    if (csv.header.length === 0) return null;
    const cut = csv.notUsed.map(({ row, cells }): RawRow => ({ row, cells, broken: true }));
    return rowsAsRead(csv.header, [...csv.rows, ...cut], columns, csv.decimalComma);
  }

  async rain(): Promise<ProgrammeTables['rain']> {
    const names = await readdir(join(this.folder, 'rain')).catch((): string[] => []);
    const rain: ProgrammeTables['rain'][number][] = [];
    for (const name of names.sort()) {
      const [, gaugeId = '', end] = /^(.*)\.(csv|dly)$/.exec(name) ?? [];
      const file = `rain/${name}`;
      if (!idForm.test(gaugeId)) {
        if (!name.startsWith('.'))
          this.told.push(tableProblem('file.unknown', { file }, { value: file, expected: '' }));
      } else if (end === 'csv' && rain.every((one) => one.gaugeId !== gaugeId))
        rain.push(await this.rainFile(gaugeId, file));
      else if (!names.includes(`${gaugeId}.csv`)) rain.push(await this.stationDays(gaugeId, file));
      else
        this.told.push(tableProblem('rainFile.two_files', { file, gaugeId }, { value: file, other: `${gaugeId}.csv` }));
    }
    return rain;
  }

  private async rainFile(gaugeId: string, file: string): Promise<ProgrammeTables['rain'][number]> {
    const found = await readFileBytes(this.folder, file);
    if (found.bytes === null) {
      if (found.problem) this.told.push(found.problem);
      return { gaugeId, rows: [] };
    }
    const csv = readCsvFile(found.bytes, { file, columns: Object.keys(rain.columns), needed: false });
    if (isStationCsv(csv.header)) return this.stationDays(gaugeId, file);
    this.told.push(...csv.problems);
    const cut = csv.notUsed.map(({ row, cells }): RawRow => ({ row, cells, broken: true }));
    return { gaugeId, rows: rainRows(csv.header, [...csv.rows, ...cut], csv.decimalComma, file, this.told) };
  }

  private async stationDays(gaugeId: string, file: string): Promise<ProgrammeTables['rain'][number]> {
    const read = await readRainFile(this.folder, gaugeId);
    this.told.push(tableProblem('carried.station_days', { file, gaugeId }, { value: file, expected: '' }));
    return { gaugeId, rows: read.readings.map(({ day, rain_mm }) => ({ date: isoDay(day), rain_mm })) };
  }

  async settings(): Promise<Readonly<Record<string, unknown>>> {
    const file = 'settings.json';
    const found = await readFileBytes(this.folder, file);
    if (found.bytes === null && found.problem === null) return {};
    const decoded = found.bytes === null ? null : decodeText(found.bytes);
    try {
      const given: unknown = JSON.parse(decoded !== null && 'text' in decoded ? decoded.text : '');
      if (typeof given === 'object' && given !== null && !Array.isArray(given)) return given as Record<string, unknown>;
    } catch {
      // said below
    }
    this.told.push(
      tableProblem('carried.settings_left', { file }, { value: file, expected: 'settings that can be read' }),
    );
    return settingsLost(file);
  }
}

async function folderAsRead(folder: string): Promise<TablesAsRead> {
  const gatherer = new FolderGatherer(folder);
  const tables: Partial<Record<(typeof folderTableNames)[number], readonly Row[]>> = {};
  for (const name of folderTableNames) {
    const rows = await gatherer.table(name);
    if (rows !== null) tables[name] = rows;
  }
  const rain = await gatherer.rain();
  const settings = await gatherer.settings();
  return { programme: { settings: { ...settings }, tables, rain }, told: gatherer.told };
}

/**
 * Every row of a programme as it stands, to be written anew in another form: those that cannot be used too, as their texts.
 *
 * @param path - the programme folder, or a workbook [text]
 * @returns the tables as they were read, and what could not be carried over or only otherwise
 * @problem carried.station_days - and the other codes that begin so
 * @law written and read again, a row that could be used has the same values, and one that could not still cannot, but for dates with the year last whose
 * order a column of a workbook proves
 * @definition ours: docs/decisions/0073-converting.md
 */
export async function tablesAsRead(path: string): Promise<TablesAsRead> {
  return (await isWorkbook(path)) ? workbookAsRead(path) : folderAsRead(path);
}
