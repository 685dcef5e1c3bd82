import type { Separator } from './splitCsv.ts';

const separators: readonly Separator[] = [',', ';', '\t'];

/** Of a first line so much is looked at [character]. Ours. */
const mostLooked = 100_000;

/**
 * What separates the cells of this file? The mark that splits the first line into the most names of known columns; of equals the
 * one that splits it most; a comma where none does.
 *
 * @param text - the text of the file [text]
 * @param columns - the names of the columns the table has [text]
 * @returns comma, semicolon or tab
 * @definition ours
 * @example
 * findSeparator('siteId;name\nA;B', ['siteId', 'name']) // → ';'
 */
export function findSeparator(text: string, columns: readonly string[]): Separator {
  const line = /^[^\r\n]*/.exec(text)![0];
  const known = new Set(columns.map((name) => name.toLowerCase()));
  // A first line so long is no header of ours, and its end does not decide.
  const looked = line.slice(0, mostLooked);
  const scores = separators.map((separator) => {
    const names = looked.split(separator).map((name) => name.replaceAll('"', '').trim().toLowerCase());
    return { separator, known: names.filter((name) => known.has(name)).length, cells: names.length };
  });
  scores.sort((a, b) => b.known - a.known || b.cells - a.cells);
  return scores[0]!.separator;
}
