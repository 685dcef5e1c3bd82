import type { Cells, RowChange } from './changeRecord.ts';

/** Rows of a few tables, by table and key. */
export type RowsByTable = ReadonlyMap<string, ReadonlyMap<string, Cells>>;

/** A trip as it stood: of which crew, and its place among the trips of that crew in its plan, from 1 [count]. */
export interface TripAt {
  readonly crewId: string;
  readonly nth: number;
}

type Day = string | null;

/** One thing that a record did to a plan. Days are ISO; null: there is none. */
export type PlanMove =
  | {
      readonly kind: 'kept' | 'removed';
      readonly name: string;
      readonly trips_count: number;
      readonly sites_count: number;
    }
  | { readonly kind: 'inForce' | 'notInForce' | 'timed'; readonly name: string }
  | { readonly kind: 'named'; readonly before: string; readonly after: string }
  | { readonly kind: 'siteWent'; readonly siteId: string; readonly from: TripAt | null; readonly to: TripAt | null }
  | { readonly kind: 'sitePlace'; readonly siteId: string; readonly trip: TripAt; readonly nth: number }
  | { readonly kind: 'handedOver'; readonly siteId: string; readonly day: Day }
  | { readonly kind: 'tripWent'; readonly from: TripAt; readonly to: TripAt }
  | { readonly kind: 'tripPlace'; readonly from: TripAt; readonly to: TripAt }
  | { readonly kind: 'left' | 'cameBack' | 'notBefore'; readonly trip: TripAt; readonly day: Day }
  | { readonly kind: 'locked'; readonly trip: TripAt; readonly isLocked: boolean }
  | { readonly kind: 'leaves' | 'back'; readonly trip: TripAt; readonly before: Day; readonly after: Day };

/** What a record did to plans, and what else it changed. */
export interface PlanRecord {
  /** What was done first; days that follow from it are not told. */
  readonly moves: readonly PlanMove[];
  /** The plan of all moves, where there are others that could be meant; else null. */
  readonly ofPlan: string | null;
  /** Rows of other tables that are told by no move [count]. */
  readonly others_count: number;
}

/** Tables that plans are kept in. */
export const tablesOfPlans = ['plans', 'planTrips', 'planStops'] as const;
const isOfPlans = (table: string): boolean => (tablesOfPlans as readonly string[]).includes(table);

/** Does a record change anything of a plan? */
export const touchesPlans = (changes: readonly RowChange[]): boolean => changes.some(({ table }) => isOfPlans(table));

/**
 * Takes changes of plans back from rows: what is left is as it was before them.
 *
 * @param rows - of the tables of plans as they stand after the changes; they are changed in place
 * @param changes - that were made; those of other tables are left
 * @definition ours: docs/decisions/0388-records-of-plans-tell-what-moved.md
 */
export function takePlanRowsBack(rows: ReadonlyMap<string, Map<string, Cells>>, changes: readonly RowChange[]): void {
  for (const change of [...changes].reverse()) {
    const own = isOfPlans(change.table) ? rows.get(change.table) : undefined;
    if (own === undefined) continue;
    if (change.kind === 'added') own.delete(change.key);
    else if (change.kind === 'removed') own.set(change.key, change.before);
    else {
      const cells = Object.entries({ ...own.get(change.key), ...change.before });
      own.set(change.key, Object.fromEntries(cells.filter((one): one is [string, string] => one[1] !== null)));
    }
  }
}

/**
 * What did a record do to plans: which site or trip went from where to where, which plan was kept or is in force?
 *
 * @param changes - of the record
 * @param after - rows of `plans`, `planTrips` and `planStops` as they stood after it
 * @returns its moves, the first cause first; null: it changed nothing of a plan, or nothing that has a name here
 * @law days that follow from a move are told only where nothing else was done
 * @definition ours: docs/decisions/0388-records-of-plans-tell-what-moved.md
 */
export function planMoves(changes: readonly RowChange[], after: RowsByTable): PlanRecord | null {
  if (!touchesPlans(changes)) return null;
  const rowsBefore = new Map([...after].map(([table, rows]) => [table, new Map(rows)]));
  takePlanRowsBack(rowsBefore, changes);
  const state: States = { before: new PlanState(rowsBefore), after: new PlanState(after) };
  const plans = plansChanged(changes, state);
  const whole = new Set(plans.filter(({ isWhole }) => isWhole).map(({ planId }) => planId));
  const own = changes.filter(({ table, key }) => isOfPlans(table) && !whole.has(planOf(key)));
  const stops = stopsMoved(own, state);
  const trips = tripsMoved(own, state);
  const others = changes.filter(({ table }) => !isOfPlans(table));
  const handed = others.flatMap(handedOver);
  const causes = [...plans.flatMap(({ moves }) => moves), ...trips.causes, ...stops, ...handed];
  const moves = causes.length > 0 ? causes : [...plans.flatMap(({ timed }) => timed), ...trips.days];
  if (moves.length === 0) return null;
  return { moves, ofPlan: planMeant(own, state), others_count: others.length - handed.length };
}

interface States {
  readonly before: PlanState;
  readonly after: PlanState;
}

/** Rows of plans at one moment, with the place each trip has in its crew and each stop in its trip: counted once. */
class PlanState {
  private tripNths: ReadonlyMap<string, number> | null = null;
  private stopNths: ReadonlyMap<string, number> | null = null;

  constructor(private readonly rows: RowsByTable) {}

  get plans_count(): number {
    return this.rows.get('plans')?.size ?? 0;
  }

  row(table: string, key: string): Cells | undefined {
    return this.rows.get(table)?.get(key);
  }

  /** A trip by its key; null: it is not there. */
  trip(key: string): TripAt | null {
    const row = this.row('planTrips', key);
    if (row === undefined) return null;
    this.tripNths ??= placesIn(this.rows.get('planTrips'), 'crewId');
    return { crewId: cellOf(row, 'crewId') ?? '', nth: this.tripNths.get(key) ?? 0 };
  }

  /** The place of a stop in its trip, from 1. */
  stopNth(key: string): number {
    this.stopNths ??= placesIn(this.rows.get('planStops'), 'tripId');
    return this.stopNths.get(key) ?? 0;
  }
}

/** The place of each row, from 1, among those of its plan that have the same in one column, by their order. */
function placesIn(rows: ReadonlyMap<string, Cells> | undefined, column: string): ReadonlyMap<string, number> {
  const order = (cells: Cells) => Number(cells['order'] ?? Number.NaN);
  const sorted = [...(rows ?? [])].sort((a, b) => order(a[1]) - order(b[1]) || (a[0] < b[0] ? -1 : 1));
  const counts = new Map<string, number>();
  return new Map(
    sorted.map(([key, cells]) => {
      const list = `${planOf(key)}/${cells[column]}`;
      const nth = (counts.get(list) ?? 0) + 1;
      counts.set(list, nth);
      return [key, nth];
    }),
  );
}

/** The plan a row is of: the first of its key. */
const planOf = (key: string): string => key.split('/')[0]!;

const cellOf = (row: Cells | undefined, column: string): string | null => row?.[column] ?? null;

/** The plan that is changed, where others stand beside it. */
function planMeant(own: readonly RowChange[], { before, after }: States): string | null {
  const planIds = new Set(own.filter(({ table }) => table !== 'plans').map(({ key }) => planOf(key)));
  const [planId] = planIds;
  if (planIds.size !== 1 || planId === undefined || after.plans_count < 2) return null;
  return nameOf(after.row('plans', planId) ?? before.row('plans', planId), planId);
}

const nameOf = (row: Cells | undefined, planId: string): string => cellOf(row, 'name') ?? planId;

interface PlanChanged {
  readonly planId: string;
  /** It came or went as a whole. */
  readonly isWhole: boolean;
  readonly moves: readonly PlanMove[];
  /** Its days were worked out anew: told where nothing else is. */
  readonly timed: readonly PlanMove[];
}

function plansChanged(changes: readonly RowChange[], { before, after }: States): readonly PlanChanged[] {
  const own = changes.filter(({ table }) => table === 'plans');
  const count = (table: string, planId: string) =>
    changes.filter((change) => change.table === table && change.key.startsWith(`${planId}/`)).length;
  const comesIntoForce = own.some(({ key }) => cellOf(after.row('plans', key), 'isInForce') === 'yes');
  return own.map(({ kind, key }): PlanChanged => {
    const [was, is] = [before.row('plans', key), after.row('plans', key)];
    const name = nameOf(is ?? was, key);
    if (kind !== 'edited') {
      const counts = { trips_count: count('planTrips', key), sites_count: count('planStops', key) };
      const move: PlanMove = { kind: kind === 'added' ? 'kept' : 'removed', name, ...counts };
      return { planId: key, isWhole: true, moves: [move], timed: [] };
    }
    const wasFollowed = cellOf(was, 'isInForce') === 'yes';
    const isFollowed = cellOf(is, 'isInForce') === 'yes';
    const moves: PlanMove[] = [];
    if (cellOf(was, 'name') !== cellOf(is, 'name'))
      moves.push({ kind: 'named', before: nameOf(was, key), after: nameOf(is, key) });
    if (isFollowed && !wasFollowed) moves.push({ kind: 'inForce', name });
    if (wasFollowed && !isFollowed && !comesIntoForce) moves.push({ kind: 'notInForce', name });
    const isTimed = cellOf(was, 'timedAt') !== cellOf(is, 'timedAt');
    return { planId: key, isWhole: false, moves, timed: isTimed ? [{ kind: 'timed', name }] : [] };
  });
}

function stopsMoved(own: readonly RowChange[], { before, after }: States): readonly PlanMove[] {
  const went: PlanMove[] = [];
  const places: { readonly tripKey: string; readonly move: PlanMove }[] = [];
  const touched = new Set<string>();
  for (const { key } of own.filter(({ table }) => table === 'planStops')) {
    const [was, is] = [before.row('planStops', key), after.row('planStops', key)];
    const [planId = '', siteId = ''] = key.split('/');
    const [from, to] = [tripKeyOf(planId, was), tripKeyOf(planId, is)];
    if (from !== to) {
      const tripIn = (state: PlanState, at: string | null) => (at === null ? null : state.trip(at));
      went.push({ kind: 'siteWent', siteId, from: tripIn(before, from), to: tripIn(after, to) });
      for (const at of [from, to]) if (at !== null) touched.add(at);
    } else if (to !== null && cellOf(was, 'order') !== cellOf(is, 'order')) {
      const trip = after.trip(to);
      const nth = after.stopNth(key);
      if (trip !== null && nth !== before.stopNth(key))
        places.push({ tripKey: to, move: { kind: 'sitePlace', siteId, trip, nth } });
    }
  }
  return [...went, ...places.filter(({ tripKey }) => !touched.has(tripKey)).map(({ move }) => move)];
}

/** The key of the trip a stop is in; null: in none. */
function tripKeyOf(planId: string, stop: Cells | undefined): string | null {
  const tripId = cellOf(stop, 'tripId');
  return tripId === null ? null : `${planId}/${tripId}`;
}

function tripsMoved(own: readonly RowChange[], { before, after }: States) {
  const went: PlanMove[] = [];
  const places: (PlanMove & { readonly kind: 'tripPlace' })[] = [];
  const entered: PlanMove[] = [];
  const days: PlanMove[] = [];
  const crews = new Set<string>();
  for (const { key, kind } of own.filter(({ table }) => table === 'planTrips')) {
    const [from, to] = [before.trip(key), after.trip(key)];
    const [was, is] = [before.row('planTrips', key), after.row('planTrips', key)];
    if (kind !== 'edited' || from === null || to === null) {
      for (const trip of [from, to]) if (trip !== null) crews.add(trip.crewId);
      continue;
    }
    if (from.crewId !== to.crewId) {
      went.push({ kind: 'tripWent', from, to });
      crews.add(from.crewId).add(to.crewId);
      continue;
    }
    if (cellOf(was, 'order') !== cellOf(is, 'order') && from.nth !== to.nth)
      places.push({ kind: 'tripPlace', from, to });
    entered.push(...tripEntered(was, is, to));
    days.push(...tripDays(was, is, to));
  }
  const placed = places.filter(({ to }) => !crews.has(to.crewId));
  return { causes: [...went, ...placed, ...entered], days };
}

/** What somebody said of a trip: that it left, is back, waits, stays. */
function tripEntered(was: Cells | undefined, is: Cells | undefined, trip: TripAt): readonly PlanMove[] {
  const day = (column: string) => cellOf(is, column);
  const isOther = (column: string) => cellOf(was, column) !== day(column);
  const moves: PlanMove[] = [];
  if (isOther('backOn')) moves.push({ kind: 'cameBack', trip, day: day('backOn') });
  else if (isOther('leftOn')) moves.push({ kind: 'left', trip, day: day('leftOn') });
  else if (isOther('back') && day('leftOn') !== null)
    moves.push({ kind: 'back', trip, before: cellOf(was, 'back'), after: day('back') });
  // The day it leaves now tells more than the day it waits for.
  if (isOther('notBefore')) {
    const leaves = { trip, before: cellOf(was, 'leaves'), after: day('leaves') };
    moves.push(isOther('leaves') ? { kind: 'leaves', ...leaves } : { kind: 'notBefore', trip, day: day('notBefore') });
  }
  if (isOther('isLocked')) moves.push({ kind: 'locked', trip, isLocked: day('isLocked') === 'yes' });
  return moves;
}

function tripDays(was: Cells | undefined, is: Cells | undefined, trip: TripAt): readonly PlanMove[] {
  const [before, after] = [cellOf(was, 'leaves'), cellOf(is, 'leaves')];
  return before === after ? [] : [{ kind: 'leaves', trip, before, after }];
}

/** A hand-over that was entered with what became of its trip. */
function handedOver(change: RowChange): readonly PlanMove[] {
  if (change.table !== 'sites' || change.kind !== 'edited') return [];
  const columns = Object.keys(change.after);
  if (columns.length !== 1 || columns[0] !== 'handOverDay') return [];
  return [{ kind: 'handedOver', siteId: change.key, day: change.after['handOverDay'] ?? null }];
}
