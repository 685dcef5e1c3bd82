import Sqlite from 'better-sqlite3';
import { expect, it } from 'vitest';
import { databaseProblem } from './databaseFaults.ts';

/** What SQLite itself throws when a file may grow no more. */
function whenFull(): unknown {
  const connection = new Sqlite(':memory:');
  try {
    connection.pragma('max_page_count = 2');
    connection.exec('CREATE TABLE t (x); INSERT INTO t VALUES (randomblob(100000))');
  } catch (error) {
    return error;
  } finally {
    connection.close();
  }
  return null;
}

/** What it throws when a file may only be read. */
function whenReadOnly(): unknown {
  const connection = new Sqlite(':memory:');
  connection.pragma('query_only = ON');
  try {
    connection.exec('CREATE TABLE t (x)');
  } catch (error) {
    return error;
  } finally {
    connection.close();
  }
  return null;
}

it('tells a full disk, a folder that may not be written and a damaged file apart', () => {
  expect(databaseProblem(whenFull(), 'data')).toMatchObject({ code: 'database.disk_full', place: { file: 'data' } });
  expect(databaseProblem(whenReadOnly(), 'data')).toMatchObject({ code: 'database.no_permission' });
  const system = (code: string) => Object.assign(new Error(code), { code });
  expect(databaseProblem(system('ENOSPC'), 'data')).toMatchObject({ code: 'database.disk_full' });
  expect(databaseProblem(system('EROFS'), 'data')).toMatchObject({ code: 'database.no_permission' });
  expect(databaseProblem(system('ENOTDIR'), 'data')).toMatchObject({ code: 'database.not_a_folder' });
});

it('throws what is our own mistake', () => {
  const mistake = new TypeError('x is not a function');
  expect(() => databaseProblem(mistake, 'data')).toThrow(mistake);
  expect(() => databaseProblem(new Sqlite.SqliteError('syntax', 'SQLITE_ERROR'), 'data')).toThrow('syntax');
});
