import type { NotUsed } from '@eavewell/tables';
import { csvText } from './csvText.ts';
import { writeFileWhole } from './writeFileWhole.ts';

/** The name under which the list of what was not used is kept in a folder; it is not read as a table. */
export const notUsedFile = 'not-used.csv';

/**
 * Writes the list of what was not used: file, row, column, the value found, why, and the row as it stands in the file.
 *
 * @param path - the file to write [text]
 * @param notUsed - the cells and rows not used
 * @param reasonOf - the reason in words; its code where none is given
 * @source RFC 4180
 */
export async function writeNotUsed(
  path: string,
  notUsed: readonly NotUsed[],
  reasonOf: (listed: NotUsed) => string = ({ code }) => code,
): Promise<void> {
  const rows = notUsed.map((listed) => ({
    file: listed.file,
    row: listed.row,
    column: listed.column ?? null,
    value: listed.value,
    reason: reasonOf(listed),
    cells: listed.cells.map((cell) => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(','),
  }));
  await writeFileWhole(path, csvText(['file', 'row', 'column', 'value', 'reason', 'cells'], rows));
}
