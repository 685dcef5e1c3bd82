export { databaseProblem, machineProblem } from './databaseFaults.ts';
export { copyOfVersion } from './keptCopy.ts';
export { migrate, migrations, newestVersion } from './migrations.ts';
export {
  type Database,
  openDatabase,
  type ProgrammeChange,
  type ProgrammeEntry,
  type ProgrammeListed,
  type ProgrammeWhole,
  recordsBeside,
} from './openDatabase.ts';
export { databaseFile, deviceFile } from './openFile.ts';
