import type { Checked } from '@eavewell/engine';
import { filesOfProgramme, programmeOfRows, type RowsByTable } from '@eavewell/formats';
import { type Absent, type Cells, changesBetween, type Facts, type RowChange, recordProblem } from '@eavewell/records';
import { folderTableNames, folderTables } from '@eavewell/tables';

/** Rows that files bring, and which files these are. */
export interface Brought {
  readonly rows: RowsByTable;
  /** The columns of each table's file: a column that is not in it stays as it stands. */
  readonly columns: ReadonlyMap<string, readonly string[]>;
  /** The files, by their path within a programme folder. */
  readonly paths: readonly string[];
  /** What becomes of rows that stand and are not in their file. */
  readonly absent: Absent;
}

/** Changes of every table, all of it compared: for a programme that is made. */
export function changesOfRows(facts: Facts, rows: RowsByTable): Checked<readonly RowChange[]> {
  const changes = [...rows].flatMap(([table, wanted]) => [...changesBetween(facts, table, wanted, 'stay')]);
  return { ok: true, value: changes, problems: [] };
}

const noRow = '_';
const monthKey = /^[^/]+\/\d{4}-\d{2}$/;

/** A month of readings laid over the one that stands: a day without a row stays as it stands. */
export function overMonth(present: string, wanted: string): string {
  const [old, fresh] = [present.split(';'), wanted.split(';')];
  const days = Array.from({ length: Math.max(old.length, fresh.length) }, (_, i) => {
    const reading = fresh[i] ?? noRow;
    return reading === noRow ? (old[i] ?? noRow) : reading;
  });
  while (days.at(-1) === noRow) days.pop();
  return days.join(';') || `;${noRow}`;
}

/** What a file says of a row, with what it says nothing about as it stands. */
function overRow(present: Cells, wanted: Cells, columns: readonly string[]): Cells {
  const own = new Set(columns);
  const kept = Object.entries(present).filter(([column]) => !own.has(column));
  return { ...Object.fromEntries(kept), ...wanted };
}

type Rows = ReadonlyMap<string, Cells>;
const none: Rows = new Map();

/** The rows of some keys. */
function only(rows: Rows | undefined, isWanted: (key: string) => boolean): Rows {
  return new Map([...(rows ?? none)].filter(([key]) => isWanted(key)));
}

/** Changes within some keys of a table. */
function within(facts: Facts, table: string, wanted: Rows, absent: Absent, isWanted: (key: string) => boolean) {
  return changesBetween(facts, table, wanted, absent).filter(({ key }) => isWanted(key));
}

function unionOfColumns(facts: Facts, key: string, wanted: Cells | undefined): Cells | null {
  if (wanted === undefined) return null;
  const lists = [facts.row('headers', key)?.['columns'], wanted['columns']].map((text): unknown =>
    JSON.parse(text ?? '[]'),
  );
  return { columns: JSON.stringify([...new Set(lists.flat())]) };
}

/** Rows of a table, or of a gauge's rain, laid over those that stand. */
function laidOver(facts: Facts, table: string, rows: Rows, { columns, absent }: Brought): Rows {
  const laid = new Map<string, Cells>();
  for (const [key, wanted] of rows) {
    const present = facts.row(table, key);
    if (present === null) laid.set(key, wanted);
    else if (table !== 'rain') laid.set(key, overRow(present, wanted, columns.get(table) ?? []));
    else if (absent === 'stay' && monthKey.test(key)) {
      laid.set(key, { readings: overMonth(present['readings'] ?? noRow, wanted['readings'] ?? noRow) });
    } else laid.set(key, wanted);
  }
  return laid;
}

/** Where the rows of a file are kept: a table, which of its keys, and the key of its header. */
interface Kept {
  readonly table: string;
  readonly header: string | null;
  isOwn(key: string): boolean;
}

function keptOf(path: string): Kept | null {
  const name = folderTableNames.find((one) => folderTables[one].file === path);
  if (name !== undefined) return { table: name, header: name, isOwn: () => true };
  const gaugeId = /^rain\/(.+)\.csv$/.exec(path)?.[1];
  if (gaugeId !== undefined) {
    return { table: 'rain', header: `rain/${gaugeId}`, isOwn: (key) => key.startsWith(`${gaugeId}/`) };
  }
  if (path === 'settings.json') return { table: 'settings', header: null, isOwn: () => true };
  return path === 'ways.geojson' ? { table: 'wayLines', header: null, isOwn: () => true } : null;
}

/** Do any rows stand that this file would be compared with? */
function isStanding(facts: Facts, { table, isOwn }: Kept): boolean {
  for (const [key] of facts.rowsAsEntered(table)) if (isOwn(key)) return true;
  return false;
}

/** Is this text the very file that an export of these facts holds? Then nothing in it is new, whatever is wrong with it. */
function isAsExported(facts: Facts, path: string, text: string | undefined): boolean {
  return text !== undefined && filesOfProgramme(programmeOfRows(facts)).get(path) === text;
}

/**
 * What would change if these files were taken in? Each is compared with what stands of it alone; all else stays.
 *
 * @param facts - the present facts
 * @param brought - the rows and the files they come from
 * @returns the changes, file by file
 * @problem import.not_a_table - a file that cannot be read as a table, where rows of it stand
 * @law the same files a second time change nothing
 * @definition ours: docs/decisions/0105-imports.md
 */
export function changesOfFiles(facts: Facts, brought: Brought): Checked<readonly RowChange[]> {
  const changes: RowChange[] = [];
  const problems = [];
  const { rows, absent } = brought;
  for (const path of brought.paths) {
    const kept = keptOf(path);
    const letters = only(rows.get('files'), (key) => key === path);
    if (letters.size > 0 && kept !== null && isStanding(facts, kept)) {
      if (isAsExported(facts, path, letters.get(path)!['text'])) continue;
      problems.push(recordProblem('import.not_a_table', { file: path }, { value: path }));
      continue;
    }
    changes.push(...within(facts, 'files', letters, 'go', (key) => key === path));
    if (kept === null || letters.size > 0) continue;
    const { table, header, isOwn } = kept;
    const wanted = laidOver(facts, table, only(rows.get(table), isOwn), brought);
    const said = header === null ? null : unionOfColumns(facts, header, rows.get('headers')?.get(header));
    if (said !== null) changes.push(...changesBetween(facts, 'headers', new Map([[header!, said]]), 'stay'));
    changes.push(...within(facts, table, wanted, absent, isOwn));
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: changes, problems: [] };
}
