import type { CellRefusal } from '@eavewell/tables';
import type { CellFormat } from './numberFormats.ts';
import { readXml, type XmlAttributes, type XmlListener } from './readXml.ts';
import { overLimit, Unreadable, workbookLimits } from './workbookLimits.ts';

/** A cell with more to it than a text or a plain number. */
export interface OddCell {
  readonly value: string | number | boolean;
  readonly format: CellFormat;
  /** A formula stands behind the value. */
  readonly isFormula: boolean;
  readonly refusal: CellRefusal | null;
}

/** What a cell holds. */
export type SheetCell = string | number | OddCell;

/** The filled cells of one row, from left to right. */
export interface SheetRow {
  readonly row: number;
  /** The columns of the cells, counted from 0. */
  readonly columns: readonly number[];
  readonly cells: readonly SheetCell[];
}

/** A range of cells, rows counted from 1, columns from 0, both ends included. */
export interface CellRange {
  readonly text: string;
  readonly fromRow: number;
  readonly toRow: number;
  readonly fromColumn: number;
  readonly toColumn: number;
}

/** A sheet as its part holds it. */
export interface SheetCells {
  readonly rows: readonly SheetRow[];
  readonly merged: readonly CellRange[];
  readonly hiddenRows: readonly number[];
  readonly hiddenColumns: readonly { readonly from: number; readonly to: number }[];
}

/** What a sheet needs of the rest of its workbook. */
export interface SheetSurroundings {
  readonly texts: readonly string[];
  readonly formats: readonly CellFormat[];
}

const [mostRows, mostColumns, letters] = [1_048_576, 16_384, 26] as const;

/** The letters of a column, counted from 0: A, B, … Z, AA. */
export function columnLetters(column: number): string {
  const rest = Math.floor(column / letters);
  return (rest === 0 ? '' : columnLetters(rest - 1)) + String.fromCharCode(65 + (column % letters));
}

/** Row and column of a cell's name; null where it is none. */
function cellAt(name: string): { readonly row: number; readonly column: number } | null {
  const found = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/.exec(name);
  if (!found) return null;
  let column = 0;
  for (const letter of found[1]!.toUpperCase()) column = column * letters + letter.charCodeAt(0) - 64;
  const row = Number(found[2]);
  return column > mostColumns || row > mostRows ? null : { row, column: column - 1 };
}

function rangeOf(text: string): CellRange {
  const [first = '', last = first] = text.split(':');
  const [from, to] = [cellAt(first), cellAt(last)];
  if (from === null || to === null) throw new Unreadable('a merged range that is none');
  return { text, fromRow: from.row, toRow: to.row, fromColumn: from.column, toColumn: to.column };
}

/**
 * The text meant where a workbook writes a letter by its number: `_x000D_` is a carriage return, `_x005F_` the mark itself.
 *
 * @param written - the text as it stands in the XML [text]
 * @returns the text [text]
 * @source ecma-376, Part 1, 22.9.2.19 (from memory)
 * @example
 * plainText('a_x0041_b') // → 'aAb'
 */
export function plainText(written: string): string {
  if (!written.includes('_x')) return written;
  return written.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

const yes = (flag: string | undefined) => flag === '1' || flag === 'true';
const number = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/;
/** As many digits as a spreadsheet shows: what a formula leaves behind them is noise of its arithmetic. */
const shownDigits = 15;

/** Gathers the cells of a sheet as its XML goes by. */
class SheetReader implements XmlListener {
  readonly rows: SheetRow[] = [];
  readonly merged: CellRange[] = [];
  readonly hiddenRows: number[] = [];
  readonly hiddenColumns: { from: number; to: number }[] = [];
  private readonly around: SheetSurroundings;
  private count = 0;
  private row = 0;
  private columns: number[] = [];
  private cells: SheetCell[] = [];
  private cell: XmlAttributes | null = null;
  private column = -1;
  private into: 'value' | 'formula' | 'inline' | null = null;
  private value: string | null = null;
  private formula: string | null = null;
  private inline: string | null = null;
  private isPhonetic = false;
  private isInData = false;
  private hasRoot = false;

  constructor(around: SheetSurroundings) {
    this.around = around;
  }

  open(name: string, attributes: XmlAttributes): void {
    if (!this.hasRoot && name !== 'worksheet') throw new Unreadable('it is not a sheet of cells');
    this.hasRoot = true;
    if (name === 'sheetData') this.isInData = true;
    else if (this.cell !== null) this.openInCell(name);
    else if (name === 'row' && this.isInData) this.openRow(attributes);
    else if (name === 'c' && this.isInData) this.openCell(attributes);
    else if (name === 'mergeCell') this.merge(rangeOf(attributes['ref'] ?? ''));
    else if (name === 'col' && yes(attributes['hidden']) && this.hiddenColumns.length < mostColumns)
      this.hiddenColumns.push({ from: Number(attributes['min']) - 1, to: Number(attributes['max']) - 1 });
  }

  private merge(range: CellRange): void {
    this.merged.push(range);
    if (this.merged.length > workbookLimits.merged) throw overLimit('merged', this.merged.length);
  }

  private openRow({ r, hidden }: XmlAttributes): void {
    const row = r === undefined ? this.row + 1 : Number(r);
    if (!(Number.isInteger(row) && row > this.row && row <= mostRows))
      throw new Unreadable('its rows are out of order');
    this.row = row;
    this.column = -1;
    if (yes(hidden)) this.hiddenRows.push(row);
  }

  private openCell(attributes: XmlAttributes): void {
    const { r } = attributes;
    const at = r === undefined ? { row: this.row, column: this.column + 1 } : cellAt(r);
    if (at === null || at.row !== this.row || at.column <= this.column)
      throw new Unreadable('its cells are out of order');
    this.column = at.column;
    this.cell = attributes;
    [this.value, this.formula, this.inline] = [null, null, null];
  }

  private openInCell(name: string): void {
    if (name === 'rPh') this.isPhonetic = true;
    if (name === 'v') [this.into, this.value] = ['value', this.value ?? ''];
    else if (name === 'f') [this.into, this.formula] = ['formula', this.formula ?? ''];
    else if (name === 'is') this.inline = '';
    else if (name === 't' && this.inline !== null && !this.isPhonetic) this.into = 'inline';
  }

  text(text: string): void {
    if (this.into === 'value') this.value += text;
    else if (this.into === 'formula') this.formula += text;
    else if (this.into === 'inline') this.inline += text;
  }

  close(name: string): void {
    if (name === 'sheetData') this.isInData = false;
    else if (name === 'row' && this.isInData) this.closeRow();
    else if (name === 'rPh') this.isPhonetic = false;
    else if (name === 'v' || name === 'f' || name === 't') this.into = null;
    else if (name === 'c' && this.cell !== null) {
      const cell = this.cellRead(this.cell);
      this.cell = null;
      if (cell !== null) this.keep(cell);
    }
  }

  private keep(cell: SheetCell): void {
    if (++this.count > workbookLimits.cells) throw overLimit('cells', this.count);
    this.columns.push(this.column);
    this.cells.push(cell);
  }

  private closeRow(): void {
    if (this.cells.length > 0) this.rows.push({ row: this.row, columns: this.columns, cells: this.cells });
    [this.columns, this.cells] = [[], []];
  }

  private odd(value: OddCell['value'], refusal: CellRefusal | null = null, format: CellFormat = 'plain'): SheetCell {
    const isFormula = this.formula !== null;
    const isPlain = !isFormula && refusal === null && format === 'plain' && typeof value !== 'boolean';
    return isPlain ? (value as string | number) : { value, format, isFormula, refusal };
  }

  /** A value that the file lacks or contradicts. An empty cell without a formula is just empty. */
  private lost(): SheetCell | null {
    if (this.formula !== null) return this.odd(`=${this.formula}`, 'cell.formula_without_value');
    return this.value === null || this.value === '' ? null : this.odd(this.value, 'cell.value_lost');
  }

  private cellRead({ t = 'n', s }: XmlAttributes): SheetCell | null {
    const { value } = this;
    switch (t) {
      case 'inlineStr':
        return this.textCell(this.inline);
      case 'str':
        return value === null ? this.lost() : this.textCell(value);
      case 's': {
        const text = /^\d{1,9}$/.test(value ?? '') ? this.around.texts[Number(value)] : undefined;
        return text === undefined ? this.lost() : text === '' ? null : this.odd(text);
      }
      case 'b':
        return value === '1' || value === '0' ? this.odd(value === '1') : this.lost();
      case 'e':
        return value ? this.odd(value, 'cell.formula_error') : this.lost();
      case 'd':
        return value ? this.odd(value.replace(/T00:00(?::00(?:\.0+)?)?Z?$/, '')) : this.lost();
      case 'n':
        return value ? this.numberCell(value, s) : this.lost();
      default:
        return this.lost();
    }
  }

  private textCell(text: string | null): SheetCell | null {
    return text === null || text === '' ? null : this.odd(plainText(text));
  }

  private numberCell(written: string, s: string | undefined): SheetCell {
    const text = written.trim();
    const value = Number(text);
    if (!number.test(text) || !Number.isFinite(value)) return this.odd(text);
    const format = this.around.formats[Number(s ?? 0)] ?? 'plain';
    return this.odd(this.formula === null ? value : Number(value.toPrecision(shownDigits)), null, format);
  }
}

/**
 * Which cells stand in a sheet? Each as the workbook stores it: the last value of a formula, a date as its number with its format.
 *
 * @param pieces - the bytes of its part [byte]
 * @param around - the shared texts and the formats of the workbook
 * @returns filled rows from top to bottom, merged ranges, hidden rows and columns
 * @source ecma-376, Part 1, 18.3.1 (from memory)
 */
export async function readSheetCells(
  pieces: AsyncIterable<Uint8Array>,
  around: SheetSurroundings,
): Promise<SheetCells> {
  const reader = new SheetReader(around);
  await readXml(pieces, reader);
  return reader;
}
