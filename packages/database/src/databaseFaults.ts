import type { Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import Sqlite from 'better-sqlite3';

const noPermission = /^(SQLITE_(READONLY|CANTOPEN|PERM|AUTH)|EACCES$|EPERM$|EROFS$)/;
const diskFull = /^(SQLITE_FULL|SQLITE_IOERR_(WRITE|FSYNC|SHMSIZE)|ENOSPC$|EDQUOT$|EFBIG$)/;
const failing = /^(SQLITE_IOERR|EIO$)/;
const notAFolder = /^(EEXIST|ENOTDIR)$/;
const damaged = /^SQLITE_(CORRUPT|NOTADB)/;

/**
 * What became of the disk, the folder or the file, as a problem? What is our own mistake is thrown again.
 *
 * @param error - what was thrown
 * @param folder - the data folder [text]
 * @returns the problem
 * @problem database.disk_full - the disk took no more
 * @problem database.not_a_folder - a file stands there
 * @problem database.no_permission - the folder or file may not be read or written
 * @problem database.damaged - the file is not what was written
 * @problem database.disk_failing - the disk did not answer as it should
 * @source sqlite-rescode, result and error codes
 */
export function databaseProblem(error: unknown, folder: string): Problem {
  const code = codeOf(error);
  const facts = { value: folder, reason: error instanceof Error ? error.message : String(error) };
  if (diskFull.test(code)) return recordProblem('database.disk_full', { file: folder }, facts);
  if (notAFolder.test(code)) return recordProblem('database.not_a_folder', { file: folder }, facts);
  if (noPermission.test(code)) return recordProblem('database.no_permission', { file: folder }, facts);
  if (damaged.test(code)) {
    return recordProblem('database.damaged', { file: folder }, { ...facts, folder: [folder] });
  }
  if (failing.test(code)) return recordProblem('database.disk_failing', { file: folder }, facts);
  throw error;
}

/** The same; null where it is our own mistake. */
export function machineProblem(error: unknown, folder: string): Problem | null {
  try {
    return databaseProblem(error, folder);
  } catch {
    return null;
  }
}

function codeOf(error: unknown): string {
  if (error instanceof Sqlite.SqliteError) return error.code;
  const { code } = error as { readonly code?: unknown };
  return typeof code === 'string' ? code : '';
}
