import { folderAsRead } from './folderAsRead.ts';
import { readProgramme } from './readProgramme.ts';
import type { TablesAsRead } from './rowsAsRead.ts';
import { isWorkbook } from './workbook/isWorkbook.ts';
import { workbookAsRead } from './workbook/workbookAsRead.ts';

/** Faults of files that nothing could be kept of. */
const ofFilesLeft = ['file.unknown', 'file.unreadable', 'file.too_large', 'file.outside', 'file.not_a_file'];

/**
 * Every row of a programme as it stands, to be written anew in this or another form: those that cannot be used too.
 *
 * @param path - the programme folder, or a workbook [text]
 * @returns the tables as they were read, and what was left
 * @problem file.unknown - a file that is none of a programme's; and those of files that could not be opened
 * @law written and read again, a row that could be used has the same values, and one that could not still cannot, but for dates with the year last whose
 * order a column of a workbook proves
 * @definition ours: docs/decisions/0073-converting.md, docs/decisions/0081-everything-kept.md
 */
export async function tablesAsRead(path: string): Promise<TablesAsRead> {
  if (await isWorkbook(path)) return workbookAsRead(path);
  const read = await readProgramme(path, { keep: true });
  if (read.kept === undefined) return { programme: { settings: {}, tables: {}, rain: [] }, told: read.problems };
  return { programme: folderAsRead(read), told: read.problems.filter(({ code }) => ofFilesLeft.includes(code)) };
}
