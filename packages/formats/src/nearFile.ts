import { nearest } from '@eavewell/tables';

/** A copy's number, as browsers and file managers write it. */
const copyMark = /(?:[\s_-]*\(\d+\)|[\s_-]+copy(?:[\s_-]*\(?\d+\)?)?|~\d*)$/i;
const end = /\.[^.]*$/;
/** Ends under which a table may stand, saved otherwise than asked. */
const tableEnds = ['.csv', '.xlsx', '.xls', '.ods', '.txt', '.tsv', ''];

function stem(name: string): string {
  return name.replace(end, '').trim().replace(copyMark, '');
}

/**
 * Which of the names in a folder was likely meant by a file that is missing? The same name in other letters, with another
 * end, as a numbered copy, without its plural, or nearly so spelt.
 *
 * @param file - the file that is missing [text]
 * @param entries - the names there are [text]
 * @returns the likely one; null where none is near [text]
 * @definition ours
 * @example
 * nearFile('sites.csv', ['Sites.csv', 'notes.txt']) // → 'Sites.csv'
 * nearFile('sites.csv', ['sites (1).csv']) // → 'sites (1).csv'
 * nearFile('sites.csv', ['site.xlsx']) // → 'site.xlsx'
 * nearFile('sites.csv', ['rain']) // → null
 */
export function nearFile(file: string, entries: readonly string[]): string | null {
  const sought = stem(file).toLowerCase();
  const tables = entries.filter((name) => tableEnds.includes((end.exec(name)?.[0] ?? '').toLowerCase()));
  const exact = (name: string) => stem(name).toLowerCase() === sought;
  const one = (text: string) => text.toLowerCase().replace(/s$/, '');
  const found = tables.find(exact) ?? tables.find((name) => one(stem(name)) === one(sought));
  if (found !== undefined) return found;
  const near = nearest(sought, tables.map(stem));
  return near === null ? null : (tables.find((name) => stem(name) === near) ?? null);
}
