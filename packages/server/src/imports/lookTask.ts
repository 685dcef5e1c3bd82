import { createHash } from 'node:crypto';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Checked, Problem } from '@eavewell/engine';
import {
  type CellPlace,
  filesOfProgramme,
  mendCell,
  programmeOfRows,
  type RowsRead,
  readProgramme,
  readWhole,
  rowsOfProgramme,
  type ShownRows,
  type WholeRead,
} from '@eavewell/formats';
import {
  type Absent,
  type ChangeRecord,
  changesText,
  type Facts,
  foldRecords,
  type RowChange,
  recordName,
  recordProblem,
  recordText,
} from '@eavewell/records';
import type { NotUsed } from '@eavewell/tables';
import type { JobAround } from '@eavewell/work';
import { recordsOf } from '../recordsOf.ts';
import { type History, historyOf } from './historyOf.ts';
import { type RowInSheet, rowsInSheets, toldOfSheet } from './inSheets.ts';
import { type Accepted, type ColumnsFound, columnsFound, layColumns } from './matchedColumns.ts';
import { brokenElsewhere, isOfLinks } from './problemsElsewhere.ts';
import { changesOfFiles } from './rowsCompared.ts';
import { rowsWithProblems } from './rowsWithProblems.ts';
import type { SentFile } from './sentFiles.ts';
import { type StepBackTold, type TakenBack, withoutStepsBack } from './toldStepsBack.ts';
import { type Unpacked, type Unplaced, unpack } from './unpack.ts';

/** A cell somebody mended. */
export interface Mend extends CellPlace {
  readonly value: string;
}

/** Another programme of the data folder. */
export interface OtherProgramme {
  readonly programmeId: string;
  readonly name: string;
}

/** What of an import is to be looked at. All of it is done anew each time, so that nothing depends on what was looked at before. */
export interface LookAsked {
  readonly dataFolder: string;
  /** Null: they are to become a programme of their own. */
  readonly programmeId: string | null;
  readonly version: number;
  /** The folder of the import. */
  readonly folder: string;
  readonly sent: readonly SentFile[];
  readonly absent: Absent;
  readonly mends: readonly Mend[];
  readonly accepted: Accepted;
  /** Steps back that are to be taken all the same; the others stay as they stand here. */
  readonly taken: TakenBack;
  readonly others: readonly OtherProgramme[];
}

/** Changes of one table, counted, and the first of them. */
export interface TableChanges {
  readonly table: string;
  readonly added: number;
  readonly edited: number;
  readonly removed: number;
  readonly rows: readonly RowChange[];
}

/** What an import comes to. */
export interface Looked {
  /** The version of the facts it was compared with. */
  readonly version: number;
  /** What the programme is called in its settings; null where they say nothing. */
  readonly programmeName: string | null;
  readonly files: readonly {
    readonly file: string;
    readonly rows: number;
    readonly used: number;
    readonly from: string;
    /** The sheet of the workbook it was sent in; null for a file of its own. */
    readonly sheet: string | null;
  }[];
  readonly problems: readonly Problem[];
  /** What taking it in would break in tables that were not sent. */
  readonly elsewhere: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly rowsShown: readonly ShownRows[];
  /** Rows of workbooks of which something is said. */
  readonly inSheets: readonly RowInSheet[];
  readonly unplaced: readonly Unplaced[];
  readonly columns: ColumnsFound;
  readonly changes: readonly TableChanges[];
  /** The first of them, and how many there are. */
  readonly stepsBack: readonly StepBackTold[];
  readonly stepsBackCount: number;
  /** Names the changes: the same for the same. */
  readonly changesName: string;
  readonly freshRecords: number;
  readonly hasRecords: boolean;
  /** The programme here that has these records already: taken in all the same, they become a second one beside it. */
  readonly there: OtherProgramme | null;
  readonly mayBeAccepted: boolean;
}

/** Where the changes, and the records of an export, wait to be accepted. */
export const changesFile = 'changes.json';
export const takenFile = 'taken.jsonl';

/** How many changes of a table are told at once. Ours. */
const mostRows = 500;

const none = { ok: true, value: [], problems: [] } as const;

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/** Facts whose readings are left out, but for a day of each gauge: they are many, and no other table is checked against them. */
function withoutReadings(facts: Facts): RowsRead {
  const gauges = [...facts.rowsAsEntered('headers')].flatMap(([key]) =>
    key.startsWith('rain/') ? [key.slice(5)] : [],
  );
  const days = gauges.map((gaugeId) => [`${gaugeId}/2000-01`, { readings: '0' }] as const);
  const headers = [...facts.rowsAsEntered('headers')].map(
    ([key, cells]) => [key, key.startsWith('rain/') ? { columns: '[]' } : cells] as const,
  );
  return {
    rowsAsEntered: (table) => (table === 'rain' ? days : table === 'headers' ? headers : facts.rowsAsEntered(table)),
  };
}

/** Lays files into a folder that is made anew. What passes through need not outlive the power. */
async function lay(folder: string, files: ReadonlyMap<string, string | Uint8Array>): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  for (const [path, content] of files) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), content);
  }
}

/** What is wrong in the programme as it stands: worked out once for each version of it. */
async function problemsBefore({ folder, version }: LookAsked, facts: Facts): Promise<readonly Problem[]> {
  const kept = join(folder, `before-${version}.json`);
  const text = await readFile(kept, 'utf8').catch(() => null);
  if (text !== null) return JSON.parse(text) as readonly Problem[];
  await lay(join(folder, 'before'), filesOfProgramme(programmeOfRows(withoutReadings(facts))));
  const { problems } = await readProgramme(join(folder, 'before'));
  await writeFile(kept, JSON.stringify(problems));
  return problems;
}

/** What would be wrong once the changes are made. The facts are changed for it: they serve nothing after. */
async function problemsAfter(
  { folder }: LookAsked,
  facts: Facts,
  changes: readonly RowChange[],
): Promise<readonly Problem[]> {
  const last = {
    device: '~',
    number: 1,
    clock: Number.MAX_SAFE_INTEGER,
    at: '',
    offset_min: 0,
    by: '',
    takesBack: null,
  };
  facts.add({ ...last, source: { kind: 'import', name: null }, changes });
  await lay(join(folder, 'after'), filesOfProgramme(programmeOfRows(withoutReadings(facts))));
  return (await readProgramme(join(folder, 'after'))).problems;
}

function counted(changes: readonly RowChange[]): readonly TableChanges[] {
  const byTable = new Map<string, RowChange[]>();
  for (const change of changes) {
    const own = byTable.get(change.table) ?? [];
    byTable.set(change.table, own);
    own.push(change);
  }
  return [...byTable].map(([table, own]) => {
    const count = (kind: RowChange['kind']) => own.filter((change) => change.kind === kind).length;
    return {
      table,
      added: count('added'),
      edited: count('edited'),
      removed: count('removed'),
      rows: own.slice(0, mostRows),
    };
  });
}

/** What was sent, laid over the tables that stand. */
interface Laid {
  readonly known: readonly ChangeRecord[];
  readonly facts: Facts;
  readonly unpacked: Unpacked;
  readonly said: readonly Problem[];
  readonly history: History;
  readonly folder: string;
  /** The files that are compared. */
  readonly paths: readonly string[];
}

async function layAll(asked: LookAsked, around: JobAround): Promise<Checked<Laid>> {
  const { programmeId, sent, accepted } = asked;
  const kept = programmeId === null ? none : await recordsOf({ ...asked, programmeId });
  if (!kept.ok) return kept;
  const facts = foldRecords(kept.value);
  around.report(0.1);
  const gaugeIds = new Set([...facts.rowsAsEntered('gauges')].map(([key]) => key));
  const ofWorkbooks = await layColumns.forWorkbooks(sent, accepted);
  if (!ofWorkbooks.ok) return ofWorkbooks;
  const unpacked = await unpack(sent, gaugeIds);
  if (!unpacked.ok) return unpacked;
  const { files, records, problems } = unpacked.value;
  const history = await historyOf(asked, kept.value, records);
  if (!history.ok) return history;
  around.report(0.25);
  const folder = join(asked.folder, 'programme');
  const standing = filesOfProgramme(programmeOfRows(withoutReadings(facts)));
  await lay(folder, new Map([...standing, ...[...files].map(([path, { bytes }]) => [path, bytes] as const)]));
  const matched = await layColumns.forFolder(folder, accepted);
  if (!matched.ok) return matched;
  const wrong = await mendAll(folder, asked.mends, files);
  if (wrong) return refused(wrong);
  const paths = [...files.keys(), ...(matched.value && !files.has('columns.json') ? ['columns.json'] : [])];
  const said = [...problems, ...history.problems];
  const value = { known: kept.value, facts, unpacked: unpacked.value, said, history: history.value, folder, paths };
  return { ok: true, value, problems: [] };
}

async function mendAll(folder: string, mends: readonly Mend[], files: Unpacked['files']): Promise<Problem | null> {
  for (const mend of mends) {
    const { file } = mend;
    const problem = files.has(file)
      ? await mendCell(folder, mend, mend.value)
      : recordProblem('import.table_unknown', { file }, { value: file, likely: '' });
    if (problem) return problem;
  }
  return null;
}

function compare({ facts, history, paths }: Laid, { programme }: WholeRead, absent: Absent) {
  const columns = new Map<string, readonly string[]>();
  for (const [name, rows] of Object.entries(programme.tables))
    columns.set(name, [...new Set((rows ?? []).flatMap((row) => Object.keys(row)))]);
  const base = history.records.length > 0 ? foldRecords(history.records) : facts;
  return { base, compared: changesOfFiles(base, { rows: rowsOfProgramme(programme), columns, absent, paths }) };
}

/** What is found in the files that were sent; of links to other tables only what holds once all is laid together. */
function foundIn({ read }: WholeRead, after: readonly Problem[], isSent: IsSent): readonly Problem[] {
  return read.problems.filter((one) => isSent(one.place.file) && (!isOfLinks(one) || after.some(isOfLinks.same(one))));
}

type IsSent = (file: string | undefined) => boolean;

/**
 * Looks at what was sent: unpacks it, lays it over the tables that stand, reads it, and compares it with them.
 *
 * @param asked - the files, what was mended and accepted, and the facts to compare with
 * @param around - told how far it is
 * @returns the review, its changes written beside it; or why nothing can be taken in
 * @problem import.kind_unknown - and the other codes of unpack
 * @problem positions.table_broken - a cell to be mended is not there; and the other codes of mendCell
 * @definition ours: docs/decisions/0105-imports.md, docs/decisions/0116-imports-of-several-files.md
 */
export async function lookTask(asked: LookAsked, around: JobAround): Promise<Checked<Looked>> {
  const laid = await layAll(asked, around);
  if (!laid.ok) return laid;
  around.report(0.35);
  const whole = await readWhole(laid.value.folder);
  around.report(0.7);
  const { base, compared } = compare(laid.value, whole, asked.absent);
  around.report(0.8);
  const { changes, back } = withoutStepsBack(
    laid.value.history.records.length > 0 ? [] : laid.value.known,
    asked.taken,
    compared.ok ? compared.value : [],
  );
  const text = changesText(changes);
  if (text === null) return refused(recordProblem('change.unsound', {}, {}));
  const before = await problemsBefore(asked, laid.value.facts);
  const after = compared.ok ? await problemsAfter(asked, base, changes) : before;
  around.report(0.9);
  await writeFile(join(asked.folder, changesFile), text);
  await writeFile(
    join(asked.folder, takenFile),
    laid.value.history.records.map((record) => `${recordText(record)}\n`).join(''),
  );
  const isWhole = compared.ok && laid.value.unpacked.unplaced.length === 0;
  const said = compared.ok ? laid.value.said : [...laid.value.said, ...compared.problems];
  const value = await lookedOf(asked.version, { ...laid.value, said }, whole, before, after);
  const changesName = createHash('sha256').update(text).digest('base64url');
  return {
    ok: true,
    value: {
      ...{ ...value, changes: counted(changes), changesName, mayBeAccepted: isWhole },
      ...{ stepsBack: back.slice(0, mostRows), stepsBackCount: back.length },
    },
    problems: [],
  };
}

/** The review but for its changes. */
async function lookedOf(
  version: number,
  { known, unpacked, history, folder, said }: Laid,
  whole: WholeRead,
  before: readonly Problem[],
  after: readonly Problem[],
): Promise<Omit<Looked, 'changes' | 'changesName' | 'mayBeAccepted' | 'stepsBack' | 'stepsBackCount'>> {
  const { files, unplaced, workbooks } = unpacked;
  const isSent: IsSent = (file) => file !== undefined && (files.has(file) || file === 'columns.json');
  const found = foundIn(whole, after, isSent);
  const notUsed = whole.read.notUsed.filter(({ file }) => isSent(file));
  const names = new Set(known.map(recordName));
  const { programme } = whole.programme.settings;
  return {
    version,
    programmeName: typeof programme === 'string' ? programme : null,
    files: whole.read.files.flatMap((one) =>
      files.has(one.file)
        ? [{ ...one, from: files.get(one.file)!.from, sheet: files.get(one.file)!.sheet?.sheet ?? null }]
        : [],
    ),
    problems: [...said, ...found].map((problem) => toldOfSheet(files, problem)),
    elsewhere: brokenElsewhere(before, after, isSent),
    notUsed,
    inSheets: rowsInSheets(files, found, notUsed),
    rowsShown: await rowsWithProblems(folder, found),
    unplaced,
    columns: await columnsFound(folder, workbooks, (file) => files.has(file)),
    freshRecords: history.records.filter((record) => !names.has(recordName(record))).length,
    hasRecords: history.records.length > 0,
    there: history.there,
  };
}
