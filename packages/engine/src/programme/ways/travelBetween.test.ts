import { describe, expect, it } from 'vitest';
import { calendarDay, type LegTable, readIsoDay, type WayClosure } from '../../kernel/index.ts';
import { explainedWay } from './explainedWay.ts';
import { readyWays } from './readyWays.ts';
import { travelBetween } from './travelBetween.ts';
import { asked, carrier, carriers, crew, loaded, place, stop, way } from './ways.testing.ts';

const closure = (closureId: string, rest: Partial<WayClosure>): WayClosure => ({
  ...{ closureId, wayId: null, weatherArea: null, months: [], from: null, to: null, slower_factor: null, reason: null },
  ...rest,
});

/** Store, road, roadhead, river, landing, footpath, village. */
const chain = asked({
  places: [place('store'), place('head'), place('landing', 0.5)],
  siteIds: ['village'],
  ways: [
    way('road', ['store', 'head'], 'road', { length_km: 60, weatherArea: 'hills' }),
    way('river', ['head', 'landing'], 'river', { length_km: 30, there_h: 2, back_h: 5, weatherArea: 'delta' }),
    way('path', ['landing', 'village'], 'foot', { length_km: 6, limit_kg: 70, porters_count: 2 }),
  ],
});

const leg = (table: LegTable, from: number, to: number, nodes: number) => {
  const at = from * nodes + to;
  const { landBefore_h, river_h, landAfter_h, cost, fuel_L, limitOf, limits, areaOf } = table;
  return {
    hours_h: [landBefore_h[at], river_h[at], landAfter_h[at]],
    cost: cost[at],
    fuel_L: fuel_L[at],
    limit: limits[limitOf[at]!],
    area: areaOf[at],
  };
};

const codes = (problems: readonly { readonly code: string }[]) => problems.map(({ code }) => code);

describe('travelBetween', () => {
  it('goes by road, river and on foot, with the hours that changing takes, and slower against the stream', () => {
    const ready = readyWays(chain);
    const found = travelBetween(ready, [stop('store'), stop('village')], [crew]);
    expect(found.problems).toEqual([]);
    expect(ready.areaIds).toEqual(['delta', 'hills']);
    const table = found.travels[0]!.byPeriod[0]!;
    // 60 km at 30 km/h and an hour at the roadhead; 2 h; half an hour at the landing and 6 km at 4 km/h.
    const there = leg(table, 0, 1, 2);
    expect(there.hours_h).toEqual([3, 2, 2]);
    expect(there.fuel_L).toBeCloseTo(60 * 0.2 + 30 * 0.5, 5);
    // Four porters for 1.5 of 8 hours at 8 a day.
    expect(there.cost).toBeCloseTo((4 * 8 * 1.5) / 8, 5);
    expect(there.limit).toEqual({ kg: 70, litres: Infinity, longest_m: Infinity, porters_count: 2 });
    // Two hours in the hills, two in the delta: the first of them by name.
    expect(there.area).toBe(1);
    const back = leg(table, 1, 0, 2);
    expect(back.hours_h).toEqual([2, 5, 3]);
  });

  it('asks for the porters a way takes, and lets a crew without them not pass', () => {
    const few = { ...crew, porters_count: 1 };
    const { travels } = travelBetween(readyWays(chain), [stop('store'), stop('village')], [crew, few]);
    expect(travels[1]!.byPeriod[0]!.landBefore_h[1]).toBe(Infinity);
    expect(travels[0]!.byPeriod[0]!.landBefore_h[1]).toBe(3);
  });

  it('takes the slower way where the faster does not let through what must come there, and says so', () => {
    const two = asked({
      places: [place('store'), place('head')],
      ways: [
        way('ford', ['store', 'head'], 'road', { there_h: 1, limit_kg: 300, longest_m: 4 }),
        way('bridge', ['store', 'head'], 'road', { there_h: 3 }),
      ],
    });
    const ready = readyWays(two);
    const stops = [
      stop('store'),
      loaded('head', 200),
      loaded('head', 400),
      loaded('head', 200, 6),
      loaded('head', 9000),
    ];
    const { travels, states } = travelBetween(ready, stops, [crew]);
    const hours = [...travels[0]!.byPeriod[0]!.landBefore_h.slice(1, 5)];
    // What nothing carries still has a way; its limit says what passes.
    expect(hours).toEqual([1, 3, 3, 1]);
    const told = (to: number) =>
      explainedWay(ready, { from: stops[0]!, to: stops[to]!, party: crew, state: states[0]! });
    expect(told(2)).toMatchObject({ stretches: [{ wayId: 'bridge' }], carriesLoad: true, boundBy: { kg: 'bridge' } });
    expect(told(4)).toMatchObject({ stretches: [{ wayId: 'ford' }], carriesLoad: false, limit: { kg: 300 } });
  });

  it('closes in months and between dates, and begins a period on each day on which anything changes', () => {
    const closed = {
      ...chain,
      closures: [
        closure('flood', { wayId: 'river', months: [3, 4] }),
        closure('mud', {
          weatherArea: 'hills',
          from: readIsoDay('2027-04-11')!,
          to: readIsoDay('2027-04-20')!,
          slower_factor: 2,
        }),
      ],
    };
    const ready = readyWays(closed);
    const { periods, travels, states } = travelBetween(ready, [stop('store'), stop('village'), stop('head')], [crew]);
    const day = (text: string) => readIsoDay(text)! - closed.firstDay;
    expect(periods.map(({ from }) => from)).toEqual(
      ['2027-01-01', '2027-03-01', '2027-04-11', '2027-04-21', '2027-05-01', '2028-03-01', '2028-05-01'].map(day),
    );
    const toVillage = travels[0]!.byPeriod.map((table) => table.landBefore_h[1]!);
    expect(toVillage).toEqual([3, Infinity, Infinity, Infinity, 3, Infinity, 3]);
    const toHead = travels[0]!.byPeriod.map((table) => table.landBefore_h[2]!);
    expect(toHead).toEqual([2, 2, 4, 2, 2, 2, 2]);
    // Periods in which the ways are the same share their table.
    expect(new Set(travels[0]!.byPeriod).size).toBe(3);
    const why = explainedWay(ready, { from: stop('store'), to: stop('village'), party: crew, state: states[1]! });
    expect(why).toEqual({ stretches: null, reason: 'closed', closedBy: ['flood'] });
    const slower = explainedWay(ready, { from: stop('store'), to: stop('head'), party: crew, state: states[2]! });
    expect(slower).toMatchObject({ stretches: [{ hours_h: 4, slower_factor: 2, slowerBy: ['mud'] }] });
  });

  it('puts periods together where nothing changes between the stops', () => {
    const aside = {
      ...chain,
      closures: [closure('flood', { wayId: 'river', months: [3] })],
    };
    const { periods } = travelBetween(readyWays(aside), [stop('store'), stop('head')], [crew]);
    expect(periods).toEqual([{ from: 0 }]);
  });

  it('names pieces of the network, ways that are always closed, and stops on no place', () => {
    const broken = asked({
      places: [place('store'), place('head'), place('far'), place('farther')],
      ways: [
        way('road', ['store', 'head'], 'road', { there_h: 1 }),
        way('loop', ['far', 'farther'], 'road', { there_h: 1 }),
      ],
      closures: [closure('gone', { wayId: 'road' })],
    });
    const { problems, travels } = travelBetween(
      readyWays(broken),
      [stop('store'), stop('head'), stop('far'), stop('nowhere')],
      [crew],
    );
    expect(codes(problems)).toEqual(['ways.stop_unknown', 'ways.closed_always', 'ways.in_pieces']);
    expect(problems[2]!.facts).toEqual({ places: ['far'], count: 1, pieces: 2 });
    expect([...travels[0]!.byPeriod[0]!.landBefore_h]).toEqual(
      [0, 1, 2, 3].flatMap((from) => [0, 1, 2, 3].map((to) => (from === to ? 0 : Infinity))),
    );
  });

  it('puts nothing in a boat nobody stated a limit of, and names carriers and ways it knows too little of', () => {
    const vague = asked({
      places: [place('a'), place('b'), place('c')],
      ways: [way('river', ['a', 'b'], 'river', { length_km: 10 }), way('road', ['b', 'c'], 'road', { length_km: 10 })],
      carriers: [carrier('boat', 'boat', null), carrier('truck', 'truck', 1000), carrier('crate', 'pallet', 500)],
      travel: [{ carrierId: 'boat', speed_km_per_h: 10, fuel_L_per_km: null, cost_per_day: null }],
    });
    const { problems, travels } = travelBetween(
      readyWays(vague),
      [stop('a'), stop('b'), stop('c')],
      [{ partyId: 'crew', carrierIds: ['boat', 'truck', 'crate', 'mule'], porters_count: 0 }],
    );
    expect(codes(problems)).toEqual([
      'ways.fuel_unknown',
      'ways.carrier_no_limit',
      'ways.fuel_unknown',
      'ways.carrier_unknown',
      'ways.no_hours',
    ]);
    expect(leg(travels[0]!.byPeriod[0]!, 0, 1, 3)).toMatchObject({ hours_h: [0, 1, 0], limit: { kg: 0 } });
    expect(leg(travels[0]!.byPeriod[0]!, 0, 2, 3).hours_h[0]).toBe(Infinity);
  });

  it('walks at a pace of its own where nobody states one, carrying what porters carry', () => {
    const path = asked({ places: [place('a'), place('b')], ways: [way('path', ['a', 'b'], 'foot', { length_km: 6 })] });
    const { problems, travels } = travelBetween(
      readyWays(path),
      [stop('a'), stop('b')],
      [{ partyId: 'crew', carrierIds: carriers.slice(0, 2).map(({ carrierId }) => carrierId), porters_count: 6 }],
    );
    expect(codes(problems)).toEqual(['ways.walking_assumed']);
    expect(leg(travels[0]!.byPeriod[0]!, 0, 1, 2)).toMatchObject({ hours_h: [2, 0, 0], limit: { kg: 150 } });
  });

  it('closes a way to the carrier whose level is seldom there, week by week, and to no other', () => {
    const first = readIsoDay('2020-01-01')!;
    // Six years; low from July on: 1 m, else 3 m.
    const riverLevels = Array.from({ length: 6 * 365 }, (_, index) => ({
      riverGaugeId: 'G',
      day: first + index,
      level_m: calendarDay(first + index).month >= 7 ? 1 : 3,
    }));
    const river = asked({
      places: [place('a'), place('b')],
      ways: [way('river', ['a', 'b'], 'river', { there_h: 4, riverGaugeId: 'G' })],
      carriers: [carrier('deep', 'boat', 500), carrier('flat', 'boat', 100)],
      travel: [],
      riverLevels,
      wayLevels: [{ wayId: 'river', carrierId: 'deep', least_m: 2, greatest_m: null }],
      horizon_days: 365,
    });
    const party = (carrierId: string) => ({ partyId: carrierId, carrierIds: [carrierId], porters_count: 0 });
    const { periods, travels } = travelBetween(
      readyWays(river),
      [stop('a'), stop('b')],
      [party('deep'), party('flat')],
    );
    // Week 26 begins on 2 July, day 183 of the year, and is low throughout; week 25 on one day of seven, which leaves 6 of 7, over 0.8.
    expect(periods.map(({ from }) => from)).toEqual([0, 182]);
    expect(travels[0]!.byPeriod.map((table) => table.river_h[1])).toEqual([4, 0]);
    expect(travels[0]!.byPeriod.map((table) => table.landBefore_h[1])).toEqual([0, Infinity]);
    expect(travels[1]!.byPeriod.map((table) => table.river_h[1])).toEqual([4, 4]);
  });
});
