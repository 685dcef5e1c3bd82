import { join } from 'node:path';
import type { Checked, Problem } from '@eavewell/engine';
import { limitedZip, writeFileWhole } from '@eavewell/formats';
import { type ChangeRecord, readRecord, recordProblem } from '@eavewell/records';
import { folderTableNames, folderTables, idForm, tableProblem } from '@eavewell/tables';

/** Largest file that may be sent, and what a zip may become [byte]. Ours. */
export const largestUpload_bytes = 100e6;
const zipLimits = { most_entries: 5000, largestEntry_bytes: 200e6, largest_bytes: 300e6, most_ratio: 200 };

/** Records of an export stand in this file. */
export const recordsFile = 'records.jsonl';

/** A file that was sent. */
export interface Upload {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** For a table by itself whose name does not say which it is. */
  readonly table: string | null;
  readonly gaugeId: string | null;
}

/** What was unpacked of it. */
export interface Unpacked {
  /** Files of a programme folder, by their path there. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly records: readonly ChangeRecord[] | null;
  readonly problems: readonly Problem[];
}

const otherFiles = ['settings.json', 'columns.json', 'ways.geojson'];
const tableFiles = folderTableNames.map((name): string => folderTables[name].file);
const rainFile = /^rain\/([^/]+)\.(?:csv|dly)$/;

/** Is this the path of a file a programme folder may have? Nothing else is ever written. */
function isOfProgramme(path: string): boolean {
  const gaugeId = rainFile.exec(path)?.[1];
  return gaugeId === undefined ? tableFiles.includes(path) || otherFiles.includes(path) : idForm.test(gaugeId);
}

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** Folders a zip was packed with, before the names of the programme. */
function frontOf(names: readonly string[]): string {
  const sites = names.filter((name) => /(?:^|\/)sites\.csv$/.test(name)).sort((a, b) => a.length - b.length)[0];
  const first = sites ?? names.find((name) => tableFiles.some((file) => name.endsWith(`/${file}`)));
  return first === undefined ? '' : first.slice(0, first.lastIndexOf('/') + 1);
}

/** The records in the file of an export, a line each. */
export function readRecords(bytes: Uint8Array): Checked<readonly ChangeRecord[]> {
  const records: ChangeRecord[] = [];
  const lines = new TextDecoder().decode(bytes).split('\n');
  for (const [i, line] of lines.entries()) {
    if (line.trim() === '') continue;
    const record = readRecord(parsed(line));
    const place = { file: recordsFile, row: i + 1 };
    if (!record) return refused(recordProblem('import.record_unreadable', place, { value: line.slice(0, 80) }));
    records.push(record);
  }
  return { ok: true, value: records, problems: [] };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function unzipped({ name, bytes }: Upload): Checked<Unpacked> {
  const place = { file: name };
  const read = limitedZip(bytes, zipLimits, () => true);
  if ('fault' in read) {
    const { code, entry } = read.fault;
    return refused(recordProblem('import.zip_unreadable', place, { value: name, reason: code, entry }));
  }
  const front = frontOf(read.names);
  const files = new Map<string, Uint8Array>();
  const problems: Problem[] = [];
  let records: Checked<readonly ChangeRecord[]> | null = null;
  for (const [entry, content] of read.entries) {
    const path = entry.startsWith(front) ? entry.slice(front.length) : entry;
    if (path === recordsFile) records = readRecords(content);
    else if (isOfProgramme(path)) files.set(path, content);
    else if (!entry.endsWith('/') && path !== 'datapackage.json') {
      problems.push(tableProblem('file.unknown', { file: path }, { value: path, expected: 'a table of a programme' }));
    }
  }
  if (records !== null && !records.ok) return records;
  if (files.size === 0 && records === null)
    return refused(recordProblem('import.nothing_known', place, { value: name }));
  return { ok: true, value: { files, records: records?.value ?? null, problems }, problems: [] };
}

/** Where a table by itself belongs, by its name or by what was chosen; null where nobody can tell. */
function pathOf({ name, table, gaugeId }: Upload): string | null {
  const path = table === 'rain' ? `rain/${gaugeId ?? ''}.csv` : table === null ? name : `${table}.csv`;
  return isOfProgramme(path) ? path : null;
}

/**
 * What is in a file that was sent: a zip of a programme folder, or one of its tables?
 *
 * @param upload - name and bytes, and which table it is where its name does not say so
 * @returns the files of a programme folder, with the records of an export; names of a zip are never used as paths
 * @problem import.kind_unknown - neither a zip nor a table
 * @problem import.table_unknown - nobody can tell which table it is
 * @problem import.zip_unreadable, import.nothing_known, import.record_unreadable, import.too_large
 * @definition ours: docs/decisions/0105-imports.md
 */
export function unpack(upload: Upload): Checked<Unpacked> {
  const { name, bytes } = upload;
  const place = { file: name };
  if (bytes.length > largestUpload_bytes) {
    return refused(recordProblem('import.too_large', place, { value: name, largest_MB: largestUpload_bytes / 1e6 }));
  }
  if (/\.zip$/i.test(name)) return unzipped(upload);
  if (!/\.(?:csv|json|geojson)$/i.test(name) && upload.table === null) {
    return refused(recordProblem('import.kind_unknown', place, { value: name }));
  }
  const path = pathOf(upload);
  if (path === null) return refused(recordProblem('import.table_unknown', place, { value: name }));
  return { ok: true, value: { files: new Map([[path, bytes]]), records: null, problems: [] }, problems: [] };
}

/** Lays files into a folder, over those that are there. */
export async function layInto(folder: string, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  for (const [path, bytes] of files) await writeFileWhole(join(folder, path), bytes);
}
