export { migrate, migrations, newestVersion } from './migrations.ts';
export { type Database, databaseFile, openDatabase, type ProgrammeEntry } from './openDatabase.ts';
export { recordsBeside } from './recordsBeside.ts';
