import type { Place, Problem } from '@eavewell/engine';
import type { Table } from '../contract/table.ts';
import { headerWords, isOtherUnit } from '../matching/headerWords.ts';
import { type FileMatching, matchShown } from '../matching/readColumns.ts';
import { bare, hiddenIn } from './hiddenCharacters.ts';
import { folded, nearest } from './nearest.ts';
import { type CellHabit, shown } from './readCell.ts';
import { tableProblem } from './tableProblems.ts';

/** Where each column of a table stands in a file. */
export interface HeaderReading {
  /** Place of each column that can be used, counted from 0. */
  readonly at: ReadonlyMap<string, number>;
  /** How many cells a row should have. */
  readonly width: number;
  readonly problems: readonly Problem[];
  /** False where a needed column is not there: then no row can be used. */
  readonly usable: boolean;
  /** How the cells of a column are written, where that was accepted for it. */
  readonly written: ReadonlyMap<string, Pick<CellHabit, 'unit' | 'dateOrder'>>;
}

/** So many columns nobody knows are named one by one, and so many headers are listed in a problem; the rest are counted. Ours. */
const namedOneByOne = 20;
const mostListed = 40;
/** Among so many headers is the nearest one sought. Ours. */
const mostSought = 1000;

function neededColumns(table: Table): readonly string[] {
  return Object.keys(table.columns).filter((name) => table.columns[name]!.required);
}

function withoutEmptyEnd(header: readonly string[]): readonly string[] {
  const names = header.map(bare);
  let width = names.length;
  while (width > 0 && names[width - 1] === '') width--;
  return names.slice(0, width);
}

/** One first line being read. */
class HeaderReader {
  readonly problems: Problem[] = [];
  readonly at = new Map<string, number>();
  readonly written = new Map<string, Pick<CellHabit, 'unit' | 'dateOrder'>>();
  private readonly names: readonly string[];
  private readonly known: readonly string[];
  private readonly columns: Table['columns'];
  private readonly place: Place;
  private readonly matching: FileMatching | null;
  private readonly places = new Map<string, number[]>();

  constructor(names: readonly string[], columns: Table['columns'], place: Place, matching: FileMatching | null) {
    this.names = names;
    this.columns = columns;
    this.known = Object.keys(columns);
    this.place = place;
    this.matching = matching;
    names.forEach((name, i) => {
      const places = this.places.get(name);
      if (places) places.push(i);
      else this.places.set(name, [i]);
    });
  }

  /** The headers that stand for a column: its own name, and those accepted for it. */
  private headersOf(column: string): readonly string[] {
    const accepted = [...(this.matching?.columns ?? [])].filter(([, match]) => match?.column === column);
    const headers = accepted.map(([header]) => header);
    const own = this.matching?.columns.has(column) ? [] : [column];
    return [...own, ...headers].filter((header) => this.places.has(header));
  }

  findColumns(): void {
    for (const column of this.known) {
      const headers = this.headersOf(column);
      const places = headers.flatMap((header) => this.places.get(header)!);
      const place = { ...this.place, column };
      if (places.length === 1) this.at.set(column, places[0]!);
      else if (headers.length > 1) {
        const facts = { value: column, headers: headers.map(shown), expected: 'one header' };
        this.problems.push(tableProblem('columns.two_for_one', place, facts));
      } else if (places.length > 1) {
        const facts = { value: column, count: places.length, expected: 'once' };
        this.problems.push(tableProblem('header.column_twice', place, facts));
      }
      const match = this.matching?.columns.get(headers[0] ?? '');
      if (match) this.written.set(column, { unit: match.unit, dateOrder: match.dateOrder });
    }
  }

  private isUnknown(name: string): boolean {
    return name !== '' && !this.known.includes(name) && !this.matching?.columns.has(name);
  }

  /** The unit a header names where it is another than the column's: written under our name its values would be taken for ours. */
  private named(header: string, column: string): { readonly named?: string } {
    return isOtherUnit(header, this.columns[column]!) ? { named: headerWords(header).unit! } : {};
  }

  /** Columns that are not there, each with the header that is likely meant. */
  absentColumns(needed: readonly string[]): void {
    const unknown = [...this.places.keys()].filter((name) => this.isUnknown(name));
    const sought = unknown.slice(0, mostSought);
    const byFold = new Map(unknown.toReversed().map((name) => [folded(name), name]));
    const found = this.names.slice(0, mostListed).map(shown);
    const meant = new Map<string, string>();
    for (const column of this.known) {
      if (this.headersOf(column).length > 0) continue;
      const likely = byFold.get(folded(column)) ?? nearest(column, sought) ?? '';
      if (likely !== '' && !meant.has(likely)) meant.set(likely, column);
      const facts = {
        value: '',
        expected: column,
        likely: shown(likely),
        found,
        hidden: hiddenIn(likely),
        ...this.named(likely, column),
      };
      const place = { ...this.place, column };
      if (needed.includes(column)) this.problems.push(tableProblem('header.column_missing', place, facts));
    }
    this.unknownColumns(unknown, meant, needed);
  }

  private unknownColumns(
    unknown: readonly string[],
    meant: ReadonlyMap<string, string>,
    needed: readonly string[],
  ): void {
    let strange = 0;
    for (const name of unknown) {
      const expected = meant.get(name);
      const place = { ...this.place, column: shown(name) };
      if (expected === undefined) {
        if (strange++ >= namedOneByOne) continue;
        const facts = { value: shown(name), expected: this.known };
        this.problems.push(tableProblem('header.column_unknown', place, facts));
      } else if (!needed.includes(expected)) {
        const facts = { value: shown(name), expected, hidden: hiddenIn(name), ...this.named(name, expected) };
        this.problems.push(tableProblem('header.column_misspelt', place, facts));
      }
    }
    const unnamed = this.places.get('') ?? [];
    for (const i of unnamed.slice(0, namedOneByOne)) {
      const facts = { value: '', number: i + 1, expected: this.known };
      this.problems.push(tableProblem('header.column_unnamed', this.place, facts));
    }
    const count = Math.max(strange - namedOneByOne, 0) + Math.max(unnamed.length - namedOneByOne, 0);
    if (count > 0) this.problems.push(tableProblem('header.columns_more', this.place, { value: '', count }));
  }

  /** What was accepted, and is it still there? */
  accepted(): void {
    const used: string[] = [];
    for (const [header, match] of this.matching?.columns ?? []) {
      if (this.places.has(header)) used.push(matchShown(header, match));
      else if (!this.matching!.isShared) {
        const found = this.names.slice(0, mostListed).map(shown);
        const likely = nearest(header, this.names.slice(0, mostSought)) ?? '';
        const facts = { value: shown(header), likely: shown(likely), found, expected: 'a header of the file' };
        const place = { ...this.place, column: shown(header) };
        this.problems.push(tableProblem('columns.header_absent', place, facts));
      }
    }
    if (used.length === 0) return;
    const facts = { value: used.slice(0, mostListed), count: used.length, expected: '' };
    this.problems.push(tableProblem('columns.used', this.place, facts));
  }

  /** Characters that cannot be seen, taken off the ends of headers. */
  hiddenEnds(header: readonly string[]): void {
    const hidden = header.slice(0, this.names.length).flatMap((text, i) => {
      const points = text.length === this.names[i]!.length ? [] : hiddenIn(text.replace(this.names[i]!, ''));
      return points.length > 0 ? [{ name: this.names[i]!, points }] : [];
    });
    for (const { name, points } of hidden.slice(0, namedOneByOne)) {
      const place = { ...this.place, column: shown(name) };
      this.problems.push(tableProblem('header.hidden_ends', place, { value: shown(name), points, expected: '' }));
    }
  }
}

/**
 * Which column of a file is which of the table's? By its exact name, or by what was accepted for the file: a name that is
 * nearly right is pointed out, never taken, and a name that stands twice is not used at all.
 *
 * @param table - the table
 * @param header - the cells of the first line [text]
 * @param file - the name of the file, for the places of problems [text]
 * @param options - columns without which no row can be used [text], what was accepted for this file, and the row the header stands in
 * @returns where each column stands, how it is written, and whether the rows can be used
 * @problem header.column_missing - a needed column is not there
 * @problem header.column_misspelt - a column that may be left out is there under nearly its name
 * @problem columns.two_for_one - two headers stand for one column; neither is used
 * @problem columns.header_absent - a header that was accepted is no longer there
 * @definition ours: docs/tables.md
 */
export function readHeader(
  table: Table,
  header: readonly string[],
  file: string,
  options: {
    readonly needed?: readonly string[];
    readonly matching?: FileMatching | null;
    readonly row?: number;
  } = {},
): HeaderReading {
  const names = withoutEmptyEnd(header);
  const needed = options.needed ?? neededColumns(table);
  const place = { file, row: options.row ?? 1 };
  const reader = new HeaderReader(names, table.columns, place, options.matching ?? null);
  reader.findColumns();
  reader.absentColumns(needed);
  reader.hiddenEnds(header);
  reader.accepted();
  const { at, written, problems } = reader;
  return { at, width: names.length, problems, usable: needed.every((column) => at.has(column)), written };
}
