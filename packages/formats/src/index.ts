export { makeFolder } from './makeFolder.ts';
export type { CellValue, ProgrammeTables } from './programmeTables.ts';
export { type FileUse, type ProgrammeRead, readProgramme } from './readProgramme.ts';
export { notUsedFile, writeNotUsed } from './writeNotUsed.ts';
export { WriteRefused, writeProgramme } from './writeProgramme.ts';
