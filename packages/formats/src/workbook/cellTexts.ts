import type { Column } from '@eavewell/tables';
import type { OddCell, SheetCell } from './sheetCells.ts';
import { type DaySystem, dayOfSerial, timeOfSerial } from './spreadsheetDays.ts';

/** How a cell comes to be read, where that is not simply as it stands. */
export type CellTaking = 'formula' | 'dayFromNumber' | 'timeLeftOut' | 'dateNotAsked';

/** A cell as the text that the reader of its column reads. */
export interface CellText {
  readonly text: string;
  readonly takings: readonly CellTaking[];
}

const asIs: readonly CellTaking[] = [];
/** A number of five digits may be a spreadsheet's count of days: 1927 to 2173, counted from 1900. */
const [leastDay, mostDay] = [10_000, 99_999];

/** The texts of numbers in columns that ask for a number, for an id or a word, for a day, for a time. */
class NumberText {
  private readonly kind: Column<unknown>['kind'] | null;
  private readonly system: DaySystem;

  constructor(kind: Column<unknown>['kind'] | null, system: DaySystem) {
    this.kind = kind;
    this.system = system;
  }

  of(value: number, format: OddCell['format']): CellText {
    if (this.kind === 'time' && format === 'time') return { text: timeOfSerial(value), takings: asIs };
    if (format === 'date') return this.ofDate(value);
    if (this.kind === 'date' && format === 'plain' && value >= leastDay && value <= mostDay)
      return this.ofPlainDay(value);
    const isPadded = format.startsWith('0') && this.kind !== 'quantity' && Number.isInteger(value) && value >= 0;
    return { text: isPadded ? String(value).padStart(format.length, '0') : String(value), takings: asIs };
  }

  private ofDate(value: number): CellText {
    const day = dayOfSerial(value, this.system);
    if (day === null) return { text: String(value), takings: asIs };
    const hasTime = !Number.isInteger(value);
    if (this.kind === 'date') return { text: day, takings: hasTime ? ['timeLeftOut'] : asIs };
    const text = hasTime ? `${day} ${timeOfSerial(value)}` : day;
    return { text, takings: this.kind === 'id' || this.kind === 'text' ? ['dateNotAsked'] : asIs };
  }

  private ofPlainDay(value: number): CellText {
    const day = dayOfSerial(value, this.system);
    return day === null ? { text: String(value), takings: asIs } : { text: day, takings: ['dayFromNumber'] };
  }
}

/**
 * As which text is a cell of a workbook read? A number as its digits, a date as year-month-day, TRUE as yes where yes or no is asked,
 * a number shown with zeros before it with them; a text as it stands.
 *
 * @param cell - the cell
 * @param column - the column it stands in; null where that is none of the table's
 * @param system - which day the workbook counts from
 * @returns the text, and how it was taken [text]
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function cellText(cell: SheetCell, column: Column<unknown> | null, system: DaySystem): CellText {
  if (typeof cell === 'string') return { text: cell, takings: asIs };
  const kind = column?.kind ?? null;
  if (typeof cell === 'number') return new NumberText(kind, system).of(cell, 'plain');
  const { value, format, isFormula } = cell;
  const read = valueText(value, format, kind, system);
  return isFormula ? { ...read, takings: [...read.takings, 'formula'] } : read;
}

function valueText(
  value: OddCell['value'],
  format: OddCell['format'],
  kind: Column<unknown>['kind'] | null,
  system: DaySystem,
): CellText {
  if (typeof value === 'string') return { text: value, takings: asIs };
  if (typeof value === 'number') return new NumberText(kind, system).of(value, format);
  const text = kind === 'yesNo' ? ['no', 'yes'] : ['FALSE', 'TRUE'];
  return { text: text[Number(value)]!, takings: asIs };
}

/** Is this cell a day as a spreadsheet stores it? */
export function isDateCell(cell: SheetCell | undefined): boolean {
  return typeof cell === 'object' && typeof cell.value === 'number' && cell.format === 'date';
}

/** What is stored in a cell, whatever its format. */
export function storedIn(cell: SheetCell | undefined): string | number | boolean | undefined {
  return typeof cell === 'object' ? cell.value : cell;
}
