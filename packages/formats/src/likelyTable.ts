import {
  bare,
  type FolderTableName,
  folderTableNames,
  folderTables,
  proposeColumns,
  rain,
  type Table,
} from '@eavewell/tables';
import { readCsvFile } from './readCsvFile.ts';

/** Fewer columns that are known say nothing. Ours. */
const leastKnown = 2;

function knownIn(bytes: Uint8Array, table: Table): number {
  const csv = readCsvFile(bytes, { file: table.file, columns: Object.keys(table.columns), needed: false });
  const headers = csv.header.map(bare);
  const proposals = proposeColumns(table, csv.header, csv.rows, null);
  const matched = new Set(proposals.flatMap(({ match }) => (match === null ? [] : [match.column])));
  const isThere = (column: string) => headers.includes(column) || matched.has(column);
  const needed = Object.keys(table.columns).filter((column) => table.columns[column]!.required);
  if (!needed.every(isThere)) return 0;
  return headers.filter((header) => Object.hasOwn(table.columns, header)).length + matched.size;
}

/**
 * Which table is this, whose name does not say? By its headers.
 *
 * @param bytes - the file [byte]
 * @returns the table whose columns it has most of, all that it needs among them; null where it is like none
 * @definition ours
 */
export function likelyTable(bytes: Uint8Array): FolderTableName | 'rain' | null {
  const tables = [
    ...folderTableNames.map((name) => [name, folderTables[name] as Table] as const),
    ['rain', rain as Table] as const,
  ];
  const found = tables
    .map(([name, table]) => ({ name, known: knownIn(bytes, table) }))
    .filter(({ known }) => known >= leastKnown)
    .sort((a, b) => b.known - a.known);
  return found[0]?.name ?? null;
}
