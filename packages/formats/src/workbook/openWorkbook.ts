import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { shown, tableProblem } from '@eavewell/tables';
import type { CellFormat } from './numberFormats.ts';
import { readSheetCells, type SheetCells } from './sheetCells.ts';
import type { DaySystem } from './spreadsheetDays.ts';
import { stopped } from './stopped.ts';
import { overLimit, Unreadable, workbookLimits } from './workbookLimits.ts';
import { readFormats, readSharedTexts, type SheetListed, type WorkbookParts, workbookParts } from './workbookParts.ts';
import { openPackage, type Package } from './zipPackage.ts';

/** A workbook whose sheets can be read one by one. */
export interface Workbook {
  /** Its name, without the folders above it. */
  readonly name: string;
  readonly sheets: readonly SheetListed[];
  readonly days: DaySystem;
  /** What is to be said of the workbook as a whole. */
  readonly problems: readonly Problem[];
  /** How a sheet of ours is called in the workbook. */
  titleOf(sheet: string): string;
  /** The cells of a sheet, or why they cannot be read. */
  cellsOf(sheet: SheetListed): Promise<SheetCells | Problem>;
}

const bytes_per_MB = 1e6;
const oldContainer = [0xd0, 0xcf, 0x11, 0xe0] as const;
const zipStart = [0x50, 0x4b, 0x03, 0x04] as const;

function begins(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, i) => bytes[i] === byte);
}

/** What a file is that is no .xlsx workbook; null where it may be one. */
function otherKind(bytes: Uint8Array, name: string): Problem | null {
  const place = { file: name };
  const value = name;
  const expected = 'a workbook (.xlsx)';
  if (bytes.length === 0) return tableProblem('file.empty', place, { value, expected });
  if (begins(bytes, oldContainer)) {
    const isLocked = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(
      'EncryptedPackage',
      0,
      'utf16le',
    );
    if (isLocked) return tableProblem('workbook.password', place, { value, expected });
    return tableProblem('workbook.other_format', place, { value, found: '.xls', expected });
  }
  if (begins(bytes, zipStart)) return null;
  return tableProblem('workbook.not_a_workbook', place, { value, found: 'text', expected });
}

/** What a zip is that is no .xlsx workbook; null where it may be one. */
function otherZip(zip: Package, name: string): Problem | null {
  const place = { file: name };
  const facts = { value: name, expected: 'a workbook (.xlsx)' };
  if (zip.isEncrypted) return tableProblem('workbook.password', place, facts);
  if (zip.has('xl/workbook.bin')) return tableProblem('workbook.other_format', place, { ...facts, found: '.xlsb' });
  if (zip.has('mimetype') && zip.has('content.xml'))
    return tableProblem('workbook.other_format', place, { ...facts, found: '.ods' });
  if (zip.has('_rels/.rels') && !zip.has('word/document.xml') && !zip.has('ppt/presentation.xml')) return null;
  return tableProblem('workbook.not_a_workbook', place, { ...facts, found: 'zip' });
}

function toldOf(zip: Package, { otherWorkbooks }: WorkbookParts, name: string): readonly Problem[] {
  const place = { file: name };
  const problems: Problem[] = [];
  const [unsafe] = zip.unsafe;
  if (unsafe !== undefined) {
    const facts = { value: shown(unsafe), count: zip.unsafe.length, expected: 'names within the workbook' };
    problems.push(tableProblem('workbook.entry_unsafe', place, facts));
  }
  if (zip.names.some((part) => /vbaProject\.bin$/i.test(part)))
    problems.push(tableProblem('workbook.macros', place, { value: name, expected: '' }));
  if (otherWorkbooks > 0)
    problems.push(
      tableProblem('workbook.other_workbooks', place, { value: name, count: otherWorkbooks, expected: '' }),
    );
  return problems;
}

/** Reads what all sheets need, and makes the door to them. */
async function opened(zip: Package, name: string): Promise<Workbook> {
  const parts = await workbookParts(zip);
  const texts = parts.textsPart === null ? [] : await readSharedTexts(zip.read(parts.textsPart));
  const formats: readonly CellFormat[] =
    parts.formatsPart === null ? [] : await readFormats(zip.read(parts.formatsPart));
  return {
    name,
    sheets: parts.sheets,
    days: parts.days,
    problems: toldOf(zip, parts, name),
    titleOf: (sheet) => sheet,
    async cellsOf({ name: sheet, part }) {
      try {
        if (part === null) throw new Unreadable('it is not a sheet of cells of this file');
        return await readSheetCells(zip.read(part), { texts, formats });
      } catch (error) {
        return stopped(error, { file: `${name}/${sheet}` }, '');
      }
    },
  };
}

/**
 * Opens a workbook. What is no workbook of the form .xlsx is named for what it is; a broken or swollen one is refused.
 *
 * @param path - the file [text]
 * @returns the workbook, or the problem for which it cannot be read
 * @problem workbook.not_a_workbook - and the other codes of workbookProblems that begin so
 * @law never throws for what stands in the file; opens no other file
 * @source ecma-376, Parts 1 and 2 (from memory)
 */
export async function openWorkbook(path: string): Promise<Workbook | Problem> {
  const name = basename(path);
  const place = { file: name };
  try {
    const size_MB = (await stat(path)).size / bytes_per_MB;
    if (size_MB > workbookLimits.file_MB) return stopped(overLimit('file_MB', Math.ceil(size_MB)), place, name);
    const bytes = await readFile(path);
    const other = otherKind(bytes, name);
    if (other !== null) return other;
    const zip = openPackage(bytes);
    if (zip === null) return tableProblem('workbook.cut_off', place, { value: name, expected: 'a whole workbook' });
    return otherZip(zip, name) ?? (await opened(zip, name));
  } catch (error) {
    if (error instanceof Unreadable) return stopped(error, place, name);
    const reason = (error as NodeJS.ErrnoException).code;
    if (reason === undefined) throw error;
    return tableProblem('file.unreadable', place, { value: name, expected: 'a file that can be read', reason });
  }
}
