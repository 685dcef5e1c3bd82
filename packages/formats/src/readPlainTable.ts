import { decodeText } from './decodeText.ts';
import { findSeparator } from './findSeparator.ts';
import { splitCsv } from './splitCsv.ts';

/**
 * What rows does a CSV file hold that is none of the programme's tables? Separator and encoding are found as for those.
 *
 * @param bytes - the file [byte]
 * @param columns - columns its first line should have, to tell the separator by [text]
 * @returns its rows, the first line among them, each a list of cells [text]; null where it is no text
 * @source RFC 4180, section 2
 */
export function readPlainTable(bytes: Uint8Array, columns: readonly string[]): readonly (readonly string[])[] | null {
  const decoded = decodeText(bytes);
  if (!('text' in decoded)) return null;
  const { text } = decoded;
  const { rows } = splitCsv(text, findSeparator(text, columns));
  return rows.map(({ cells }) => cells).filter((cells) => cells.some((cell) => cell !== ''));
}
