import type { Place, Problem, RainReading } from '@eavewell/engine';
import { rain } from '../contract/rain.ts';
import { readGuarded } from './apostrophe.ts';
import { bare } from './hiddenCharacters.ts';
import { HiddenTally } from './hiddenTally.ts';
import { type CellHabit, readCell, refusedCell, shown } from './readCell.ts';
import { type HeaderReading, readHeader } from './readHeader.ts';
import { isDecimalComma } from './readNumber.ts';
import type { RawRow, RowsOptions } from './readRows.ts';
import { type NotUsed, type TableProblemCode, tableProblem } from './tableProblems.ts';

/** A gauge's file as it was read. */
export interface RainRead {
  readonly readings: readonly RainReading[];
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  /** Rows not used beyond those listed. */
  readonly unlistedRows: number;
  /** Rows with anything in them. */
  readonly count: number;
  readonly usable: boolean;
}

/** How many unreadable days of one sort are named one by one; the rest are counted. Ours. */
export const namedOneByOne = 20;
/** So many rows and cells of one file are listed as not used; the rest are counted. Ours: docs/decisions/0082-rain-streamed.md */
const mostListed = 100_000;

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

/** How the two columns of a rain file are written. */
interface RainHabits {
  readonly date: CellHabit;
  readonly rain_mm: CellHabit;
}

/** Counts days that could not be read, so that 10,000 alike make one problem, and lists each. */
class RainReader {
  readonly problems: Problem[] = [];
  readonly notUsed: NotUsed[] = [];
  private readonly tallies = new Map<string, Tally>();
  private readonly named = new Map<string, { count: number; further: number; place: Place; lastRow: number }>();
  private readonly file: string;
  private readonly gaugeId: string;
  private readonly habits: RainHabits;
  private readonly at: ReadonlyMap<string, number>;
  private readonly keep: (reading: RainReading) => void;
  private readonly hidden = new HiddenTally();
  private comma: { value: string; row: number; count: number } | null = null;
  private unlisted: { readonly row: number; rows: number; cells: number; lastRow: number } | null = null;

  constructor(
    file: string,
    gaugeId: string,
    { habits, at }: { readonly habits: RainHabits; readonly at: ReadonlyMap<string, number> },
    keep: (reading: RainReading) => void,
  ) {
    this.file = file;
    this.gaugeId = gaugeId;
    this.habits = habits;
    this.at = at;
    this.keep = keep;
  }

  /** Rows not used beyond those that are listed. */
  get unlistedRows(): number {
    return this.unlisted?.rows ?? 0;
  }

  list(raw: RawRow, column: string | null, value: string, code: TableProblemCode): void {
    if (this.notUsed.length >= mostListed) {
      this.unlisted ??= { row: raw.row, rows: 0, cells: 0, lastRow: raw.row };
      if (column === null) this.unlisted.rows++;
      else this.unlisted.cells++;
      this.unlisted.lastRow = raw.row;
      return;
    }
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

  read(raw: RawRow, dayCell: string, rainCell: string | null): void {
    this.hidden.cell('date', raw.row, dayCell, false);
    if (rainCell !== null) this.hidden.cell('rain_mm', raw.row, rainCell, false);
    const [dayText, rainText] = [bare(dayCell), rainCell === null ? null : bare(rainCell)];
    const { date } = rain.columns;
    const day = refusedCell(date, raw, this.at.get('date')) ?? readCell(date, dayText, this.habits.date);
    if (day.value === null) {
      const { code, facts } = day.fault!;
      this.name(raw, 'rainFile.day_unreadable', 'date', { ...facts, reason: code });
      this.list(raw, null, dayText, 'rainFile.day_unreadable');
      return;
    }
    this.keep({ day: day.value, rain_mm: this.readRain(raw, rainText), row: raw.row });
  }

  private readRain(raw: RawRow, text: string | null): number | null {
    if (text === null) {
      const facts = { value: shown(raw.cells.join(',')), expected: 'YYYY-MM-DD,number', reason: 'row.cells_missing' };
      this.name(raw, 'rainFile.value_unreadable', 'rain_mm', facts);
      return null;
    }
    const { rain_mm } = rain.columns;
    const refused = refusedCell(rain_mm, raw, this.at.get('rain_mm'));
    const word = readGuarded(text);
    if (refused === null && (trace.test(word) || (missingCode.test(word) && !positiveNines.test(word)))) {
      const code = trace.test(word) ? 'rainFile.trace' : 'rainFile.missing_code';
      this.tally(raw, code, word);
      this.list(raw, 'rain_mm', word, code);
      return null;
    }
    const { value, fault, comma } = refused ?? readCell(rain_mm, text, this.habits.rain_mm);
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
    this.problems.push(...this.hidden.problems({ file: this.file, gaugeId: this.gaugeId }));
    if (this.unlisted !== null) {
      const { row, rows, cells, lastRow } = this.unlisted;
      const facts = { value: this.file, count: rows + cells, lastRow, expected: '' };
      this.problems.push(tableProblem('rainFile.not_listed', { file: this.file, row, gaugeId: this.gaugeId }, facts));
    }
    if (this.comma === null) return;
    const { row, ...facts } = this.comma;
    const place = { file: this.file, row, column: 'rain_mm', gaugeId: this.gaugeId };
    this.problems.push(
      tableProblem('column.decimal_comma', place, { ...facts, column: 'rain_mm', expected: 'number [mm]' }),
    );
  }
}

/** A gauge's file being read row by row. */
export class RainRows {
  readonly readings: readonly RainReading[];
  private readonly header: HeaderReading;
  private readonly reader: RainReader;
  private readonly cause: TableProblemCode | null;
  private readonly gaugeId: string;
  private count = 0;

  /**
   * @param gaugeId - the gauge
   * @param header - the cells of the first line
   * @param options - the file's name, whether a comma may be the decimal mark and is seen to be, what was accepted for its headers
   * @param kept - where the readings are kept
   */
  constructor(
    gaugeId: string,
    header: readonly string[],
    options: RowsOptions & { readonly commaSeen: boolean },
    kept: { readonly readings: readonly RainReading[]; add(reading: RainReading): void },
  ) {
    const { file, decimalComma, commaSeen, matching = null, headerRow = 1 } = options;
    this.gaugeId = gaugeId;
    this.header = readHeader(rain, header, file, { needed: ['date', 'rain_mm'], matching, row: headerRow });
    const { at, problems, usable, written } = this.header;
    this.cause = usable ? null : (problems.find(({ severity }) => severity === 'blocker')!.code as TableProblemCode);
    const habit = { decimalComma, commaSeen };
    const habits = { date: { ...habit, ...written.get('date') }, rain_mm: { ...habit, ...written.get('rain_mm') } };
    this.readings = kept.readings;
    this.reader = new RainReader(file, gaugeId, { habits, at }, (reading) => kept.add(reading));
  }

  /** Where the rain stands in a row; -1 where it does not. */
  get rainAt(): number {
    return this.header.at.get('rain_mm') ?? -1;
  }

  take(raw: RawRow): void {
    const { cells, broken } = raw;
    if (broken !== true && cells.every((text) => text.trim() === '')) return;
    this.count++;
    const { at, width } = this.header;
    if (this.cause !== null) this.reader.list(raw, null, shown(cells.join(',')), this.cause);
    else if (broken === true) this.reader.lose(raw, 'row.quote_broken', shown(cells.join(',')));
    else if (cells.length > width && cells.slice(width).some((text) => text.trim() !== ''))
      this.reader.lose(raw, 'row.cells_too_many', shown(cells.join(',')));
    else this.reader.read(raw, cells[at.get('date')!] ?? '', cells[at.get('rain_mm')!] ?? null);
  }

  finish(): RainRead {
    this.reader.finish();
    const { problems, usable } = this.header;
    const { gaugeId, count, reader, readings } = this;
    return {
      readings,
      problems: [...problems.map((found) => ({ ...found, place: { ...found.place, gaugeId } })), ...reader.problems],
      notUsed: reader.notUsed,
      unlistedRows: reader.unlistedRows,
      count,
      usable,
    };
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
  const start = (commaSeen: boolean) =>
    new RainRows(gaugeId, header, { ...options, commaSeen }, { readings, add: (reading) => readings.push(reading) });
  const readings: RainReading[] = [];
  const plain = start(false);
  const { rainAt } = plain;
  const commaSeen = options.decimalComma && rows.some(({ cells }) => isDecimalComma(bare(cells[rainAt] ?? '')));
  const reader = commaSeen ? start(true) : plain;
  for (const raw of rows) reader.take(raw);
  return reader.finish();
}
