import { type Problem, unitsWritten } from '@eavewell/engine';
import { folderProblem, foldersProposals, readColumnsFile, saveColumns, type TableProposals } from '@eavewell/formats';
import {
  bare,
  type ColumnMatch,
  columnsFile,
  type FileMatching,
  type Matchings,
  matchingOf,
  matchShown,
  nearest,
  type Proposal,
  readColumns,
  tableOfFile,
} from '@eavewell/tables';
import { english, problemSentence } from '@eavewell/words';
import { type ExitCode, exitCodes, WrongUse } from '../exitCodes.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';

const { columns: words, design } = english.commandLine;

export interface ColumnsOptions {
  readonly accept?: boolean;
  readonly set?: readonly string[];
}

/** Shows the headers that are not understood and what they are likely to be; keeps what is accepted. */
export async function columnsCommand(folder: string, options: ColumnsOptions, context: Context): Promise<ExitCode> {
  const wrong = await folderProblem(folder);
  if (wrong !== null) throw new WrongUse(sentenceOf(wrong));
  const saved = await readColumnsFile(folder);
  const bad = saved.problems.find(({ severity }) => severity === 'blocker');
  const isWriting = options.accept === true || (options.set ?? []).length > 0;
  if (bad !== undefined && isWriting) {
    throw new WrongUse(`${sentenceOf(bad)} ${words.nothingWritten}`);
  }
  const found = await foldersProposals(folder, saved.matchings);
  const asked = (options.set ?? []).map((text) => setOf(text, found));
  const accepted = options.accept === true ? found.flatMap(acceptable) : [];
  const chosen = [...accepted.filter((one) => !asked.some((other) => isSame(one, other))), ...asked];
  context.progress.done();
  const sheet = new Sheet(context.look);
  if (chosen.length > 0) {
    await saveColumns(folder, withChosen(saved.matchings, chosen));
    sheet.heading(words.kept);
    for (const { file, header, match } of chosen) sheet.line(`${file}: ${matchShown(header, match)}`, 2, 2);
    sheet.line(design.written(`${folder}/${columnsFile}`), 0, 2);
  }
  if (bad !== undefined) sheet.line(sentenceOf(bad));
  const left = found.map((one) => ({ ...one, proposals: one.proposals.filter((two) => !isChosen(one, two, chosen)) }));
  proposalsShown(sheet, left, saved.matchings, folder);
  await write(context.around.stdout, sheet.text());
  return exitCodes.done;
}

function sentenceOf(problem: Problem): string {
  const { what, todo } = problemSentence(problem);
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

/** What was typed: `roofs.csv:Roof length=length_m:ft`. */
function setOf(text: string, found: readonly TableProposals[]): Chosen {
  const [, file = '', header = '', wanted = ''] = /^([^:]+):(.+)=([^=]*)$/s.exec(text) ?? [];
  const table = tableOfFile(file);
  if (header === '') throw new WrongUse(words.setForm(text));
  const files = found.map((one) => one.file);
  if (table === null) throw new WrongUse(words.unknownFile(file, nearest(file, files) ?? ''));
  const [column = '', how] = wanted.split(':');
  const entry = column === '' || column === '-' ? null : { column, ...(how === undefined ? {} : hows(how)) };
  const read = readColumns({ [file]: { [header]: entry } });
  const [problem] = read.problems;
  if (problem) throw new WrongUse(`${sentenceOf(problem)} ${words.nothingWritten}`);
  const headers = found
    .filter((one) => one.file === file || isRain(file, one.file))
    .flatMap((one) => one.headers.map(bare));
  if (!headers.includes(bare(header)))
    throw new WrongUse(words.unknownHeader(header, file, nearest(header, headers) ?? ''));
  return { file, header: bare(header), match: read.matchings.get(file)!.columns.get(bare(header)) ?? null };
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

function proposalsShown(sheet: Sheet, found: readonly TableProposals[], saved: Matchings, folder: string): void {
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
  if (withHeaders.length === 0) sheet.line(words.allUnderstood);
  else if (found.flatMap(acceptable).length > 0) sheet.line(words.toAccept(folder));
}

function proposalShown(sheet: Sheet, proposal: Proposal, file: string, unitOf: (column: string) => string): void {
  const { header, match, why, fits, looked, open, candidates } = proposal;
  if (match === null) {
    sheet.line(words.noMatch(header), 2, 2);
    return;
  }
  sheet.line(open === null ? matchShown(header, match) : words.notSure(header, candidates), 2, 2);
  const reasons = why.map((one) => words.why[one]);
  const values = looked > 0 ? [words.fits(fits, looked)] : [words.noValues];
  sheet.line([...reasons, ...values].join('; '), 4, 2);
  const unit = unitOf(match.column);
  if (open !== null) sheet.line(words.open[open](file, header, match.column, unit), 4, 2);
  else if (match.unit === null && unitsWritten(unit).length > 0 && !why.includes('unit'))
    sheet.line(words.unitNotSaid(unit), 4, 2);
}
