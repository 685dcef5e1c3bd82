import type { Place, Problem } from '@eavewell/engine';
import {
  bearingOf,
  type CellRefusal,
  type DateOrder,
  type FileMatching,
  idForm,
  type NotUsed,
  type RawRow,
  shown,
  type Table,
  tableProblem,
} from '@eavewell/tables';
import { type CellTaking, cellText, storedIn } from './cellTexts.ts';
import { type RowMade, settleDates } from './columnDates.ts';
import { type CellRange, columnLetters, type SheetCell, type SheetCells, type SheetRow } from './sheetCells.ts';
import { isProblem } from './sheets.ts';
import type { DaySystem } from './spreadsheetDays.ts';
import { stopped } from './stopped.ts';
import { columnsOf, mergedIn, type TableRegion, tableRegion } from './tableRegion.ts';

/** A sheet as header and rows of texts, ready for the reader of its table. */
export interface SheetTable {
  readonly header: readonly string[];
  readonly headerRow: number;
  readonly rows: readonly RawRow[];
  /** The letters of each column by its name. */
  readonly letters: ReadonlyMap<string, string>;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

/** What is asked of a sheet. */
export interface SheetAsked {
  readonly file: string;
  readonly table: Pick<Table, 'name' | 'columns'>;
  readonly days: DaySystem;
  /** Does it matter that it has no rows? */
  readonly needed: boolean;
  /** Are rows left empty between others to be named? Not in rain, where a day may be left out. */
  readonly namesEmptyRows: boolean;
  readonly gaugeId?: string;
  /** Are texts of days to be left as they stand, whatever their column shows of their order? */
  readonly leavesDates?: boolean;
  /** What was accepted for its headers; left out or null where nothing was. */
  readonly matching?: FileMatching | null;
  /** The column by which rows of several hands are told apart: the dates of one say nothing of those of another. */
  readonly oneHand?: string;
}

interface Tally {
  readonly row: number;
  readonly value: string;
  readonly likely: string;
  count: number;
}

const takingCodes = {
  formula: 'column.formulas',
  dayFromNumber: 'column.dates_from_numbers',
  timeLeftOut: 'column.time_left_out',
  dateNotAsked: 'column.date_not_asked',
} as const satisfies Readonly<Record<CellTaking, string>>;

/** How many rows left empty are named. */
const emptyRowsNamed = 20;

/** The place of the first row below a number, among rows from top to bottom. */
function firstAfter(rows: readonly SheetRow[], row: number): number {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.row > row) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Turns the cells of one sheet into rows of texts, and writes down how they were taken. */
class SheetTableReader {
  readonly problems: Problem[] = [];
  readonly notUsed: NotUsed[] = [];
  private readonly tallies = new Map<string, Tally>();
  private readonly asked: SheetAsked;
  private readonly sheet: SheetCells;
  private readonly region: TableRegion;
  private readonly named;
  private readonly placeOf;
  private readonly besides: { row: number; column: number; value: string }[] = [];

  constructor(asked: SheetAsked, sheet: SheetCells, region: TableRegion) {
    this.asked = asked;
    this.sheet = sheet;
    this.region = region;
    this.placeOf = new Map(region.columns.map((column, at) => [column, at]));
    this.named = new Map(columnsOf(region, asked.table.columns, asked.matching ?? null).map((one) => [one.at, one]));
  }

  place(row: number, column?: number): Place {
    const { file, gaugeId } = this.asked;
    const at = column === undefined ? -1 : (this.placeOf.get(column) ?? -1);
    const name = this.region.header[at] ?? '';
    return {
      file,
      row,
      ...(name === '' ? {} : { column: name }),
      ...(column === undefined ? {} : { cell: `${columnLetters(column)}${row}` }),
      ...(gaugeId === undefined ? {} : { gaugeId }),
    };
  }

  /** The cells of a row by their place in the table, and those beside it. */
  private cellsOf({ row, columns, cells }: SheetRow): ReadonlyMap<number, SheetCell> {
    const found = new Map<number, SheetCell>();
    let next = this.region.lastColumn + 1;
    let extra = this.region.columns.length;
    columns.forEach((column, i) => {
      const cell = cells[i]!;
      if (column <= this.region.lastColumn) found.set(this.placeOf.get(column)!, cell);
      else if (column === next) [next] = [next + 1, found.set(extra++, cell)];
      else this.besides.push({ row, column, value: shown(cellText(cell, null, this.asked.days).text) });
    });
    return found;
  }

  /** Takes away what merged cells hide: a merged range has the value of its first cell only. */
  private unmerge(rows: readonly SheetRow[]): readonly SheetRow[] {
    const ranges = mergedIn(this.sheet, this.region);
    for (const { text, fromRow, fromColumn } of ranges) {
      const facts = { value: text, expected: 'one cell for each value' };
      this.problems.push(tableProblem('sheet.merged', this.place(Math.max(fromRow, 1), fromColumn), facts));
    }
    if (ranges.length === 0) return rows;
    for (const range of ranges) this.mergedIds(range, rows);
    const waiting = ranges.toSorted((a, b) => b.fromRow - a.fromRow);
    let open: readonly CellRange[] = [];
    return rows.map((row) => {
      const begun: CellRange[] = [];
      while (waiting.length > 0 && waiting.at(-1)!.fromRow <= row.row) begun.push(waiting.pop()!);
      // Ranges cannot overlap, so no more are open than there are columns; a file that says otherwise is not believed further.
      open = [...open, ...begun].filter(({ toRow }) => toRow >= row.row).slice(0, this.region.columns.length);
      const over = open;
      const isHidden = (column: number) =>
        over.some((range) => {
          const isFirst = row.row === range.fromRow && column === range.fromColumn;
          return column >= range.fromColumn && column <= range.toColumn && !isFirst;
        });
      const kept = row.columns.map((column) => !isHidden(column));
      if (kept.every(Boolean)) return row;
      row.columns.forEach((column, i) => {
        if (kept[i] === false) this.hide(row.row, column, row.cells[i]!);
      });
      return {
        row: row.row,
        columns: row.columns.filter((_, i) => kept[i]),
        cells: row.cells.filter((_, i) => kept[i]),
      };
    });
  }

  /** Rows whose site stands in a merged cell above are likely of that site, which must not be judged without them. */
  private mergedIds({ text, fromRow, toRow, fromColumn }: CellRange, rows: readonly SheetRow[]): void {
    const at = this.placeOf.get(fromColumn) ?? -1;
    if (this.named.get(at)?.name !== 'siteId') return;
    const begin = firstAfter(rows, fromRow - 1);
    const first = rows[begin];
    const cell = first?.row === fromRow ? first.cells[first.columns.indexOf(fromColumn)] : undefined;
    const siteId = cell === undefined ? '' : cellText(cell, null, this.asked.days).text.trim();
    const count = firstAfter(rows, toRow) - begin - 1;
    if (count < 1 || !idForm.test(siteId)) return;
    const place = { ...this.place(fromRow, fromColumn), siteId };
    const bears = bearingOf(this.asked.table.name, true);
    const facts = { value: text, count, expected: 'an id in every row', bears };
    this.problems.push(tableProblem('sheet.merged_ids', place, facts));
  }

  private hide(row: number, column: number, cell: SheetCell): void {
    const value = shown(cellText(cell, null, this.asked.days).text);
    this.problems.push(
      tableProblem('cell.under_merge', this.place(row, column), { value, expected: 'no merged cells' }),
    );
    this.list(row, columnLetters(column), value, 'cell.under_merge');
  }

  private list(row: number, column: string, value: string, code: NotUsed['code']): void {
    this.notUsed.push({ file: this.asked.file, row, column, value, code, cells: [value] });
  }

  private tally(row: number, at: number, taking: CellTaking, value: unknown, likely: string): void {
    const key = `${at} ${taking}`;
    const before = this.tallies.get(key);
    if (before) before.count++;
    else this.tallies.set(key, { row, value: shown(String(value)), likely, count: 1 });
  }

  rows(): readonly RawRow[] {
    const rows: RowMade[] = [];
    const dates = new Map<number, (SheetCell | undefined)[]>();
    for (const { at, column } of this.named.values()) if (column.kind === 'date') dates.set(at, []);
    for (const sheetRow of this.unmerge(this.region.body)) {
      const found = this.cellsOf(sheetRow);
      if (found.size === 0) continue;
      const cells = this.region.columns.map(() => '');
      const refused = new Map<number, CellRefusal>();
      for (const [at, cell] of found) {
        const { text, takings } = cellText(cell, this.named.get(at)?.column ?? null, this.asked.days);
        cells[at] = text;
        for (const taking of takings) this.tally(sheetRow.row, at, taking, storedIn(cell), text);
        if (typeof cell === 'object' && cell.refusal !== null) refused.set(at, cell.refusal);
      }
      for (const [at, column] of dates) column.push(found.get(at));
      rows.push({ row: sheetRow.row, cells, ...(refused.size > 0 ? { refused } : {}) });
    }
    if (this.asked.leavesDates === true) return rows;
    const groups = this.groups(rows);
    for (const [at, column] of dates)
      for (const group of groups) {
        const order = this.orderSaid(at);
        const found = { at, order, cells: group.map((i) => column[i]), rows: group.map((i) => rows[i]!) };
        const of = { ...found, days: this.asked.days };
        this.problems.push(...settleDates(of, (row) => this.place(row, this.region.columns[at]!)));
      }
    return rows;
  }

  /** In which order the days of a column were said to stand; null where nothing was said. */
  private orderSaid(at: number): DateOrder | null {
    return this.asked.matching?.columns.get(this.region.header[at]!)?.dateOrder ?? null;
  }

  /** Rows that were likely written by one hand: all of a table; those of one gauge where a sheet holds several. */
  private groups(rows: readonly RawRow[]): readonly (readonly number[])[] {
    const hand = [...this.named.values()].find(({ name }) => name === this.asked.oneHand);
    const at = hand?.at ?? -1;
    const groups = new Map<string, number[]>();
    rows.forEach(({ cells }, i) => {
      const key = at < 0 ? '' : cells[at]!.trim();
      const group = groups.get(key);
      if (group) group.push(i);
      else groups.set(key, [i]);
    });
    return [...groups.values()];
  }

  finish(rows: readonly RawRow[]): void {
    const { headerRow, above } = this.region;
    if (above.length > 0) {
      const value = shown(cellText(above[0]!.cells[0]!, null, this.asked.days).text);
      const facts = { value, headerRow, count: above.length, expected: 'the header in the first row' };
      this.problems.push(tableProblem('sheet.header_below', this.place(headerRow), facts));
    }
    for (const [key, { row, ...facts }] of this.tallies) {
      const [at, taking] = key.split(' ') as [string, CellTaking];
      const place = this.place(row, this.region.columns[Number(at)]);
      this.problems.push(tableProblem(takingCodes[taking], place, { ...facts, system: this.asked.days, expected: '' }));
    }
    this.hiddenParts();
    this.beside();
    this.emptyRows(rows);
  }

  private hiddenParts(): void {
    const rows = this.sheet.hiddenRows.filter((row) => row > this.region.headerRow);
    const columns = this.region.columns.filter((column) =>
      this.sheet.hiddenColumns.some(({ from, to }) => column >= from && column <= to),
    );
    if (rows.length + columns.length === 0) return;
    const facts = { value: '', rows: rows.length, columns: columns.length, expected: 'nothing hidden' };
    this.problems.push(tableProblem('sheet.rows_hidden', this.place(rows[0] ?? this.region.headerRow), facts));
  }

  private beside(): void {
    const [first] = this.besides;
    if (first === undefined) return;
    const facts = { value: first.value, count: this.besides.length, expected: 'cells under a column name' };
    this.problems.push(tableProblem('sheet.beside_table', this.place(first.row, first.column), facts));
    for (const { row, column, value } of this.besides)
      this.list(row, columnLetters(column), value, 'sheet.beside_table');
  }

  private emptyRows(rows: readonly RawRow[]): void {
    const places: number[] = [];
    let count = 0;
    let before = this.region.headerRow;
    for (const { row } of rows) {
      for (let empty = before + 1; empty < row && places.length < emptyRowsNamed; empty++) places.push(empty);
      count += row - before - 1;
      before = row;
    }
    if (count === 0 || !this.asked.namesEmptyRows) return;
    const facts = { value: '', expected: 'a row', count, rows: places.map(String) };
    this.problems.push(tableProblem('row.empty', { file: this.asked.file, row: places[0]! }, facts));
  }
}

function regionOf(
  sheet: SheetCells,
  { table, matching = null }: SheetAsked,
  place: Place,
): TableRegion | Problem | null {
  try {
    return tableRegion(sheet, table.columns, matching);
  } catch (error) {
    return stopped(error, place, '');
  }
}

/**
 * Which rows of texts stand in a sheet? The header is looked for, cells become the texts the reader of the table reads, and all that
 * is not simply so is said.
 *
 * @param sheet - its cells
 * @param asked - the table it is to hold, its place, and which day the workbook counts from
 * @returns header, rows with the numbers the spreadsheet shows, and the problems; null with a problem where there is no table
 * @problem file.empty - nothing stands in it
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function readSheetTable(sheet: SheetCells, asked: SheetAsked): SheetTable | Problem {
  const { file, gaugeId } = asked;
  const place = { file, ...(gaugeId === undefined ? {} : { gaugeId }) };
  const region = regionOf(sheet, asked, place);
  if (region !== null && isProblem(region)) return region;
  const expected = Object.keys(asked.table.columns);
  if (region === null) return tableProblem('file.empty', place, { value: file, expected });
  const reader = new SheetTableReader(asked, sheet, region);
  const rows = reader.rows();
  reader.finish(rows);
  if (rows.length === 0) {
    const code = asked.needed ? 'file.no_rows' : 'file.no_rows_optional';
    reader.problems.push(tableProblem(code, place, { value: file, expected: 'rows under the header' }));
  }
  const letters = new Map(region.header.map((name, at) => [name, columnLetters(region.columns[at]!)]));
  // What is said of a column names ours.
  for (const { name, at } of columnsOf(region, asked.table.columns, asked.matching ?? null))
    letters.set(name, columnLetters(region.columns[at]!));
  const { header, headerRow } = region;
  return { header, headerRow, rows, letters, problems: reader.problems, notUsed: reader.notUsed };
}
