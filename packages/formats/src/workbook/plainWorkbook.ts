import { type PlainSheet, type SheetColumnKind, tableProblem } from '@eavewell/tables';
import write, { type SheetData } from 'write-excel-file/node';
import { WriteRefused } from '../writeRefused.ts';
import { mostRows, type SheetToWrite } from './sheetsToWrite.ts';
import { serialOfDay } from './spreadsheetDays.ts';
import { dayFormat, textCell, type WrittenCell } from './writtenCells.ts';

/** Width of a column [character]; ours. */
const [leastWidth, mostWidth] = [8, 44];

function cellOf(value: string | number | null, kind: SheetColumnKind): WrittenCell | null {
  if (value === null || value === '') return null;
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written into a sheet`);
    return { type: Number, value };
  }
  const serial = kind === 'day' ? serialOfDay(value) : null;
  return serial === null ? textCell(value) : { type: Number, value: serial, format: dayFormat };
}

/** As wide as its longest text, within what a screen shows. */
function widthOf(sheet: PlainSheet, at: number): number {
  const longest = sheet.rows.reduce(
    (most, row) => Math.max(most, String(row[at] ?? '').split('\n', 1)[0]!.length),
    sheet.columns[at]!.head.length,
  );
  return Math.min(mostWidth, Math.max(leastWidth, longest + 2));
}

function written(sheet: PlainSheet): SheetToWrite {
  if (sheet.rows.length >= mostRows) {
    const facts = { value: sheet.name, limit: 'rows', found: sheet.rows.length + 1, most: mostRows };
    throw new WriteRefused(
      tableProblem('workbook.over_limit', { file: sheet.name }, { ...facts, expected: 'fewer rows' }),
    );
  }
  const header = sheet.columns.map(({ head }): WrittenCell => ({ ...textCell(head), fontWeight: 'bold' }));
  const rows = sheet.rows.map((row) => sheet.columns.map(({ kind }, at) => cellOf(row[at] ?? null, kind)));
  return {
    sheet: sheet.name,
    data: [header, ...rows] as SheetData,
    columns: sheet.columns.map((_, at) => ({ width: widthOf(sheet, at) })),
    stickyRowsCount: 1,
  };
}

/**
 * Sheets that people read as a workbook: a bold first row that stays in sight, numbers and days as such. A text that a spreadsheet would take for
 * a formula gets an apostrophe.
 *
 * @param sheets - names of at most 31 letters, columns and rows
 * @returns the workbook [byte]
 * @problem workbook.over_limit - thrown as WriteRefused where a sheet has more rows than a workbook can hold
 * @source ecma-376, Part 1 (from memory)
 */
export async function plainWorkbook(sheets: readonly PlainSheet[]): Promise<Uint8Array> {
  return write(sheets.map(written)).toBuffer();
}
