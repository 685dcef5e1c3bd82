import type { Problem } from '@eavewell/engine';
import { readColumnsFile, type ShownRows, shownRows } from '@eavewell/formats';

/** Rows with something wrong that are shown whole, of all files together. Ours. */
const mostShown = 1000;

/** The rows of which something is said, with all their cells. */
export async function rowsWithProblems(folder: string, problems: readonly Problem[]): Promise<readonly ShownRows[]> {
  const byFile = new Map<string, Set<number>>();
  let count = 0;
  for (const { place } of problems) {
    const { file, row } = place;
    if (file === undefined || row === undefined) continue;
    const rows = byFile.get(file) ?? new Set<number>();
    if (rows.has(row) || count === mostShown) continue;
    byFile.set(file, rows.add(row));
    count++;
  }
  const { matchings } = await readColumnsFile(folder);
  const shown: ShownRows[] = [];
  for (const [file, rows] of byFile) {
    const found = await shownRows(folder, file, rows, matchings);
    if (found) shown.push(found);
  }
  return shown;
}
