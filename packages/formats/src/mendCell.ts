import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { bare, folderTableNames, folderTables, guardText, rain, tableProblem } from '@eavewell/tables';
import { findSeparator } from './findSeparator.ts';
import { readFileBytes } from './readFileBytes.ts';
import { splitCsv } from './splitCsv.ts';
import { withCells } from './withCells.ts';
import { writeFileWhole } from './writeFileWhole.ts';

/** A cell of a table as people see it: the header is row 1, the column by its header. */
export interface CellPlace {
  readonly file: string;
  readonly row: number;
  readonly column: string;
}

function columnsOfFile(file: string): readonly string[] {
  const name = folderTableNames.find((one) => folderTables[one].file === file);
  return Object.keys(name === undefined ? rain.columns : folderTables[name].columns);
}

/**
 * Writes one cell of a table of a folder anew; all else in the file stays letter for letter.
 *
 * @param folder - the folder [text]
 * @param place - file, row and column of the cell
 * @param value - what is to stand there [text]
 * @returns null once it stands; or why it cannot be written, and then the file is as it was
 * @problem positions.table_encoding - the file is not in UTF-8, so that other cells could not stay as they are
 * @problem positions.table_broken - there is no such cell, or its quotes do not close
 * @definition ours
 */
export async function mendCell(folder: string, place: CellPlace, value: string): Promise<Problem | null> {
  const { file, row, column } = place;
  const found = await readFileBytes(folder, file);
  const { bytes } = found;
  if (bytes === null) return found.problem ?? tableProblem('file.missing', { file }, { value: file, expected: file });
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return tableProblem('positions.table_encoding', { file }, { value: file });
  }
  const plain = text.replace(/^\uFEFF/, '');
  const separator = findSeparator(plain, columnsOfFile(file));
  const header = splitCsv(plain, separator).rows[0]?.cells.map(bare) ?? [];
  const at = header.indexOf(column);
  const edit = { row, column: at, value: guardText(value) };
  const changed = at < 0 || row < 2 ? null : withCells(text, separator, [edit]);
  if (changed === null) return tableProblem('positions.table_broken', { file, row, column }, { value: file });
  await writeFileWhole(join(folder, file), changed);
  return null;
}
