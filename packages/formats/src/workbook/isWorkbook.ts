import { open, stat } from 'node:fs/promises';

const workbookName = /\.(?:xls[xmb]?|xlt[xm]?|ods)$/i;
const starts: readonly (readonly number[])[] = [
  [0x50, 0x4b, 0x03, 0x04],
  [0xd0, 0xcf, 0x11, 0xe0],
];

/**
 * Is this a file to be read as a workbook? By its name, or by its first bytes; a folder never is.
 *
 * @param path - the file or folder [text]
 * @returns true or false; false for what is not there
 * @definition ours
 */
export async function isWorkbook(path: string): Promise<boolean> {
  try {
    if (!(await stat(path)).isFile()) return false;
    if (workbookName.test(path)) return true;
    const file = await open(path, 'r');
    try {
      const first = new Uint8Array(4);
      await file.read(first, 0, first.length, 0);
      return starts.some((start) => start.every((byte, i) => first[i] === byte));
    } finally {
      await file.close();
    }
  } catch {
    return false;
  }
}
