import { type FolderTableName, folderTableNames, folderTables } from '../contract/allTables.ts';
import { idForm } from '../contract/columns.ts';
import { rain } from '../contract/rain.ts';
import type { Table } from '../contract/table.ts';
import { rainSheet, settingsSheet } from '../contract/workbookSheets.ts';

/** The sheets of a workbook that stand once, in their order; beside them a sheet `rain <gaugeId>` may stand for each gauge. */
export const sheetNames: readonly string[] = [...folderTableNames, 'settings', 'rain'];

/**
 * Which gauge has its readings in a sheet of this name?
 *
 * @param sheet - the name [text]
 * @returns the gauge; null where it is no sheet of one gauge [text]
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function gaugeOfSheet(sheet: string): string | null {
  const gaugeId = /^rain (.+)$/.exec(sheet)?.[1];
  return gaugeId !== undefined && idForm.test(gaugeId) ? gaugeId : null;
}

/**
 * Which table is kept in a sheet of this name?
 *
 * @param sheet - the name [text]
 * @returns the table; null where it is none of ours
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function tableOfSheet(sheet: string): Table | null {
  if (sheet === 'rain') return rainSheet;
  if (sheet === 'settings') return settingsSheet;
  if (gaugeOfSheet(sheet) !== null) return rain;
  return folderTableNames.includes(sheet as FolderTableName) ? folderTables[sheet as FolderTableName] : null;
}
