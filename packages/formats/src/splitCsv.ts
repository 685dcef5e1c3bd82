import type { RawRow } from '@eavewell/tables';
import Papa from 'papaparse';

/** What stands between two cells. */
export type Separator = ',' | ';' | '\t';

/** A CSV text as rows of cells. Row 1 is the header. */
export interface CsvRows {
  readonly rows: readonly RawRow[];
  /** Does the last line end as a line should? */
  readonly ended: boolean;
}

function parse(text: string, separator: Separator) {
  return Papa.parse<string[]>(text, { delimiter: separator, newline: '\n', header: false, skipEmptyLines: false });
}

/** One kind of line end, except inside quotes. */
function withPlainLineEnds(text: string): string {
  if (!text.includes('\r')) return text;
  return text.replace(/"[^"]*"|\r\n?/g, (found) => (found[0] === '"' ? found : '\n'));
}

const wholeQuotes = /^"[^"]*"$/;

/** A text whose last line ends is parsed with that end, so that the last line is read as the others are. */
function rowsOf(text: string, separator: Separator, ended: boolean) {
  const { data, errors } = parse(text, separator);
  return { data: ended ? data.slice(0, -1) : data, errors };
}

/**
 * Which cells stand in one line?
 *
 * @param line - the line, without its end [text]
 * @param row - its row
 * @param separator - comma, semicolon or tab
 * @param ended - has the line an end?
 * @returns its cells; marked as broken where a quote is opened and not closed
 * @source RFC 4180, section 2
 */
export function splitLine(line: string, row: number, separator: Separator, ended = true): RawRow {
  const plain = line.split(separator);
  if (!line.includes('"')) return { row, cells: plain };
  // Quotes round whole cells with nothing in them to be told apart: a cell with a separator in it would fall into pieces here.
  if (plain.every((cell) => !cell.includes('"') || wholeQuotes.test(cell)))
    return { row, cells: plain.map((cell) => (cell[0] === '"' ? cell.slice(1, -1) : cell)) };
  const { data, errors } = rowsOf(ended ? `${line}\n` : line, separator, ended);
  if (errors.length === 0) return { row, cells: data.length === 1 ? data[0]! : [line] };
  const unclosed = parse(line, separator).data;
  return { row, cells: unclosed.length === 1 ? unclosed[0]! : [line], broken: true };
}

/** Line by line, so that a quote that never closes costs its own line and no other. */
function splitLines(text: string, separator: Separator, ended: boolean): readonly RawRow[] {
  const lines = text.split('\n');
  if (ended) lines.pop();
  return lines.map((line, i) => splitLine(line.replace(/\r$/, ''), i + 1, separator, ended || i < lines.length - 1));
}

/**
 * Which cells stand in a CSV text? Quoted cells may hold separators, quotes and line ends. Where the quotes do not close, the
 * text is read line by line instead, and the lines at fault are marked.
 *
 * @param text - the text, without a byte order mark [text]
 * @param separator - comma, semicolon or tab
 * @returns rows of cells with their row numbers, and whether the last line ends
 * @law every line of the text is in some row
 * @source RFC 4180, section 2
 */
export function splitCsv(text: string, separator: Separator): CsvRows {
  const plain = withPlainLineEnds(text);
  const ended = plain.endsWith('\n');
  const { data, errors } = rowsOf(plain, separator, ended);
  const rows =
    errors.length > 0
      ? splitLines(plain, separator, ended)
      : data.map((cells, i) => ({ row: i + 1, cells }) satisfies RawRow);
  return { rows, ended };
}
