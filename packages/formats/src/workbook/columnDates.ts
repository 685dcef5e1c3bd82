import type { Place, Problem } from '@eavewell/engine';
import { type CellRefusal, type DateOrder as SaidOrder, tableProblem } from '@eavewell/tables';
import { isDateCell, storedIn } from './cellTexts.ts';
import { type DateOrder, dateOrder, dayInOrder, type OrderShown } from './dateOrder.ts';
import type { SheetCell } from './sheetCells.ts';
import { type DaySystem, dayOfSerial } from './spreadsheetDays.ts';

/** A row of texts in the making. */
export interface RowMade {
  readonly row: number;
  readonly cells: string[];
  refused?: Map<number, CellRefusal>;
}

/** A column of dates, as written by one hand. */
export interface ColumnOfDates {
  /** Its place in the rows. */
  readonly at: number;
  /** The cells as the sheet has them, row by row. */
  readonly cells: readonly (SheetCell | undefined)[];
  readonly rows: readonly RowMade[];
  readonly days: DaySystem;
  /** In which order they were said to stand; null where nothing was said. */
  readonly order: SaidOrder | null;
}

const orders: readonly DateOrder[] = ['dayFirst', 'monthFirst'];
/** A date that was taken day for month falls on one of the first twelve of a month. */
const mostMonths = 12;

/** The same day with day and month the other way round. */
function swapped(day: string): string {
  return `${day.slice(0, 5)}${day.slice(8)}-${day.slice(5, 7)}`;
}

/**
 * Opened where the other order is usual, a spreadsheet turns the texts it can into dates, day for month, and leaves the others as
 * texts. The mark of it: no text that could be a day in both orders, and no date after the 12th. Gives such a date, or null.
 */
function swappedDay({ cells, days }: ColumnOfDates, texts: readonly string[]): string | null {
  const found = cells.flatMap((cell) => {
    if (!isDateCell(cell)) return [];
    return dayOfSerial(storedIn(cell) as number, days) ?? [];
  });
  const isEitherWay = (text: string) => orders.every((order) => dayInOrder(text, order) !== null);
  const isMarked = !texts.some(isEitherWay) && found.every((day) => Number(day.slice(8)) <= mostMonths);
  return isMarked ? (found[0] ?? null) : null;
}

/** Puts the days that the texts mean in their place. */
function takeOrder(column: ColumnOfDates, { order, proof }: Extract<OrderShown, { is: 'proved' }>, value: string) {
  let count = 0;
  let likely = '';
  column.rows.forEach(({ cells }, i) => {
    const day = typeof storedIn(column.cells[i]) === 'string' ? dayInOrder(cells[column.at]!, order) : null;
    if (day === null) return;
    cells[column.at] = day;
    if (count++ === 0) likely = day;
  });
  return { value, order, proof, likely, count, expected: 'YYYY-MM-DD' };
}

/**
 * What do dates written as text with the year last come to? They are read in the order their column proves, and only then; a column
 * whose dates a spreadsheet likely swapped is not used at all. Changes the rows.
 *
 * @param column - the cells and the rows made of them
 * @param placeOf - the place of its cell in a row
 * @returns what is to be said
 * @problem column.date_order_taken - the order was proved, and taken
 * @problem column.date_order_unknown - it was not, and most of the column is such texts
 * @problem column.dates_swapped - days and months were likely swapped
 * @definition ours: docs/decisions/0072-order-of-dates.md
 */
export function settleDates(column: ColumnOfDates, placeOf: (row: number) => Place): readonly Problem[] {
  const { at, cells, rows } = column;
  const written = rows.flatMap(({ row, cells: texts }, i) => {
    const text = texts[at]!.trim();
    const isMeant = typeof storedIn(cells[i]) === 'string' && dateOrder([text]).is !== 'none';
    return isMeant ? [{ row, text }] : [];
  });
  const [first] = written;
  if (first === undefined) return [];
  const texts = written.map(({ text }) => text);
  const place = placeOf(first.row);
  const value = first.text;
  const other = swappedDay(column, texts);
  if (other !== null) {
    rows.forEach((row, i) => {
      if (isDateCell(cells[i])) row.refused = new Map([...(row.refused ?? []), [at, 'cell.date_swapped']]);
    });
    const facts = { value, other, readings: [other, swapped(other)], expected: 'dates of one kind' };
    return [tableProblem('column.dates_swapped', place, facts)];
  }
  // Where the order was said, the reader of cells takes it.
  if (column.order !== null) return [];
  const shownOrder = dateOrder(texts);
  if (shownOrder.is === 'proved')
    return [tableProblem('column.date_order_taken', place, takeOrder(column, shownOrder, value))];
  // A few among many real dates are named one by one by the reader of cells.
  if (texts.length <= cells.filter(isDateCell).length) return [];
  const readings = orders.flatMap((order) => dayInOrder(value, order) ?? []);
  return [tableProblem('column.date_order_unknown', place, { value, readings, expected: 'YYYY-MM-DD' })];
}
