import type { Problem } from '@eavewell/engine';
import {
  folderTableNames,
  folderTables,
  gaugeOfSheet,
  idForm,
  nearest,
  type RawRow,
  rain,
  rainSheet,
  readGuarded,
  settingsSheet,
  sheetNames,
  type Table,
  tableProblem,
} from '@eavewell/tables';
import { readColumnsFile } from '../columnsSaved.ts';
import type { ProgrammeTables, RainRow } from '../programmeTables.ts';
import { isFilled, rainRows, rowsAsRead, type SheetLaid, type TablesAsRead } from '../rowsAsRead.ts';
import { settingsLost } from '../settingsLost.ts';
import { type MatchedWorkbook, matchedWorkbook, underOurHeaders } from './matchedWorkbook.ts';
import { openWorkbook } from './openWorkbook.ts';
import { settingsOfRows } from './readSettingsSheet.ts';
import { readSheetTable, type SheetTable } from './readSheetTable.ts';
import { findSheet, isProblem, sheetFile } from './sheets.ts';

/** A day that may have been swapped is written so that nobody can take it for one: 2001-03-02 as 02/03/2001. */
function unswapped(raw: RawRow): RawRow {
  const swapped = [...(raw.refused ?? [])].filter(([, code]) => code === 'cell.date_swapped').map(([at]) => at);
  if (swapped.length === 0) return raw;
  const cells = raw.cells.map((text, at) =>
    swapped.includes(at) ? text.replace(/^(\d{4})-(\d{2})-(\d{2})$/, '$3/$2/$1') : text,
  );
  return { ...raw, cells };
}

/** Gathers a workbook sheet by sheet. */
class WorkbookGatherer {
  readonly told: Problem[] = [];
  /** The sheet each file comes from; null where there are several. */
  private readonly laid = new Map<string, SheetLaid | null>();
  private readonly workbook: MatchedWorkbook;
  private readonly rain = new Map<string, RainRow[]>();

  constructor(workbook: MatchedWorkbook) {
    this.workbook = workbook;
    this.told.push(...workbook.problems);
  }

  private async sheet(name: string, table: Pick<Table, 'name' | 'columns'>): Promise<SheetTable | 'none' | 'lost'> {
    const found = await findSheet(this.workbook, name, false);
    this.told.push(...found.problems);
    if (found.cells === null) return found.isThere ? 'lost' : 'none';
    const file = sheetFile(this.workbook, name);
    const { days } = this.workbook;
    const matching = this.workbook.matchingOf(name);
    const sheet = readSheetTable(found.cells, {
      file,
      table,
      days,
      needed: false,
      namesEmptyRows: false,
      oneHand: 'gaugeId',
      matching,
    });
    if (isProblem(sheet)) {
      this.told.push(sheet);
      return 'none';
    }
    this.told.push(...sheet.problems);
    return underOurHeaders({ ...sheet, rows: sheet.rows.map(unswapped) }, table, matching);
  }

  get sheets(): ReadonlyMap<string, SheetLaid> {
    return new Map([...this.laid].flatMap(([file, sheet]) => (sheet === null ? [] : [[file, sheet]])));
  }

  private lay(file: string, name: string, rows: readonly RawRow[]): void {
    const laid = { sheet: this.workbook.titleOf(name), rows: rows.filter(isFilled).map(({ row }) => row) };
    this.laid.set(file, this.laid.has(file) ? null : laid);
  }

  async table(name: (typeof folderTableNames)[number]) {
    const { columns } = folderTables[name];
    const sheet = await this.sheet(name, { name, columns });
    if (typeof sheet === 'string') return null;
    this.lay(folderTables[name].file, name, sheet.rows);
    return rowsAsRead(sheet.header, sheet.rows, columns, false);
  }

  async settings(): Promise<Readonly<Record<string, unknown>>> {
    const file = sheetFile(this.workbook, 'settings');
    const sheet = await this.sheet('settings', settingsSheet);
    if (sheet === 'none') return {};
    const [fieldAt, valueAt] =
      sheet === 'lost' ? [-1, -1] : (['field', 'value'].map((name) => sheet.header.indexOf(name)) as [number, number]);
    if (sheet === 'lost' || fieldAt < 0 || valueAt < 0) {
      this.told.push(tableProblem('carried.settings_left', { file }, { value: file, expected: 'field, value' }));
      return settingsLost(file);
    }
    const rows = sheet.rows.map(({ cells }) => ({
      field: cells[fieldAt]!.trim(),
      value: readGuarded(cells[valueAt]!.trim()),
    }));
    const filled = rows.filter(({ field, value }) => field !== '' && value !== '');
    // A field that stands twice says two things, and nobody can tell which is meant.
    const isTwice = filled.some(({ field, value }) => filled.some((row) => row.field === field && row.value !== value));
    if (!isTwice) return settingsOfRows(filled);
    this.told.push(tableProblem('carried.settings_left', { file }, { value: file, expected: 'each field once' }));
    return settingsLost(file);
  }

  private addRain(gaugeId: string, name: string, header: readonly string[], raws: readonly RawRow[]): void {
    this.lay(`rain/${gaugeId}.csv`, name, raws);
    const rows = rainRows(header, raws, false);
    const before = this.rain.get(gaugeId);
    if (before === undefined) this.rain.set(gaugeId, [...rows]);
    else for (const row of rows) before.push(row);
  }

  async rainOfAll(): Promise<void> {
    const sheet = await this.sheet('rain', rainSheet);
    if (typeof sheet === 'string') return;
    const file = sheetFile(this.workbook, 'rain');
    const at = sheet.header.indexOf('gaugeId');
    const groups = new Map<string, RawRow[]>();
    for (const raw of sheet.rows) {
      const id = at < 0 ? '' : raw.cells[at]!.trim();
      groups.set(id, groups.get(id) ?? []);
      groups.get(id)!.push(raw);
    }
    let left = 0;
    for (const [gaugeId, rows] of groups) {
      if (!idForm.test(gaugeId)) left += rows.length;
      else this.addRain(gaugeId, 'rain', sheet.header, rows);
    }
    if (left === 0) return;
    this.told.push(tableProblem('carried.rows_left', { file }, { value: file, count: left, expected: 'gaugeId' }));
  }

  async rainOfOne(name: string, gaugeId: string): Promise<void> {
    const sheet = await this.sheet(name, rain);
    if (typeof sheet === 'string') return;
    const file = sheetFile(this.workbook, name);
    const other = sheetFile(this.workbook, 'rain');
    if (this.rain.has(gaugeId))
      this.told.push(tableProblem('rainFile.two_files', { file, gaugeId }, { value: other, other: file }));
    this.addRain(gaugeId, name, sheet.header, sheet.rows);
  }

  others(): void {
    const ours = sheetNames;
    for (const { name } of this.workbook.sheets) {
      if (ours.includes(name) || gaugeOfSheet(name) !== null) continue;
      const likely = nearest(name, ours) ?? '';
      const facts = { value: name, likely, expected: ours };
      const code = likely === '' ? 'sheet.unknown' : 'sheet.misnamed';
      this.told.push(tableProblem(code, { file: sheetFile(this.workbook, name) }, facts));
    }
  }

  async all(): Promise<ProgrammeTables> {
    const tables: Partial<Record<(typeof folderTableNames)[number], ReturnType<typeof rowsAsRead>>> = {};
    for (const name of folderTableNames) {
      const rows = await this.table(name);
      if (rows !== null) tables[name] = rows;
    }
    await this.rainOfAll();
    for (const { name } of this.workbook.sheets) {
      const gaugeId = gaugeOfSheet(name);
      if (gaugeId !== null) await this.rainOfOne(name, gaugeId);
    }
    this.others();
    const settings = { ...(await this.settings()) };
    return { settings, tables, rain: [...this.rain].map(([gaugeId, rows]) => ({ gaugeId, rows })) };
  }
}

/**
 * Every row of a workbook as it stands, to be written anew in another form.
 *
 * @param path - the workbook [text]
 * @returns the tables as they were read, and what could not be carried over or only otherwise
 * @definition ours: docs/decisions/0073-converting.md
 */
export async function workbookAsRead(path: string): Promise<TablesAsRead> {
  const opened = await openWorkbook(path);
  if (isProblem(opened)) return { programme: { settings: {}, tables: {}, rain: [] }, told: [opened] };
  const workbook = matchedWorkbook(opened, await readColumnsFile(path));
  const gatherer = new WorkbookGatherer(workbook);
  const programme = await gatherer.all();
  return { programme, told: gatherer.told, sheets: gatherer.sheets };
}
