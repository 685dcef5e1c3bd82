export { makeFolder } from './makeFolder.ts';
export type { FileUse, ProgrammeRead } from './programmeRead.ts';
export type { CellValue, ProgrammeTables } from './programmeTables.ts';
export { readProgramme } from './readProgramme.ts';
export { isWorkbook } from './workbook/isWorkbook.ts';
export { type WorkbookLimit, workbookLimits } from './workbook/workbookLimits.ts';
export { notUsedFile, writeNotUsed } from './writeNotUsed.ts';
export { WriteRefused, writeProgramme } from './writeProgramme.ts';
