import { isoDay, readIsoDay } from '@eavewell/engine';
import { type Cells, rowKey } from '@eavewell/records';
import { cellAsText } from './cellAsText.ts';
import type { RainRow } from './programmeTables.ts';

/** A day of a month whose row is not there; an empty reading is a row left empty. */
const noRow = '_';

/** The cell of a month's readings, and of a row that fits into no month. */
const [readings, date, rain_mm, behind] = ['readings', 'date', 'rain_mm', 'behind'] as const;

interface Day {
  readonly day: number;
  readonly text: string;
}

/** A row that is a day's reading and nothing else; null where it must be kept as a row of its own. */
function plainDay(row: RainRow): Day | null {
  const day = readIsoDay(row.date);
  const text = cellAsText(row.rain_mm) ?? '';
  const others = Object.values(row.extra ?? {}).some((value) => cellAsText(value) !== null);
  return day === null || isoDay(day) !== row.date || others || text.includes(';') || text === noRow
    ? null
    : { day, text };
}

/** Which rows go into months: days in their order. One day out of order is set aside, not all behind it. */
function inOrder(days: readonly (Day | null)[]): readonly boolean[] {
  let last = Number.NEGATIVE_INFINITY;
  const next: number[] = new Array(days.length);
  let following = Number.POSITIVE_INFINITY;
  for (let i = days.length - 1; i >= 0; i--) {
    next[i] = following;
    following = days[i]?.day ?? following;
  }
  return days.map((found, i) => {
    if (found === null || found.day <= last) return false;
    if (next[i]! < found.day && next[i]! > last) return false;
    last = found.day;
    return true;
  });
}

const monthOf = (day: number) => isoDay(day).slice(0, 7);
const dayOfMonth = (day: number) => Number(isoDay(day).slice(8));

/**
 * How are a gauge's readings kept as rows of records? A row a month, its readings in one cell from the first of the month on, so
 * that years of days stay few rows and one day more is one row's edit. A row that is no plain day in order stands by itself,
 * with the day behind which it stood.
 *
 * @param gaugeId - the gauge [text]
 * @param rows - the rows of its file
 * @returns rows of the table `rain` by key [text]
 * @law rainRowsOf gives the rows back, in their order
 * @definition ours: docs/decisions/0103-tables-as-records.md
 */
export function rainMonths(gaugeId: string, rows: readonly RainRow[]): ReadonlyMap<string, Cells> {
  const days = rows.map(plainDay);
  const isPlain = inOrder(days);
  const months = new Map<string, string[]>();
  const found = new Map<string, Cells>();
  let last = '';
  let count = 0;
  rows.forEach((row, i) => {
    if (isPlain[i]) {
      const { day, text } = days[i]!;
      const month = months.get(monthOf(day)) ?? [];
      months.set(monthOf(day), month);
      while (month.length < dayOfMonth(day) - 1) month.push(noRow);
      month.push(text);
      [last, count] = [row.date, 0];
      return;
    }
    const cells: Record<string, string> = {};
    const all = { ...row.extra, [date]: row.date, [rain_mm]: row.rain_mm };
    for (const [name, value] of Object.entries(all)) {
      const text = cellAsText(value);
      if (text !== null) cells[`=${name}`] = text;
    }
    if (last !== '') cells[behind] = last;
    found.set(rowKey([gaugeId, `${last}+${++count}`]), cells);
  });
  const ofMonths = [...months].map(([month, texts]): [string, Cells] => {
    // The first of a month alone, left empty, would be an empty cell, which is none.
    return [rowKey([gaugeId, month]), { [readings]: texts.join(';') || `;${noRow}` }];
  });
  return new Map([...ofMonths, ...found]);
}

const monthForm = /^\d{4}-\d{2}$/;

function monthRows(month: string, cell: string): readonly RainRow[] {
  return cell.split(';').flatMap((text, i) => {
    if (text === noRow) return [];
    return [{ date: `${month}-${String(i + 1).padStart(2, '0')}`, rain_mm: text === '' ? null : text }];
  });
}

/** A row that stood by itself, with every column of its file. */
function oddRow(cells: Cells, columns: readonly string[]): RainRow {
  const extra = Object.fromEntries(columns.map((name) => [name, cells[`=${name}`] ?? null]));
  const own = { date: cells[`=${date}`] ?? '', rain_mm: cells[`=${rain_mm}`] ?? null };
  return columns.length > 0 ? { ...own, extra } : own;
}

/**
 * Which rows has a gauge's file, by its rows of records? Months in their order, and behind each day the rows that stood there.
 *
 * @param rows - the gauge's rows of the table `rain`: what follows the gauge in their keys, and their cells
 * @param columns - the columns of the file that are none of ours [text]
 * @returns the rows of the file
 * @definition ours: docs/decisions/0103-tables-as-records.md
 */
export function rainRowsOf(
  rows: Iterable<readonly [rest: string, cells: Cells]>,
  columns: readonly string[],
): readonly RainRow[] {
  const months: [string, string][] = [];
  const odd = new Map<string, RainRow[]>();
  for (const [rest, cells] of rows) {
    if (monthForm.test(rest)) months.push([rest, cells[readings] ?? '']);
    else odd.set(cells[behind] ?? '', [...(odd.get(cells[behind] ?? '') ?? []), oddRow(cells, columns)]);
  }
  months.sort(([a], [b]) => (a < b ? -1 : 1));
  const empty = columns.length > 0 ? { extra: Object.fromEntries(columns.map((name) => [name, null])) } : {};
  const given: RainRow[] = [];
  const putOdd = (day: string) => {
    given.push(...(odd.get(day) ?? []));
    odd.delete(day);
  };
  putOdd('');
  for (const [month, cell] of months) {
    if (cell === '') continue;
    for (const row of monthRows(month, cell)) {
      given.push({ ...row, ...empty });
      putOdd(row.date);
    }
  }
  // The day they stood behind is gone: they come last.
  for (const left of odd.values()) given.push(...left);
  return given;
}
