export { type ColumnsOfFolder, readColumnsFile, saveColumns } from './columnsSaved.ts';
export { foldersProposals, type TableProposals } from './foldersProposals.ts';
export type { Kept } from './keepFiles.ts';
export { makeFolder } from './makeFolder.ts';
export type { CellValue, ProgrammeTables, RainRow } from './programmeTables.ts';
export { type FileUse, folderProblem, type ProgrammeRead, type ReadOptions, readProgramme } from './readProgramme.ts';
export { tablesAsRead } from './tablesAsRead.ts';
export { notUsedFile, writeNotUsed } from './writeNotUsed.ts';
export { WriteRefused, writeProgramme } from './writeProgramme.ts';
