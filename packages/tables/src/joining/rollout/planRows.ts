import {
  type CarrierAway,
  isoDay,
  type PlanFacts,
  type PlanStopFacts,
  type PlanTripFacts,
  tripLeftOn,
} from '@eavewell/engine';
import type { RolloutRows, RowOf } from './rolloutRows.ts';

const tripKey = (planId: string, tripId: string): string => `${planId} ${tripId}`;

/** Of several plans in force the one whose days were worked out last counts; of those worked out at once, or never, the first. */
function checkInForce(rows: RolloutRows): void {
  const inForce = rows.used('plans').filter(({ values }) => values.isInForce === true);
  if (inForce.length < 2) return;
  const timedAt = ({ values }: RowOf<'plans'>) => {
    const instant_ms = values.timedAt === null ? Number.NaN : Date.parse(values.timedAt);
    return Number.isNaN(instant_ms) ? Number.NEGATIVE_INFINITY : instant_ms;
  };
  const newest = inForce.reduce((best, row) => (timedAt(row) > timedAt(best) ? row : best));
  for (const row of inForce) {
    if (row === newest) continue;
    const link = { ...rows.at('plans', row, 'isInForce', 'rollout.plans_in_force', false), id: row.values.planId! };
    rows.fault(link, { used: newest.values.planId! });
  }
}

function checkTrips(rows: RolloutRows): void {
  rows.link(['planTrips', 'planId'], rows.ids('plans', 'planId'), {
    code: 'link.unknown_plan',
    expected: 'a planId of plans.csv',
  });
  rows.link(['planTrips', 'crewId'], rows.ids('crews', 'crewId'), {
    code: 'link.unknown_crew',
    expected: 'a crewId of crews.csv',
  });
  for (const row of rows.used('planTrips')) {
    const { tripId, leaves, leftOn, backOn } = row.values;
    if (backOn === null) continue;
    const at = { ...rows.at('planTrips', row, 'backOn', 'rollout.back_before_left', false), id: tripId! };
    if (leftOn !== null && backOn < leftOn) rows.fault(at, { left: isoDay(leftOn), back: isoDay(backOn) });
    if (leftOn === null)
      rows.remark(
        { ...at, code: 'rollout.back_without_left' },
        { used: isoDay(tripLeftOn({ leftOn, leaves, backOn })!), back: isoDay(backOn) },
      );
  }
}

/** Ids of the trips of each plan: those of the table, refused ones among them. */
function tripsKnown(rows: RolloutRows): ReadonlyMap<string, ReadonlySet<string>> {
  const known = new Map<string, Set<string>>();
  const { planTrips } = rows.tables;
  const all = [
    ...rows.all('planTrips').map(({ values }) => values),
    ...(planTrips?.lost ?? []).map(({ keys }) => keys),
  ];
  for (const { planId, tripId } of all as readonly Readonly<Record<string, string | undefined>>[]) {
    if (planId === undefined || tripId === undefined) continue;
    known.set(planId, (known.get(planId) ?? new Set()).add(tripId));
  }
  return known;
}

function checkStops(rows: RolloutRows): void {
  const plan = { code: 'link.unknown_plan', expected: 'a planId of plans.csv' } as const;
  rows.link(['planStops', 'planId'], rows.ids('plans', 'planId'), plan);
  const sites = rows.tables.sites?.usable === true ? rows.siteIds : null;
  rows.link(['planStops', 'siteId'], sites, { code: 'link.unknown_site', expected: 'a siteId of sites.csv' });
  if (rows.tables.planTrips?.usable === false) return;
  const known = tripsKnown(rows);
  const used = new Set(rows.used('planTrips').map(({ values }) => tripKey(values.planId!, values.tripId!)));
  for (const row of rows.used('planStops')) {
    const { planId, tripId } = row.values;
    const trips = known.get(planId!) ?? new Set<string>();
    const at = rows.at('planStops', row, 'tripId', 'link.unknown_trip');
    if (!trips.has(tripId!)) rows.refuse(at, trips, `a tripId of the plan ${planId!} in planTrips.csv`);
    // Its trip is there and cannot be used: that is told where the trip stands.
    else if (!used.has(tripKey(planId!, tripId!))) rows.leave(at);
  }
}

/** A plan without trips is told; so is a site handed over on a day on which the trip to it was not away. */
function checkWhatHappened(rows: RolloutRows): void {
  const trips = new Map<string, RowOf<'planTrips'>>();
  for (const row of rows.used('planTrips')) trips.set(tripKey(row.values.planId!, row.values.tripId!), row);
  const withTrips = new Set([...trips.values()].map(({ values }) => values.planId!));
  const handedOver = new Map(rows.used('sites').map(({ values }) => [values.siteId!, values.handOverDay]));
  const inForce = new Set<string>();
  for (const row of rows.used('plans')) {
    const { planId, isInForce } = row.values;
    if (isInForce === true && rows.linked('plans', row, 'isInForce') !== null) inForce.add(planId!);
    if (!withTrips.has(planId!)) rows.remark(rows.at('plans', row, 'planId', 'rollout.plan_without_trips'));
  }
  for (const row of rows.used('planStops')) {
    const { planId, tripId, siteId } = row.values;
    const trip = trips.get(tripKey(planId!, tripId!));
    const [day, leftOn] = [handedOver.get(siteId!) ?? null, trip?.values.leftOn ?? null];
    const backOn = trip === undefined ? null : backOf(rows, trip);
    if (!inForce.has(planId!) || day === null || leftOn === null || backOn === null) continue;
    if (day >= leftOn && day <= backOn) continue;
    const at = { ...rows.at('planStops', row, 'siteId', 'rollout.handed_over_outside'), id: isoDay(day) };
    rows.remark(at, { trip: tripId!, left: isoDay(leftOn), back: isoDay(backOn) });
  }
}

function backOf(rows: RolloutRows, row: RowOf<'planTrips'>): number | null {
  return rows.linked('planTrips', row, 'backOn') === null ? null : row.values.backOn;
}

function checkAway(rows: RolloutRows): void {
  rows.link(['carriersAway', 'carrierId'], rows.ids('carriers', 'carrierId'), {
    code: 'link.unknown_carrier',
    expected: 'a carrierId of carriers.csv',
  });
  const there = new Map(rows.used('carriers').map(({ values }) => [values.carrierId!, values.count ?? 1]));
  for (const row of rows.used('carriersAway')) {
    const { awayId, carrierId, count, from, to } = row.values;
    if (to !== null && to < from!) {
      const at = { ...rows.at('carriersAway', row, 'to', 'rollout.dates_turned'), id: awayId! };
      rows.fault(at, { from: isoDay(from!), to: isoDay(to) });
      continue;
    }
    const most = there.get(carrierId!);
    if (most === undefined || (count ?? 1) <= most) continue;
    const at = { ...rows.at('carriersAway', row, 'count', 'rollout.more_away_than_there'), id: String(count ?? 1) };
    rows.remark(at, { carrier: carrierId!, there: most });
  }
}

/** Tells what is wrong with kept plans, and with carriers that are away. */
export function checkPlans(rows: RolloutRows): void {
  checkInForce(rows);
  checkTrips(rows);
  checkStops(rows);
  checkWhatHappened(rows);
  checkAway(rows);
}

/** Kept plans, each with its trips and their stops. */
export function plansOf(rows: RolloutRows): readonly PlanFacts[] {
  const stops = new Map<string, PlanStopFacts[]>();
  for (const { values } of rows.used('planStops')) {
    const { siteId, order, handOver } = values;
    const key = tripKey(values.planId!, values.tripId!);
    const before = stops.get(key);
    const stop = { siteId: siteId!, order: order!, handOver };
    if (before) before.push(stop);
    else stops.set(key, [stop]);
  }
  const trips = new Map<string, PlanTripFacts[]>();
  for (const row of rows.used('planTrips')) {
    const { planId, tripId, crewId, order, notBefore, isLocked, leaves, back, leftOn } = row.values;
    const backOn = backOf(rows, row);
    const before = trips.get(planId!) ?? [];
    before.push({
      ...{ tripId: tripId!, crewId: crewId!, order: order!, notBefore, isLocked: isLocked ?? false, leaves, back },
      ...{ leftOn, backOn },
      stops: stops.get(tripKey(planId!, tripId!)) ?? [],
    });
    trips.set(planId!, before);
  }
  return rows.used('plans').map((row) => {
    const { planId, name, from, isInForce, timedAt, note } = row.values;
    const isFollowed = isInForce === true && rows.linked('plans', row, 'isInForce') !== null;
    return {
      ...{ planId: planId!, name: name ?? planId!, from, isInForce: isFollowed, timedAt, note },
      trips: trips.get(planId!) ?? [],
    };
  });
}

/** Carriers that are away. */
export function carriersAwayOf(rows: RolloutRows): readonly CarrierAway[] {
  return rows.used('carriersAway').map(({ values: { awayId, carrierId, count, from, to, reason } }) => ({
    ...{ awayId: awayId!, carrierId: carrierId!, carriers_count: count ?? 1, from: from!, to, reason },
  }));
}
