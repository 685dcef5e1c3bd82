import type { Place, Problem } from '@eavewell/engine';
import { nearest, tableOfSheet, tableProblem } from '@eavewell/tables';
import type { Workbook } from './openWorkbook.ts';
import type { SheetCells } from './sheetCells.ts';

/** A sheet that was looked for by its name. */
export interface SheetFound {
  /** Null where there is none, or it cannot be read. */
  readonly cells: SheetCells | null;
  readonly problems: readonly Problem[];
  readonly isThere: boolean;
}

/** The file of a place within a workbook: its name and the sheet's. */
export function sheetFile({ name, titleOf }: Pick<Workbook, 'name' | 'titleOf'>, sheet: string): string {
  return `${name}/${titleOf(sheet)}`;
}

/** Is this a problem, and not what was to be read? */
export function isProblem(value: object): value is Problem {
  return 'severity' in value;
}

/** Places of faults of a whole sheet. Those of a column are doubts of its rows alone; a sheet that is not there is no doubt. */
export function bearsOnAll(problems: readonly Problem[]): readonly Place[] {
  return problems
    .filter(({ severity, code }) => severity === 'blocker' && code !== 'sheet.missing' && !code.startsWith('column.'))
    .map(({ place }) => place);
}

/**
 * The sheet of exactly this name. One that is hidden is read, with a warning; two of one name are both left.
 *
 * @param workbook - the workbook
 * @param name - the name of the sheet [text]
 * @param needed - is it a problem that it is not there?
 * @returns its cells, and what is to be said
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export async function findSheet(workbook: Workbook, name: string, needed: boolean): Promise<SheetFound> {
  const place = { file: sheetFile(workbook, name) };
  const found = workbook.sheets.filter((sheet) => sheet.name === name);
  const [sheet] = found;
  if (sheet === undefined) {
    const names = workbook.sheets.map((other) => other.name);
    const { columns = {} } = tableOfSheet(name) ?? {};
    const required = Object.keys(columns).filter((column) => columns[column]!.required);
    const facts = { value: name, expected: name, columns: required, likely: nearest(name, names) ?? '' };
    return { cells: null, problems: needed ? [tableProblem('sheet.missing', place, facts)] : [], isThere: false };
  }
  if (found.length > 1) {
    const facts = { value: name, count: found.length, expected: 'one sheet of a name' };
    return { cells: null, problems: [tableProblem('sheet.twice', place, facts)], isThere: true };
  }
  const hidden = sheet.isHidden
    ? [tableProblem('sheet.hidden', place, { value: name, expected: 'a sheet that is shown' })]
    : [];
  const cells = await workbook.cellsOf({ ...sheet, name: workbook.titleOf(name) });
  if (isProblem(cells)) return { cells: null, problems: [...hidden, cells], isThere: true };
  return { cells, problems: hidden, isThere: true };
}
