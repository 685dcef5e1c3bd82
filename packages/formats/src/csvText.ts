import { guardText } from '@eavewell/tables';
import type { CellValue } from './programmeTables.ts';

function cellText(value: CellValue | undefined): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return guardText(value);
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written into a table`);
  return String(value);
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * How is a table written as CSV? Commas, LF at the end of each line, quotes only where they are needed.
 *
 * @param columns - the names of the columns, in order
 * @param rows - the values by column; a column that a row does not have is empty
 * @returns the text of the file [text]
 * @source RFC 4180, section 2 (with LF for CRLF)
 */
export function csvText(columns: readonly string[], rows: readonly Readonly<Record<string, CellValue>>[]): string {
  const lines = [columns.map(quoted).join(',')];
  for (const row of rows) lines.push(columns.map((name) => quoted(cellText(row[name]))).join(','));
  return `${lines.join('\n')}\n`;
}
