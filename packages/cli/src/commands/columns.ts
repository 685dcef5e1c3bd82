import { type Problem, unitsWritten } from '@eavewell/engine';
import {
  type ColumnsOfFolder,
  columnsPlace,
  folderProblem,
  foldersProposals,
  type ProgrammeProposals,
  readColumnsFile,
  type SheetProposal,
  saveColumns,
  type TableProposals,
} from '@eavewell/formats';
import {
  bare,
  type ColumnMatch,
  type FileMatching,
  type Matchings,
  matchingOf,
  matchShown,
  nearest,
  type Proposal,
  readColumns,
  sheetNames,
  sheetsEntry,
  tableOfFile,
  tableOfSheet,
} from '@eavewell/tables';
import { problemSentence } from '@eavewell/words';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import { type FolderFound, type FromData, refuseWithData } from './folderOrData.ts';

const { columns: words, design } = spoken.commandLine;

export interface ColumnsOptions extends FromData {
  readonly accept?: boolean;
  readonly set?: readonly string[];
}

/** Shows the headers that are not understood and what they are likely to be; keeps what is accepted. */
export async function columnsCommand(
  { path: folder, shown }: FolderFound,
  options: ColumnsOptions,
  context: Context,
): Promise<ExitCode> {
  refuseWithData(options, { '--accept': options.accept, '--set': options.set });
  const wrong = await folderProblem(folder);
  if (wrong !== null) throw new WrongUse(sentenceOf(wrong));
  const saved = await readColumnsFile(folder);
  const bad = saved.problems.find(({ severity }) => severity === 'blocker');
  const isWriting = options.accept === true || (options.set ?? []).length > 0;
  if (bad !== undefined && isWriting) {
    throw new WrongUse(`${sentenceOf(bad)} ${words.nothingWritten}`);
  }
  const first = await foldersProposals(folder, saved);
  const place = await columnsPlace(folder);
  const typedSheets = (options.set ?? []).map((text) => (place.isWorkbook ? sheetOf(text, first) : null));
  const given = typedSheets.filter((one) => one !== null);
  const sheets = sheetsChosen(saved, given, options.accept === true ? first.sheets : []);
  // What a sheet is decides which columns its headers may stand for.
  const proposed = given.length > 0 ? await foldersProposals(folder, { ...saved, sheets }) : first;
  const found = proposed.tables;
  const where = { ...place, sheets };
  const typed = (options.set ?? []).filter((_, i) => typedSheets[i] === null);
  const asked = typed.map((text) => setOf(text, found, where));
  const isOpen = (file: string) => proposed.sheets.some((one) => one.sheet === file && !sheets.has(file));
  const accepted = options.accept === true ? found.filter(({ file }) => !isOpen(file)).flatMap(acceptable) : [];
  const chosen = [...accepted.filter((one) => !asked.some((other) => isSame(one, other))), ...asked];
  context.progress.done();
  const sheet = new Sheet(context.look);
  const newSheets = [...sheets].filter(([name, ours]) => saved.sheets.get(name) !== ours);
  if (chosen.length + newSheets.length > 0) {
    const path = await saveColumns(folder, { matchings: withChosen(saved.matchings, chosen), sheets });
    sheet.heading(words.kept);
    for (const [name, ours] of newSheets) sheet.line(words.sheetIs(name, ours), 2, 2);
    for (const { file, header, match } of chosen) sheet.line(`${file}: ${matchShown(header, match)}`, 2, 2);
    sheet.line(design.written(path), 0, 2);
  }
  if (bad !== undefined) sheet.line(sentenceOf(bad));
  const left = found.map((one) => ({ ...one, proposals: one.proposals.filter((two) => !isChosen(one, two, chosen)) }));
  const sheetsLeft = proposed.sheets.filter((one) => !sheets.has(one.sheet));
  for (const [name, ours] of saved.sheets) sheet.line(words.sheetIs(name, ours), 2, 2);
  for (const one of sheetsLeft) sheetShown(sheet, one);
  if (proposed.others.length > 0) sheet.line(words.otherSheets(proposed.others), 0, 2);
  proposalsShown(sheet, left, saved.matchings, shown, sheetsLeft);
  await write(context.around.stdout, sheet.text());
  return exitCodes.done;
}

function sentenceOf(problem: Problem): string {
  const { what, todo } = problemSentence(problem, spoken);
  return `${what} ${todo}`;
}

/** A match somebody accepted. */
interface Chosen {
  readonly file: string;
  readonly header: string;
  readonly match: ColumnMatch | null;
}

function isSame(one: Chosen, other: Chosen): boolean {
  const isOneColumn = one.match !== null && one.match.column === other.match?.column;
  return one.file === other.file && (one.header === other.header || isOneColumn);
}

function isChosen({ file }: TableProposals, { header }: Proposal, chosen: readonly Chosen[]): boolean {
  return chosen.some((one) => one.file === file && one.header === header);
}

function acceptable({ file, proposals }: TableProposals): readonly Chosen[] {
  return proposals.flatMap(({ header, match, open }) =>
    match === null || open !== null ? [] : [{ file, header, match }],
  );
}

/** A sheet that was typed: `Rain data=rain`; null where what was typed is about a header. */
function sheetOf(
  text: string,
  { tables, sheets, others }: ProgrammeProposals,
): readonly [string, string | null] | null {
  const [, name = '', wanted = ''] = /^([^:=]+)=([^:=]*)$/.exec(text) ?? [];
  if (name === '') return null;
  const names = [...sheets.map((one) => one.sheet), ...others, ...tables.map(({ file }) => file)];
  if (!names.includes(name)) throw new WrongUse(words.unknownSheet(name, nearest(name, names) ?? ''));
  const ours = wanted === '' || wanted === '-' ? null : wanted;
  if (ours !== null && tableOfSheet(ours) === null)
    throw new WrongUse(words.unknownFile(ours, nearest(ours, sheetNames) ?? ''));
  return [name, ours];
}

/** The sheets with what was accepted now; a sheet of ours that another was accepted for before is that of the new one. */
function sheetsChosen(
  saved: ColumnsOfFolder,
  given: readonly (readonly [string, string | null])[],
  proposed: readonly SheetProposal[],
): ReadonlyMap<string, string | null> {
  const typed = given.map(([name]) => name);
  const accepted = proposed.flatMap(({ sheet, likely }) =>
    likely === null || typed.includes(sheet) ? [] : [[sheet, likely] as const],
  );
  const sheets = new Map(saved.sheets);
  for (const [name, ours] of [...accepted, ...given]) {
    for (const [other, theirs] of sheets) if (ours !== null && theirs === ours) sheets.delete(other);
    sheets.set(name, ours);
  }
  return sheets;
}

function sheetShown(sheet: Sheet, { sheet: name, likely, why, open, gauges }: SheetProposal): void {
  sheet.heading(words.sheetUnknown(name));
  sheet.line(likely === null ? words.sheetOfGauge : words.sheetIs(name, likely), 2, 2);
  sheet.line(why.map((one) => words.sheetWhy[one]).join('; '), 4, 2);
  if (open === 'gauge') sheet.line(words.whichGauge(name, gauges), 4, 2);
}

/** Where the matchings are kept, and what sheets were accepted for. */
type Where = Awaited<ReturnType<typeof columnsPlace>> & { readonly sheets: ReadonlyMap<string, string | null> };

/** What was typed: `roofs.csv:Roof length=length_m:ft`. */
function setOf(text: string, found: readonly TableProposals[], where: Where): Chosen {
  const [, file = '', header = '', wanted = ''] = /^([^:]+):(.+)=([^=]*)$/s.exec(text) ?? [];
  const one = found.find((other) => other.file === file);
  const table = where.isWorkbook ? (one?.table ?? null) : tableOfFile(file);
  if (header === '') throw new WrongUse(words.setForm(text));
  const files = found.map((one) => one.file);
  if (table === null) throw new WrongUse(words.unknownFile(file, nearest(file, files) ?? ''));
  const [column = '', how] = wanted.split(':');
  const entry = column === '' || column === '-' ? null : { column, ...(how === undefined ? {} : hows(how)) };
  const sheets = where.isWorkbook ? { [sheetsEntry]: { ...Object.fromEntries(where.sheets), ...sheetTried(one) } } : {};
  const read = readColumns({ ...sheets, [file]: { [header]: entry } }, where);
  const [problem] = read.problems;
  if (problem) throw new WrongUse(`${sentenceOf(problem)} ${words.nothingWritten}`);
  const headers = found
    .filter((one) => one.file === file || isRain(file, one.file))
    .flatMap((one) => one.headers.map(bare));
  if (!headers.includes(bare(header)))
    throw new WrongUse(words.unknownHeader(header, file, nearest(header, headers) ?? ''));
  return { file, header: bare(header), match: read.matchings.get(file)!.columns.get(bare(header)) ?? null };
}

/** The sheet whose table is only proposed, as that table. */
function sheetTried(found: TableProposals | undefined): Readonly<Record<string, string>> {
  if (found === undefined || tableOfSheet(found.file) !== null) return {};
  const { name, columns } = found.table;
  return { [found.file]: name === 'rain' && !Object.hasOwn(columns, 'gaugeId') ? 'rain gauge' : name };
}

/** Is the header of a rain file told under the name of them all, or the other way round? */
function isRain(asked: string, found: string): boolean {
  return asked.startsWith('rain/') && found.startsWith('rain/') && (asked.includes('*') || found.includes('*'));
}

function hows(text: string): { readonly dateOrder: string } | { readonly unit: string } {
  return ['dmy', 'mdy', 'ymd'].includes(text) ? { dateOrder: text } : { unit: text };
}

/** The matchings with what was accepted now: a header, or a column, that was matched before is matched anew. */
function withChosen(before: Matchings, chosen: readonly Chosen[]): Matchings {
  const files = new Map<string, FileMatching>(before);
  for (const { file, header, match } of chosen) {
    const old = files.get(file) ?? { ...(matchingOf(before, file) ?? { columns: new Map() }), isShared: false };
    const kept = [...old.columns].filter(([, one]) => match === null || one?.column !== match.column);
    files.set(file, { columns: new Map([...kept, [header, match]]), isShared: false });
  }
  return files;
}

function proposalsShown(
  sheet: Sheet,
  found: readonly TableProposals[],
  saved: Matchings,
  folder: string,
  sheets: readonly SheetProposal[],
): void {
  for (const [file, { columns }] of saved) {
    sheet.heading(words.saved(file));
    for (const [header, match] of columns) sheet.line(matchShown(header, match), 2, 2);
  }
  const withHeaders = found.filter(({ proposals }) => proposals.length > 0);
  for (const { file, table, proposals } of withHeaders) {
    sheet.heading(words.notUnderstood(file, proposals.length));
    for (const proposal of proposals) proposalShown(sheet, proposal, file, (column) => table.columns[column]!.unit);
  }
  sheet.blank();
  const open = sheets.flatMap((one) => (one.likely === null ? [one.sheet] : []));
  const ofOthers = found.filter(({ file }) => !open.includes(file));
  const canAccept = ofOthers.flatMap(acceptable).length > 0 || sheets.length > open.length;
  if (withHeaders.length + sheets.length === 0) sheet.line(words.allUnderstood);
  else if (canAccept) sheet.line(words.toAccept(folder));
}

function proposalShown(sheet: Sheet, proposal: Proposal, file: string, unitOf: (column: string) => string): void {
  const { header, match, why, fits, looked, open, choices } = proposal;
  const [likely, ...others] = choices;
  if (match === null || likely === undefined) {
    sheet.line(words.noMatch(header), 2, 2);
    return;
  }
  sheet.line(
    open === null
      ? matchShown(header, match)
      : words.notSure(
          header,
          choices.map(({ column }) => column),
        ),
    2,
    2,
  );
  const reasons = why.map((one) => words.why[one]);
  const values = looked > 0 ? [words.fits(fits, looked)] : [words.noValues];
  sheet.line([...reasons, ...values].join('; '), 4, 2);
  const unit = unitOf(match.column);
  if (open !== null) sheet.line(words.open[open](file, header, [likely, ...others], unit), 4, 2);
  else if (match.unit === null && unitsWritten(unit).length > 0 && !why.includes('unit'))
    sheet.line(words.unitNotSaid(unit), 4, 2);
}
