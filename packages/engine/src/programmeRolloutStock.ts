import {
  type DayIndex,
  engineProblem,
  type PartFacts,
  type PlaceFacts,
  type Problem,
  type StockArrival,
} from './kernel/index.ts';
import type { Arrival, Goods } from './programme/rollout/index.ts';
import type { PlanDays } from './programmeRolloutDays.ts';

/** Stock that is asked for: what lies where, what comes when, and how much the sites need. */
export interface StockAsked extends PlanDays {
  readonly today: DayIndex;
  readonly parts: readonly PartFacts[];
  readonly arrivals: readonly StockArrival[];
  /** Places to which goods come themselves, from which crews are served. */
  readonly rootStores: readonly string[];
  /** Where lies what the table of parts says is in the store. */
  readonly mainStore: string;
  /** How many of each part all planned sites need [count]. */
  readonly needed: ReadonlyMap<string, number>;
  /** What trips that left took of each part [count]. */
  readonly taken: ReadonlyMap<string, readonly Taken[]>;
}

/** Goods that a trip took. */
export interface Taken {
  /** Where they came to: behind a forward store the store it is filled from. */
  readonly store: string;
  readonly leftOn: DayIndex;
  readonly quantity_count: number;
}

/** Goods that are short at some time, and what comes to each store. */
export interface StockFound {
  readonly goods: readonly Goods[];
  readonly byStore: ReadonlyMap<string, readonly Arrival[]>;
  readonly problems: readonly Problem[];
}

const sure = { low: 0, likely: 0, high: 0 } as const;

/**
 * Which parts are short at some time, and when does what come to which store? A part of which neither a stock nor an arrival is stated is not counted: nobody says that it is short.
 *
 * @param asked - stock and arrivals [count], days [day], what the sites need [count]
 * @returns parts that some store has not enough of from the first day on, and for each store its stock of them on day 0 and what comes later [count, day]
 * @definition ours: docs/decisions/0329-what-is-planned-and-with-what.md
 */
export function stockOf(asked: StockAsked): StockFound {
  const problems: Problem[] = [];
  const goods: Goods[] = [];
  const byStore = new Map<string, Arrival[]>(asked.rootStores.map((store) => [store, []]));
  const byId = new Map(asked.parts.map((part) => [part.partId, part]));
  const untracked: string[] = [];
  for (const [partId, needed_count] of [...asked.needed].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const coming = asked.arrivals.filter((one) => one.partId === partId);
    const part = byId.get(partId);
    const stock_count = part?.kit.stock_count ?? null;
    if (stock_count === null && coming.length === 0) {
      untracked.push(partId);
      continue;
    }
    const found = asked.rootStores.map((store) => ({
      store,
      arrivals: arrivalsAt(
        store,
        goods.length,
        { part, coming, taken: asked.taken.get(partId) ?? [] },
        asked,
        problems,
      ),
    }));
    const atOnce = (arrivals: readonly Arrival[]) =>
      arrivals.reduce((sum, { day, quantity_count }) => sum + (day === 0 ? quantity_count : 0), 0);
    if (found.every(({ arrivals }) => atOnce(arrivals) >= needed_count)) continue;
    goods.push({ partId });
    for (const { store, arrivals } of found) byStore.get(store)!.push(...arrivals);
    const comes_count = found.flatMap(({ arrivals }) => arrivals).reduce((sum, one) => sum + one.quantity_count, 0);
    if (comes_count < needed_count) {
      const facts = { part: part?.name ?? partId, needed: needed_count, comes: comes_count };
      problems.push(engineProblem('rollout.stock_never_enough', { file: 'arrivals.csv' }, facts));
    }
  }
  for (const arrivals of byStore.values()) arrivals.sort((a, b) => a.day - b.day || a.goods - b.goods);
  if (untracked.length > 0)
    problems.push(engineProblem('rollout.stock_unknown', {}, { parts: untracked, count: untracked.length }));
  return { goods, byStore, problems };
}

interface OfPart {
  readonly part: PartFacts | undefined;
  readonly coming: readonly StockArrival[];
  readonly taken: readonly Taken[];
}

/** What lies there counts as come on day 0, and so does what came since it was counted, less what trips took since. */
function arrivalsAt(
  store: string,
  goods: number,
  { part, coming, taken }: OfPart,
  { firstDay, horizon_days, today, mainStore }: StockAsked,
  problems: Problem[],
): readonly Arrival[] {
  const stock_count = store === mainStore ? (part?.kit.stock_count ?? null) : null;
  const countedOn = part?.kit.stockCountedOn ?? today;
  const isSince = (day: DayIndex) => stock_count === null || day > countedOn;
  const lying = stock_count === null || stock_count <= 0 ? [] : [{ arrivalId: '', goods, quantity_count: stock_count }];
  const own = coming.filter(({ store: to, dueOn }) => to === store && isSince(dueOn));
  const all = [
    ...lying.map((one) => ({ ...one, day: 0, slip_days: sure })),
    ...own.flatMap(({ arrivalId, dueOn, quantity_count, slip_days }): readonly Arrival[] => {
      const day = Math.max(0, dueOn - firstDay);
      if (day >= horizon_days || !(quantity_count > 0)) return [];
      return [{ arrivalId, day, goods, quantity_count, slip_days: dueOn <= today ? sure : slip_days }];
    }),
  ];
  const taken_count = taken.reduce(
    (sum, one) => sum + (one.store === store && isSince(one.leftOn) ? one.quantity_count : 0),
    0,
  );
  const { left, missing_count } = less(all, taken_count);
  if (missing_count > 0) {
    const facts = { part: part?.name ?? '', store, taken: taken_count, there: taken_count - missing_count };
    problems.push(engineProblem('rollout.stock_overdrawn', { file: 'parts.csv' }, facts));
  }
  return left;
}

/** What is there on day 0 less so many; more cannot be taken. */
function less(arrivals: readonly Arrival[], taken_count: number) {
  let missing_count = taken_count;
  const left = arrivals.flatMap((arrival): readonly Arrival[] => {
    const gone_count = arrival.day === 0 ? Math.min(missing_count, arrival.quantity_count) : 0;
    missing_count -= gone_count;
    const quantity_count = arrival.quantity_count - gone_count;
    return quantity_count > 0 ? [{ ...arrival, quantity_count }] : [];
  });
  return { left, missing_count };
}

/**
 * Which store fills which? A store that is filled from one that is not there, from itself, or in a circle is taken as one to which goods come themselves.
 *
 * @param places - all places
 * @returns by the id of a forward store the place it is filled from and the carrier that does it; null: nobody says which
 * @definition ours
 */
export function filledStores(
  places: readonly PlaceFacts[],
): ReadonlyMap<string, { readonly from: string; readonly by: string | null }> {
  const byId = new Map(places.map((place) => [place.placeId, place]));
  const isFilled = ({ placeId, filledFrom }: PlaceFacts) => {
    const seen = new Set([placeId]);
    for (let at = filledFrom; at !== null; at = byId.get(at)!.filledFrom) {
      if (seen.has(at) || !byId.has(at)) return false;
      seen.add(at);
    }
    return filledFrom !== null;
  };
  return new Map(
    places.filter(isFilled).map(({ placeId, filledFrom, filledBy }) => [placeId, { from: filledFrom!, by: filledBy }]),
  );
}
