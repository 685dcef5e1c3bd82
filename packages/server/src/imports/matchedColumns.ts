import type { Checked } from '@eavewell/engine';
import {
  type ColumnsOfFolder,
  columnsPlace,
  foldersProposals,
  type ProgrammeProposals,
  readColumnsFile,
  type SheetProposal,
  saveColumns,
  type TableProposals,
} from '@eavewell/formats';
import { bare, type FileMatching, readColumns, sheetsEntry } from '@eavewell/tables';
import type { SentFile } from './sentFiles.ts';

/** A header somebody said what it stands for; null: it is kept and not read. */
export interface ColumnSaid {
  /** The workbook it stands in, by the name it was sent under; null: a table of a folder. */
  readonly workbook: string | null;
  /** The table's file, or the sheet. */
  readonly file: string;
  readonly header: string;
  readonly column: string | null;
  readonly unit?: string | undefined;
  readonly dateOrder?: string | undefined;
}

/** A sheet somebody said which table it is; null: it is left alone. */
export interface SheetSaid {
  readonly workbook: string;
  readonly sheet: string;
  readonly table: string | null;
}

/** All that was accepted for an import. */
export interface Accepted {
  readonly columns: readonly ColumnSaid[];
  readonly sheets: readonly SheetSaid[];
}

/** A header that is not understood, and what it likely is. */
export interface HeaderFound {
  readonly workbook: string | null;
  readonly file: string;
  readonly header: string;
  readonly column: string | null;
  readonly unit: string | null;
  readonly dateOrder: string | null;
  readonly why: readonly string[];
  readonly fits: number;
  readonly looked: number;
  /** Why it cannot be accepted as it is; null where it can. */
  readonly open: string | null;
  readonly choices: readonly { readonly column: string; readonly hows: readonly string[] }[];
}

/** Headers and sheets that are not understood. */
export interface ColumnsFound {
  readonly headers: readonly HeaderFound[];
  readonly sheets: readonly (SheetProposal & { readonly workbook: string })[];
}

const entryOf = ({ column, unit, dateOrder }: ColumnSaid) =>
  column === null
    ? null
    : { column, ...(unit === undefined ? {} : { unit }), ...(dateOrder === undefined ? {} : { dateOrder }) };

/** The matchings that stand, with what was said since: a header, or a column, that was matched before is matched anew. */
async function said(
  path: string,
  columns: readonly ColumnSaid[],
  sheets: readonly SheetSaid[],
): Promise<Checked<boolean>> {
  if (columns.length + sheets.length === 0) return { ok: true, value: false, problems: [] };
  const saved = await readColumnsFile(path);
  const place = await columnsPlace(path);
  const wanted: Record<string, Record<string, unknown>> = {};
  for (const one of columns) wanted[one.file] = { ...wanted[one.file], [one.header]: entryOf(one) };
  const ofSheets = Object.fromEntries([...saved.sheets, ...sheets.map(({ sheet, table }) => [sheet, table] as const)]);
  const read = readColumns({ ...(place.isWorkbook ? { [sheetsEntry]: ofSheets } : {}), ...wanted }, place);
  const blockers = read.problems.filter(({ severity }) => severity === 'blocker');
  if (blockers.length > 0) return { ok: false, problems: blockers };
  const matchings = new Map<string, FileMatching>(saved.matchings);
  for (const [file, { columns: fresh }] of read.matchings) {
    const taken = new Set([...fresh.values()].flatMap((match) => (match === null ? [] : [match.column])));
    const kept = [...(matchings.get(file)?.columns ?? [])].filter(
      ([, match]) => match === null || !taken.has(match.column),
    );
    matchings.set(file, { columns: new Map([...kept, ...fresh]), isShared: file.includes('*') });
  }
  await saveColumns(path, { matchings, sheets: place.isWorkbook ? read.sheets : new Map() });
  return { ok: true, value: true, problems: [] };
}

/** Writes down what was accepted, where the reader looks for it. */
export const layColumns = {
  async forWorkbooks(sent: readonly SentFile[], { columns, sheets }: Accepted): Promise<Checked<null>> {
    for (const { name, path } of sent) {
      const own = columns.filter(({ workbook }) => workbook === name);
      const ownSheets = sheets.filter(({ workbook }) => workbook === name);
      const laid = await said(path, own, ownSheets);
      if (!laid.ok) return laid;
    }
    return { ok: true, value: null, problems: [] };
  },

  /** True where anything was accepted for a table of a folder. */
  forFolder(folder: string, { columns }: Accepted): Promise<Checked<boolean>> {
    return said(
      folder,
      columns.filter(({ workbook }) => workbook === null),
      [],
    );
  },
};

function headersOf({ file, proposals }: TableProposals, workbook: string | null): readonly HeaderFound[] {
  return proposals.map(({ header, match, why, fits, looked, open, choices }) => ({
    ...{ workbook, file, header: bare(header) },
    ...{ column: match?.column ?? null, unit: match?.unit ?? null, dateOrder: match?.dateOrder ?? null },
    ...{ why, fits, looked, open, choices },
  }));
}

/** What is not understood in the tables and workbooks that were sent. */
export async function columnsFound(
  folder: string,
  workbooks: readonly SentFile[],
  isSent: (file: string) => boolean,
): Promise<ColumnsFound> {
  const found = await foldersProposals(folder, await readColumnsFile(folder));
  const isOfSent = ({ file }: TableProposals) => isSent(file) || file.includes('*');
  const headers = workbooks.length > 0 ? [] : found.tables.filter(isOfSent).flatMap((one) => headersOf(one, null));
  const sheets: (SheetProposal & { workbook: string })[] = [];
  for (const { name, path } of workbooks) {
    const saved: ColumnsOfFolder = await readColumnsFile(path);
    const proposed: ProgrammeProposals = await foldersProposals(path, saved);
    headers.push(...proposed.tables.flatMap((one) => headersOf(one, name)));
    sheets.push(...proposed.sheets.map((one) => ({ ...one, workbook: name })));
  }
  return { headers, sheets };
}
