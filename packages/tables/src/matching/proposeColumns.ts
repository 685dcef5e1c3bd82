import { unitsWritten } from '@eavewell/engine';
import { allTables } from '../contract/allTables.ts';
import type { Column, Table } from '../contract/table.ts';
import { bare } from '../reading/hiddenCharacters.ts';
import { nearest } from '../reading/nearest.ts';
import { isPercentSeen, readCell } from '../reading/readCell.ts';
import { type DateOrder, dateOrders } from '../reading/readDate.ts';
import { readHeader } from '../reading/readHeader.ts';
import type { RawRow } from '../reading/readRows.ts';
import { tableProblems } from '../reading/tableProblems.ts';
import { headerWords, isOtherUnit, isOutsideOfBore, namesOf } from './headerWords.ts';
import type { ColumnMatch, FileMatching } from './readColumns.ts';

/** Why a header is thought to stand for a column. */
export type Why = 'sameWords' | 'someWords' | 'spelling' | 'unit' | 'ownName';

/** What a person must say before a match can be accepted. */
export type Open = 'gallon' | 'dateOrder' | 'several' | 'values' | 'unit';

/** What is thought of one header that is not understood. */
export interface Proposal {
  readonly header: string;
  /** The match proposed; null where there is none. */
  readonly match: ColumnMatch | null;
  readonly why: readonly Why[];
  /** Of the cells looked at, those that would be read [cell]. */
  readonly fits: number;
  readonly looked: number;
  /** Why it cannot be accepted as it is; null where it can. */
  readonly open: Open | null;
  /** The columns it could be, likeliest first. */
  readonly choices: readonly Choice[];
}

/** A column that a header may stand for. */
export interface Choice {
  readonly column: string;
  /** What must be said with it: the unit or the order of days, or one of several; none where nothing must [text]. */
  readonly hows: readonly string[];
}

/** So many filled cells of a column are looked at, and so large a share must fit [cell, fraction]. Ours. */
const mostLooked = 200;
const leastFits_fraction = 0.8;
/** From this score on the words alone say which column it is, whatever stands under the header. Ours. */
const leastSure = 2.5;
/** Most headers for which a match is sought. Ours. */
const mostHeaders = 200;

interface Candidate {
  readonly column: string;
  readonly score: number;
  readonly why: readonly Why[];
}

/** Words as one, without those that the kind of a column says already: "Handover" is the handOverDay. */
const withoutKind = (words: readonly string[]) => words.filter((word) => word !== 'date').join('');

/** Words of the names of columns: one of them is never another of them misspelt, as a tank is no stand. */
const wordsOfColumns: ReadonlySet<string> = new Set(
  allTables.flatMap(({ columns }) => Object.keys(columns).flatMap((name) => headerWords(name).words)),
);

/** What is measured in feet or litres is no id, no count, and none of a few words. */
const isNeverMeasured = ({ kind, unit }: Column<unknown>) =>
  kind === 'id' || kind === 'choice' || kind === 'yesNo' || (kind === 'whole' && unit === 'count');

function candidateOf(header: string, column: string, of: Column<unknown>): Candidate | null {
  const { kind } = of;
  const [theirs, ours] = [headerWords(header), headerWords(column)];
  if (theirs.words.length === 0) return null;
  if (isNeverMeasured(of) && theirs.unit !== null) return null;
  if (isOutsideOfBore(theirs.words, ours.words)) return null;
  const unit: readonly Why[] = theirs.unit !== null ? ['unit'] : [];
  const [a, b] = [new Set(theirs.words), new Set(ours.words)];
  const both = [...a].filter((word) => b.has(word)).length;
  const isNamed = namesOf(column).some((words) => words.length === a.size && words.every((word) => a.has(word)));
  if (isNamed || (both === a.size && both === b.size)) return { column, score: 3, why: ['sameWords', ...unit] };
  const asOne = withoutKind(ours.words);
  if (kind === 'date' && asOne !== '' && withoutKind(theirs.words) === asOne)
    return { column, score: leastSure, why: ['someWords', ...unit] };
  const near = nearest(theirs.words.join(''), [ours.words.join('')]);
  const isOther = [...a].some((word) => !b.has(word) && wordsOfColumns.has(word));
  if (near !== null && !isOther) return { column, score: 2, why: ['spelling', ...unit] };
  // "Rain gauge" may stand for gaugeId: that it is an id goes without saying.
  const isAllButId = b.has('id') && !a.has('id') && both === b.size - 1;
  const isPart = both > 0 && (both === a.size || both === b.size || isAllButId);
  return isPart ? { column, score: 1 + both / (a.size + b.size), why: ['someWords', ...unit] } : null;
}

/**
 * May a header stand for a column of this table, by its words or its spelling?
 *
 * @param header - the header [text]
 * @param table - the table
 * @returns true or false
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function mayStandFor(header: string, table: Pick<Table, 'columns'>): boolean {
  return Object.entries(table.columns).some(([name, column]) => candidateOf(header, name, column) !== null);
}

interface Fit {
  readonly fits: number;
  readonly looked: number;
}

/** Of the cells, how many would be read as this column, written so? */
function fitOf(cells: readonly string[], column: Column<unknown>, match: ColumnMatch): Fit {
  const numbers = { decimalComma: true };
  const percentSeen = isPercentSeen(match.unit, cells, numbers);
  const habit = { ...numbers, unit: match.unit, dateOrder: match.dateOrder, percentSeen };
  const fits = cells.filter((text) => {
    const { value, fault } = readCell(column, text, habit);
    return value !== null && (fault === null || tableProblems[fault.code] !== 'blocker');
  }).length;
  return { fits, looked: cells.length };
}

const isEnough = ({ fits, looked }: Fit) => fits >= leastFits_fraction * looked;

/** The orders of day and month that would read these cells, the best first; none where they are read already. */
function ordersOf(cells: readonly string[], column: Column<unknown>, match: ColumnMatch): readonly DateOrder[] {
  const asTheyStand = fitOf(cells, column, match);
  if (isEnough(asTheyStand)) return [];
  const fits = dateOrders.map((dateOrder) => ({ dateOrder, ...fitOf(cells, column, { ...match, dateOrder }) }));
  const best = Math.max(...fits.map((one) => one.fits));
  return best <= asTheyStand.fits ? [] : fits.filter((one) => one.fits === best).map((one) => one.dateOrder);
}

/** A match with what its header and its cells say of unit and order; and what they leave open. */
function asWritten(
  header: string,
  columnName: string,
  column: Column<unknown>,
  cells: readonly string[],
): { readonly match: ColumnMatch; readonly open: Open | null; readonly hows: readonly string[] } {
  const match: ColumnMatch = { column: columnName, unit: null, dateOrder: null };
  if (column.kind === 'date') {
    const orders = ordersOf(cells, column, match);
    const open = orders.length > 1 ? 'dateOrder' : null;
    return { match: { ...match, dateOrder: orders[0] ?? null }, open, hows: orders };
  }
  const { unit } = headerWords(header);
  if (unit === null || !isOtherUnit(header, column)) return { match, open: null, hows: [] };
  if (unit === 'gpm' && column.unit === 'L/h') return { match, open: 'gallon', hows: ['usgpm', 'impgpm'] };
  if (unit === 'gal' && column.unit === 'L') return { match, open: 'gallon', hows: ['usgal', 'impgal'] };
  if (unitsWritten(column.unit).includes(unit)) return { match: { ...match, unit }, open: null, hows: [unit] };
  return { match, open: 'unit', hows: [column.unit] };
}

interface Sought {
  readonly name: string;
  readonly cells: readonly string[];
  readonly candidates: readonly Candidate[];
}

/** The candidates, the best first: one whose words are the same before all, then one whose values fit. */
function likeliestFirst(table: Table, { name, cells, candidates }: Sought) {
  const tried = candidates.map((candidate) => {
    const column = table.columns[candidate.column]!;
    const written = asWritten(name, candidate.column, column, cells);
    return { candidate, ...written, fit: fitOf(cells, column, written.match) };
  });
  const isGood = ({ candidate, fit }: (typeof tried)[number]) => Number(candidate.score >= leastSure || isEnough(fit));
  return tried.toSorted(
    (a, b) =>
      isGood(b) - isGood(a) ||
      b.candidate.score - a.candidate.score ||
      Number(isEnough(b.fit)) - Number(isEnough(a.fit)),
  );
}

function sampleOf(rows: readonly RawRow[], at: number): readonly string[] {
  const cells: string[] = [];
  for (const { cells: row } of rows) {
    const text = bare(row[at] ?? '');
    if (text !== '') cells.push(text);
    if (cells.length === mostLooked) break;
  }
  return cells;
}

/**
 * Which columns do the headers stand for that are not understood? Each likely match is proposed with why: its words, its
 * spelling, the unit it names, and how many of its cells would be read so. Nothing is taken before somebody accepts it.
 *
 * @param table - the table
 * @param header - the cells of the first line [text]
 * @param rows - the lines under it
 * @param matching - what was accepted before
 * @returns one proposal for each header that is not understood, and for a column of dates that cannot be read as it stands
 * @law no two proposals that can be accepted name one column
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function proposeColumns(
  table: Table,
  header: readonly string[],
  rows: readonly RawRow[],
  matching: FileMatching | null,
): readonly Proposal[] {
  const { at } = readHeader(table, header, '', { matching });
  const names = header.map(bare);
  const isUnknown = (name: string) =>
    name !== '' && !Object.hasOwn(table.columns, name) && !matching?.columns.has(name);
  const unknown = [...new Set(names)].filter(isUnknown).slice(0, mostHeaders);
  const absent = Object.keys(table.columns).filter((column) => !at.has(column) && !names.includes(column));
  const found = unknown.map((name): Sought => {
    const candidates = absent.flatMap((column) => candidateOf(name, column, table.columns[column]!) ?? []);
    return { name, cells: sampleOf(rows, names.indexOf(name)), candidates };
  });
  const proposals = found.map((one): Proposal => {
    const tried = likeliestFirst(table, one);
    const likely = tried[0];
    if (likely === undefined)
      return { header: one.name, match: null, why: [], fits: 0, looked: 0, open: null, choices: [] };
    const { column, score } = likely.candidate;
    const isWanted = found.some(
      (other) => other !== one && other.candidates.some((theirs) => theirs.column === column && theirs.score >= score),
    );
    // "Drain hole" over words is not its size in mm.
    const isSame = tried.some(
      ({ candidate: other, fit: theirs }) =>
        other.column !== column && other.score === score && (isEnough(theirs) || !isEnough(likely.fit)),
    );
    const doubt = likely.open ?? (isEnough(likely.fit) ? null : 'values');
    const { match, fit, candidate } = likely;
    const choices = tried.map((other) => ({ column: other.candidate.column, hows: other.hows }));
    return {
      header: one.name,
      match,
      why: candidate.why,
      ...fit,
      open: isWanted || isSame ? 'several' : doubt,
      choices,
    };
  });
  return [...proposals, ...datesNotRead(table, names, rows, matching)];
}

/** Columns of dates under their own name whose cells stand in another order. */
function datesNotRead(
  table: Table,
  names: readonly string[],
  rows: readonly RawRow[],
  matching: FileMatching | null,
): readonly Proposal[] {
  return Object.entries(table.columns).flatMap(([name, column]): readonly Proposal[] => {
    if (column.kind !== 'date' || !names.includes(name) || matching?.columns.has(name)) return [];
    const cells = sampleOf(rows, names.indexOf(name));
    const { match, open, hows } = asWritten(name, name, column, cells);
    if (match.dateOrder === null) return [];
    const choices = [{ column: name, hows }];
    return [{ header: name, match, why: ['ownName'], ...fitOf(cells, column, match), open, choices }];
  });
}
