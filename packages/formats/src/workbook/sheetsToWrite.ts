import { type Column, folderTables, rain, tableProblem } from '@eavewell/tables';
import type { SheetData } from 'write-excel-file/node';
import type { CellValue, ProgrammeTables } from '../programmeTables.ts';
import { WriteRefused } from '../writeRefused.ts';
import { sheetCell, textCell, type WrittenCell } from './writtenCells.ts';

/** Rows a sheet can have, and letters its name can have. Source: ECMA-376 names no limit; those of spreadsheets, common practice. */
export const mostRows = 1_048_576;
const longestName = 31;
/** Width of a column [character]; ours. */
const [leastWidth, mostWidth] = [10, 30];

/** A row of values by column. */
export type Row = Readonly<Record<string, CellValue>>;
/** A sheet as the writer of workbooks takes it. */
export interface SheetToWrite {
  readonly sheet: string;
  readonly data: SheetData;
  readonly columns: { readonly width: number }[];
  readonly stickyRowsCount: number;
}

/** A table as a sheet: its header, then its rows, each value as its column asks. */
export function sheetOf(
  sheet: string,
  names: readonly string[],
  columns: Readonly<Record<string, Column<unknown>>>,
  rows: Iterable<Row>,
): SheetToWrite {
  const header = names.map((name): WrittenCell => ({ ...textCell(name), fontWeight: 'bold' }));
  const data: (WrittenCell | null)[][] = [header];
  const kinds = names.map((name) => (Object.hasOwn(columns, name) ? columns[name]! : null));
  for (const row of rows) data.push(names.map((name, i) => sheetCell(row[name] ?? null, kinds[i]!)));
  if (data.length > mostRows) {
    const facts = { value: sheet, limit: 'rows', found: data.length, most: mostRows, expected: 'fewer rows' };
    throw new WriteRefused(tableProblem('workbook.over_limit', { file: sheet }, facts));
  }
  const width = (name: string) => Math.min(mostWidth, Math.max(leastWidth, name.length + 2));
  return { sheet, data: data as SheetData, columns: names.map((name) => ({ width: width(name) })), stickyRowsCount: 1 };
}

/** The columns that rows of rain have beside the known ones. */
function extraColumns(gauges: ProgrammeTables['rain']): readonly string[] {
  const names = new Set<string>();
  for (const { rows } of gauges)
    for (const { extra = {} } of rows) for (const name of Object.keys(extra)) names.add(name);
  return [...names].filter((name) => name !== 'gaugeId');
}

function* rowsOfGauge({ gaugeId, rows }: ProgrammeTables['rain'][number]): Generator<Row> {
  // A row with neither day nor rain is an empty line, which a gauge before it would make a reading.
  for (const row of rows)
    if (row.date.trim() !== '' || String(row.rain_mm ?? '').trim() !== '')
      yield { ...row.extra, gaugeId, date: row.date, rain_mm: row.rain_mm };
}

/**
 * The rain as sheets: one for all gauges where they fit into it; else one for each whose id leaves room for it in a name.
 *
 * @param gauges - the rain of each gauge
 * @param most - rows a sheet can have
 * @returns the sheets; none where there is no gauge
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function rainSheets(gauges: ProgrammeTables['rain'], most = mostRows): readonly SheetToWrite[] {
  if (gauges.length === 0) return [];
  const columns = { gaugeId: folderTables.gauges.columns.gaugeId, ...rain.columns };
  const rows = gauges.reduce((sum, gauge) => sum + gauge.rows.length, 0);
  const taken = new Set<string>();
  const hasOwn = (gaugeId: string) => {
    const name = `rain ${gaugeId}`.toLowerCase();
    if (rows < most || name.length > longestName || taken.has(name)) return false;
    taken.add(name);
    return true;
  };
  const own = gauges.filter(({ gaugeId }) => hasOwn(gaugeId));
  const others = gauges.filter((gauge) => !own.includes(gauge));
  const ofAll = sheetOf(
    'rain',
    [...Object.keys(columns), ...extraColumns(others)],
    columns,
    others.flatMap((gauge) => [...rowsOfGauge(gauge)]),
  );
  const sheets = own.map((gauge) =>
    sheetOf(
      `rain ${gauge.gaugeId}`,
      [...Object.keys(rain.columns), ...extraColumns([gauge])],
      rain.columns,
      rowsOfGauge(gauge),
    ),
  );
  return others.length === 0 ? sheets : [ofAll, ...sheets];
}
