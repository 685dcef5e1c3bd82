import Sqlite, { type Database as Connection } from 'better-sqlite3';

/** How long a connection waits for another that writes, before it gives up. Ours. */
const wait_ms = 5000;

/** Pages the journal may hold before they go into the file: about 1 MB, so that little stands outside the file. Ours. */
const journal_pages = 250;

/**
 * Opens a file the one way it is ever opened: journal ahead of the file, every commit on the disk before it counts, links
 * between tables kept. Without FULL a power cut may take the last commits, and SQLite built for Node would go without.
 *
 * @param file - the path of the file [text]; made where it is not there
 * @returns the connection
 * @source sqlite-pragma, journal_mode, synchronous, foreign_keys, busy_timeout
 */
export function connect(file: string): Connection {
  const connection = new Sqlite(file, { timeout: wait_ms });
  try {
    connection.pragma('journal_mode = WAL');
    connection.pragma('synchronous = FULL');
    connection.pragma(`wal_autocheckpoint = ${journal_pages}`);
    connection.pragma('foreign_keys = ON');
    connection.pragma('cell_size_check = ON');
    connection.pragma('trusted_schema = OFF');
    return connection;
  } catch (error) {
    connection.close();
    throw error;
  }
}
