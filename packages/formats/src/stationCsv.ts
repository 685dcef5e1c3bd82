import { readIsoDay } from '@eavewell/engine';
import type { RawRow, StationLine } from '@eavewell/tables';

/** The columns of a station file, under each name they are given. Names are compared without case, spaces and marks. */
const namesOf = {
  ID: ['id', 'station'],
  DATE: ['date', 'yyyymmdd', 'yearmonthday'],
  ELEMENT: ['element'],
  VALUE: ['value', 'datavalue'],
  M: ['m', 'mflag'],
  Q: ['q', 'qflag'],
  S: ['s', 'sflag'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

type StationColumn = keyof typeof namesOf;
const columns = Object.keys(namesOf) as readonly StationColumn[];
const withoutHeader = /^[A-Z0-9_-]{11}$/i;

function folded(name: string): string {
  return name.toLowerCase().replace(/[^a-z0-9]/g, '');
}

function placesOf(header: readonly string[]): ReadonlyMap<StationColumn, number> {
  const names = header.map(folded);
  const at = new Map<StationColumn, number>();
  for (const column of columns) {
    const place = names.findIndex((name) => (namesOf[column] as readonly string[]).includes(name));
    if (place >= 0) at.set(column, place);
  }
  return at;
}

/** Does the first line hold values, as the yearly files do, and no names? */
function isValueLine(cells: readonly string[]): boolean {
  const [id = '', day = '', element = '', value = ''] = cells.map((cell) => cell.trim());
  return withoutHeader.test(id) && /^\d{8}$/.test(day) && /^[A-Z0-9]{4}$/.test(element) && /^-?\d+$/.test(value);
}

/**
 * Are these the first cells of a station file of GHCN-Daily? Its column names, or, where it has none, its first values.
 *
 * @param header - the cells of the first line [text]
 * @returns true or false
 * @source ghcn-daily, readme of the files by station and by year
 */
export function isStationCsv(header: readonly string[]): boolean {
  const at = placesOf(header);
  return isValueLine(header) || (at.has('ELEMENT') && at.has('VALUE'));
}

/** The lines of a station file, or the columns it lacks. */
export type StationCsv = { readonly lines: readonly StationLine[] } | { readonly missing: readonly string[] };

function dayOf(text: string): number | null {
  const [, year, month, date] = /^(\d{4})-?(\d{2})-?(\d{2})$/.exec(text) ?? [];
  return readIsoDay(`${year}-${month}-${date}`);
}

/**
 * Which values stand in a station file of GHCN-Daily separated by commas: a line for a day of one element?
 *
 * @param header - the cells of the first line [text]
 * @param rows - the lines under it
 * @returns the lines with their values, null where a line is not of this form; or the columns that are not there
 * @law a file without the columns of flags is not read: what failed a check would pass for rain
 * @source ghcn-daily, readme of the files by station and by year
 */
export function stationCsvLines(header: readonly string[], rows: readonly RawRow[]): StationCsv {
  const hasNames = !isValueLine(header);
  const at = hasNames ? placesOf(header) : new Map(columns.map((column, i) => [column, i]));
  const missing = columns.filter((column) => column !== 'S' && !at.has(column));
  if (missing.length > 0) return { missing };
  const body = hasNames ? rows : [{ row: 1, cells: header }, ...rows];
  const lines = body.flatMap((raw: RawRow): readonly StationLine[] => {
    const { row, cells, broken } = raw;
    if (broken !== true && cells.every((cell) => cell.trim() === '')) return [];
    const cell = (column: StationColumn) => (cells[at.get(column) ?? -1] ?? '').trim();
    const [stationId, dayText, element] = [cell('ID'), cell('DATE'), cell('ELEMENT')];
    const day = dayOf(dayText);
    const isLine = broken !== true && stationId !== '' && /^[A-Z0-9]{4}$/.test(element) && cells.length > at.get('Q')!;
    if (!isLine || day === null) return [{ row, cells, values: null }];
    const flags = { measurementFlag: cell('M'), qualityFlag: cell('Q'), sourceFlag: cell('S') };
    const column = header[at.get('VALUE')!]!.trim();
    const value = { row, column: hasNames ? column : 'VALUE', stationId, day, element, value: cell('VALUE') };
    const iso = dayText.replace(/^(\d{4})-?(\d{2})-?(\d{2})$/, '$1-$2-$3');
    return [{ row, cells, values: [{ ...value, dayText: iso, ...flags }] }];
  });
  return { lines };
}
