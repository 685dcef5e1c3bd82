import { isoDay, readIsoDay } from '@eavewell/engine';
import type { DemoTrip, DraftProgramme, LaterTable, Row } from './draft.ts';
import { tripsBeside, tripsInForce } from './rolloutPlansFound.ts';

/** The rollout began so many days before the day on which somebody looks at it, and up to six more: it begins on a Monday. */
const begun_days = 19;

/** Trips that should have left by then: of each crew so many are back, and the next is out, or nobody has said that it left. */
const happened: Readonly<Record<string, { readonly done: number; readonly next: 'underWay' | 'overdue' }>> = {
  north: { done: 1, next: 'underWay' },
  shed: { done: 2, next: 'overdue' },
};

/** Columns of the rollout that hold a day. */
const dayColumns: Partial<Record<LaterTable | 'sites', readonly string[]>> = {
  closures: ['from', 'to'],
  crews: ['from', 'to'],
  workCalendars: ['from', 'to'],
  arrivals: ['dueOn'],
  sites: ['readyFrom', 'finishBy', 'agreedOn'],
};

const later = (day: string, days: number): string => isoDay(readIsoDay(day)! + days);

/**
 * The demo as it stands on a day: its rollout began some weeks before, of the plan in force trips are back, one is under way, one should have left, a
 * tractor is broken, and a second plan is kept beside.
 *
 * The plans are of the 60 sites of seed 1 alone; every other demo is left as it is.
 *
 * @param draft - the demo, which stands still in time
 * @param rolloutStart - the first day of its rollout [ISO day]
 * @param today - the day on which it is looked at [ISO day]
 * @returns the demo with its rollout moved by whole weeks
 * @definition ours: docs/decisions/0350-the-demo-moves-with-the-day.md
 */
export function asOfDay(draft: DraftProgramme, rolloutStart: string, today: string): DraftProgramme {
  const apart_days = readIsoDay(today)! - begun_days - readIsoDay(rolloutStart)!;
  const moved_days = Math.floor(apart_days / 7) * 7;
  const start = later(rolloutStart, moved_days);
  const moved_months = movedMonths(rolloutStart, start);
  const moved = Object.entries(dayColumns).map(([name, columns]) => {
    const rows = draft.tables[name as keyof typeof dayColumns] ?? [];
    const cellsOf = (row: Row) => ({ ...movedCells(row, columns, moved_days), ...movedSeasons(row, moved_months) });
    return [name, rows.map((row) => ({ ...row, ...cellsOf(row) }))];
  });
  const tables = { ...draft.tables, ...(Object.fromEntries(moved) as Pick<DraftProgramme['tables'], 'sites'>) };
  const { treatmentUnits = [] } = tables;
  const handedOver = handedOverDays(start);
  return {
    ...draft,
    settings: { ...draft.settings, rolloutStart: start },
    tables: {
      ...tables,
      sites: tables.sites.map((row) => ({ ...row, ...dayOf(handedOver, row, 'handOverDay') })),
      treatmentUnits: treatmentUnits.map((row) => ({ ...row, ...dayOf(handedOver, row, 'installedOn') })),
      ...planRows(start, today),
    },
  };
}

/** By so much a season may begin later than for the day the plans were found for: months begin where they begin. */
const seasons_days = 16;

/** Columns of the rollout that hold months: its seasons go with it, or its plans would meet other ones than those they were found for. */
const monthColumns = ['months', 'workMonths'];

/** By how many months the seasons move: to the month that begins next to the first day, as the demo's own begins next to a January. */
function movedMonths(rolloutStart: string, start: string): number {
  const intoMonth_days = Number(rolloutStart.slice(8)) - 1;
  const nearest = later(start, 15 - intoMonth_days);
  return Number(nearest.slice(5, 7)) - Number(rolloutStart.slice(5, 7));
}

/** Months such as `4 to 8;12`, so many months later. */
function monthsLater(text: string, months: number): string {
  const each = text.split(';').flatMap((part) => {
    const [first = 1, last = first] = part.split(' to ').map(Number);
    return Array.from({ length: last - first + 1 }, (_, at) => first + at);
  });
  return each
    .map((month) => ((((month - 1 + months) % 12) + 12) % 12) + 1)
    .sort((a, b) => a - b)
    .join(';');
}

function movedSeasons(row: Row, months: number): Row {
  if (months === 0) return {};
  const cells = monthColumns.flatMap((column): readonly (readonly [string, string])[] => {
    const text = row[column];
    return typeof text === 'string' && /^[\d to;]+$/.test(text) ? [[column, monthsLater(text, months)]] : [];
  });
  return Object.fromEntries(cells);
}

function movedCells(row: Row, columns: readonly string[], days: number): Row {
  const cells = columns.flatMap((column): readonly (readonly [string, string])[] => {
    const day = row[column];
    return typeof day === 'string' && readIsoDay(day) !== null ? [[column, later(day, days)]] : [];
  });
  return Object.fromEntries(cells);
}

function dayOf(days: ReadonlyMap<string, string>, row: Row, column: string): Row {
  const day = days.get(String(row['siteId']));
  return day === undefined ? {} : { [column]: day };
}

type State = 'done' | 'underWay' | 'overdue' | 'planned';

/** Trips of a plan with their places among those of their crew. */
function numbered(trips: readonly DemoTrip[], isInForce: boolean) {
  const counts = new Map<string, number>();
  return trips.map((trip, at) => {
    const order = (counts.get(trip.crewId) ?? 0) + 1;
    counts.set(trip.crewId, order);
    const { done, next } = happened[trip.crewId] ?? { done: 0, next: 'planned' };
    const state: State = !isInForce || order > done + 1 ? 'planned' : order <= done ? 'done' : next;
    return { ...trip, tripId: `T${String(at + 1).padStart(3, '0')}`, order, state };
  });
}

/** Sites of trips that are back, with the days on which they were handed over. */
function handedOverDays(start: string): ReadonlyMap<string, string> {
  return new Map(
    numbered(tripsInForce, true).flatMap(({ state, sites, handOvers }) =>
      state === 'done' ? sites.map((siteId, at) => [siteId, later(start, handOvers[at]!)] as const) : [],
    ),
  );
}

/** Days of trips that left, or should have, are kept; those of the others are worked out when somebody looks. */
function planRows(start: string, today: string): Partial<Record<LaterTable, readonly Row[]>> {
  const plans = [
    { planId: 'first', trips: numbered(tripsInForce, true) },
    { planId: 'noShed', trips: numbered(tripsBeside, false) },
  ];
  return {
    plans: [
      { planId: 'first', name: 'All crews', from: start, isInForce: true, note: null },
      {
        ...{ planId: 'noShed', name: 'Without the crew of the shed', from: today, isInForce: null },
        note: 'What if it went home in two weeks?',
      },
    ],
    planTrips: plans.flatMap(({ planId, trips }) =>
      trips.map(({ tripId, crewId, order, state, notBefore, leaves, back }) => {
        const isKept = state !== 'planned';
        const hasLeft = state === 'done' || state === 'underWay';
        return {
          ...{ planId, tripId, crewId, order },
          notBefore: notBefore === null ? null : later(start, notBefore + seasons_days),
          ...{ leaves: isKept ? later(start, leaves) : null, back: isKept ? later(start, back) : null },
          leftOn: hasLeft ? later(start, leaves) : null,
          backOn: state === 'done' ? later(start, back) : null,
        };
      }),
    ),
    planStops: plans.flatMap(({ planId, trips }) =>
      trips.flatMap(({ tripId, sites, handOvers, state }) =>
        sites.map((siteId, at) => ({
          ...{ planId, siteId, tripId, order: at + 1 },
          handOver: state === 'planned' ? null : later(start, handOvers[at]!),
        })),
      ),
    ),
    carriersAway: [
      {
        ...{ awayId: 'gearbox', carrierId: 'tractor', count: 1, from: later(start, 16), to: later(start, 40) },
        reason: 'gearbox',
      },
    ],
  };
}
