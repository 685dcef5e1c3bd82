import type { RolloutSheet } from '@eavewell/tables';
import type { RowNow } from '../../../forms/draft.ts';
import { type Stretch, stretchesOf } from './closedWays.ts';

/** What is known of the programme where ways close. */
export interface AroundClosed {
  /** Of ways, places, sites and crews. */
  readonly rows: readonly RowNow[];
  readonly sheet: Pick<RolloutSheet, 'candidates' | 'crews'>;
}

/** What closing some stretches comes to. */
export interface Behind {
  /** Sites still to be fitted to which no other way leads from a base or store. */
  readonly sites: RolloutSheet['candidates'];
  /** Stores that are filled from another, and no other way leads between the two. */
  readonly stores: readonly { readonly store: RowNow; readonly from: RowNow }[];
  /** Trips still to go that go over one of them in those days. */
  readonly trips: readonly { readonly crew: string; readonly leaves: string }[];
  /** Crews that are out at a site that is cut off. */
  readonly crewsOut: readonly string[];
}

/**
 * Which sites, stores, trips and crews lie behind ways that close?
 *
 * @param closed - ids of the ways that cannot be gone
 * @param days - from and to [ISO]; null: not known yet
 * @returns what no other way of the table leads to, by whatever goes there: how heavy a load it takes is for the plan to say
 */
export function behindClosed(
  { rows, sheet }: AroundClosed,
  closed: ReadonlySet<string>,
  { from, to }: { readonly from: string | null; readonly to: string | null },
): Behind {
  const all = stretchesOf(rows);
  const open = all.filter(({ wayId }) => !closed.has(wayId));
  const starts = startsOf(rows);
  const [before, after] = [reachedFrom(all, starts), reachedFrom(open, starts)];
  const hangsOn = new Map(rows.flatMap(({ table, key, cells }) => (table === 'sites' ? [[key, cells['place']]] : [])));
  const isReached = (reached: ReadonlySet<string>, siteId: string) =>
    reached.has(siteId) || reached.has(hangsOn.get(siteId) ?? siteId);
  const isCut = (siteId: string) => isReached(before, siteId) && !isReached(after, siteId);
  const trips = sheet.crews.flatMap((crew) => crew.trips.map((trip) => ({ crew: crew.name, trip })));
  return {
    sites: sheet.candidates.filter(({ siteId }) => isCut(siteId)),
    stores: storesCut(rows, all, open),
    trips: trips
      .flatMap(({ crew, trip }) => {
        const isThen = (to === null || trip.leaves <= to) && (from === null || trip.back >= from);
        const goes = trip.legs.some(({ wayIds }) => wayIds.some((id) => closed.has(id)));
        return trip.state === 'planned' && isThen && goes ? [{ crew, leaves: trip.leaves }] : [];
      })
      .sort((a, b) => a.leaves.localeCompare(b.leaves)),
    crewsOut: trips.flatMap(({ crew, trip }) =>
      trip.state === 'underWay' && trip.stops.some(({ siteId }) => isCut(siteId)) ? [crew] : [],
    ),
  };
}

/** Where crews and goods start from: bases and stores of the crews, and where none is stated all stores. */
function startsOf(rows: readonly RowNow[]): readonly string[] {
  const named = rows.flatMap(({ table, cells }) => (table === 'crews' ? [cells['base'], cells['store']] : []));
  const known = named.filter((place) => place !== undefined);
  if (known.length > 0) return known;
  return rows.flatMap(({ table, key, cells }) => (table === 'places' && cells['kind'] === 'store' ? [key] : []));
}

/** All that stretches lead to, gone in both directions. */
function reachedFrom(stretches: readonly Stretch[], starts: readonly string[]): ReadonlySet<string> {
  const beside = new Map<string, string[]>();
  const lead = (one: string, other: string) => {
    const known = beside.get(one);
    if (known === undefined) beside.set(one, [other]);
    else known.push(other);
  };
  for (const { from, to } of stretches) {
    lead(from, to);
    lead(to, from);
  }
  const reached = new Set(starts);
  for (const at of reached) for (const next of beside.get(at) ?? []) reached.add(next);
  return reached;
}

function storesCut(rows: readonly RowNow[], all: readonly Stretch[], open: readonly Stretch[]): Behind['stores'] {
  const places = new Map(rows.flatMap((row) => (row.table === 'places' ? [[row.key, row] as const] : [])));
  return [...places.values()].flatMap((store) => {
    const from = places.get(store.cells['filledFrom'] ?? '');
    if (from === undefined) return [];
    const isCut = reachedFrom(all, [from.key]).has(store.key) && !reachedFrom(open, [from.key]).has(store.key);
    return isCut ? [{ store, from }] : [];
  });
}
