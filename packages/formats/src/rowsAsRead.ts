import type { Problem } from '@eavewell/engine';
import { type Column, type RawRow, readGuarded, type Table } from '@eavewell/tables';
import type { CellValue, ProgrammeTables, RainRow } from './programmeTables.ts';

/** A programme with every row as it stands, right or wrong, and what could not be carried over or only otherwise. */
export interface TablesAsRead {
  readonly programme: ProgrammeTables;
  readonly told: readonly Problem[];
  /** Of a workbook: the sheet each file of the folder comes from. One that several sheets bring is not among them. */
  readonly sheets?: ReadonlyMap<string, SheetLaid>;
}

/** A sheet whose table was laid out as a file. */
export interface SheetLaid {
  /** As it is called in the workbook. */
  readonly sheet: string;
  /** The number of each row in the sheet, from that of the file's second line on. */
  readonly rows: readonly number[];
}

/** Is anything written in a line? Those without are not carried. */
export const isFilled = ({ cells, broken }: Pick<RawRow, 'cells' | 'broken'>): boolean =>
  broken === true || cells.some((text) => text.trim() !== '');

type Row = Readonly<Record<string, CellValue>>;

/**
 * Names for the columns of a file that are each a key of its own: the names as they are, one that stands again with spaces behind it,
 * which count for nothing where it is read.
 *
 * @param header - the cells of the first line [text]
 * @param width - how many names are needed; those beyond the header are only spaces, so that a row too long stays one [cell]
 * @returns the names [text]
 * @definition ours
 */
export function keysOf(header: readonly string[], width: number): readonly string[] {
  const keys = new Set<string>();
  const last = header.findLastIndex((name) => name.trim() !== '');
  for (let i = 0; i < Math.max(width, header.length); i++) {
    const name = (header[i] ?? '').trim();
    let key = name === '' && i < last ? `column ${i + 1}` : name;
    while (keys.has(key)) key += ' ';
    keys.add(key);
  }
  return [...keys];
}

const numberKinds: readonly Column<unknown>['kind'][] = ['quantity', 'whole', 'fraction'];

/** Where a file's numbers have decimal commas, each as a file without them says it: 7,5 as 7.5, and the doubtful 1.500 as 1,500. */
function withoutCommas(text: string): string {
  if (/^-?[1-9]\d{0,2}\.\d{3}$/.test(text)) return text.replace('.', ',');
  return /^-?\d+,\d+$/.test(text) && !/^-?[1-9]\d{0,2},\d{3}$/.test(text) ? text.replace(',', '.') : text;
}

function hasCommas(rows: readonly RawRow[], at: number): boolean {
  return rows.some(({ cells }) => /^-?\d+,\d+$/.test((cells[at] ?? '').trim()));
}

/**
 * Rows of cells as rows of values by column, every one as it stands.
 *
 * @param header - the cells of the first line [text]
 * @param rows - the lines under it
 * @param columns - the columns of the table
 * @param decimalComma - may a comma be the decimal mark?
 * @returns the rows
 * @definition ours
 */
export function rowsAsRead(
  header: readonly string[],
  rows: readonly RawRow[],
  columns: Table['columns'],
  decimalComma: boolean,
): readonly Row[] {
  const width = rows.reduce(
    (most, { cells, broken }) => Math.max(most, cells.length + (broken ? 1 : 0)),
    header.length,
  );
  // A row whose quotes do not close has one cell more than it should, so that it stays a row that cannot be used.
  const last = Math.max(width, header.length + 1);
  const keys = keysOf(header, rows.some(({ broken }) => broken === true) ? last : width);
  const isNumber = header.map((name) => {
    const column = Object.hasOwn(columns, name.trim()) ? columns[name.trim()]! : null;
    return decimalComma && column !== null && numberKinds.includes(column.kind);
  });
  const anyComma = isNumber.some((is, at) => is && hasCommas(rows, at));
  const commas = isNumber.map((is) => is && anyComma);
  return rows.filter(isFilled).map(({ cells, broken }) => {
    const row: Record<string, CellValue> = {};
    cells.forEach((text, at) => {
      if (text !== '') row[keys[at]!] = readGuarded(commas[at] ? withoutCommas(text.trim()) : text);
    });
    if (broken) row[keys[Math.max(cells.length, header.length)]!] = 'quotes not closed';
    return row;
  });
}

/**
 * The rows of a gauge's rain as they stand. A row that has cells beyond its columns is carried as one text in the place of its day,
 * so that nobody takes a part of it for a reading.
 *
 * @param header - the cells of the first line [text]
 * @param rows - the lines under it
 * @param decimalComma - may a comma be the decimal mark?
 * @returns day and rain of each row, and what stands in its other columns [text]
 * @definition ours
 */
export function rainRows(
  header: readonly string[],
  rows: readonly RawRow[],
  decimalComma: boolean,
): readonly RainRow[] {
  const [dayAt, rainAt] = ['date', 'rain_mm'].map((name) => header.findIndex((one) => one.trim() === name));
  const named = header.findLastIndex((name) => name.trim() !== '') + 1;
  const isKnown = (i: number) => i === dayAt || i === rainAt || header[i]!.trim() === 'gaugeId';
  const others = header.flatMap((name, i) => (name.trim() === '' || isKnown(i) ? [] : [{ name: name.trim(), at: i }]));
  const commas = decimalComma && hasCommas(rows, rainAt!);
  const filled = rows.filter(isFilled);
  const isUsable = dayAt! >= 0 && rainAt! >= 0 && new Set(header.slice(0, named)).size === named;
  return filled.map(({ cells, broken }) => {
    if (!isUsable || broken === true || cells.slice(named).some((text) => text.trim() !== ''))
      return { date: cells.join(','), rain_mm: null };
    const depth = (cells[rainAt!] ?? '').trim();
    const extra = Object.fromEntries(others.map(({ name, at }) => [name, readGuarded(cells[at] ?? '')]));
    const date = readGuarded((cells[dayAt!] ?? '').trim());
    return { date, rain_mm: commas ? withoutCommas(depth) : depth, ...(others.length > 0 ? { extra } : {}) };
  });
}
