import type { PlainSheet } from '@eavewell/tables';
import { csvText } from './csvText.ts';

/**
 * A sheet that people and other programs read, as CSV: heads in the first line, numbers and days as they are, a text that a spreadsheet
 * would take for a formula with an apostrophe.
 *
 * @param sheet - columns and rows
 * @returns the file's text, its lines ended as ours are [text]
 * @source rfc-4180, quotes and separators
 */
export function plainCsv({ columns, rows }: PlainSheet): string {
  const heads = columns.map(({ head }) => head);
  return csvText(
    heads,
    rows.map((row) => Object.fromEntries(heads.map((head, at) => [head, row[at] ?? null]))),
  );
}
