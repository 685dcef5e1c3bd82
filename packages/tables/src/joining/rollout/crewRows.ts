import { type CalendarDays, type CarrierTravel, type CrewFacts, isoDay, type StockArrival } from '@eavewell/engine';
import type { DayCosts } from './dayCosts.ts';
import { daysAsked, isTurned, type RolloutRows, type RowOf } from './rolloutRows.ts';

/** Hours of work of a crew that states none [h/day]; common practice, no source. */
const usualWork_h_per_day = 8;

/** Skills as they stand in one cell: ids with semicolons between. */
export function skillsOf(text: string | null): readonly string[] {
  const words = (text ?? '').split(/[;,]/).map((word) => word.trim());
  return [...new Set(words.filter((word) => word !== ''))];
}

function checkCalendars(rows: RolloutRows): void {
  const taken = new Map<string, { readonly from: number; readonly to: number; readonly row: number }[]>();
  for (const row of rows.used('workCalendars')) {
    const { calendarId, from, to } = row.values;
    const at = { ...rows.at('workCalendars', row, 'from', 'rollout.dates_turned'), id: calendarId! };
    if (from! > to!) {
      rows.fault({ ...at, column: 'to' }, { from: isoDay(from!), to: isoDay(to!) });
      continue;
    }
    const before = taken.get(calendarId!) ?? [];
    const other = before.find((one) => one.from <= to! && from! <= one.to);
    if (other !== undefined) rows.fault({ ...at, code: 'rollout.calendar_overlaps' }, { other: other.row });
    else taken.set(calendarId!, [...before, { from: from!, to: to!, row: row.row }]);
  }
}

function checkCrewRows(rows: RolloutRows): void {
  const place = { code: 'link.unknown_place', expected: 'a siteId or placeId' } as const;
  rows.link(['crews', 'base'], rows.ends, place);
  const store = { code: 'link.unknown_store', expected: 'a placeId of places.csv', wholeRow: false } as const;
  rows.link(['crews', 'store'], rows.ids('places', 'placeId'), store);
  const calendar = {
    code: 'link.unknown_work_calendar',
    expected: 'a calendarId of workCalendars.csv',
    wholeRow: false,
  } as const;
  rows.link(['crews', 'calendarId'], rows.ids('workCalendars', 'calendarId'), calendar);
  for (const row of rows.used('crews')) {
    const { crewId, from, to } = row.values;
    if (from === null || to === null || from <= to) continue;
    const at = { ...rows.at('crews', row, 'to', 'rollout.dates_turned'), id: crewId! };
    rows.fault(at, { from: isoDay(from), to: isoDay(to) });
  }
}

function checkCrewCarriers(rows: RolloutRows): void {
  const crew = { code: 'link.unknown_crew', expected: 'a crewId of crews.csv' } as const;
  rows.link(['crewCarriers', 'crewId'], rows.ids('crews', 'crewId'), crew);
  const carrier = { code: 'link.unknown_carrier', expected: 'a carrierId of carriers.csv' } as const;
  rows.link(['crewCarriers', 'carrierId'], rows.ids('carriers', 'carrierId'), carrier);
  if (rows.tables.crewCarriers?.usable === false) return;
  const withCarrier = new Set(rows.used('crewCarriers').map(({ values }) => values.crewId));
  for (const row of rows.used('crews'))
    if (!withCarrier.has(row.values.crewId))
      rows.remark(rows.at('crews', row, 'crewId', 'rollout.crew_without_carrier'));
}

function slipOf({ values }: RowOf<'arrivals'>) {
  const { slipLow_days, slipLikely_days, slipHigh_days } = values;
  return daysAsked(slipLow_days, slipLikely_days, slipHigh_days) ?? { low: 0, likely: 0, high: 0 };
}

function checkArrivals(rows: RolloutRows): void {
  const store = { code: 'link.unknown_store', expected: 'a placeId of places.csv' } as const;
  rows.link(['arrivals', 'store'], rows.ids('places', 'placeId'), store);
  const parts = rows.tables.parts?.usable === true ? rows.ids('parts', 'partId') : null;
  rows.link(['arrivals', 'partId'], parts, { code: 'link.unknown_part', expected: 'a partId of parts.csv' });
  for (const row of rows.used('arrivals')) {
    const slip = slipOf(row);
    if (isTurned(slip))
      rows.fault(rows.at('arrivals', row, 'slipLikely_days', 'rollout.range_turned', false), { ...slip });
  }
}

/** Tells what is wrong with crews, their calendars and carriers, and with goods to come. */
export function checkCrews(rows: RolloutRows): void {
  checkCalendars(rows);
  checkCrewRows(rows);
  checkCrewCarriers(rows);
  checkArrivals(rows);
}

/** Crews with what they travel by. */
export function crewsOf(rows: RolloutRows, costs: DayCosts): readonly CrewFacts[] {
  const carriers = new Map<string, string[]>();
  for (const { values } of rows.used('crewCarriers')) {
    const before = carriers.get(values.crewId!);
    if (before) before.push(values.carrierId!);
    else carriers.set(values.crewId!, [values.carrierId!]);
  }
  return rows.used('crews').map((row) => {
    const { crewId, name, base, people, restDays, mostDaysAway, from, to } = row.values;
    return {
      ...{ crewId: crewId!, name: name ?? crewId!, base: base!, people_count: people! },
      store: rows.linked('crews', row, 'store') ?? base!,
      skills: skillsOf(row.values.skills),
      calendarId: rows.linked('crews', row, 'calendarId'),
      restDays: restDays ?? [],
      work_h_per_day: row.values.work_h_per_day ?? usualWork_h_per_day,
      ...{ mostDaysAway, maySleepAtSites: row.values.maySleepAtSites ?? true, from, to },
      pace_factor: row.values.pace_factor ?? 1,
      turnaround_days: row.values.turnaround_days ?? 0,
      cost_per_day: costs.of('crews', 'cost_per_day', row),
      porters_count: row.values.porters ?? 0,
      carrierIds: carriers.get(crewId!) ?? [],
    };
  });
}

/** Calendars, period by period. */
export function calendarsOf(rows: RolloutRows): readonly CalendarDays[] {
  return rows.used('workCalendars').map(({ values: { calendarId, from, to, works, reason } }) => ({
    ...{ calendarId: calendarId!, from: from!, to: to!, works: works!, reason },
  }));
}

/** Speed, fuel and cost of carriers. */
export function travelOf(rows: RolloutRows, costs: DayCosts): readonly CarrierTravel[] {
  return rows.used('carriers').map((row) => {
    const { carrierId, speed_km_per_h, fuel_L_per_km } = row.values;
    return {
      carrierId: carrierId!,
      speed_km_per_h,
      fuel_L_per_km,
      cost_per_day: costs.of('carriers', 'cost_per_day', row),
    };
  });
}

/** Goods to come; those whose range of days is turned come when they are due. */
export function arrivalsOf(rows: RolloutRows): readonly StockArrival[] {
  return rows.used('arrivals').map((row) => {
    const { arrivalId, store, partId, quantity, dueOn } = row.values;
    const slip = slipOf(row);
    return {
      ...{ arrivalId: arrivalId!, store: store!, partId: partId!, quantity_count: quantity!, dueOn: dueOn! },
      slip_days: isTurned(slip) ? { low: 0, likely: 0, high: 0 } : slip,
    };
  });
}
