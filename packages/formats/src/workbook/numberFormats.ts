/** How a spreadsheet shows the number in a cell: as a day, a time of day, with zeros before it, or as it is. */
export type CellFormat = 'plain' | 'date' | 'time' | `0${string}`;

/**
 * Numbers of formats that a workbook need not spell out. 27 to 36 and 50 to 58 are dates in East Asian languages.
 * Source: ECMA-376 Part 1, 18.8.30 (from memory).
 */
const builtIn: readonly (readonly [number, number, CellFormat])[] = [
  [14, 17, 'date'],
  [18, 21, 'time'],
  [22, 22, 'date'],
  [27, 31, 'date'],
  [32, 35, 'time'],
  [36, 36, 'date'],
  [45, 47, 'time'],
  [50, 58, 'date'],
];

/**
 * How does a format of this number show a cell?
 *
 * @param id - the number of the format
 * @param code - how it is written, where the workbook spells it out [text]
 * @returns date, time, zeros (as many as are shown at least), or plain
 * @source ecma-376, Part 1, 18.8.30 and 18.8.31 (from memory)
 * @example
 * cellFormat(164, 'yyyy-mm-dd') // → 'date'
 * cellFormat(165, '0.0" m"') // → 'plain'
 */
export function cellFormat(id: number, code: string | undefined): CellFormat {
  if (code === undefined) return builtIn.find(([from, to]) => id >= from && id <= to)?.[2] ?? 'plain';
  const bare = code
    .replace(/"[^"]*"|\\.|_.|\*./g, '')
    .replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '')
    .split(';')[0]!
    .trim();
  if (/general/i.test(bare)) return 'plain';
  if (/[yd]/i.test(bare)) return 'date';
  if (/[hs]/i.test(bare)) return 'time';
  if (/m/i.test(bare)) return 'date';
  return /^0{2,}$/.test(bare) ? (bare as `0${string}`) : 'plain';
}
