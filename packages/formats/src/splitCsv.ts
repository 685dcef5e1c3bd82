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

/**
 * Which cells stand in one line?
 *
 * @param line - the line, without its end [text]
 * @param row - its row
 * @param separator - comma, semicolon or tab
 * @returns its cells; marked as broken where a quote is opened and not closed
 * @source RFC 4180, section 2
 */
export function splitLine(line: string, row: number, separator: Separator): RawRow {
  if (!line.includes('"')) return { row, cells: line.split(separator) };
  const { data, errors } = parse(line, separator);
  const cells = data.length === 1 ? data[0]! : [line];
  return errors.length > 0 ? { row, cells, broken: true } : { row, cells };
}

/** Line by line, so that a quote that never closes costs its own line and no other. */
function splitLines(text: string, separator: Separator): readonly RawRow[] {
  return text.split('\n').map((line, i) => splitLine(line.replace(/\r$/, ''), i + 1, separator));
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
  const body = ended ? plain.slice(0, -1) : plain;
  const { data, errors } = parse(body, separator);
  const rows =
    errors.length > 0 ? splitLines(body, separator) : data.map((cells, i) => ({ row: i + 1, cells }) satisfies RawRow);
  return { rows, ended };
}
