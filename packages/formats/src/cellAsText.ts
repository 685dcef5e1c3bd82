import type { CellValue } from './programmeTables.ts';

/**
 * What stands in a cell, as records keep it? The text that is meant; an apostrophe before it comes and goes with the file.
 *
 * @param value - the value of the cell
 * @returns the text; null where the cell is empty [text]
 * @definition ours
 */
export function cellAsText(value: CellValue | undefined): string | null {
  if (value === null || value === undefined || value === '') return null;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}
