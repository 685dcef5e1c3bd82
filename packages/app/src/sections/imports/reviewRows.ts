import type { Review } from './importsApi.ts';

type Problem = Review['problems'][number];

/** A row of a file that waits, with the problem that is told of it. */
export interface RowShown {
  readonly file: string;
  readonly row: number;
  readonly cells: readonly { readonly header: string; readonly column: string | null; readonly value: string }[];
}

/**
 * The row a problem is about, as it stands in its file.
 *
 * @param review - the review
 * @param place - where the problem is
 * @returns the row with its cells; null where it is not told
 */
export function rowAt(review: Pick<Review, 'rowsShown'>, place: Problem['place']): RowShown | null {
  const { file, row } = place;
  if (file === undefined || row === undefined) return null;
  const shown = review.rowsShown.find((one) => one.file === file);
  const found = shown?.rows.find((one) => one.row === row);
  if (shown === undefined || found === undefined) return null;
  const cells = shown.columns.map(({ header, column }, i) => ({ header, column, value: found.cells[i] ?? '' }));
  return { file, row, cells };
}

/** The number of a row as a person sees it: in the sheet of the workbook it came in, or in its file. */
export function rowSeen({ inSheets }: Pick<Review, 'inSheets'>, file: string | undefined, row: number): number {
  return inSheets.find((one) => one.file === file && one.row === row)?.inSheet ?? row;
}

/** The workbook and the sheet a file was laid out from; null for a file of its own. */
export function sheetOf({ files }: Pick<Review, 'files'>, file: string): { file: string; sheet: string } | null {
  const found = files.find((one) => one.file === file);
  return found === undefined || found.sheet === null ? null : { file: found.from, sheet: found.sheet };
}

/** The header under which a problem's column stands in its file. */
export function headerOf(row: RowShown, column: string | undefined): string | null {
  if (column === undefined) return null;
  const cell = row.cells.find((one) => one.column === column) ?? row.cells.find((one) => one.header === column);
  return cell?.header ?? null;
}

const weights = { blocker: 0, warning: 1, note: 2 } as const;

/** Problems by their file, what cannot be used first. */
export function problemsByFile(problems: readonly Problem[]): readonly (readonly [string, readonly Problem[]])[] {
  const byFile = new Map<string, Problem[]>();
  for (const problem of problems) {
    const file = problem.place.file ?? '';
    byFile.set(file, [...(byFile.get(file) ?? []), problem]);
  }
  const weight = ({ severity }: Problem) => weights[severity as keyof typeof weights] ?? 0;
  return [...byFile].map(([file, own]) => [
    file,
    [...own].sort((a, b) => weight(a) - weight(b) || (a.place.row ?? 0) - (b.place.row ?? 0)),
  ]);
}
