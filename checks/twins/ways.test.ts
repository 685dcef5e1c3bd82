import {
  type Carrier,
  type CarrierMode,
  explainedWay,
  type PlaceFacts,
  readIsoDay,
  readyWays,
  travelBetween,
  type WayClosure,
  type WayFacts,
  type WayMode,
  type WayStop,
  type WaysAsked,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SlowCarrier, slowHours } from './slowWays.ts';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 2_000 : 50, seed: 20261126 };
const firstDay = readIsoDay('2026-12-20')!;
const horizon_days = 400;
const placeIds = ['P0', 'P1', 'P2', 'P3', 'P4', 'P5', 'P6'];

const modes: readonly WayMode[] = ['road', 'river', 'foot'];
const carrierOf: readonly { readonly id: string; readonly mode: CarrierMode; readonly way: WayMode }[] = [
  { id: 'truck', mode: 'truck', way: 'road' },
  { id: 'longboat', mode: 'boat', way: 'river' },
  { id: 'canoe', mode: 'boat', way: 'river' },
  { id: 'bearer', mode: 'person', way: 'foot' },
];

const place = (placeId: string, changeOver_h: number | null): PlaceFacts => ({
  ...{ placeId, name: placeId, kind: null, latitude_deg: null, longitude_deg: null, changeOver_h },
  ...{ maySleep: true, filledFrom: null, filledBy: null, setUp_amount: null },
});

const node = fc.constantFrom(...placeIds);
const wayRecord = fc.record({
  from: node,
  to: node,
  mode: fc.constantFrom(...modes),
  length_km: fc.option(fc.integer({ min: 1, max: 60 }), { nil: null, freq: 5 }),
  there_h: fc.option(fc.integer({ min: 1, max: 12 })),
  back_h: fc.option(fc.integer({ min: 1, max: 12 })),
  limit_kg: fc.option(fc.constantFrom(50, 200, 900), { nil: null, freq: 2 }),
  weatherArea: fc.constantFrom('hills', 'delta', null),
});
const closureRecord = fc.record({
  way: fc.option(fc.nat({ max: 11 }), { nil: null, freq: 2 }),
  months: fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { maxLength: 3 }),
  from: fc.option(fc.integer({ min: -20, max: 380 })),
  days: fc.option(fc.integer({ min: 0, max: 90 })),
  slower_factor: fc.option(fc.constantFrom(1, 1.5, 4)),
});
const network = fc.record({
  ways: fc.array(wayRecord, { minLength: 3, maxLength: 12 }),
  closures: fc.array(closureRecord, { maxLength: 4 }),
  changes: fc.array(fc.option(fc.integer({ min: 0, max: 5 })), { minLength: 7, maxLength: 7 }),
  speeds: fc.array(fc.integer({ min: 2, max: 40 }), { minLength: 4, maxLength: 4 }),
  limits: fc.array(fc.constantFrom(100, 400, 2000), { minLength: 4, maxLength: 4 }),
  load_kg: fc.constantFrom(30, 150, 500),
});

function built(drawn: typeof network extends fc.Arbitrary<infer T> ? T : never) {
  const ways = drawn.ways.map(
    (one, index): WayFacts => ({
      ...{ wayId: `W${index}`, name: null, limit_L: null, longest_m: null, porters_count: 0 },
      ...{ fuel_L_per_km: null, riverGaugeId: null },
      ...one,
    }),
  );
  const closures = drawn.closures.map(
    ({ way, months, from, days, slower_factor }, index): WayClosure => ({
      ...{ closureId: `C${index}`, months, slower_factor, reason: null },
      wayId: way === null ? null : `W${way}`,
      weatherArea: way === null ? 'delta' : null,
      from: from === null ? null : firstDay + from,
      to: days === null ? null : firstDay + (from ?? 0) + days,
    }),
  );
  const carriers = carrierOf.map(
    ({ id, mode }, index): Carrier => ({
      ...{ carrierId: id, name: id, mode, limit_kg: drawn.limits[index]!, limit_L: null, longest_m: null },
      ...{
        stowage_fraction: 1,
        carriers_count: 1,
        freeboard_cm: null,
        leastFreeboard_cm: null,
        freeboardEmpty_cm: null,
        length_m: null,
      },
      ...{ limitSetBy: null, limitSetOn: null },
    }),
  );
  const asked: WaysAsked = {
    places: placeIds.map((id, index) => place(id, drawn.changes[index]!)),
    ...{ siteIds: [], ways, closures, riverLevels: [], wayLevels: [], carriers, firstDay, horizon_days },
    travel: carrierOf.map(({ id }, index) => ({
      ...{ carrierId: id, speed_km_per_h: drawn.speeds[index]!, fuel_L_per_km: null, cost_per_day: null },
    })),
    settings: { changeOver_h: 2, porterLoad_kg: 25, openChance_fraction: 0.8 },
  };
  const slow = carrierOf.map(
    ({ id, way }, index): SlowCarrier => ({
      ...{ carrierId: id, mode: way, speed_km_per_h: drawn.speeds[index]! },
      // Two porters carry twice what one does.
      kg: drawn.limits[index]! * (way === 'foot' ? 2 : 1),
    }),
  );
  return { asked, slow };
}

const party = { partyId: 'crew', carrierIds: carrierOf.map(({ id }) => id), porters_count: 2 };

describe('the fastest ways', () => {
  it('are those that trying everything finds, on every day, with what must come there and without', () => {
    let reached = 0;
    let refused = 0;
    fc.assert(
      fc.property(network, (drawn) => {
        const { asked, slow } = built(drawn);
        const ready = readyWays(asked);
        const load = { kg: drawn.load_kg, litres: 0, longest_m: 0 };
        const stops = placeIds.flatMap((id): readonly WayStop[] => [
          { stopId: id, place: id, load: null },
          { stopId: `${id} loaded`, place: id, load },
        ]);
        const { periods, states, travels } = travelBetween(ready, stops, [party]);
        periods.forEach(({ from: first }, period) => {
          const table = travels[0]!.byPeriod[period]!;
          const last = (periods[period + 1]?.from ?? horizon_days) - 1;
          for (const day of new Set([first, Math.floor((first + last) / 2), last])) {
            const any = slowHours(asked, slow, firstDay + day, null);
            const loaded = slowHours(asked, slow, firstDay + day, load);
            stops.forEach((from, a) => {
              stops.forEach((to, b) => {
                const at = a * stops.length + b;
                const key = `${from.place} ${to.place}`;
                const withLoad = to.load === null ? Number.POSITIVE_INFINITY : loaded.get(key)!;
                const expected = withLoad < Number.POSITIVE_INFINITY ? withLoad : any.get(key)!;
                const total = table.landBefore_h[at]! + table.river_h[at]! + table.landAfter_h[at]!;
                if (expected === Number.POSITIVE_INFINITY) expect(total).toBe(expected);
                else expect(total).toBeCloseTo(expected, 4);
                if (expected > 0 && expected < Number.POSITIVE_INFINITY) reached++;
                if (to.load !== null && withLoad > expected) refused++;
              });
            });
          }
          const from = stops[0]!;
          for (const [b, to] of stops.entries()) {
            const told = explainedWay(ready, { from, to, party, state: states[period]! });
            const table_h = [table.landBefore_h[b]!, table.river_h[b]!, table.landAfter_h[b]!];
            if (told.stretches === null) {
              expect(table_h[0]).toBe(Number.POSITIVE_INFINITY);
              continue;
            }
            const sum = told.stretches.reduce((all, one) => all + one.hours_h + one.changeOver_h, 0);
            expect(sum).toBeCloseTo(table_h[0]! + table_h[1]! + table_h[2]!, 4);
            expect(told.landBefore_h + told.river_h + told.landAfter_h).toBeCloseTo(sum, 9);
            const rivers = told.stretches.flatMap(({ mode }, index) => (mode === 'river' ? [index] : []));
            const [one, other] = [rivers[0] ?? told.stretches.length, rivers.at(-1) ?? -1];
            // From the first stretch of river to the last, with the changes between them.
            const within = told.stretches
              .slice(one, other + 1)
              .reduce((all, { hours_h, changeOver_h }, index) => all + hours_h + (index === 0 ? 0 : changeOver_h), 0);
            expect(told.river_h).toBeCloseTo(within, 9);
            const after = told.stretches
              .slice(other + 1)
              .reduce((all, { hours_h, changeOver_h }) => all + hours_h + changeOver_h, 0);
            expect(told.landAfter_h).toBeCloseTo(rivers.length === 0 ? 0 : after, 9);
            const kg = Math.min(Number.POSITIVE_INFINITY, ...told.stretches.map(({ limit }) => limit.kg));
            expect(told.limit.kg).toBe(kg);
            if (to.load !== null && told.carriesLoad) expect(kg).toBeGreaterThanOrEqual(to.load.kg);
            let at = from.place;
            for (const stretch of told.stretches) {
              expect(stretch.from).toBe(at);
              at = stretch.to;
            }
            expect(at).toBe(to.place);
          }
        });
      }),
      settings,
    );
    expect(reached).toBeGreaterThan(5_000);
    expect(refused).toBeGreaterThan(100);
  });
});
