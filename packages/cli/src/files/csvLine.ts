import { guardText } from '@eavewell/tables';

/** One line of a CSV file: empty where a value is null, texts guarded against being taken for formulas, quotes where needed. */
export function csvLine(cells: readonly (string | number | null)[]): string {
  const written = cells.map((cell) => {
    if (cell === null) return '';
    if (typeof cell === 'number' && !Number.isFinite(cell)) throw new Error(`a table would hold ${cell}`);
    const text = typeof cell === 'string' ? guardText(cell) : String(cell);
    return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  });
  return `${written.join(',')}\n`;
}
