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
  isPercentSeen,
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
import type { ProgrammeRead } from './programmeRead.ts';
import type { CellValue, ProgrammeTables, RainRow, RawFile } from './programmeTables.ts';
import { type CsvFile, readCsvFile } from './readCsvFile.ts';
import { rainRows as rainRowsAsRead, rowsAsRead } from './rowsAsRead.ts';
import { settingsLost } from './settingsLost.ts';
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

/** Written in several ways that mean the same. */
const staysAsWritten: readonly Column<unknown>['kind'][] = ['months', 'monthDay', 'weekdays'];

function written(column: Column<unknown>, value: unknown, text: string): CellValue {
  if (column.kind === 'date') return isoDay(value as number);
  // Months and days of the year are written in several ways that mean the same; they stay as they stood.
  if (staysAsWritten.includes(column.kind)) return bare(text);
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
  const habits = columns.map(({ unit, dateOrder }, at) => {
    const numbersAre = { decimalComma: csv.decimalComma, commaSeen };
    const texts = csv.rows.map(({ cells }) => cells[at] ?? '');
    return { ...numbersAre, unit, dateOrder, percentSeen: isPercentSeen(unit, texts, numbersAre) };
  });
  // A cell that was not read as it was said to be written would be read otherwise once that is no longer said.
  let isLost = false;
  const rows = csv.rows.map(({ cells }) => {
    const row: Row = {};
    columns.forEach(({ name, known, unit, dateOrder }, at) => {
      const text = cells[at] ?? '';
      if (bare(text) === '') row[name] = null;
      else if (known === null) row[name] = asItStood(text);
      else {
        const { value, fault } = readCell(known, text, habits[at]!);
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
  readonly rawFiles: RawFile[] = [];
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
  raw(path: string, inRows?: RawFile['inRows']): void {
    const bytes = this.kept.files.get(path)!;
    const decoded = decodeText(bytes);
    const isText = 'text' in decoded && !decoded.text.includes('\uFFFD');
    const whole = isText ? { path, text: decoded.text } : { path, text: '', bytes };
    const matching = matchingOf(this.kept.matchings, path);
    if (matching !== null) this.matchings.set(path, { ...matching, isShared: false });
    // Rows under a header that was accepted would be read otherwise where that is not said.
    this.rawFiles.push(inRows === undefined || matching !== null ? whole : { ...whole, inRows });
  }

  /** The rows of a table; null where the file is kept letter for letter. */
  table(path: string, table: Table, asRows: (csv: CsvFile) => RawFile['inRows']): RowsOfFile | null {
    const bytes = this.kept.files.get(path)!;
    const matching = matchingOf(this.kept.matchings, path);
    const columns = [...Object.keys(table.columns), ...(matching?.columns.keys() ?? [])];
    const csv = readCsvFile(bytes, { file: path, columns, needed: false });
    const isTwice = this.has(path, ({ code }) => code === 'row.key_twice' || code === 'row.twice_same');
    const isOtherwise = csv.decimalComma || matching !== null;
    const isOfTheFile = ({ code, facts }: Problem) =>
      ofTheFile.includes(code) || (isOtherwise && (isTwice || facts['reason'] !== undefined));
    if (csv.header.length === 0 || isStationCsv(csv.header) || !isRegular(csv) || this.has(path, isOfTheFile)) {
      this.raw(path, csv.header.length === 0 ? undefined : asRows(csv));
      return null;
    }
    // Rows with one key are told apart by their letters, so these are kept. Without a row nothing would carry the columns
    // nobody knows.
    const found = rowsOf(table, csv, matching, isTwice);
    if (found === null || (found.rows.length === 0 && found.unknown.length > 0)) {
      this.raw(path, asRows(csv));
      return null;
    }
    const notRead = [...(matching?.columns ?? [])].filter(([, match]) => match === null);
    if (notRead.length > 0) this.matchings.set(path, { columns: new Map(notRead), isShared: false });
    return found;
  }

  /** A file of rain that no gauge asks for, letter for letter. */
  stray(path: string, asRows: (csv: CsvFile) => RawFile['inRows']): void {
    const csv = readCsvFile(this.kept.files.get(path)!, {
      file: path,
      columns: Object.keys(rain.columns),
      needed: false,
    });
    this.raw(path, csv.header.length === 0 ? undefined : asRows(csv));
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

/** The rows of a file that its header or its rows' shape keeps from being a table, as a sheet would hold them. */
function allRows({ rows, notUsed }: CsvFile): readonly RawRow[] {
  return [...rows, ...notUsed.map(({ row, cells }): RawRow => ({ row, cells, broken: true }))];
}

/** The rain of a folder: as rows where they carry it, else the file. */
function rainOf(keeper: Keeper, { kept, facts }: ProgrammeRead): ProgrammeTables['rain'] {
  const gauges = new Map(facts.gauges.map((gauge) => [gauge.gaugeId, gauge]));
  const found: { gaugeId: string; rows: readonly RainRow[] }[] = [];
  for (const path of kept!.files.keys()) {
    const [, gaugeId = '', end] = /^rain\/(.*)\.(csv|dly)$/i.exec(path) ?? [];
    if (!path.startsWith('rain/')) continue;
    const other = `rain/${gaugeId}.${end === 'csv' ? 'dly' : 'csv'}`;
    // Of two files for one gauge nobody can tell which holds.
    const isCarried = idForm.test(gaugeId) && !kept!.files.has(other);
    const days = (): RawFile['inRows'] => {
      const readings = gauges.get(gaugeId)?.readings ?? [];
      const isStation = true;
      return { gaugeId, isStation, rows: readings.map(({ day, rain_mm }) => ({ date: isoDay(day), rain_mm })) };
    };
    const asRows = (csv: CsvFile): RawFile['inRows'] => {
      if (!isCarried) return undefined;
      if (isStationCsv(csv.header)) return days();
      return { gaugeId, isStation: false, rows: rainRowsAsRead(csv.header, allRows(csv), csv.decimalComma) };
    };
    if (end !== 'csv') keeper.raw(path, isCarried && gauges.has(gaugeId) ? days() : undefined);
    else if (gauges.has(gaugeId)) {
      const rows = keeper.table(path, rain, asRows);
      if (rows !== null) found.push({ gaugeId, rows: rainRows(rows) });
    } else keeper.stray(path, asRows);
  }
  return found;
}

/**
 * What is to be written so that nothing of a folder is lost? Everything as it stood: values where cells were read, the cells
 * themselves where not, columns nobody knows after the known ones, settings with keys nobody knows. A file that its rows do
 * not carry whole (a header at fault, rows of another width, no table at all) is given letter for letter, in `rawFiles`, and not
 * as a table: what cannot write such a file must say so.
 *
 * @param read - a folder that was read with `keep`
 * @returns tables, settings, rain and raw files, for writeProgramme
 * @law a folder written from it reads as the one it came from: facts, problems and rows not used, but for faults of form (separator, encoding, byte order mark, line end, decimal comma, characters at the ends of cells)
 * @definition ours: docs/decisions/0081-everything-kept.md
 */
export function folderAsRead(read: ProgrammeRead): ProgrammeTables {
  const { kept } = read;
  if (kept === undefined) throw new RangeError('the programme was read without { keep: true }');
  const keeper = new Keeper(kept, read.problems);
  const tables: Partial<Record<FolderTableName, readonly Row[]>> = {};
  for (const name of folderTableNames) {
    const table: Table = folderTables[name];
    if (!kept.files.has(table.file)) continue;
    const found = keeper.table(table.file, table, (csv) => {
      return { table: name, rows: rowsAsRead(csv.header, allRows(csv), table.columns, csv.decimalComma) };
    });
    if (found !== null) tables[name] = found.rows;
  }
  const rainTables = rainOf(keeper, read);
  const settingsFile = 'settings.json';
  const isBroken = keeper.has(settingsFile, ({ severity }) => severity === 'blocker');
  if (isBroken && kept.files.has(settingsFile)) keeper.raw(settingsFile);
  if (kept.files.has(wayLinesFile)) keeper.raw(wayLinesFile);
  keeper.columns();
  const none = kept.files.has(settingsFile) ? settingsLost(settingsFile) : {};
  const settings = isObject(kept.settings) ? kept.settings : none;
  return { settings, tables, rain: rainTables, rawFiles: keeper.rawFiles };
}
