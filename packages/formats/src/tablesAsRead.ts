import { isoDay, type Problem } from '@eavewell/engine';
import {
  bare,
  type Column,
  columnsFile,
  columnsToSave,
  type FileMatching,
  type FolderTableName,
  folderTableNames,
  folderTables,
  guardText,
  idForm,
  isDecimalComma,
  matchingOf,
  type RawRow,
  rain,
  readCell,
  readGuarded,
  type Table,
  wayLinesFile,
} from '@eavewell/tables';
import { decodeText } from './decodeText.ts';
import type { Kept } from './keepFiles.ts';
import type { CellValue, ProgrammeTables, RainRow } from './programmeTables.ts';
import { type CsvFile, readCsvFile } from './readCsvFile.ts';
import type { ProgrammeRead } from './readProgramme.ts';
import { isStationCsv } from './stationCsv.ts';

/** Faults of a file that its cells alone do not carry: such a file is kept letter for letter. */
const ofTheFile = [
  'header.column_missing',
  'header.column_misspelt',
  'header.column_twice',
  'header.column_unnamed',
  'columns.two_for_one',
  'columns.header_absent',
  'cell.comma_ambiguous',
  'file.cut_off',
];

type Row = Record<string, CellValue>;

/** A table as rows of values; null where it must be kept letter for letter. */
interface RowsOfFile {
  readonly rows: readonly Row[];
  /** Headers that are none of ours, in their order. */
  readonly unknown: readonly string[];
}

const isEmpty = ({ cells }: RawRow) => cells.every((text) => text.trim() === '');

/** Do all rows have the cells the first line has, and each column a name of its own? */
function isRegular(csv: CsvFile): boolean {
  const names = csv.header.map(bare);
  const named = names.slice(0, names.findLastIndex((name) => name !== '') + 1);
  if (named.includes('') || named.includes('__proto__') || new Set(named).size < named.length) return false;
  return csv.rows.every(
    (raw) =>
      isEmpty(raw) ||
      (raw.broken !== true &&
        raw.cells.length >= named.length &&
        raw.cells.slice(named.length).every((text) => text.trim() === '')),
  );
}

/** A cell that was not read, or whose column is not ours: as it stood. The apostrophe it may have comes back on writing. */
function asItStood(text: string): string {
  const meant = readGuarded(text);
  return guardText(meant) === text ? meant : text;
}

function written(column: Column<unknown>, value: unknown, text: string): CellValue {
  if (column.kind === 'date') return isoDay(value as number);
  // Months and days of the year are written in several ways that mean the same; they stay as they stood.
  if (column.kind === 'months' || column.kind === 'monthDay') return bare(text);
  return value as CellValue;
}

function rowsOf(table: Table, csv: CsvFile, matching: FileMatching | null, isExact: boolean): RowsOfFile | null {
  const names = csv.header.map(bare);
  const width = names.findLastIndex((name) => name !== '') + 1;
  const columns = names.slice(0, width).map((name) => {
    const match = matching?.columns.get(name);
    const column = match === undefined ? name : (match?.column ?? null);
    const known = column !== null && Object.hasOwn(table.columns, column) ? table.columns[column]! : null;
    return {
      name: known === null ? name : column!,
      known,
      unit: match?.unit ?? null,
      dateOrder: match?.dateOrder ?? null,
    };
  });
  const numbers = columns.flatMap(({ known }, at) =>
    known !== null && ['quantity', 'whole', 'fraction'].includes(known.kind) ? [at] : [],
  );
  const commaSeen =
    csv.decimalComma && csv.rows.some(({ cells }) => numbers.some((at) => isDecimalComma(bare(cells[at] ?? ''))));
  // A cell that was not read as it was said to be written would be read otherwise once that is no longer said.
  let isLost = false;
  const rows = csv.rows.map(({ cells }) => {
    const row: Row = {};
    columns.forEach(({ name, known, unit, dateOrder }, at) => {
      const text = cells[at] ?? '';
      if (bare(text) === '') row[name] = null;
      else if (known === null) row[name] = asItStood(text);
      else {
        const { value, fault } = readCell(known, text, { decimalComma: csv.decimalComma, commaSeen, unit, dateOrder });
        const isOtherwise = csv.decimalComma || unit !== null || dateOrder !== null;
        isLost ||= value === null && (unit !== null || dateOrder !== null || (csv.decimalComma && text.includes(',')));
        const isSame = value !== null && String(written(known, value, text)) === bare(text);
        row[name] =
          value !== null && ((fault === null && !isExact) || isOtherwise || isSame)
            ? written(known, value, text)
            : asItStood(bare(text));
      }
    });
    return row;
  });
  return isLost ? null : { rows, unknown: columns.flatMap(({ name, known }) => (known === null ? [name] : [])) };
}

/** What is kept of one file: its rows, or the file itself. */
class Keeper {
  readonly rawFiles: { path: string; text: string; bytes?: Uint8Array }[] = [];
  readonly matchings = new Map<string, FileMatching>();
  private readonly kept: Kept;
  private readonly byFile = new Map<string, Problem[]>();

  constructor(kept: Kept, problems: readonly Problem[]) {
    this.kept = kept;
    for (const problem of problems) {
      const { file } = problem.place;
      if (file === undefined) continue;
      const found = this.byFile.get(file);
      if (found) found.push(problem);
      else this.byFile.set(file, [problem]);
    }
  }

  has(path: string, test: (problem: Problem) => boolean): boolean {
    return (this.byFile.get(path) ?? []).some(test);
  }

  /** The file letter for letter: as text in UTF-8 where it is text. */
  raw(path: string): void {
    const bytes = this.kept.files.get(path)!;
    const decoded = decodeText(bytes);
    if ('text' in decoded && !decoded.text.includes('\uFFFD')) this.rawFiles.push({ path, text: decoded.text });
    else this.rawFiles.push({ path, text: '', bytes });
    const matching = matchingOf(this.kept.matchings, path);
    if (matching !== null) this.matchings.set(path, { ...matching, isShared: false });
  }

  /** The rows of a table; null where the file is kept letter for letter. */
  table(path: string, table: Table): RowsOfFile | null {
    const bytes = this.kept.files.get(path)!;
    const matching = matchingOf(this.kept.matchings, path);
    const columns = [...Object.keys(table.columns), ...(matching?.columns.keys() ?? [])];
    const csv = readCsvFile(bytes, { file: path, columns, needed: false });
    const isTwice = this.has(path, ({ code }) => code === 'row.key_twice' || code === 'row.twice_same');
    const isOtherwise = csv.decimalComma || matching !== null;
    const isOfTheFile = ({ code, facts }: Problem) =>
      ofTheFile.includes(code) || (isOtherwise && (isTwice || facts['reason'] !== undefined));
    if (csv.header.length === 0 || isStationCsv(csv.header) || !isRegular(csv) || this.has(path, isOfTheFile)) {
      this.raw(path);
      return null;
    }
    // Rows with one key are told apart by their letters, so these are kept. Without a row nothing would carry the columns
    // nobody knows.
    const found = rowsOf(table, csv, matching, isTwice);
    if (found === null || (found.rows.length === 0 && found.unknown.length > 0)) {
      this.raw(path);
      return null;
    }
    const notRead = [...(matching?.columns ?? [])].filter(([, match]) => match === null);
    if (notRead.length > 0) this.matchings.set(path, { columns: new Map(notRead), isShared: false });
    return found;
  }

  /** columns.json with what is still to be said in it. */
  columns(): void {
    if (this.has(columnsFile, ({ severity }) => severity === 'blocker')) this.raw(columnsFile);
    else if (this.matchings.size > 0)
      this.rawFiles.push({ path: columnsFile, text: `${JSON.stringify(columnsToSave(this.matchings), null, 2)}\n` });
  }
}

function rainRows({ rows, unknown }: RowsOfFile): readonly RainRow[] {
  return rows.map((row) => {
    const { date = null, rain_mm = null } = row;
    const extra = Object.fromEntries(unknown.map((name) => [name, row[name] ?? null]));
    const depth = typeof rain_mm === 'boolean' ? null : rain_mm;
    return { date: date === null ? '' : String(date), rain_mm: depth, ...(unknown.length > 0 ? { extra } : {}) };
  });
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * What is to be written so that nothing of a programme is lost? Everything as it stood: values where cells were read, the cells
 * themselves where not, columns nobody knows after the known ones, settings with keys nobody knows. A file that its rows do
 * not carry whole (a header at fault, rows of another width, no table at all) is given letter for letter, in `rawFiles`, and not
 * as a table: what cannot write such a file must say so.
 *
 * @param read - a programme that was read with `keep`
 * @returns tables, settings, rain and raw files, for writeProgramme
 * @law a folder written from it reads as the one it came from: facts, problems and rows not used, but for faults of form (separator, encoding, byte order mark, line end, decimal comma, characters at the ends of cells)
 * @definition ours: docs/decisions/0081-everything-kept.md
 */
export function tablesAsRead(read: ProgrammeRead): ProgrammeTables {
  const { kept } = read;
  if (kept === undefined) throw new RangeError('the programme was read without { keep: true }');
  const keeper = new Keeper(kept, read.problems);
  const tables: Partial<Record<FolderTableName, readonly Row[]>> = {};
  for (const name of folderTableNames) {
    const table: Table = folderTables[name];
    const found = kept.files.has(table.file) ? keeper.table(table.file, table) : null;
    if (found !== null) tables[name] = found.rows;
  }
  const gaugeIds = new Set(read.facts.gauges.map(({ gaugeId }) => gaugeId));
  const rainTables: { gaugeId: string; rows: readonly RainRow[] }[] = [];
  for (const path of kept.files.keys()) {
    const gaugeId = /^rain\/(.*)\.csv$/.exec(path)?.[1] ?? null;
    const isGauge = gaugeId !== null && idForm.test(gaugeId) && gaugeIds.has(gaugeId);
    const found = isGauge ? keeper.table(path, rain) : null;
    if (found !== null) rainTables.push({ gaugeId: gaugeId!, rows: rainRows(found) });
    else if (!isGauge && path.startsWith('rain/')) keeper.raw(path);
  }
  const isBroken = keeper.has('settings.json', ({ severity }) => severity === 'blocker');
  if (isBroken && kept.files.has('settings.json')) keeper.raw('settings.json');
  if (kept.files.has(wayLinesFile)) keeper.raw(wayLinesFile);
  keeper.columns();
  const settings = isObject(kept.settings) ? kept.settings : {};
  return { settings, tables, rain: rainTables, rawFiles: keeper.rawFiles };
}
