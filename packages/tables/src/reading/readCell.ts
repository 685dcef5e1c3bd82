import { convertedTo, type Facts } from '@eavewell/engine';
import { expectedText, idForm, limitsText, longestText } from '../contract/columns.ts';
import type { Column, Limits } from '../contract/table.ts';
import { unitNamed } from '../matching/headerWords.ts';
import { readGuarded } from './apostrophe.ts';
import { bare, hiddenIn, withoutHidden } from './hiddenCharacters.ts';
import { nearest } from './nearest.ts';
import { type DateOrder, readDate } from './readDate.ts';
import { likelyMonthDay, readMonthDay, readMonths } from './readMonths.ts';
import { type NumberHabit, readNumber } from './readNumber.ts';
import { likelyWeekdays, readWeekdays } from './readWeekdays.ts';
import type { Fault, TableProblemCode } from './tableProblems.ts';
import type { CellRefusal } from './workbookProblems.ts';
import { writtenDegrees } from './writtenDegrees.ts';

/** What a cell came to. With a fault that is a warning there is a value too. */
export interface CellReading<T> {
  readonly value: T | null;
  readonly fault: Fault | null;
  /** The number was written with a decimal comma, and was read. */
  readonly comma: boolean;
}

/** How the cells of one column are written: numbers, and where it was said, the unit and the order of day and month. */
export interface CellHabit extends NumberHabit {
  readonly unit?: string | null;
  readonly dateOrder?: DateOrder | null;
  /** Other cells of a column in percent are above 1: one between 0 and 1 may be a share. */
  readonly percentSeen?: boolean;
}

const longestShown = 80;
/** Digits of a converted value in a problem. */
const shownDigits = 6;
/** Longest cell that is not text and is looked at: no id, number or date is nearly so long [character]. Ours. */
const longestLooked = 500;
/** Control characters other than tab and the line ends, which a quoted text may hold. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is what it is for
const controls = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/;

/** A cell as it is shown in a problem: cut where it is very long. */
export function shown(text: string): string {
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}

function outside(value: number, limits: Limits): boolean {
  return value > limits.high || (limits.above ? value <= limits.low : value < limits.low);
}

function lowHigh(column: Column<unknown>, limits: Limits): Facts {
  const [low, high] = limitsText(column, limits)
    .replace(/^above /, '')
    .split(' to ');
  return { low: low!, high: high! };
}

/** One cell being read: makes its faults with the facts they all carry. */
class Cell<T> {
  readonly column: Column<T>;
  readonly text: string;
  constructor(column: Column<T>, text: string) {
    this.column = column;
    this.text = text;
  }

  fault(code: TableProblemCode, facts: Facts = {}): Fault {
    const { kind, unit } = this.column;
    return { code, facts: { value: shown(this.text), expected: expectedText(this.column), kind, unit, ...facts } };
  }

  unused(code: TableProblemCode, facts: Facts = {}): CellReading<T> {
    return { value: null, fault: this.fault(code, facts), comma: false };
  }

  /** Lets the column's own schema have the last word. */
  used(value: unknown, fault: Fault | null = null, comma = false, refusal: TableProblemCode = 'cell.out_of_range') {
    const judged = this.column.schema.safeParse(value);
    return judged.success ? { value: judged.data, fault, comma } : this.unused(refusal);
  }

  /** `written`: the unit it was converted from. */
  number(value: number, comma: boolean, written: string | null = null): CellReading<T> {
    const { hard, usual, kind, unit } = this.column;
    const both =
      written === null
        ? {}
        : { value: `${shown(this.text)} ${written}, ${Number(value.toPrecision(shownDigits))} ${unit}` };
    if (hard && outside(value, hard))
      return this.unused('cell.out_of_range', { ...lowHigh(this.column, hard), ...both });
    if (kind === 'whole' && !Number.isSafeInteger(value)) return this.unused('cell.not_whole');
    const { otherUnit } = this.column;
    if (otherUnit && written === null && value <= otherUnit.high) {
      const facts = { other: otherUnit.unit, likely: String(value * otherUnit.factor) };
      return this.unused('cell.other_unit', facts);
    }
    const unusual =
      usual && outside(value, usual) ? this.fault('cell.unusual', { ...lowHigh(this.column, usual), ...both }) : null;
    return this.used(value, unusual, comma);
  }
}

/** A cell that could not be read for the characters in it that cannot be seen is named for them. */
function unseen<T>(cell: Cell<T>, reading: CellReading<T>): CellReading<T> {
  const points = reading.value === null ? hiddenIn(cell.text) : [];
  if (points.length === 0 || reading.fault?.code === 'cell.thousands') return reading;
  return cell.unused('cell.hidden_characters', { points, likely: shown(withoutHidden(cell.text)) });
}

function readId<T>(cell: Cell<T>): CellReading<T> {
  const value = readGuarded(cell.text);
  if (idForm.test(value)) return cell.used(value);
  const likely = withoutHidden(value);
  if (!idForm.test(likely)) return cell.unused('cell.unsafe_id');
  return cell.unused('cell.hidden_in_id', { points: hiddenIn(value), likely });
}

function readQuantity<T>(cell: Cell<T>, habit: CellHabit): CellReading<T> {
  const { unit } = cell.column;
  const reading = readNumber(cell.text, habit);
  if ('value' in reading) {
    const written = habit.unit ?? null;
    if (habit.percentSeen === true && reading.value > 0 && reading.value < 1) {
      const likely = [`${cell.text} %`, `${Number((reading.value * 100).toPrecision(shownDigits))} %`];
      return cell.unused('cell.percent_or_share', { readings: likely });
    }
    const value = written === null ? reading.value : convertedTo(unit, written, reading.value);
    return value === null ? cell.unused('cell.not_a_number') : cell.number(value, reading.comma, written);
  }
  const degrees = unit === 'deg' ? writtenDegrees(cell.text) : null;
  if (degrees !== null) return cell.unused('cell.degrees_written', { likely: String(degrees) });
  return cell.unused(reading.code, { ...reading.facts, ...convertedFacts(unit, reading.facts) });
}

/** What a number with another unit behind it is in the unit of its column, where we convert from that. */
function convertedFacts(unit: string, { number, found }: Facts): Facts {
  if (typeof number !== 'string' || typeof found !== 'string') return {};
  const value = convertedTo(unit, unitNamed(found) ?? '', Number(number.replace(',', '.')));
  return value === null ? {} : { likely: String(Number(value.toPrecision(shownDigits))) };
}

function readText<T>(cell: Cell<T>): CellReading<T> {
  const text = readGuarded(cell.text);
  if (text.length > longestText)
    return cell.unused('cell.too_long', { length: text.length, longest: longestText, unit: 'character' });
  if (controls.test(text)) return cell.unused('cell.control_characters', { points: hiddenIn(text) });
  const lost = text.includes('\uFFFD') ? cell.fault('cell.letters_lost') : null;
  return cell.used(text, lost, false, 'cell.not_a_currency');
}

function readChoice<T>(cell: Cell<T>): CellReading<T> {
  const { choices, kind } = cell.column;
  if (choices.includes(cell.text)) return cell.used(kind === 'yesNo' ? cell.text === 'yes' : cell.text);
  const near = nearest(cell.text, choices) ?? choices.find((word) => word[0] === cell.text.toLowerCase());
  return cell.unused('cell.not_a_choice', { choices, likely: near ?? '' });
}

/**
 * What does one cell come to? It is read as its column says or not at all: a cell that cannot be used gives null and a fault
 * that names what stands there; nothing is guessed, and an empty cell is null, never 0.
 *
 * @param column - the column it stands in
 * @param text - the cell as it stands in the file [text]
 * @param habit - may a comma be the decimal mark, and does the file use it?
 * @returns the value [unit of the column] or null, and the fault or null
 * @problem cell.other_unit - so small that another unit is meant
 * @problem cell.percent_or_share - between 0 and 1 in a column in percent whose others are above 1
 * @problem cell.degrees_written - degrees with minutes, or with a letter for the side of the world
 * @problem cell.not_a_month_day - a spreadsheet may have made a date of it
 * @problem cell.not_months - not months by number
 * @problem cell.not_weekdays - not days of the week
 * @problem cell.unusual - outside the usual range; the value is used
 * @law never throws, never gives NaN
 * @definition ours: docs/tables.md
 */
export function readCell<T>(column: Column<T>, text: string, habit: CellHabit): CellReading<T> {
  const trimmed = bare(text);
  const cell = new Cell(column, trimmed);
  if (trimmed === '') return column.required ? cell.unused('cell.missing') : { value: null, fault: null, comma: false };
  if (column.kind === 'text') return readText(cell);
  if (trimmed.length > longestLooked)
    return cell.unused('cell.too_long', { length: trimmed.length, longest: longestLooked });
  if (trimmed.includes('\uFFFD')) return cell.unused('cell.bytes_unreadable');
  if (column.kind === 'id') return readId(cell);
  return unseen(cell, readOther(cell, habit));
}

function readOther<T>(cell: Cell<T>, habit: CellHabit): CellReading<T> {
  switch (cell.column.kind) {
    case 'choice':
    case 'yesNo':
      return readChoice(cell);
    case 'monthDay': {
      const value = readMonthDay(cell.text);
      const likely = likelyMonthDay(cell.text) ?? '';
      return value === null ? cell.unused('cell.not_a_month_day', { likely }) : cell.used(value);
    }
    case 'months': {
      const value = readMonths(cell.text);
      return value === null ? cell.unused('cell.not_months') : cell.used(value);
    }
    case 'weekdays': {
      const value = readWeekdays(cell.text);
      const likely = likelyWeekdays(cell.text) ?? '';
      return value === null ? cell.unused('cell.not_weekdays', { likely }) : cell.used(value);
    }
    case 'time':
      return cell.used(cell.text, null, false, 'cell.not_a_time');
    case 'date': {
      const reading = readDate(cell.text, habit.dateOrder ?? null);
      return 'value' in reading ? cell.number(reading.value, false) : cell.unused(reading.code, reading.facts);
    }
    default:
      return readQuantity(cell, habit);
  }
}

/**
 * Is a column written in percent, as its cells above 1 show? Then one between 0 and 1 may be a share: 0.8 for 80 %.
 *
 * @param unit - the unit the column is written in; null where nothing was said [text]
 * @param texts - its cells as they stand [text]
 * @param habit - how numbers stand in the file
 * @returns true or false; false where it is in another unit
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function isPercentSeen(unit: string | null, texts: Iterable<string>, habit: NumberHabit): boolean {
  if (unit !== 'percent') return false;
  for (const text of texts) {
    const reading = readNumber(bare(text), habit);
    if ('value' in reading && reading.value > 1) return true;
  }
  return false;
}

/**
 * What does a cell come to that is not used whatever its column asks for, as one of a workbook whose formula went wrong?
 *
 * @param column - the column it stands in
 * @param raw - the cells of its row, and those refused
 * @param at - its place in the row; undefined where the column is not there
 * @returns null with the fault; or null where the cell is not refused
 * @problem cell.formula_error - and the other codes of CellRefusal
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function refusedCell<T>(
  column: Column<T>,
  { cells, refused }: { readonly cells: readonly string[]; readonly refused?: ReadonlyMap<number, CellRefusal> },
  at: number | undefined,
): CellReading<T> | null {
  const code = at === undefined ? undefined : refused?.get(at);
  return code === undefined ? null : new Cell(column, cells[at!]!.trim()).unused(code);
}
