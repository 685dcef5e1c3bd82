import type { Problem } from '@eavewell/engine';
import {
  idForm,
  type NotUsed,
  nearest,
  type RainOfGauge,
  type RawRow,
  rain,
  rainSheet,
  readHeader,
  readRain,
  tableProblem,
} from '@eavewell/tables';
import type { MatchedWorkbook } from './matchedWorkbook.ts';
import { readSheetTable, type SheetTable } from './readSheetTable.ts';
import { findSheet, isProblem, sheetFile } from './sheets.ts';

/** The rain of a workbook. */
export interface RainOfWorkbook {
  readonly byGauge: ReadonlyMap<string, RainOfGauge>;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly files: readonly { readonly file: string; readonly rows: number }[];
  readonly letters: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

/** The sheet of all gauges. */
const ofAll = 'rain';
const columnsOfAll = Object.keys(rainSheet.columns);

/** Faults of the header are the sheet's, and said once; its column of gauges is none of a gauge's record. */
function ofSheet(problems: readonly Problem[], isFirst: boolean): readonly Problem[] {
  return problems.flatMap((problem) => {
    if (!/^(?:header|columns)\./.test(problem.code)) return problem;
    const { gaugeId: _, ...place } = problem.place;
    return isFirst && place.column !== 'gaugeId' ? { ...problem, place } : [];
  });
}

/** Gathers the rain of a workbook sheet by sheet. */
class RainGatherer {
  readonly byGauge = new Map<string, RainOfGauge>();
  readonly problems: Problem[] = [];
  readonly notUsed: NotUsed[] = [];
  readonly files: { readonly file: string; readonly rows: number }[] = [];
  readonly letters = new Map<string, ReadonlyMap<string, string>>();
  /** Gauges about whose rain something was said already. */
  readonly told = new Set<string>();
  /** Gauges whose rain stands in two places. */
  private readonly refused = new Set<string>();
  private readonly workbook: MatchedWorkbook;
  private readonly gaugeIds: ReadonlySet<string>;

  constructor(workbook: MatchedWorkbook, gaugeIds: readonly string[]) {
    this.workbook = workbook;
    this.gaugeIds = new Set(gaugeIds);
  }

  private async sheet(name: string, gaugeId: string | null): Promise<SheetTable | null> {
    const found = await findSheet(this.workbook, name, false);
    const of = gaugeId === null ? {} : { gaugeId };
    this.problems.push(...found.problems.map((problem) => ({ ...problem, place: { ...problem.place, ...of } })));
    if (found.isThere) for (const id of gaugeId === null ? this.gaugeIds : [gaugeId]) this.told.add(id);
    if (found.cells === null) return null;
    const table = gaugeId === null ? rainSheet : rain;
    const file = sheetFile(this.workbook, name);
    const { days } = this.workbook;
    const sheet = readSheetTable(found.cells, {
      file,
      table,
      days,
      needed: true,
      namesEmptyRows: false,
      oneHand: 'gaugeId',
      matching: this.workbook.matchingOf(name),
      ...of,
    });
    if (isProblem(sheet)) {
      this.problems.push(sheet);
      return null;
    }
    this.letters.set(file, sheet.letters);
    this.problems.push(...sheet.problems);
    this.notUsed.push(...sheet.notUsed);
    return sheet;
  }

  async gauge(gaugeId: string): Promise<void> {
    if (this.refused.has(gaugeId)) return;
    const name = `${ofAll} ${gaugeId}`;
    const file = sheetFile(this.workbook, name);
    const sheet = await this.sheet(name, gaugeId);
    if (sheet === null) return;
    const matching = this.workbook.matchingOf(name);
    const options = { file, decimalComma: false, headerRow: sheet.headerRow, matching };
    const read = readRain(gaugeId, sheet.header, sheet.rows, options);
    this.keep(gaugeId, file, read);
    this.files.push({ file, rows: read.count });
  }

  private keep(gaugeId: string, file: string, read: ReturnType<typeof readRain>): void {
    this.problems.push(...read.problems);
    this.notUsed.push(...read.notUsed);
    this.byGauge.set(gaugeId, { file, readings: read.readings, problems: read.problems });
  }

  private lose(file: string, raw: RawRow, code: NotUsed['code'], value: string): void {
    this.notUsed.push({ file, row: raw.row, value, code, cells: raw.cells });
  }

  async all(): Promise<void> {
    const sheet = await this.sheet(ofAll, null);
    if (sheet === null) return;
    const file = sheetFile(this.workbook, ofAll);
    const filled = sheet.rows.filter(({ cells }) => cells.some((text) => text.trim() !== ''));
    this.files.push({ file, rows: filled.length });
    const header = this.headerOfAll(file, sheet);
    if (header.usable) this.byGaugeId(file, sheet, filled, header.at.get('gaugeId')!);
    else {
      this.problems.push(...header.problems.filter(({ severity }) => severity === 'blocker'));
      for (const raw of filled) this.lose(file, raw, 'header.column_missing', raw.cells.join(','));
    }
  }

  private headerOfAll(file: string, { header, headerRow }: SheetTable) {
    const matching = this.workbook.matchingOf(ofAll);
    return readHeader(rainSheet, header, file, { needed: columnsOfAll, matching, row: headerRow });
  }

  /** Parts the rows by their gauge and reads each gauge's as its own record. */
  private byGaugeId(file: string, sheet: SheetTable, filled: readonly RawRow[], at: number): void {
    const matching = this.workbook.matchingOf(ofAll);
    const groups = new Map<string, RawRow[]>();
    for (const raw of filled) {
      const id = (raw.cells[at] ?? '').trim();
      const group = groups.get(id);
      if (group) group.push(raw);
      else groups.set(id, [raw]);
    }
    let isFirst = true;
    for (const [gaugeId, rows] of groups) {
      const own = `${ofAll} ${gaugeId}`;
      if (!this.gaugeIds.has(gaugeId)) this.strange(file, gaugeId, rows);
      else if (this.workbook.sheets.some(({ name }) => name === own)) this.both(file, gaugeId, rows);
      else {
        const options = { file, decimalComma: false, headerRow: sheet.headerRow, matching };
        const read = readRain(gaugeId, sheet.header, rows, options);
        this.keep(gaugeId, file, { ...read, problems: ofSheet(read.problems, isFirst) });
        isFirst = false;
      }
    }
    for (const gaugeId of this.gaugeIds) if (!groups.has(gaugeId)) this.told.delete(gaugeId);
  }

  /** Gauges without a reading: with what was said of their sheets, for normals do not stand in for one that is to be mended. */
  notRead(): void {
    const common = sheetFile(this.workbook, ofAll);
    for (const gaugeId of this.gaugeIds) {
      if (this.byGauge.has(gaugeId)) continue;
      const isOf = ({ place }: Problem) =>
        place.gaugeId === gaugeId || (place.gaugeId === undefined && place.file === common && this.told.has(gaugeId));
      const file = sheetFile(this.workbook, `${ofAll} ${gaugeId}`);
      this.byGauge.set(gaugeId, { file, readings: [], problems: this.problems.filter(isOf) });
    }
  }

  /** Nobody can tell which of the two holds: neither is used. */
  private both(file: string, gaugeId: string, rows: readonly RawRow[]): void {
    const other = sheetFile(this.workbook, `${ofAll} ${gaugeId}`);
    const facts = { value: file, other, expected: 'one sheet for a gauge' };
    this.problems.push(tableProblem('rainFile.two_files', { file, row: rows[0]!.row, gaugeId }, facts));
    for (const raw of rows) this.lose(file, raw, 'rainFile.two_files', gaugeId);
    this.refused.add(gaugeId);
  }

  /** Rows that name no gauge there is: one problem for each id, and every row listed. */
  private strange(file: string, gaugeId: string, rows: readonly RawRow[]): void {
    const place = { file, row: rows[0]!.row, column: 'gaugeId' };
    const likely = nearest(gaugeId, this.gaugeIds) ?? '';
    const facts = { value: gaugeId, count: rows.length, likely, expected: 'a gauge of the sheet gauges' };
    const code =
      gaugeId === '' ? 'cell.missing' : idForm.test(gaugeId) ? 'rainFile.rows_without_gauge' : 'cell.unsafe_id';
    this.problems.push(tableProblem(code, place, facts));
    for (const raw of rows) this.lose(file, raw, code, gaugeId);
  }
}

/**
 * Which rain has each gauge in this workbook? From the sheet `rain`, or from a sheet of its own.
 *
 * @param workbook - the workbook
 * @param gaugeIds - the gauges there are [text]
 * @returns readings by gauge, problems, rows not used, and how many rows each sheet has
 * @problem rainFile.two_files - a gauge has rows in `rain` and a sheet of its own; neither is used
 * @problem rainFile.missing - a gauge has neither
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export async function readRainSheets(workbook: MatchedWorkbook, gaugeIds: readonly string[]): Promise<RainOfWorkbook> {
  const gatherer = new RainGatherer(workbook, gaugeIds);
  await gatherer.all();
  for (const gaugeId of gaugeIds) await gatherer.gauge(gaugeId);
  for (const gaugeId of gaugeIds) {
    if (gatherer.told.has(gaugeId)) continue;
    const file = sheetFile(workbook, `${ofAll} ${gaugeId}`);
    gatherer.problems.push(
      tableProblem('rainFile.missing', { file, gaugeId }, { value: file, expected: `${ofAll} ${gaugeId}` }),
    );
  }
  gatherer.notRead();
  return gatherer;
}
