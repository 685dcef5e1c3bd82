import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { type ProgrammeRead, readProgramme } from '@eavewell/formats';
import { strToU8, zipSync } from 'fflate';
import { expect } from 'vitest';
import { doubted, good, line, listed, readFiles } from './folder.ts';

/** A cell as its XML has it: `t` its type, `s` its style, `v` its stored value, `f` its formula. */
export interface XmlCell {
  readonly t?: string;
  readonly s?: number;
  readonly v?: string | number;
  readonly f?: string;
}

export type Cell = string | number | boolean | null | XmlCell;

/** A sheet by its rows; the first is row 1. `null` in place of a row leaves it out. */
export interface SheetMade {
  readonly name: string;
  rows: (Cell[] | null)[];
  hidden?: boolean;
  /** XML after the cells, as of merged ranges. */
  after?: string;
  /** XML before the cells, as of hidden columns. */
  before?: string;
  /** Rows that are hidden. */
  hiddenRows?: number[];
}

/** Styles of the workbooks made here, by their number. */
export const styles = { plain: 0, date: 1, time: 2, percent: 3, zeros: 4, dateTime: 5 } as const;

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const offices = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packages = 'http://schemas.openxmlformats.org/package/2006';
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** The letters of a column, counted from 0. */
export function letters(column: number): string {
  return column < 26 ? String.fromCharCode(65 + column) : letters(Math.floor(column / 26) - 1) + letters(column % 26);
}

function cellXml(cell: Cell, at: string): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return `<c r="${at}"><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c r="${at}" t="b"><v>${Number(cell)}</v></c>`;
  if (typeof cell === 'string')
    return `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${escaped(cell)}</t></is></c>`;
  const { t, s, v, f } = cell;
  const type = t === undefined ? '' : ` t="${t}"`;
  const style = s === undefined ? '' : ` s="${s}"`;
  const formula = f === undefined ? '' : `<f>${escaped(f)}</f>`;
  return `<c r="${at}"${style}${type}>${formula}${v === undefined ? '' : `<v>${escaped(String(v))}</v>`}</c>`;
}

export function sheetXml({ rows, after = '', before = '', hiddenRows = [] }: SheetMade): string {
  const made = rows.map((cells, i) => {
    if (cells === null) return '';
    const hidden = hiddenRows.includes(i + 1) ? ' hidden="1"' : '';
    return `<row r="${i + 1}"${hidden}>${cells.map((cell, j) => cellXml(cell, `${letters(j)}${i + 1}`)).join('')}</row>`;
  });
  return `${head}<worksheet xmlns="${main}">${before}<sheetData>${made.join('')}</sheetData>${after}</worksheet>`;
}

const stylesXml = `${head}<styleSheet xmlns="${main}"><numFmts count="3"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/><numFmt numFmtId="165" formatCode="000"/><numFmt numFmtId="166" formatCode="d/m/yyyy h:mm"/></numFmts><cellXfs count="6"><xf numFmtId="0"/><xf numFmtId="164"/><xf numFmtId="20"/><xf numFmtId="9"/><xf numFmtId="165"/><xf numFmtId="166"/></cellXfs></styleSheet>`;

export interface BookMade {
  readonly sheets: readonly SheetMade[];
  readonly date1904?: boolean;
  readonly texts?: readonly string[];
  /** Parts put in, or in the place of those made; null leaves one out. */
  readonly parts?: Readonly<Record<string, string | Uint8Array | null>>;
  /** More relations of the workbook, as XML. */
  readonly relations?: string;
}

/** The parts of a workbook by their names. */
export function partsOf({
  sheets,
  date1904,
  texts = [],
  parts = {},
  relations = '',
}: BookMade): Record<string, Uint8Array> {
  const listed = sheets.map(
    ({ name, hidden }, i) =>
      `<sheet name="${escaped(name)}" sheetId="${i + 1}"${hidden ? ' state="hidden"' : ''} r:id="rId${i + 1}"/>`,
  );
  const sheetRelations = sheets.map(
    (_, i) => `<Relationship Id="rId${i + 1}" Type="${offices}/worksheet" Target="worksheets/sheet${i + 1}.xml"/>`,
  );
  const made: Record<string, string | Uint8Array | null> = {
    '[Content_Types].xml': `${head}<Types xmlns="${packages}/content-types"><Default Extension="xml" ContentType="application/xml"/></Types>`,
    '_rels/.rels': `${head}<Relationships xmlns="${packages}/relationships"><Relationship Id="rId1" Type="${offices}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `${head}<workbook xmlns="${main}" xmlns:r="${offices}"><workbookPr${date1904 ? ' date1904="1"' : ''}/><sheets>${listed.join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `${head}<Relationships xmlns="${packages}/relationships">${sheetRelations.join('')}<Relationship Id="rIdS" Type="${offices}/styles" Target="styles.xml"/><Relationship Id="rIdT" Type="${offices}/sharedStrings" Target="sharedStrings.xml"/>${relations}</Relationships>`,
    'xl/styles.xml': stylesXml,
    'xl/sharedStrings.xml': `${head}<sst xmlns="${main}">${texts.map((text) => `<si><t xml:space="preserve">${escaped(text)}</t></si>`).join('')}</sst>`,
  };
  sheets.forEach((sheet, i) => {
    made[`xl/worksheets/sheet${i + 1}.xml`] = sheetXml(sheet);
  });
  const all = Object.entries({ ...made, ...parts }).filter(([, content]) => content !== null);
  return Object.fromEntries(
    all.map(([name, content]) => [name, typeof content === 'string' ? strToU8(content) : content!]),
  );
}

/** The bytes of a workbook. */
export function bookBytes(book: BookMade): Uint8Array {
  return zipSync(partsOf(book), { mtime: new Date(2026, 0, 1) });
}

/** The number of a day as spreadsheets count them from 1900. Source: day 1 is 1 January 1900, and 1900 has a 29 February. */
export function serial(iso: string): number {
  return Date.parse(`${iso}T00:00:00Z`) / 864e5 - Date.parse('1899-12-30T00:00:00Z') / 864e5;
}

/** A day as a spreadsheet keeps it. */
export function dateCell(iso: string): XmlCell {
  return { v: serial(iso), s: styles.date };
}

function typed(text: string): Cell {
  if (text === '') return null;
  if (/^\d{4}-\d\d-\d\d$/.test(text)) return dateCell(text);
  return /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}

const rowsOf = (csv: string) =>
  csv
    .trimEnd()
    .split('\n')
    .map((row) => row.split(',').map(typed));

/** The programme of `good` as sheets, without a fault. Every place and name is invented. */
export function goodSheets(): SheetMade[] {
  const tables = ['sites', 'roofs', 'diverters', 'tanks', 'demand', 'gauges', 'parts', 'prices'];
  const sheets = tables.map((name): SheetMade => ({ name, rows: rowsOf(good[`${name}.csv`]!) }));
  const settings: SheetMade = {
    name: 'settings',
    rows: [
      ['field', 'value'],
      ['programme', 'Tarn water'],
      ['target.longestDryRun_days', 5],
    ],
  };
  const rain: SheetMade = { name: 'rain', rows: [['gaugeId', 'date', 'rain_mm']] };
  for (const gaugeId of ['G-east', 'G-west'])
    for (const row of rowsOf(good[`rain/${gaugeId}.csv`]!).slice(1)) rain.rows.push([gaugeId, ...row]);
  return [...sheets, settings, rain];
}

/** The sheet of a name. */
export function sheetNamed(sheets: readonly SheetMade[], name: string): SheetMade {
  return sheets.find((sheet) => sheet.name === name)!;
}

/** The good sheets after a change to one of them. */
export function changedSheet(name: string, change: (sheet: SheetMade) => void): SheetMade[] {
  const sheets = goodSheets();
  change(sheetNamed(sheets, name));
  return sheets;
}

/** The good sheets with another cell in one place: `D14`, for the 4th column of row 14. */
export function changedCell(name: string, at: string, cell: Cell): SheetMade[] {
  const [, column = '', row = ''] = /^([A-Z])(\d+)$/.exec(at)!;
  return changedSheet(name, (sheet) => {
    sheet.rows[Number(row) - 1]![column.charCodeAt(0) - 65] = cell;
  });
}

/** Puts bytes into a file of their own, runs the work there, and takes the file away. */
export async function inFile<T>(bytes: Uint8Array, work: (path: string) => Promise<T>, name = 'plan.xlsx'): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-workbook-'));
  try {
    await writeFile(join(folder, name), bytes);
    return await work(join(folder, name));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Reads bytes as a workbook. */
export function readBytes(bytes: Uint8Array, name = 'plan.xlsx'): Promise<ProgrammeRead> {
  return inFile(bytes, readProgramme, name);
}

/** A problem as one line, with its cell: `code severity @ sheet row column cell = value`. */
export function bookLine(problem: Problem): string {
  const { cell } = problem.place;
  return line(problem)
    .replace('plan.xlsx/', '')
    .replace(' = ', `${cell === undefined ? '' : ` ${cell}`} = `);
}

/** One fault in a workbook, and all that must come of it. */
export interface PlantedInBook {
  readonly fault: string;
  readonly book: () => BookMade;
  readonly problems: readonly string[];
  readonly notUsed?: readonly string[];
  readonly inDoubt?: readonly string[];
  /** Sites that may differ without being in doubt. */
  readonly differ?: readonly string[];
  /** Gauges whose readings may differ. */
  readonly gauges?: readonly string[];
}

function readingsOf({ facts }: ProgrammeRead, but: readonly string[]) {
  return facts.gauges
    .filter(({ gaugeId }) => !but.includes(gaugeId))
    .map(({ file: _, readings, ...gauge }) => ({
      ...gauge,
      readings: readings.map(({ day, rain_mm }) => [day, rain_mm]),
    }));
}

/** Reads a planted fault, and asserts its problems, its list, its doubts, and that all else is as in the good folder. */
export async function assertInBook(planted: PlantedInBook): Promise<ProgrammeRead> {
  const read = await readBytes(bookBytes(planted.book()));
  const whole = await readFiles(good);
  expect(read.problems.map(bookLine)).toEqual(planted.problems);
  expect(listed(read).map((text) => text.replace('plan.xlsx/', ''))).toEqual(planted.notUsed ?? []);
  expect(doubted(read)).toEqual(planted.inDoubt ?? []);
  const touched = [...(planted.inDoubt ?? []), ...(planted.differ ?? [])];
  const others = (sites: ProgrammeRead['facts']['sites']) => sites.filter(({ siteId }) => !touched.includes(siteId));
  expect(others(read.facts.sites)).toEqual(others(whole.facts.sites));
  expect(readingsOf(read, planted.gauges ?? [])).toEqual(readingsOf(whole, planted.gauges ?? []));
  return read;
}
