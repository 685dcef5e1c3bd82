import { isoDay, type PlaceFacts, type WayClosure, type WayFacts } from '@eavewell/engine';
import type { DayCosts } from './dayCosts.ts';
import type { Cells, RolloutRows, RowOf } from './rolloutRows.ts';

/** Places that are filled from another in a circle: none of them has a beginning. */
function checkCircles(rows: RolloutRows): void {
  const byId = new Map(rows.used('places').map((row) => [row.values.placeId!, row]));
  const fills = (id: string): string | null => {
    const row = byId.get(id);
    return row === undefined ? null : rows.linked('places', row, 'filledFrom');
  };
  const seen = new Set<string>();
  for (const start of byId.keys()) {
    const path: string[] = [];
    let at: string | null = start;
    while (at !== null && !seen.has(at)) {
      seen.add(at);
      path.push(at);
      at = fills(at);
    }
    const from = at === null ? -1 : path.indexOf(at);
    if (from < 0) continue;
    const circle = path.slice(from);
    for (const id of circle)
      rows.fault(rows.at('places', byId.get(id)!, 'filledFrom', 'rollout.stores_in_circle', false), { stores: circle });
  }
}

function checkPlaces(rows: RolloutRows): void {
  const places = rows.ids('places', 'placeId');
  const carriers = rows.ids('carriers', 'carrierId');
  const cell = { wholeRow: false };
  const store = { code: 'link.unknown_store', expected: 'a placeId of places.csv', ...cell } as const;
  const carrier = { code: 'link.unknown_carrier', expected: 'a carrierId of carriers.csv', ...cell } as const;
  rows.link(['places', 'filledFrom'], places, store);
  rows.link(['places', 'filledBy'], carriers, carrier);
  checkCircles(rows);
  for (const row of rows.used('places'))
    if (rows.linked('places', row, 'filledFrom') !== null && row.values.filledBy === null)
      rows.remark(rows.at('places', row, 'filledFrom', 'rollout.store_without_carrier', false));
}

const needed = ['from', 'to', 'mode'] as const;

function checkWayRows(rows: RolloutRows): void {
  const gauges = rows.ids('riverLevels', 'riverGaugeId');
  const gauge = {
    code: 'link.unknown_river_gauge',
    expected: 'a riverGaugeId of riverLevels.csv',
    wholeRow: false,
  } as const;
  rows.link(['ways', 'riverGaugeId'], gauges, gauge);
  // Ways of a map alone are drawn as they are.
  const isPlanned = rows.all('crews').length > 0;
  // What could not be read was told where it stands.
  const told = new Set((rows.tables.ways?.problems ?? []).map(({ place }) => `${place.row} ${place.column}`));
  for (const row of rows.used('ways')) {
    const { wayId, from, to } = row.values;
    const missing = needed.filter((column) => row.values[column] === null && !told.has(`${row.row} ${column}`));
    const at = rows.at('ways', row, 'to', 'rollout.way_to_itself');
    if (from !== null && from === to) rows.fault(at, {});
    else if (isPlanned && missing.length > 0)
      rows.remark({ ...at, code: 'rollout.way_unfinished', column: missing[0]!, id: wayId! }, { missing });
  }
}

/** How months and dates go together; null: they do. */
function badlyTimed({ months, from, to }: Cells<'closures'>): 'none' | 'both' | 'half' | null {
  const dates = [from, to].filter((day) => day !== null).length;
  if (months !== null) return dates === 0 ? null : 'both';
  return dates === 2 ? null : dates === 1 ? 'half' : 'none';
}

function checkClosures(rows: RolloutRows): void {
  rows.link(['closures', 'wayId'], rows.ids('ways', 'wayId'), {
    code: 'link.unknown_way',
    expected: 'a wayId of ways.csv',
  });
  const areas = new Set([
    ...rows.all('ways').map(({ values }) => values.weatherArea),
    ...rows.all('sites').map(({ values }) => values.weatherArea),
  ]);
  for (const row of rows.used('closures')) {
    const { values } = row;
    const { closureId, wayId, weatherArea, from, to } = values;
    const how = badlyTimed(values);
    const at = { ...rows.at('closures', row, 'wayId', 'rollout.closure_of_nothing'), id: closureId! };
    if (wayId === null && weatherArea === null) rows.fault(at, {});
    else if (how !== null) rows.fault({ ...at, column: 'months', code: 'rollout.closure_when' }, { how });
    else if (from !== null && to !== null && from > to)
      rows.fault({ ...at, column: 'to', code: 'rollout.dates_turned' }, { from: isoDay(from), to: isoDay(to) });
    else if (weatherArea !== null && !areas.has(weatherArea))
      rows.remark({ ...at, column: 'weatherArea', id: weatherArea, code: 'link.area_unused' }, { likely: '' });
  }
}

/** Tells what is wrong with places, ways and closures. */
export function checkWaysPlanned(rows: RolloutRows): void {
  checkPlaces(rows);
  checkWayRows(rows);
  checkClosures(rows);
}

/** Places, but for those that have the id of a site: which of the two a way leads to nobody can tell. */
export function placesOf(rows: RolloutRows, costs: DayCosts): readonly PlaceFacts[] {
  const own = rows.used('places').filter(({ values }) => !rows.siteIds.has(values.placeId!));
  return own.map((row) => {
    const { placeId, name, kind, latitude_deg, longitude_deg, changeOver_h, maySleep } = row.values;
    return {
      ...{ placeId: placeId!, name: name ?? placeId!, kind, latitude_deg, longitude_deg, changeOver_h },
      maySleep: maySleep ?? true,
      filledFrom: rows.linked('places', row, 'filledFrom'),
      filledBy: rows.linked('places', row, 'filledBy'),
      setUp_amount: costs.of('places', 'setUp_amount', row),
    };
  });
}

/** Ways that lead from somewhere to somewhere. */
export function waysOf(rows: RolloutRows, lengths_km: ReadonlyMap<string, number>): readonly WayFacts[] {
  const isEnd = (id: string | null): id is string => id !== null && rows.ends?.has(id) === true;
  return rows.used('ways').flatMap((row) => {
    const { values } = row;
    const { from, to, mode } = values;
    return isEnd(from) && isEnd(to) && mode !== null ? [wayOf(rows, row, { from, to, mode }, lengths_km)] : [];
  });
}

function wayOf(
  rows: RolloutRows,
  row: RowOf<'ways'>,
  ends: Pick<WayFacts, 'from' | 'to' | 'mode'>,
  lengths_km: ReadonlyMap<string, number>,
): WayFacts {
  const { wayId, name, length_km, there_h, back_h, limit_kg, limit_L, longest_m, fuel_L_per_km, weatherArea } =
    row.values;
  return {
    ...{ wayId: wayId!, name, ...ends, length_km: length_km ?? lengths_km.get(wayId!) ?? null },
    ...{ there_h, back_h, limit_kg, limit_L, longest_m, porters_count: row.values.porters ?? 0 },
    ...{ fuel_L_per_km, weatherArea, riverGaugeId: rows.linked('ways', row, 'riverGaugeId') },
  };
}

/** Closures of something, at some time. */
export function closuresOf(rows: RolloutRows): readonly WayClosure[] {
  return rows.used('closures').map(({ values }) => {
    const { closureId, wayId, weatherArea, months, from, to, slower_factor, reason } = values;
    const isToGuessed = to !== null && values.isToGuessed === true;
    return {
      closureId: closureId!,
      wayId,
      weatherArea,
      months: months ?? [],
      from,
      to,
      isToGuessed,
      slower_factor,
      reason,
    };
  });
}
