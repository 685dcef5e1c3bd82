import { convertedTo, type Place, type Problem } from '@eavewell/engine';
import { bearingOf } from '../contract/bearing.ts';
import { expectedText, idForm } from '../contract/columns.ts';
import type { CellsOf, Column, Columns, Table } from '../contract/table.ts';
import type { FileMatching } from '../matching/readColumns.ts';
import { readGuarded } from './apostrophe.ts';
import { bare } from './hiddenCharacters.ts';
import { HiddenTally } from './hiddenTally.ts';
import { type CellHabit, isPercentSeen, readCell, refusedCell, shown } from './readCell.ts';
import { type HeaderReading, readHeader } from './readHeader.ts';
import { isDecimalComma, type NumberHabit, readNumber } from './readNumber.ts';
import { likelyPosition, placeOfMost, positionsFar, rowMixUps } from './rowMixUps.ts';
import { type Fault, type NotUsed, type TableProblemCode, tableProblem, tableProblems } from './tableProblems.ts';
import type { CellRefusal } from './workbookProblems.ts';

/** A line of a file as its cells. The header is row 1. */
export interface RawRow {
  readonly row: number;
  readonly cells: readonly string[];
  /** Its quotes do not close: only the cells before the fault can be believed. */
  readonly broken?: boolean;
  /** Cells that are not used whatever their column asks for, by their place in the row. */
  readonly refused?: ReadonlyMap<number, CellRefusal>;
}

/** A row that can be used. */
export interface TableRow<C extends Columns = Columns> {
  readonly row: number;
  readonly values: CellsOf<C>;
  readonly cells: readonly string[];
}

/** A row that cannot be used, with those of its keys that can be read. */
export interface LostRow {
  readonly row: number;
  readonly keys: Readonly<Record<string, string>>;
}

/** A table as it was read: what can be used, what cannot, and why. */
export interface TableRead<C extends Columns = Columns> {
  readonly file: string;
  readonly rows: readonly TableRow<C>[];
  readonly lost: readonly LostRow[];
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  /** Rows with anything in them. */
  readonly count: number;
  /** False where the header could not be used. */
  readonly usable: boolean;
}

/** What is known of the file the rows come from. */
export interface RowsOptions {
  readonly file: string;
  readonly decimalComma: boolean;
  /** What was accepted for the headers of this file; left out or null where nothing was. */
  readonly matching?: FileMatching | null;
  /** The row the header stands in; 1 where it is not given. */
  readonly headerRow?: number;
}

const isNumber = (column: Column<unknown>) => ['quantity', 'whole', 'fraction'].includes(column.kind);

/** The rows of one file being read; each fault is written down once, here. */
class RowsReader<C extends Columns> {
  readonly rows: TableRow<C>[] = [];
  readonly lost: LostRow[] = [];
  readonly problems: Problem[] = [];
  readonly notUsed: NotUsed[] = [];
  readonly commas = new Map<string, { value: string; row: number; count: number }>();
  private readonly keysSeen = new Map<string, RawRow>();
  private readonly table: Table<C>;
  private readonly header: HeaderReading;
  private readonly file: string;
  private readonly habit: NumberHabit;
  private readonly hidden = new HiddenTally();

  /** Columns in percent, as their cells show. */
  private readonly inPercent: ReadonlySet<string>;

  constructor(
    table: Table<C>,
    header: HeaderReading,
    { file, habit, rows }: { readonly file: string; readonly habit: NumberHabit; readonly rows: readonly RawRow[] },
  ) {
    const found = [...header.written].filter(([name, { unit }]) => {
      const at = header.at.get(name);
      const texts = at === undefined ? [] : rows.map(({ cells }) => cells[at] ?? '');
      return isPercentSeen(unit ?? null, texts, habit);
    });
    this.inPercent = new Set(found.map(([name]) => name));
    this.table = table;
    this.header = header;
    this.file = file;
    this.habit = habit;
  }

  cell(raw: RawRow, column: string): string {
    const at = this.header.at.get(column);
    return at === undefined ? '' : bare(raw.cells[at] ?? '');
  }

  /** An id, without the apostrophe that one beginning with a dash is written with. */
  private id(raw: RawRow, column: string): string {
    return readGuarded(this.cell(raw, column));
  }

  /** The place of a row, with the site or gauge it is about where that can be read. */
  place(raw: RawRow, column?: string): Place {
    const siteId = this.id(raw, 'siteId');
    const gaugeId = this.table.name === 'gauges' ? this.id(raw, 'gaugeId') : '';
    return {
      file: this.file,
      row: raw.row,
      ...(column === undefined ? {} : { column }),
      ...(idForm.test(siteId) ? { siteId } : {}),
      ...(idForm.test(gaugeId) ? { gaugeId } : {}),
    };
  }

  lose(raw: RawRow, code: TableProblemCode, value: string): void {
    const keys = this.table.key.map((key) => [key, this.id(raw, key)] as const);
    this.lost.push({ row: raw.row, keys: Object.fromEntries(keys.filter(([, text]) => idForm.test(text))) });
    this.notUsed.push({ file: this.file, row: raw.row, value, code, cells: raw.cells });
  }

  /** A fault of the whole row's shape; true where the row cannot be used. */
  misshapen(raw: RawRow): boolean {
    const { width } = this.header;
    const line = shown(raw.cells.join(','));
    if (raw.broken === true) {
      this.problems.push(tableProblem('row.quote_broken', this.place(raw), { value: line, expected: 'closed quotes' }));
      this.lose(raw, 'row.quote_broken', line);
      return true;
    }
    if (raw.cells.slice(width).some((text) => text.trim() !== '')) {
      const facts = { value: line, expected: `${width} cells`, cells: raw.cells.length, columns: width };
      this.problems.push(tableProblem('row.cells_too_many', this.place(raw), facts));
      this.lose(raw, 'row.cells_too_many', line);
      return true;
    }
    const missing = Object.entries(this.table.columns)
      .filter(([name, column]) => !column.required && (this.header.at.get(name) ?? -1) >= raw.cells.length)
      .map(([name]) => name);
    if (missing.length > 0) {
      const facts = { value: line, expected: `${width} cells`, cells: raw.cells.length, columns: width, missing };
      this.problems.push(tableProblem('row.cells_missing', this.place(raw), facts));
    }
    return false;
  }

  /** True where the key has stood before: the first row with it is the one used. */
  repeated(raw: RawRow): boolean {
    const key = this.table.key.map((name) => this.id(raw, name));
    const first = this.keysSeen.get(key.join(' '));
    if (first === undefined) {
      this.keysSeen.set(key.join(' '), raw);
      return false;
    }
    const same = [...this.header.at.keys()].every((name) => this.cell(raw, name) === this.cell(first, name));
    const code = same ? 'row.twice_same' : 'row.key_twice';
    const place = this.place(raw, this.table.key.at(-1)!);
    const bears = same ? {} : { bears: bearingOf(this.table.name, place.siteId !== undefined) };
    const facts = {
      ...{ value: key.filter((text) => text !== '').join(' '), firstRow: first.row, expected: 'once' },
      ...bears,
    };
    this.problems.push(tableProblem(code, place, facts));
    this.notUsed.push({ file: this.file, row: raw.row, value: facts.value, code, cells: raw.cells });
    return true;
  }

  private faultIn(raw: RawRow, name: string, fault: Fault): void {
    this.problems.push(tableProblem(fault.code, this.place(raw, name), { column: name, ...fault.facts }));
  }

  private numberIn(raw: RawRow, name: string): number | null {
    const text = this.cell(raw, name);
    const reading = text === '' ? null : readNumber(text, this.habit);
    if (reading === null || !('value' in reading)) return null;
    const unit = this.header.written.get(name)?.unit ?? null;
    return unit === null ? reading.value : convertedTo(this.table.columns[name]!.unit, unit, reading.value);
  }

  private habitOf(name: string): CellHabit {
    const written = this.header.written.get(name);
    if (written === undefined) return this.habit;
    return { ...this.habit, ...written, percentSeen: this.inPercent.has(name) };
  }

  read(raw: RawRow): void {
    if (this.misshapen(raw)) return;
    const values: Record<string, unknown> = {};
    const faulty: { name: string; fault: Fault }[] = [];
    let losing: { fault: Fault; value: string } | null = null;
    const mixUps = rowMixUps(this.table.columns, (name) => this.numberIn(raw, name), this.cell(raw, 'kind'));
    const mixedUp = new Map(mixUps.flatMap(({ columns, fault }) => columns.map((name) => [name, fault] as const)));
    for (const { columns, fault } of mixUps) this.faultIn(raw, columns[0]!, fault);
    for (const [name, column] of Object.entries(this.table.columns)) {
      const text = this.cell(raw, name);
      const cell =
        refusedCell(column, raw, this.header.at.get(name)) ??
        readCell(column, this.header.at.has(name) ? text : '', this.habitOf(name));
      if (cell.value !== null || cell.fault === null)
        this.hidden.cell(name, raw.row, raw.cells[this.header.at.get(name) ?? -1] ?? '', column.kind === 'text');
      const mixUp = mixedUp.get(name);
      const isRefused = mixUp !== undefined && tableProblems[mixUp.code] === 'blocker';
      values[name] = isRefused ? null : cell.value;
      if (cell.comma) this.commas.set(name, this.commaCount(name, text, raw.row));
      const fault = isRefused ? mixUp : cell.fault;
      if (fault === null) continue;
      if (!isRefused) this.faultIn(raw, name, fault);
      if (tableProblems[fault.code] !== 'blocker') continue;
      faulty.push({ name, fault });
      const needed = this.table.key.includes(name) || (column.required && column.kind !== 'text');
      if (needed && losing === null) losing = { fault, value: text };
    }
    if (losing !== null) {
      this.lose(raw, losing.fault.code, losing.value);
      return;
    }
    if (this.repeated(raw)) return;
    for (const { name, fault } of faulty) {
      if (fault.code === 'cell.missing') continue;
      const value = this.cell(raw, name);
      this.notUsed.push({ file: this.file, row: raw.row, column: name, value, code: fault.code, cells: raw.cells });
    }
    this.rows.push({ row: raw.row, values: values as CellsOf<C>, cells: raw.cells });
  }

  private commaCount(name: string, value: string, row: number) {
    const before = this.commas.get(name);
    return before ? { ...before, count: before.count + 1 } : { value, row, count: 1 };
  }

  /** Positions near the others only as a slip explains: latitude and longitude the other way round, a sign lost. */
  private positionsFar(): void {
    const byRow = new Map(this.rows.map((row) => [row.row, row]));
    const positions = this.rows.flatMap(({ row, values }) => {
      const { latitude_deg, longitude_deg } = values as Readonly<Record<string, number | null | undefined>>;
      return latitude_deg == null || longitude_deg == null ? [] : [{ row, latitude_deg, longitude_deg }];
    });
    for (const { row, latitude_deg, longitude_deg, likely } of positionsFar(positions)) {
      const meant = `${likely.latitude_deg}, ${likely.longitude_deg}`;
      const facts = { value: `${latitude_deg}, ${longitude_deg}`, likely: meant, how: likely.how, unit: 'deg' };
      this.faultIn(byRow.get(row)!, 'latitude_deg', { code: 'row.coordinates_far', facts });
    }
    const most = placeOfMost(positions);
    if (most !== null)
      this.problems.forEach((problem, i) => {
        if (problem.code === 'row.coordinates_swapped') this.problems[i] = guessed(problem, most);
      });
  }

  finish(emptyRows: readonly number[]): void {
    this.positionsFar();
    this.problems.push(...this.hidden.problems({ file: this.file }));
    for (const [column, { value, row, count }] of this.commas) {
      const facts = { value, count, column, expected: expectedText(this.table.columns[column]!) };
      this.problems.push(tableProblem('column.decimal_comma', { file: this.file, row, column }, facts));
    }
    if (emptyRows.length === 0) return;
    const facts = { value: '', expected: 'a row', count: emptyRows.length, rows: emptyRows.slice(0, 20).map(String) };
    this.problems.push(tableProblem('row.empty', { file: this.file, row: emptyRows[0]! }, facts));
  }
}

/** What was meant by numbers that are no position, by where the others lie; nothing where none is near. */
function guessed(problem: Problem, most: { readonly latitude_deg: number; readonly longitude_deg: number }): Problem {
  const [latitude_deg = 0, longitude_deg = 0] = String(problem.facts['value']).split(', ').map(Number);
  const likely = likelyPosition({ latitude_deg, longitude_deg }, most);
  const meant = likely === null ? '' : `${likely.latitude_deg}, ${likely.longitude_deg}`;
  return { ...problem, facts: { ...problem.facts, likely: meant } };
}

function isEmpty(raw: RawRow): boolean {
  return raw.broken !== true && raw.cells.every((text) => text.trim() === '');
}

/** Rows without anything in them that have a filled row after them. */
function emptyRowsInside(rows: readonly RawRow[]): readonly number[] {
  const last = rows.findLastIndex((raw) => !isEmpty(raw));
  return rows
    .slice(0, Math.max(last, 0))
    .filter(isEmpty)
    .map(({ row }) => row);
}

function commaSeen(table: Table, header: HeaderReading, rows: readonly RawRow[]): boolean {
  const numbers = [...header.at].filter(([name]) => isNumber(table.columns[name]!));
  return rows.some(({ cells }) => numbers.some(([, at]) => isDecimalComma(bare(cells[at] ?? ''))));
}

/**
 * What do the rows of one file come to? Every row is read by itself: a cell that cannot be used is null with a problem, a row
 * that cannot be used is listed, and none stops another.
 *
 * @param table - the table the file is of
 * @param header - the cells of the first line [text]
 * @param rows - the lines under it, with their row numbers (the header is row 1)
 * @param options - the file's name, and whether a comma may be the decimal mark
 * @returns the rows that can be used, those that cannot, the problems and the list of what was not used
 * @problem row.key_twice - two rows with one key differ; the first is used and the site is in doubt
 * @law a row without a fault is used, whatever stands in the others
 * @definition ours: docs/decisions/0010-faults-in-files.md
 */
export function readRows<C extends Columns>(
  table: Table<C>,
  header: readonly string[],
  rows: readonly RawRow[],
  options: RowsOptions,
): TableRead<C> {
  const { file, decimalComma, headerRow = 1 } = options;
  const reading = readHeader(table, header, file, { matching: options.matching ?? null, row: headerRow });
  const filled = rows.filter((raw) => !isEmpty(raw));
  const habit = { decimalComma, commaSeen: decimalComma && commaSeen(table, reading, filled) };
  const reader = new RowsReader(table, reading, { file, habit, rows: filled });
  if (reading.usable) for (const raw of filled) reader.read(raw);
  else {
    const cause = reading.problems.find(({ severity }) => severity === 'blocker')!.code as TableProblemCode;
    for (const raw of filled) reader.lose(raw, cause, shown(raw.cells.join(',')));
  }
  reader.finish(emptyRowsInside(rows));
  return {
    file,
    rows: reader.rows,
    lost: reader.lost,
    problems: [...reading.problems, ...reader.problems],
    notUsed: reader.notUsed,
    count: filled.length,
    usable: reading.usable,
  };
}
