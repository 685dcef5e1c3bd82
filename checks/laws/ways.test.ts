import { type PlaceFacts, readyWays, travelBetween, type WayFacts, type WaysAsked } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 2_000 : 120, seed: 20261126 };
const horizon_days = 365;
const firstDay = 20_820;
const ids = ['A', 'B', 'C', 'D', 'E', 'F'];

const place = (placeId: string): PlaceFacts => ({
  ...{ placeId, name: placeId, kind: null, latitude_deg: null, longitude_deg: null, changeOver_h: 1 },
  ...{ maySleep: true, filledFrom: null, filledBy: null, setUp_amount: null },
});
const ways = fc.array(
  fc.record({
    from: fc.constantFrom(...ids),
    to: fc.constantFrom(...ids),
    mode: fc.constantFrom('road', 'river', 'foot'),
    there_h: fc.integer({ min: 1, max: 20 }),
    back_h: fc.option(fc.integer({ min: 1, max: 20 })),
  }),
  { minLength: 4, maxLength: 14 },
);
const closures = fc.array(
  fc.record({
    way: fc.nat({ max: 13 }),
    months: fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 4 }),
    slower_factor: fc.option(fc.constantFrom(1.5, 3)),
  }),
  { maxLength: 5 },
);

type Drawn = typeof ways extends fc.Arbitrary<infer T> ? T : never;
type Shut = typeof closures extends fc.Arbitrary<infer T> ? T : never;

const asked = (drawn: Drawn, shut: Shut): WaysAsked => ({
  places: ids.map(place),
  siteIds: [],
  ways: drawn.map(
    (one, index): WayFacts => ({
      ...{ wayId: `W${index}`, name: null, length_km: null, limit_kg: null, limit_L: null, longest_m: null },
      ...{ porters_count: 0, fuel_L_per_km: null, weatherArea: null, riverGaugeId: null },
      ...one,
      mode: one.mode as WayFacts['mode'],
    }),
  ),
  closures: shut.map(({ way, ...rest }, index) => ({
    ...{ closureId: `C${index}`, wayId: `W${way}`, weatherArea: null, from: null, to: null, reason: null },
    ...rest,
  })),
  ...{ riverLevels: [], wayLevels: [], travel: [], firstDay, horizon_days },
  carriers: (['truck', 'boat'] as const).map((mode) => ({
    ...{ carrierId: mode, name: mode, mode, limit_kg: 100, limit_L: null, longest_m: null, stowage_fraction: 1 },
    ...{
      carriers_count: 1,
      freeboard_cm: null,
      leastFreeboard_cm: null,
      freeboardEmpty_cm: null,
      length_m: null,
      limitSetBy: null,
      limitSetOn: null,
    },
  })),
  settings: { changeOver_h: 1, porterLoad_kg: 25, openChance_fraction: 0.8 },
});
const party = { partyId: 'crew', carrierIds: ['truck', 'boat'], porters_count: 4 };
const stops = ids.map((id) => ({ stopId: id, place: id, load: null }));

/** Hours of every leg on each day of some, from-major. */
function hoursOn(facts: WaysAsked): readonly (readonly number[])[] {
  const { periods, travels } = travelBetween(readyWays(facts), stops, [party]);
  return Array.from({ length: horizon_days }, (_, day) => {
    const at = periods.findLastIndex(({ from }) => from <= day);
    const { landBefore_h, river_h, landAfter_h } = travels[0]!.byPeriod[at]!;
    return [...landBefore_h].map((hours, leg) => hours + river_h[leg]! + landAfter_h[leg]!);
  });
}

describe('ways', () => {
  it('are never shorter for a closure more', () => {
    let longer = 0;
    fc.assert(
      fc.property(ways, closures, closures, (drawn, shut, more) => {
        const before = hoursOn(asked(drawn, shut));
        const after = hoursOn(asked(drawn, [...shut, ...more]));
        before.forEach((legs, day) => {
          legs.forEach((hours, leg) => {
            expect(after[day]![leg]!).toBeGreaterThanOrEqual(hours);
            if (after[day]![leg]! > hours) longer++;
          });
        });
      }),
      { ...settings, numRuns: Math.ceil(settings.numRuns / 4) },
    );
    expect(longer).toBeGreaterThan(100);
  });

  it('are as long back as there where every stretch is, and never longer by way of a third place than the place allows', () => {
    fc.assert(
      fc.property(ways, closures, (drawn, shut) => {
        const even = drawn.map((one) => ({ ...one, back_h: one.there_h }));
        const [legs] = hoursOn(asked(even, shut));
        for (let a = 0; a < ids.length; a++)
          for (let b = 0; b < ids.length; b++) {
            const there = legs![a * ids.length + b]!;
            expect(there).toBeCloseTo(legs![b * ids.length + a]!, 4);
            // Joining two legs costs at most one change of carriers.
            for (let via = 0; via < ids.length; via++) {
              const round = legs![a * ids.length + via]! + legs![via * ids.length + b]!;
              expect(there).toBeLessThanOrEqual(round + 1 + 1e-4);
            }
          }
      }),
      settings,
    );
  });

  it('take the same hours in whatever order they are listed', () => {
    fc.assert(
      fc.property(ways, (drawn) => {
        const facts = asked(drawn, []);
        const turned = { ...facts, ways: [...facts.ways].reverse(), places: [...facts.places].reverse() };
        expect(hoursOn(turned)[0]).toEqual(hoursOn(facts)[0]);
      }),
      settings,
    );
  });
});
