import { readFile } from 'node:fs/promises';
import type { Checked, Problem } from '@eavewell/engine';
import { filesOfProgramme, likelyTable, limitedZip, type SheetLaid, tablesAsRead } from '@eavewell/formats';
import { type ChangeRecord, readRecord, recordProblem } from '@eavewell/records';
import { folderTableNames, folderTables, idForm, tableProblem } from '@eavewell/tables';
import { type FileKind, fileKind } from './fileKind.ts';
import type { SentFile } from './sentFiles.ts';

/** What a zip may become [byte]. Ours. */
const zipLimits = { most_entries: 5000, largestEntry_bytes: 200e6, largest_bytes: 300e6, most_ratio: 200 };

/** Records of an export stand in this file. */
export const recordsFile = 'records.jsonl';

/** A file of a programme folder, and the sent file it comes from. */
export interface Brought {
  readonly bytes: Uint8Array;
  readonly from: string;
  /** Of a workbook: the sheet it was laid out from. */
  readonly sheet?: SheetLaid;
}

/** A table whose name does not say which it is. */
export interface Unplaced {
  readonly name: string;
  readonly table: string | null;
  readonly gaugeId: string | null;
}

/** What was unpacked of all that was sent. */
export interface Unpacked {
  /** Files of a programme folder, by their path there. */
  readonly files: ReadonlyMap<string, Brought>;
  readonly records: readonly ChangeRecord[] | null;
  readonly problems: readonly Problem[];
  readonly unplaced: readonly Unplaced[];
  /** The workbooks among the files. */
  readonly workbooks: readonly SentFile[];
}

const otherFiles = ['settings.json', 'columns.json', 'ways.geojson'];
const tableFiles = folderTableNames.map((name): string => folderTables[name].file);
const rainFile = /^rain\/([^/]+)\.(?:csv|dly)$/;
const rainPath = /^(.*\/)?rain\/[^/]+\.(?:csv|dly)$/;

/** Is this the path of a file a programme folder may have? Nothing else is ever written. */
function isOfProgramme(path: string): boolean {
  const gaugeId = rainFile.exec(path)?.[1];
  return gaugeId === undefined ? tableFiles.includes(path) || otherFiles.includes(path) : idForm.test(gaugeId);
}

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** Folders that stand before the names of the programme. */
function frontOf(names: readonly string[]): string {
  const sites = names.filter((name) => /(?:^|\/)sites\.csv$/.test(name)).sort((a, b) => a.length - b.length)[0];
  const first = sites ?? names.find((name) => tableFiles.some((file) => name.endsWith(`/${file}`)));
  if (first !== undefined) return first.slice(0, first.lastIndexOf('/') + 1);
  const rain = names.find((name) => rainPath.test(name));
  return rain === undefined ? '' : (rainPath.exec(rain)![1] ?? '');
}

const pathOfTable = (table: string, gaugeId: string | null) =>
  table === 'rain' ? `rain/${gaugeId ?? ''}.csv` : `${table}.csv`;

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

const includes = (bytes: Uint8Array, text: string) =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(text);

/** Larger files are not looked through for this [byte]. */
const mostEmpty_bytes = 65_536;

/** Is there nothing in a file, or a first line alone where a table without rows says nothing? Null where there is more. */
function emptyIn(bytes: Uint8Array, isLineNothing: boolean): 'nothing' | 'line' | null {
  if (bytes.length > mostEmpty_bytes) return null;
  // Characters of two bytes hold a zero each; a mark at the start is no content.
  const lines = new TextDecoder()
    .decode(bytes)
    .replaceAll(/[\0\uFEFF\uFFFD]/g, '')
    .split(/\r\n|\r|\n/);
  const filled = lines.filter((line) => /[^\s,;\t]/.test(line)).length;
  if (filled === 0) return 'nothing';
  return filled === 1 && isLineNothing ? 'line' : null;
}

const unknownFile = (path: string) =>
  tableProblem('file.unknown', { file: path }, { value: path, expected: 'a table of a programme' });

/** Gathers what was sent, file by file. */
class Unpacking {
  readonly files = new Map<string, Brought>();
  readonly problems: Problem[] = [];
  readonly unplaced: Unplaced[] = [];
  readonly workbooks: SentFile[] = [];
  records: readonly ChangeRecord[] | null = null;
  private readonly gaugeIds: ReadonlySet<string>;
  /** Is it the only file? Then what cannot be used of it is the whole answer. */
  private readonly isAlone: boolean;

  constructor(gaugeIds: ReadonlySet<string>, isAlone: boolean) {
    this.gaugeIds = gaugeIds;
    this.isAlone = isAlone;
  }

  /** Takes a file for what it says it is; the problem for which nothing is taken in, or null. */
  async take(sent: SentFile, front: string): Promise<Problem | null> {
    const kind = await fileKind(sent.path);
    if (kind === 'zip' || kind === 'oldWorkbook') return this.packed(sent, kind);
    const path = sent.table === null ? sent.name : pathOfTable(sent.table, sent.gaugeId);
    const within = sent.table === null && path.startsWith(front) ? path.slice(front.length) : path;
    const isMap = kind === 'map' || (/\.(?:geojson|kml|kmz|gpx)$/i.test(within) && within !== 'ways.geojson');
    if (isMap) return this.otherKind(sent, 'map');
    if (kind !== 'text' && kind !== 'empty') return this.otherKind(sent, kind);
    if (/\.zip$/i.test(sent.name)) return brokenZip(sent.name, 'zip.cut_off', '');
    if (/\.xls[xmb]?$/i.test(sent.name)) return this.workbook(sent);
    const isKnown = within === recordsFile || isOfProgramme(within);
    if (!isKnown && sent.table === null && !/\.(?:csv|txt|tsv|dly|json)$/i.test(within))
      return this.otherKind(sent, 'other');
    const bytes = await readFile(sent.path);
    const found = emptyIn(bytes, !isKnown);
    if (found !== null) return this.empty(sent, found);
    if (within === recordsFile) return this.takeRecords(bytes);
    if (isKnown) return this.add(within, bytes, sent.name);
    if (within !== 'datapackage.json') this.unplaced.push(this.likely(sent.name, bytes));
    return null;
  }

  private likely(name: string, bytes: Uint8Array): Unplaced {
    const table = likelyTable(bytes);
    const base = name
      .split('/')
      .at(-1)!
      .replace(/\.[^.]*$/, '');
    this.problems.push(recordProblem('import.table_unknown', { file: name }, { value: name, likely: table ?? '' }));
    return { name, table, gaugeId: table === 'rain' && this.gaugeIds.has(base) ? base : null };
  }

  private add(path: string, bytes: Uint8Array, from: string, sheet?: SheetLaid): Problem | null {
    const before = this.files.get(path);
    if (before !== undefined && Buffer.compare(before.bytes, bytes) !== 0)
      return recordProblem('import.table_twice', { file: path }, { value: path, files: [before.from, from] });
    this.files.set(path, { bytes, from, ...(sheet === undefined ? {} : { sheet }) });
    return null;
  }

  private takeRecords(bytes: Uint8Array): Problem | null {
    const read = readRecords(bytes);
    if (!read.ok) return read.problems[0]!;
    this.records = [...(this.records ?? []), ...read.value];
    return null;
  }

  private otherKind({ name }: SentFile, found: FileKind): Problem | null {
    const problem = recordProblem('import.kind_unknown', { file: name }, { value: name, found });
    if (this.isAlone) return problem;
    this.problems.push(unknownFile(name));
    return null;
  }

  /** Nothing of it is taken in; alone, that is the whole answer. */
  private empty({ name }: SentFile, found: 'nothing' | 'line'): Problem | null {
    const problem = recordProblem('import.empty', { file: name }, { value: name, found });
    if (this.isAlone) return problem;
    this.problems.push(problem);
    return null;
  }

  private async packed(sent: SentFile, kind: FileKind): Promise<Problem | null> {
    const bytes = await readFile(sent.path);
    if (kind === 'oldWorkbook' || includes(bytes, 'xl/workbook')) return this.workbook(sent);
    if (/\.kmz$/i.test(sent.name)) return this.otherKind(sent, 'map');
    if (includes(bytes, 'word/document.xml') || includes(bytes, 'content.xml')) return this.workbook(sent);
    const read = limitedZip(bytes, zipLimits, () => true);
    if ('fault' in read) return brokenZip(sent.name, read.fault.code, read.fault.entry);
    const front = frontOf(read.names);
    let count = 0;
    for (const [entry, content] of read.entries) {
      const path = entry.startsWith(front) ? entry.slice(front.length) : entry;
      const isWanted = path === recordsFile || isOfProgramme(path);
      if (isWanted) count++;
      const wrong =
        path === recordsFile ? this.takeRecords(content) : isWanted ? this.add(path, content, sent.name) : null;
      if (wrong) return wrong;
      if (!isWanted && !entry.endsWith('/') && path !== 'datapackage.json') this.problems.push(unknownFile(path));
    }
    return count > 0 ? null : recordProblem('import.nothing_known', { file: sent.name }, { value: sent.name });
  }

  /** A workbook laid out as the tables it holds. */
  private async workbook(sent: SentFile): Promise<Problem | null> {
    const { programme, told, sheets } = await tablesAsRead(sent.path);
    const wrong = told.find(
      ({ code, severity, place }) =>
        severity === 'blocker' && code.startsWith('workbook.') && !place.file?.includes('/'),
    );
    if (wrong) return wrong;
    this.workbooks.push(sent);
    this.problems.push(...told);
    for (const [path, content] of filesOfProgramme(programme)) {
      const isSaid =
        path === 'settings.json' ? Object.keys(programme.settings).length > 0 : path !== 'datapackage.json';
      if (!isSaid) continue;
      const bytes = typeof content === 'string' ? Buffer.from(content) : content;
      const twice = this.add(path, bytes, sent.name, sheets?.get(path));
      if (twice) return twice;
    }
    return null;
  }
}

function brokenZip(name: string, reason: string, entry: string): Problem {
  return recordProblem('import.zip_unreadable', { file: name }, { value: name, reason, entry });
}

/**
 * What is in the files that were sent: zips of a programme folder, workbooks, tables, a folder's files one by one?
 *
 * @param sent - the files
 * @param gaugeIds - the gauges that stand, to tell readings by their file's name
 * @returns the files of a programme folder, with the records of an export; names that were sent are never used as paths
 * @problem import.kind_unknown - a file alone that is no table, such as a photograph
 * @problem import.table_twice - two files hold one table
 * @problem import.zip_unreadable, import.nothing_known, import.record_unreadable - and those of a workbook that cannot be opened
 * @definition ours: docs/decisions/0116-imports-of-several-files.md
 */
export async function unpack(sent: readonly SentFile[], gaugeIds: ReadonlySet<string>): Promise<Checked<Unpacked>> {
  const unpacking = new Unpacking(gaugeIds, sent.length === 1);
  const front = frontOf(sent.map(({ name }) => name));
  for (const one of sent) {
    const wrong = await unpacking.take(one, front.includes('..') ? '' : front);
    if (wrong) return refused(wrong);
  }
  const { files, records, problems, unplaced, workbooks } = unpacking;
  if (files.size === 0 && records === null && unplaced.length === 0 && workbooks.length === 0) {
    const value = sent.map(({ name }) => name).join(', ');
    return refused(recordProblem('import.nothing_known', {}, { value }));
  }
  return { ok: true, value: { files, records, problems, unplaced, workbooks }, problems: [] };
}
