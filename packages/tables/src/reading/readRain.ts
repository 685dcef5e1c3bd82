import type { Place, Problem, RainReading } from '@eavewell/engine';
import { rain } from '../contract/rain.ts';
import { readCell, refusedCell, shown } from './readCell.ts';
import { readHeader } from './readHeader.ts';
import { isDecimalComma, type NumberHabit } from './readNumber.ts';
import type { RawRow, RowsOptions } from './readRows.ts';
import { type NotUsed, type TableProblemCode, tableProblem } from './tableProblems.ts';

/** A gauge's file as it was read. */
export interface RainRead {
  readonly readings: readonly RainReading[];
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  /** Rows with anything in them. */
  readonly count: number;
  readonly usable: boolean;
}

/** How many unreadable days of one sort are named one by one; the rest are counted. Ours. */
export const namedOneByOne = 20;

/** What observers and services write for a day that was not read. Common practice, no source. */
const missingCode = /^(?:-?9{2,6}(?:\.9{1,2}|\.0+)?|-888(?:8)?|na|n\/a|nan|null|none|m|x|-+|\*+|\.+|missing)$/i;
/** 99 and 999 without a sign are rain somebody may have measured: the engine judges them. */
const positiveNines = /^9{2,3}(?:\.\d+)?$/;
const trace = /^(?:t|tr|trace|tt)\.?$/i;

type Sort = 'rainFile.day_unreadable' | 'rainFile.value_unreadable' | 'rainFile.missing_code' | 'rainFile.trace';

interface Tally {
  readonly code: Sort;
  readonly place: Place;
  readonly value: string;
  count: number;
  lastRow: number;
}

/** Counts days that could not be read, so that 10,000 alike make one problem, and lists each. */
class RainReader {
  readonly readings: RainReading[] = [];
  readonly problems: Problem[] = [];
  readonly notUsed: NotUsed[] = [];
  private readonly tallies = new Map<string, Tally>();
  private readonly named = new Map<string, { count: number; further: number; place: Place; lastRow: number }>();
  private readonly file: string;
  private readonly gaugeId: string;
  private readonly habit: NumberHabit;
  private readonly at: { readonly day: number; readonly rain: number };
  private comma: { value: string; row: number; count: number } | null = null;

  constructor(file: string, gaugeId: string, habit: NumberHabit, at: { readonly day: number; readonly rain: number }) {
    this.file = file;
    this.gaugeId = gaugeId;
    this.habit = habit;
    this.at = at;
  }

  list(raw: RawRow, column: string | null, value: string, code: TableProblemCode): void {
    const whole = { file: this.file, row: raw.row, value, code, cells: raw.cells };
    this.notUsed.push(column === null ? whole : { ...whole, column });
  }

  /** One problem for each row, up to a number. */
  private name(raw: RawRow, code: Sort, column: string, facts: Problem['facts']): void {
    const place = { file: this.file, row: raw.row, column, gaugeId: this.gaugeId };
    const before = this.named.get(code) ?? { count: 0, further: 0, place, lastRow: raw.row };
    if (before.count < namedOneByOne) {
      this.problems.push(tableProblem(code, place, facts));
      this.named.set(code, { ...before, count: before.count + 1 });
      return;
    }
    const first = before.further === 0 ? place : before.place;
    this.named.set(code, { ...before, further: before.further + 1, place: first, lastRow: raw.row });
  }

  /** One problem for all rows with the same word. */
  private tally(raw: RawRow, code: Sort, value: string): void {
    const before = this.tallies.get(value);
    if (before) {
      before.count++;
      before.lastRow = raw.row;
      return;
    }
    const place = { file: this.file, row: raw.row, column: 'rain_mm', gaugeId: this.gaugeId };
    this.tallies.set(value, { code, place, value, count: 1, lastRow: raw.row });
  }

  lose(raw: RawRow, reason: TableProblemCode, value: string): void {
    this.name(raw, 'rainFile.day_unreadable', 'date', { value, expected: 'YYYY-MM-DD,number', reason });
    this.list(raw, null, value, 'rainFile.day_unreadable');
  }

  read(raw: RawRow, dayText: string, rainText: string | null): void {
    const day = refusedCell(rain.columns.date, raw, this.at.day) ?? readCell(rain.columns.date, dayText, this.habit);
    if (day.value === null) {
      const { code, facts } = day.fault!;
      this.name(raw, 'rainFile.day_unreadable', 'date', { ...facts, reason: code });
      this.list(raw, null, dayText, 'rainFile.day_unreadable');
      return;
    }
    this.readings.push({ day: day.value, rain_mm: this.readRain(raw, rainText), row: raw.row });
  }

  private readRain(raw: RawRow, text: string | null): number | null {
    if (text === null) {
      const facts = { value: shown(raw.cells.join(',')), expected: 'YYYY-MM-DD,number', reason: 'row.cells_missing' };
      this.name(raw, 'rainFile.value_unreadable', 'rain_mm', facts);
      return null;
    }
    const refused = refusedCell(rain.columns.rain_mm, raw, this.at.rain);
    if (refused === null && (trace.test(text) || (missingCode.test(text) && !positiveNines.test(text)))) {
      const code = trace.test(text) ? 'rainFile.trace' : 'rainFile.missing_code';
      this.tally(raw, code, text);
      this.list(raw, 'rain_mm', text, code);
      return null;
    }
    const { value, fault, comma } = refused ?? readCell(rain.columns.rain_mm, text, this.habit);
    if (fault !== null) {
      this.name(raw, 'rainFile.value_unreadable', 'rain_mm', { ...fault.facts, reason: fault.code });
      this.list(raw, 'rain_mm', text, 'rainFile.value_unreadable');
    }
    if (comma)
      this.comma = this.comma
        ? { ...this.comma, count: this.comma.count + 1 }
        : { value: text, row: raw.row, count: 1 };
    return value;
  }

  finish(): void {
    for (const { code, place, value, count, lastRow } of this.tallies.values())
      this.problems.push(
        tableProblem(code, place, { value, count, lastRow, expected: 'an empty cell, or a number [mm]' }),
      );
    for (const [code, { further, place, lastRow }] of this.named)
      if (further > 0)
        this.problems.push(
          tableProblem('rainFile.more', place, { value: code, count: further, lastRow, expected: '' }),
        );
    if (this.comma === null) return;
    const { row, ...facts } = this.comma;
    const place = { file: this.file, row, column: 'rain_mm', gaugeId: this.gaugeId };
    this.problems.push(
      tableProblem('column.decimal_comma', place, { ...facts, column: 'rain_mm', expected: 'number [mm]' }),
    );
  }
}

/**
 * Which readings stand in a gauge's file? A row whose day cannot be read is listed and not used; a rain that cannot be read
 * leaves its day unknown. Order, doubles, negative and absurd rain are left to the engine, which sees the whole record.
 *
 * @param gaugeId - the gauge [text]
 * @param header - the cells of the first line [text]
 * @param rows - the lines under it, with their row numbers
 * @param options - the file's name, and whether a comma may be the decimal mark
 * @returns readings: day [day], rain [mm] or null, row; with the problems and what was not used
 * @problem rainFile.missing_code - -9999, NA and the like stand for "not read"; the day is unknown, never 0
 * @problem rainFile.trace - T: too little to measure; the day is unknown until a number is written
 * @law a day is never 0 mm unless 0 was written
 * @definition ours: docs/decisions/0010-faults-in-files.md
 */
export function readRain(
  gaugeId: string,
  header: readonly string[],
  rows: readonly RawRow[],
  options: RowsOptions,
): RainRead {
  const { file, decimalComma, headerRow } = options;
  const { at, problems, usable, width } = readHeader(rain, header, file, ['date', 'rain_mm'], headerRow);
  const filled = rows.filter(({ cells, broken }) => broken === true || cells.some((text) => text.trim() !== ''));
  const [dayAt, rainAt] = [at.get('date') ?? -1, at.get('rain_mm') ?? -1];
  const commaSeen = decimalComma && filled.some(({ cells }) => isDecimalComma((cells[rainAt] ?? '').trim()));
  const reader = new RainReader(file, gaugeId, { decimalComma, commaSeen }, { day: dayAt, rain: rainAt });
  const cause = usable ? null : (problems.find(({ severity }) => severity === 'blocker')!.code as TableProblemCode);
  for (const raw of filled) {
    const line = shown(raw.cells.join(','));
    if (cause !== null) reader.list(raw, null, line, cause);
    else if (raw.broken === true) reader.lose(raw, 'row.quote_broken', line);
    else if (raw.cells.slice(width).some((text) => text.trim() !== '')) reader.lose(raw, 'row.cells_too_many', line);
    else reader.read(raw, (raw.cells[dayAt] ?? '').trim(), raw.cells[rainAt]?.trim() ?? null);
  }
  reader.finish();
  return {
    readings: reader.readings,
    problems: [...problems.map((found) => ({ ...found, place: { ...found.place, gaugeId } })), ...reader.problems],
    notUsed: reader.notUsed,
    count: filled.length,
    usable,
  };
}
