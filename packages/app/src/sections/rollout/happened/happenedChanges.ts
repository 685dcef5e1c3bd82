import type { AppMessageKey, MessageValues } from '@eavewell/words/app';
import type { RowChange } from '../../../api/client.ts';
import type { RowNow } from '../../../forms/draft.ts';
import { nextId } from '../../../forms/options.ts';
import { edited } from '../plans/planRows.ts';

/** What stands against an entry, beside its field. */
export interface EntryFault {
  readonly field: string;
  readonly key: AppMessageKey;
  readonly values?: MessageValues;
}

/** What an entry comes to: changes of rows, or why it cannot be. */
export interface Entered {
  readonly changes: readonly RowChange[];
  readonly faults: readonly EntryFault[];
  /** What is asked before it is entered; left out: nothing. */
  readonly asks?: Pick<EntryFault, 'field' | 'key' | 'values'>;
}

/** Cells as the tables write them, by field; null is empty. */
export type EnteredCells = Readonly<Record<string, string | null>>;

const cellOf = (row: RowNow, column: string): string | null => row.cells[column] ?? null;
export const cannot = (...faults: readonly EntryFault[]): Entered => ({ changes: [], faults });
export const come = (changes: readonly (RowChange | null)[]): Entered => ({
  changes: changes.filter((change) => change !== null),
  faults: [],
});
export const needed = (field: string): EntryFault => ({ field, key: 'forms.fault_missing' });

/** The day before or after another [ISO]. */
export function dayBeside(day: string, days: number): string {
  const at = new Date(`${day}T00:00:00Z`);
  at.setUTCDate(at.getUTCDate() + days);
  return at.toISOString().slice(0, 10);
}

/** Days from one day to another [ISO]. */
export const daysTo = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);

/** What happened has happened by today. */
function notYet(field: string, day: string | null, today: string): readonly EntryFault[] {
  return day !== null && day > today ? [{ field, key: 'rolloutHappened.fault_future' }] : [];
}

export function notBefore(field: string, day: string | null, least: string | null): readonly EntryFault[] {
  return day !== null && least !== null && day < least
    ? [{ field, key: 'rolloutHappened.fault_before', values: { day: least } }]
    : [];
}

/** A trip left, on no day before `from`. */
export function leftEntry(
  trip: RowNow,
  { leftOn = null }: EnteredCells,
  today: string,
  from: string | null = null,
): Entered {
  if (leftOn === null) return cannot(needed('leftOn'));
  const faults = [...notYet('leftOn', leftOn, today), ...notBefore('leftOn', leftOn, from)];
  return faults.length > 0 ? cannot(...faults) : come([edited(trip, { leftOn })]);
}

/** A site of a trip: the row of the stop, the row of the site. */
export interface StopRows {
  readonly stop: RowNow;
  readonly site: RowNow;
}

/** The field that asks for the hand-over of a site. */
export const handOverField = (siteId: string): string => `handOver-${siteId}`;

/**
 * A trip is back. Sites whose hand-over is stated are handed over; the others leave the trip, so that they can be planned again.
 *
 * @param trip - its row
 * @param stops - its sites
 * @param cells - leftOn, backOn and a hand-over day for each site
 * @param today - of the sheet [ISO]
 * @param from - it left on no day before this [ISO]
 */
export function backEntry(
  trip: RowNow,
  stops: readonly StopRows[],
  cells: EnteredCells,
  today: string,
  from: string | null = null,
): Entered {
  const { leftOn = null, backOn = null } = cells;
  const faults = [
    ...(leftOn === null ? [needed('leftOn')] : notYet('leftOn', leftOn, today)),
    ...(backOn === null ? [needed('backOn')] : notYet('backOn', backOn, today)),
    ...notBefore('leftOn', leftOn, from),
    ...notBefore('backOn', backOn, leftOn),
    ...stops.flatMap(({ site }) => {
      const field = handOverField(site.key);
      const day = cells[field] ?? null;
      const early = notBefore(field, day, leftOn);
      return early.length > 0 ? early : notYet(field, day, today);
    }),
  ];
  if (faults.length > 0) return cannot(...faults);
  return come([
    edited(trip, { leftOn, backOn }),
    ...stops.map(({ stop, site }): RowChange | null => {
      const day = cells[handOverField(site.key)] ?? null;
      if (day !== null) return edited(site, { handOverDay: day });
      // What was handed over before stays with its trip.
      if (cellOf(site, 'handOverDay') !== null) return null;
      return { kind: 'removed', table: 'planStops', key: stop.key, before: { ...stop.cells } };
    }),
  ]);
}

/** A trip leaves later: no earlier than a day. */
export function laterEntry(trip: RowNow, { notBefore: day = null }: EnteredCells, today: string): Entered {
  if (day === null) return cannot(needed('notBefore'));
  const faults = notBefore('notBefore', day, today);
  return faults.length > 0 ? cannot(...faults) : come([edited(trip, { notBefore: day })]);
}

/** A trip that is under way is back later than was worked out. */
export function backLaterEntry(trip: RowNow, { back = null }: EnteredCells, today: string): Entered {
  if (back === null) return cannot(needed('back'));
  const faults = notBefore('back', back, today);
  return faults.length > 0 ? cannot(...faults) : come([edited(trip, { back })]);
}

/** What was entered of a trip was wrong: each day may be mended, or emptied; it left on no day before `from`. */
export function mendedTrip(
  trip: RowNow,
  { leftOn = null, backOn = null }: EnteredCells,
  today: string,
  from: string | null = null,
): Entered {
  const faults = [
    ...(backOn !== null && leftOn === null ? [needed('leftOn')] : notYet('leftOn', leftOn, today)),
    ...notYet('backOn', backOn, today),
    ...notBefore('leftOn', leftOn, from),
    ...notBefore('backOn', backOn, leftOn),
  ];
  return faults.length > 0 ? cannot(...faults) : come([edited(trip, { leftOn, backOn })]);
}

const withoutEmpty = (cells: EnteredCells): Record<string, string> =>
  Object.fromEntries(Object.entries(cells).flatMap(([column, cell]) => (cell === null ? [] : [[column, cell]])));

export function addedRow(
  table: string,
  idColumn: string,
  cells: EnteredCells,
  rows: readonly RowNow[],
  letters: string,
) {
  // Ids that others gave by their own letters are left to them.
  const isOurs = new RegExp(`^${letters}\\d+$`);
  const ids = rows.filter((row) => row.table === table && isOurs.test(row.key)).map(({ key }) => key);
  const key = nextId(ids, letters);
  return { kind: 'added' as const, table, key, after: { [idColumn]: key, ...withoutEmpty(cells) } };
}

/** A carrier broke, was lent or laid up. */
export function brokeEntry(rows: readonly RowNow[], cells: EnteredCells): Entered {
  const { carrierId = null, count = null, from = null, to = null, reason = null } = cells;
  const carrier = rows.find(({ table, key }) => table === 'carriers' && key === carrierId);
  const there = Number(carrier?.cells['count'] ?? '1');
  const faults = [
    ...(carrierId === null ? [needed('carrierId')] : []),
    ...(from === null ? [needed('from')] : []),
    ...(carrier !== undefined && Number(count ?? '1') > there
      ? [{ field: 'count', key: 'rolloutHappened.fault_more_than', values: { count: there } } as const]
      : []),
    ...notBefore('to', to, from),
  ];
  if (faults.length > 0) return cannot(...faults);
  return come([addedRow('carriersAway', 'awayId', { carrierId, count, from, to, reason }, rows, 'A')]);
}

/** A carrier is there again, or ways that closed together, from a day on: the last day without is the one before, and no guess. */
export function againEntry(rows: readonly RowNow[], { again = null }: EnteredCells): Entered {
  if (again === null) return cannot(needed('again'));
  const [from] = rows.flatMap((row) => cellOf(row, 'from') ?? []).sort((a, b) => (a < b ? 1 : -1));
  const faults = from === undefined ? [] : notBefore('again', again, dayBeside(from, 1));
  if (faults.length > 0) return cannot(...faults);
  return come(rows.map((row) => edited(row, { to: dayBeside(again, -1), ...sureEnd(row) })));
}

const sureEnd = ({ table }: RowNow) => (table === 'closures' ? { isToGuessed: null } : {});

/** As late as the table of arrivals takes [day]. */
const mostLate_days = 3660;

/**
 * Goods came. The arrival is written as it came: its day, how many, and no more lateness; what is still to come of them is an
 * arrival of its own. Where nobody knows when, its day is the one to ask again, and it may be as late again as that is away:
 * so it is asked after. More than were promised is asked about first. What was promised stands in the history of the row.
 *
 * @param cells - cameOn, quantity; of fewer than promised `rest` (`on`, `unknown`, `none`) and restOn
 */
export function cameEntry(arrival: RowNow, rows: readonly RowNow[], cells: EnteredCells, today: string): Entered {
  const { cameOn = null, quantity = null, rest = null, restOn = null } = cells;
  const promised = Number(cellOf(arrival, 'quantity'));
  const missing = quantity === null ? 0 : Number((promised - Number(quantity)).toPrecision(12));
  const isToCome = missing > 0 && (rest === 'on' || rest === 'unknown');
  const least = rest === 'unknown' ? dayBeside(today, 1) : today;
  const faults = [
    ...(cameOn === null ? [needed('cameOn')] : notYet('cameOn', cameOn, today)),
    ...(quantity === null ? [needed('quantity')] : []),
    ...(missing > 0 && rest === null ? [needed('rest')] : []),
    ...(isToCome && restOn === null ? [needed('restOn')] : []),
    ...(isToCome ? notBefore('restOn', restOn, least) : []),
  ];
  if (faults.length > 0 || quantity === null) return cannot(...faults);
  const sure = { slipLow_days: null, slipLikely_days: null, slipHigh_days: null };
  const { store = null, partId = null } = arrival.cells;
  const away_days = Math.min(mostLate_days, daysTo(today, restOn ?? today));
  const slipHigh_days = rest === 'unknown' ? String(away_days) : null;
  const stillToCome = { store, partId, quantity: String(missing), dueOn: restOn, slipHigh_days };
  const entered = come([
    edited(arrival, { dueOn: cameOn, quantity, ...sure }),
    isToCome ? addedRow('arrivals', 'arrivalId', stillToCome, rows, 'AR') : null,
  ]);
  if (missing >= 0) return entered;
  return {
    ...entered,
    asks: { field: 'quantity', key: 'rolloutHappened.asks_more', values: { more: -missing, promised } },
  };
}

/** Goods come later than they were due. */
export function goodsLaterEntry(arrival: RowNow, { dueOn = null }: EnteredCells, today: string): Entered {
  if (dueOn === null) return cannot(needed('dueOn'));
  const faults = notBefore('dueOn', dueOn, today);
  return faults.length > 0 ? cannot(...faults) : come([edited(arrival, { dueOn })]);
}
