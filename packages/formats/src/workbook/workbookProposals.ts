import {
  type FileMatching,
  folderTableNames,
  gaugeOfSheet,
  headerWords,
  idForm,
  proposeColumns,
  rain,
  sheetNames,
  type Table,
  tableOfSheet,
} from '@eavewell/tables';
import type { ColumnsOfFolder } from '../columnsSaved.ts';
import type { ProgrammeProposals, SheetProposal, TableProposals } from '../proposals.ts';
import { openWorkbook, type Workbook } from './openWorkbook.ts';
import { readSheetTable, type SheetTable } from './readSheetTable.ts';
import type { SheetCells } from './sheetCells.ts';
import { isProblem } from './sheets.ts';

/** As which word a village, a community or a place is taken. */
const [villageWord = ''] = headerWords('village').words;

/** What a sheet would be as one of our tables. */
interface Try {
  readonly sheet: string;
  readonly table: Table;
  readonly found: TableProposals;
  /** Of the columns the table cannot do without, those that are there or proposed. */
  readonly needed: number;
  readonly neededOf: number;
  readonly score: number;
  readonly isNamed: boolean;
}

function neededOf({ columns }: Table): readonly string[] {
  return Object.keys(columns).filter((name) => columns[name]!.required);
}

/** Do all words of the table's name stand in the sheet's? A village is a site, where nothing shows that it is only a place. */
function isNamedAs(title: string, sheet: string): boolean {
  const words = headerWords(title).words;
  if (sheet === 'sites' && words.includes(villageWord)) return true;
  return headerWords(sheet).words.every((word) => words.includes(word));
}

/** Looks through one workbook for sheets and headers that are not understood. */
class Proposer {
  private readonly workbook: Workbook;
  private readonly saved: ColumnsOfFolder;

  constructor(workbook: Workbook, saved: ColumnsOfFolder) {
    this.workbook = workbook;
    this.saved = saved;
  }

  private as(cells: SheetCells, table: Table, matching: FileMatching | null): SheetTable | null {
    const asked = { file: '', table, days: this.workbook.days, needed: false, namesEmptyRows: false, matching };
    // Texts of days are left as they stand: their order is what may have to be said.
    const sheet = readSheetTable(cells, { ...asked, leavesDates: true });
    return isProblem(sheet) ? null : sheet;
  }

  of(title: string, cells: SheetCells, table: Table): TableProposals | null {
    const matching = this.saved.matchings.get(title) ?? null;
    const sheet = this.as(cells, table, matching);
    if (sheet === null) return null;
    const proposals = proposeColumns(table, sheet.header, sheet.rows, matching);
    return { file: title, table, headers: sheet.header, proposals, gauges: this.gaugesIn(table, sheet, matching) };
  }

  private gaugesIn(table: Table, { header, rows }: SheetTable, matching: FileMatching | null): readonly string[] {
    if (table.name !== 'gauges') return [];
    const at = header.findIndex((name) => name === 'gaugeId' || matching?.columns.get(name)?.column === 'gaugeId');
    return at < 0 ? [] : rows.flatMap(({ cells }) => (idForm.test(cells[at]!.trim()) ? [cells[at]!.trim()] : []));
  }

  /** A sheet under another name, as one of our tables. */
  try(title: string, cells: SheetCells, sheet: string): Try | null {
    const table = sheet === 'rain' && !this.hasGauges(title, cells) ? rain : tableOfSheet(sheet)!;
    const found = this.of(title, cells, table);
    if (found === null) return null;
    const matched = new Set(found.proposals.flatMap(({ match }) => (match === null ? [] : [match.column])));
    const isThere = (column: string) => found.headers.includes(column) || matched.has(column);
    const all = neededOf(table);
    const needed = all.filter(isThere).length;
    const isNamed = isNamedAs(title, sheet);
    const known = found.headers.filter((header) => Object.hasOwn(table.columns, header)).length + matched.size;
    const isLike = isNamed ? known > 0 : all.length > 1 && needed === all.length;
    if (!isLike) return null;
    return { sheet, table, found, needed, neededOf: all.length, isNamed, score: (isNamed ? 100 : 0) + known };
  }

  /** Does a sheet of rain say in a column of its own which gauge each row is of? */
  private hasGauges(title: string, cells: SheetCells): boolean {
    const found = this.of(title, cells, tableOfSheet('rain')!);
    return (
      found !== null &&
      (found.headers.includes('gaugeId') || found.proposals.some(({ match }) => match?.column === 'gaugeId'))
    );
  }
}

/** The sheet of ours that a sheet of rain without a column of gauges stands for: that of the only gauge there is. */
function ofRain(title: string, gauges: readonly string[]): Pick<SheetProposal, 'likely' | 'open'> {
  const own = gauges.filter((id) => headerWords(title).words.includes(id.toLowerCase()));
  const [gauge] = own.length === 1 ? own : gauges;
  const isOne = own.length === 1 || gauges.length === 1;
  return isOne ? { likely: `rain ${gauge}`, open: null } : { likely: null, open: 'gauge' };
}

function proposalOf({ sheet, table, found, isNamed }: Try, gauges: readonly string[]): SheetProposal {
  const why = [...(isNamed ? (['name'] as const) : []), 'headers' as const];
  const base = { sheet: found.file, why, headers: found.headers, gauges };
  if (sheet !== 'rain' || table !== rain) return { ...base, likely: sheet, open: null };
  return { ...base, ...ofRain(found.file, gauges) };
}

/**
 * Which sheets and headers of a workbook are not understood, and what are they likely to be? Writes nothing.
 *
 * @param path - the workbook [text]
 * @param saved - what was accepted before
 * @returns what is proposed for sheets, and for headers by sheet
 * @definition ours: docs/decisions/0074-columns-of-workbooks.md
 */
export async function workbookProposals(path: string, saved: ColumnsOfFolder): Promise<ProgrammeProposals> {
  const workbook = await openWorkbook(path);
  if (isProblem(workbook)) return { tables: [], sheets: [], others: [] };
  const proposer = new Proposer(workbook, saved);
  const tables: TableProposals[] = [];
  const strange: { title: string; cells: SheetCells }[] = [];
  const taken = new Set<string>();
  for (const sheet of workbook.sheets) {
    const ours = saved.sheets.has(sheet.name) ? saved.sheets.get(sheet.name)! : sheet.name;
    const cells = ours === null ? null : await workbook.cellsOf(sheet);
    if (ours === null || cells === null || isProblem(cells)) continue;
    const table = tableOfSheet(ours);
    if (table === null) {
      strange.push({ title: sheet.name, cells });
      continue;
    }
    taken.add(ours);
    const found = proposer.of(sheet.name, cells, table);
    if (found !== null) tables.push(found);
  }
  const hasOwnRain = [...taken].some((sheet) => gaugeOfSheet(sheet) !== null);
  const free = sheetNames.filter((name) => !taken.has(name) && name !== 'settings' && !(name === 'rain' && hasOwnRain));
  const tries = strange.flatMap(({ title, cells }) => free.flatMap((name) => proposer.try(title, cells, name) ?? []));
  tries.sort((a, b) => b.score - a.score || order(a.sheet) - order(b.sheet));
  const chosen: Try[] = [];
  for (const one of tries)
    if (!chosen.some(({ sheet, found }) => sheet === one.sheet || found.file === one.found.file)) chosen.push(one);
  const gauges = [...tables, ...chosen.map(({ found }) => found)].flatMap((found) => found.gauges ?? []);
  const others = strange.map(({ title }) => title).filter((title) => !chosen.some(({ found }) => found.file === title));
  return {
    tables: [...tables, ...chosen.map(({ found }) => found)],
    sheets: chosen.map((one) => proposalOf(one, gauges)),
    others,
  };
}

function order(sheet: string): number {
  return [...folderTableNames, 'rain'].indexOf(sheet);
}
