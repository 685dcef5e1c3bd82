import type { Place, Problem } from '@eavewell/engine';
import { isoDay } from '@eavewell/engine';
import { type FileMatching, isPercentSeen, nearest, readCell, type Table, tableProblem } from '@eavewell/tables';
import type { ColumnsOfFolder } from '../columnsSaved.ts';
import type { Workbook } from './openWorkbook.ts';
import type { SheetTable } from './readSheetTable.ts';
import { sheetFile } from './sheets.ts';

/** A workbook whose sheets are called as ours, by what was accepted for them. */
export interface MatchedWorkbook extends Workbook {
  /** What was accepted for the headers of a sheet of ours; null where nothing was. */
  matchingOf(sheet: string): FileMatching | null;
  /** Faults of what was saved, that bear on every site. */
  readonly doubtsOfAll: readonly Place[];
}

/**
 * Gives the sheets of a workbook the names they were accepted for, and says so.
 *
 * @param workbook - the workbook as it stands
 * @param saved - what was accepted for it
 * @returns the workbook under our names, with what is to be said of the matching
 * @problem sheet.matched - a sheet was read as one of ours
 * @problem sheet.not_there - a sheet that was accepted is no longer there
 * @definition ours: docs/decisions/0074-columns-of-workbooks.md
 */
export function matchedWorkbook(workbook: Workbook, saved: ColumnsOfFolder): MatchedWorkbook {
  const { sheets: given, matchings } = saved;
  const there = workbook.sheets.map(({ name }) => name);
  const problems: Problem[] = [...workbook.problems, ...saved.problems];
  const titles = new Map<string, string>();
  for (const [sheet, ours] of given) {
    const place = { file: sheetFile(workbook, sheet) };
    if (!there.includes(sheet)) {
      const facts = { value: sheet, likely: nearest(sheet, there) ?? '', expected: there };
      problems.push(tableProblem('sheet.not_there', place, facts));
    } else if (ours !== null) {
      if (!titles.has(ours)) titles.set(ours, sheet);
      problems.push(tableProblem('sheet.matched', place, { value: sheet, expected: ours }));
    }
  }
  for (const sheet of matchings.keys()) {
    if (there.includes(sheet) || given.has(sheet)) continue;
    const facts = { value: sheet, likely: nearest(sheet, there) ?? '', expected: there };
    problems.push(tableProblem('sheet.not_there', { file: sheetFile(workbook, sheet) }, facts));
  }
  const titleOf = (sheet: string) => titles.get(sheet) ?? sheet;
  return {
    ...workbook,
    problems,
    titleOf,
    sheets: workbook.sheets.flatMap((sheet) => {
      const ours = given.has(sheet.name) ? given.get(sheet.name)! : sheet.name;
      return ours === null ? [] : [{ ...sheet, name: ours }];
    }),
    matchingOf: (sheet) => matchings.get(titleOf(sheet)) ?? null,
    doubtsOfAll: saved.doubtsOfAll,
  };
}

/** Digits and marks alone, which could be read as a number or a day once nothing is said of their unit or order. */
function isDigitsOnly(text: string): boolean {
  return /\d/.test(text) && !/\p{L}/u.test(text.replace(/(\d)e([+-]?\d)/i, '$1$2'));
}

/**
 * A sheet under our own headers and in our units, to be written anew: what was accepted is then no longer to be said. A number or day that
 * could not be read so gets its unit or order behind it, so that nobody reads it otherwise; a word, as the T of a trace, has none.
 *
 * @param sheet - the sheet as it stands
 * @param table - the table it holds
 * @param matching - what was accepted for its headers
 * @returns the sheet
 * @definition ours: docs/decisions/0074-columns-of-workbooks.md
 */
export function underOurHeaders(
  sheet: SheetTable,
  { columns }: Pick<Table, 'columns'>,
  matching: FileMatching | null,
): SheetTable {
  if (matching === null) return sheet;
  const matches = sheet.header.map((name) => matching.columns.get(name.trim()) ?? null);
  const percentSeen = matches.map((match, at) => {
    const texts = sheet.rows.map(({ cells }) => cells[at] ?? '');
    return isPercentSeen(match?.unit ?? null, texts, { decimalComma: false });
  });
  const rows = sheet.rows.map((raw) => ({
    ...raw,
    cells: raw.cells.map((text, at) => {
      const match = matches[at] ?? null;
      const how = match?.unit ?? match?.dateOrder ?? null;
      if (match === null || how === null || text.trim() === '') return text;
      const column = columns[match.column]!;
      const { unit, dateOrder } = match;
      const habit = { decimalComma: false, unit, dateOrder, percentSeen: percentSeen[at] ?? false };
      const { value } = readCell(column, text, habit);
      if (value === null) return isDigitsOnly(text) ? `${text} ${how}` : text;
      return column.kind === 'date' ? isoDay(value as number) : String(value);
    }),
  }));
  return { ...sheet, header: sheet.header.map((name, at) => matches[at]?.column ?? name), rows };
}
