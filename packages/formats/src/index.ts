export type { CellValue, ProgrammeTables } from './programmeTables.ts';
export { WriteRefused, writeProgramme } from './writeProgramme.ts';
