import type { Place, Problem } from '@eavewell/engine';
import { type NotUsed, type RawRow, shown, tableProblem } from '@eavewell/tables';
import { type Decoded, decodeText } from './decodeText.ts';
import { findSeparator } from './findSeparator.ts';
import { type Separator, splitCsv } from './splitCsv.ts';

/** A CSV file taken apart, before its columns are known. */
export interface CsvFile {
  readonly header: readonly string[];
  /** The rows under the header. */
  readonly rows: readonly RawRow[];
  /** A comma may be the decimal mark: the cells are not separated by commas. */
  readonly decimalComma: boolean;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

/** What is asked of a file. */
export interface CsvAsked {
  readonly file: string;
  readonly columns: readonly string[];
  /** Does it matter that it has no rows? */
  readonly needed: boolean;
  readonly place?: Place;
}

const nothing = { header: [], rows: [], decimalComma: false, notUsed: [] } as const;

function isEmpty({ cells, broken }: RawRow): boolean {
  return broken !== true && cells.every((text) => text.trim() === '');
}

/** A last line that stops short and has no end was cut off with all that came after it. */
function cutOff(asked: CsvAsked, width: number, last: RawRow): { problem: Problem; notUsed: NotUsed } {
  const value = shown(last.cells.join(','));
  const place = { ...asked.place, file: asked.file, row: last.row };
  const facts = { value, expected: `${width} cells and a line end`, cells: last.cells.length, columns: width };
  return {
    problem: tableProblem('file.cut_off', place, facts),
    notUsed: { file: asked.file, row: last.row, value, code: 'file.cut_off', cells: last.cells },
  };
}

/**
 * What is to be said of a text that is not in UTF-8?
 *
 * @param decoded - the text and what it was taken for
 * @param place - the file
 * @returns one warning, or none
 * @problem file.encoding_taken - the text was read as UTF-16 or Windows-1252
 * @definition ours: docs/decisions/0015-encodings.md
 */
export function takenProblem(decoded: Decoded, place: Place): readonly Problem[] {
  if (!('taken' in decoded) || decoded.taken === undefined) return [];
  const facts = { value: place.file ?? '', encoding: decoded.taken, expected: 'UTF-8 text' };
  return [tableProblem('file.encoding_taken', place, facts)];
}

/**
 * What is to be said of cells that are not parted by commas?
 *
 * @param separator - what parts them
 * @param place - the file
 * @returns one note, or none
 * @problem file.separator - they were read so
 * @definition ours
 */
export function separatorProblem(separator: Separator, place: Place): readonly Problem[] {
  if (separator === ',') return [];
  const value = separator === ';' ? 'semicolon' : 'tab';
  return [tableProblem('file.separator', { ...place, row: 1 }, { value, expected: 'comma' })];
}

/**
 * Which rows of cells stand in these bytes? Encoding, separator, line ends and a file cut off are settled here.
 *
 * @param bytes - the file [byte]
 * @param asked - its name, the columns it should have, and whether it may be without rows
 * @returns header, rows, problems and what was not used; no header where the file cannot be read as a table at all
 * @problem file.wrong_encoding - not text of an encoding that is read
 * @problem file.encoding_taken - read as UTF-16 or Windows-1252
 * @problem file.cut_off - the last line stops short; it is not used, the others are
 * @definition ours: docs/decisions/0010-faults-in-files.md
 */
export function readCsvFile(bytes: Uint8Array, asked: CsvAsked): CsvFile {
  const { file, columns } = asked;
  const place = { ...asked.place, file };
  const decoded = decodeText(bytes);
  if ('encoding' in decoded) {
    const facts = { value: file, encoding: decoded.encoding, expected: 'UTF-8 text' };
    return { ...nothing, problems: [tableProblem('file.wrong_encoding', place, facts)] };
  }
  if (decoded.text.trim() === '')
    return { ...nothing, problems: [tableProblem('file.empty', place, { value: file, expected: columns })] };
  const problems: Problem[] = [...takenProblem(decoded, place)];
  const notUsed: NotUsed[] = [];
  const separator = findSeparator(decoded.text, columns);
  problems.push(...separatorProblem(separator, place));
  const { rows, ended } = splitCsv(decoded.text, separator);
  const header = rows[0]!.cells;
  const body = rows.slice(1);
  const end = lastRow(asked, header.length, ended ? undefined : body.at(-1));
  problems.push(...end.problems);
  notUsed.push(...end.notUsed);
  const whole = end.notUsed.length > 0 ? body.slice(0, -1) : body;
  if (whole.every(isEmpty) && notUsed.length === 0) problems.push(noRows(asked));
  return { header, rows: whole, decimalComma: separator !== ',', problems, notUsed };
}

/**
 * What is to be said of a file with nothing under its first line?
 *
 * @param asked - its name, and whether it may be without rows
 * @returns the problem
 * @problem file.no_rows - a table that is needed; file.no_rows_optional for another
 * @definition ours
 */
export function noRows(asked: CsvAsked): Problem {
  const code = asked.needed ? 'file.no_rows' : 'file.no_rows_optional';
  const facts = { value: asked.file, expected: 'rows under the header' };
  return tableProblem(code, { ...asked.place, file: asked.file }, facts);
}

/**
 * What is to be said of a last line that has no end? One that stops short was cut off, and is not used.
 *
 * @param asked - the file's name
 * @param width - cells of the first line
 * @param last - the last line, where it has no end
 * @returns the problem; the row where it is not used
 * @problem file.cut_off - the last line stops short; it is not used
 * @problem file.no_last_line_end - it is whole; a warning
 * @definition ours: docs/decisions/0010-faults-in-files.md
 */
export function lastRow(
  asked: CsvAsked,
  width: number,
  last: RawRow | undefined,
): { readonly problems: readonly Problem[]; readonly notUsed: readonly NotUsed[] } {
  if (last === undefined) return { problems: [], notUsed: [] };
  if (last.broken === true || last.cells.length < width) {
    const { problem, notUsed } = cutOff(asked, width, last);
    return { problems: [problem], notUsed: [notUsed] };
  }
  const place = { ...asked.place, file: asked.file, row: last.row };
  const facts = { value: asked.file, expected: 'a line end' };
  return { problems: [tableProblem('file.no_last_line_end', place, facts)], notUsed: [] };
}
