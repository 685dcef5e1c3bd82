import { type DesignSettings, defaultSettings, type Place, type Problem } from '@eavewell/engine';
import { type NotUsed, readRows, readSettings, settingColumn, settingsBeside, settingsSheet } from '@eavewell/tables';
import type { MatchedWorkbook } from './matchedWorkbook.ts';
import { readSheetTable, type SheetTable } from './readSheetTable.ts';
import { bearsOnAll, findSheet, isProblem, sheetFile } from './sheets.ts';

/** The settings of a workbook, and the faults in them that bear on every site. */
export interface SettingsOfWorkbook {
  readonly settings: DesignSettings;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly doubtsOfAll: readonly Place[];
  /** The sheet and its rows with anything in them; none where it cannot be read. */
  readonly files: readonly { readonly file: string; readonly rows: number }[];
  /** The letters of its columns by their names, by file. */
  readonly letters: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

const targetPrefix = 'target.';

/**
 * The settings that rows of field and value give, in the form of settings.json: `target.x` within `target`, numbers as numbers.
 *
 * @param rows - fields with their values as they stand [text]
 * @returns the object
 * @definition ours
 */
export function settingsOfRows(rows: readonly { readonly field: string; readonly value: string }[]) {
  const given: Record<string, unknown> = {};
  const target: Record<string, unknown> = {};
  for (const { field, value } of rows) {
    const isNumber = settingColumn(field)?.kind !== 'text' && /^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/.test(value);
    const read = isNumber ? Number(value) : value;
    if (field.startsWith(targetPrefix)) target[field.slice(targetPrefix.length)] = read;
    else given[field] = read;
  }
  return Object.keys(target).length === 0 ? given : { ...given, target };
}

function placed(problem: Problem, sheet: SheetTable, rowOf: ReadonlyMap<string, number>): Problem {
  const row = rowOf.get(problem.place.column ?? '');
  const letters = sheet.letters.get('value');
  if (row === undefined || letters === undefined) return problem;
  return { ...problem, place: { ...problem.place, row, cell: `${letters}${row}` } };
}

/**
 * Which settings has the programme in this workbook? The defaults where it has no sheet of them, or a field no value.
 *
 * @param workbook - the workbook
 * @returns settings, problems, rows not used, and places of the blockers that bear on a verdict
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export async function readSettingsSheet(workbook: MatchedWorkbook): Promise<SettingsOfWorkbook> {
  const file = sheetFile(workbook, 'settings');
  const found = await findSheet(workbook, 'settings', false);
  const none = {
    settings: defaultSettings,
    notUsed: [],
    files: [],
    letters: new Map(),
    problems: found.problems,
    doubtsOfAll: bearsOnAll(found.problems),
  };
  if (found.cells === null) return none;
  const matching = workbook.matchingOf('settings');
  const asked = { file, table: settingsSheet, days: workbook.days, needed: false, namesEmptyRows: true, matching };
  const sheet = readSheetTable(found.cells, asked);
  if (isProblem(sheet)) return { ...none, problems: [...found.problems, sheet] };
  const rows = readRows(settingsSheet, sheet.header, sheet.rows, {
    file,
    decimalComma: false,
    headerRow: sheet.headerRow,
    matching,
  });
  const filled = rows.rows.flatMap(({ row, values: { field, value } }) =>
    field === null || value === null ? [] : [{ row, field, value }],
  );
  const read = readSettings(settingsOfRows(filled), file);
  const rowOf = new Map(filled.map(({ field, row }) => [field, row]));
  const ofValues = read.problems.map((problem) => placed(problem, sheet, rowOf));
  const problems = [...found.problems, ...sheet.problems, ...rows.problems, ...ofValues];
  const grave = problems.filter(
    ({ severity, place }) => severity === 'blocker' && !settingsBeside.has(place.column ?? ''),
  );
  return {
    settings: read.settings,
    problems,
    notUsed: [...sheet.notUsed, ...rows.notUsed],
    doubtsOfAll: grave.map(({ place }) => place),
    files: [{ file, rows: rows.count }],
    letters: new Map([[file, sheet.letters]]),
  };
}
