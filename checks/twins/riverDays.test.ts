import {
  type ExplainedStretch,
  explainedWay,
  type PlaceFacts,
  readIsoDay,
  readyWays,
  travelBetween,
  type WayFacts,
  type WayMode,
} from '@eavewell/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const numRuns = process.env['EAVEWELL_SOAK'] ? 3_000 : 150;
const placeIds = ['P0', 'P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7'];

/** Whatever hours are drawn, no two ways through the network take as long. */
const hours = fc.double({ min: 0.5, max: 9, noNaN: true });
const network = fc.record({
  // A chain of ways, so that there is always one, with some across it.
  chain: fc.array(fc.record({ mode: fc.constantFrom<WayMode>('river', 'river', 'river', 'road', 'foot'), hours }), {
    minLength: 7,
    maxLength: 7,
  }),
  across: fc.array(fc.record({ from: fc.nat(7), to: fc.nat(7), hours }), { maxLength: 3 }),
  riverDay_h: fc.double({ min: 3, max: 11, noNaN: true }),
});

/** Days from the morning on, each with the hours that are used of it, as a crew would write them down. */
class Diary {
  day = 0;
  used_h = 0;

  constructor(private readonly most_h: number) {}

  /** Goes by river: today, where it ends today; else from the next morning on, and in a day after day where it takes longer than one. */
  afloat(stretch_h: number): void {
    if (this.used_h > 1e-9 && this.used_h + stretch_h > this.most_h + 1e-9) this.sleep();
    this.go(stretch_h);
  }

  /** Spends hours that can be broken at any time. */
  go(hours_h: number): void {
    let left_h = hours_h;
    while (this.used_h + left_h > this.most_h + 1e-9) {
      left_h -= this.most_h - this.used_h;
      this.sleep();
    }
    this.used_h += left_h;
  }

  private sleep(): void {
    this.day++;
    this.used_h = 0;
  }
}

function diaryOf(stretches: readonly ExplainedStretch[], most_h: number): Diary {
  const diary = new Diary(most_h);
  for (const [nth, { mode, hours_h, changeOver_h }] of stretches.entries()) {
    if (nth > 0) diary.go(changeOver_h);
    if (mode === 'river') diary.afloat(hours_h);
    else diary.go(hours_h);
  }
  return diary;
}

type Network = typeof network extends fc.Arbitrary<infer T> ? T : never;

function built({ chain, across }: Pick<Network, 'chain' | 'across'>, noSleep: readonly string[] = []) {
  const way = (wayId: string, from: string, to: string, mode: WayMode, there_h: number): WayFacts => ({
    ...{ wayId, name: null, from, to, mode, length_km: null, there_h, back_h: null, limit_kg: null, limit_L: null },
    ...{ longest_m: null, porters_count: 0, fuel_L_per_km: null, weatherArea: null, riverGaugeId: null },
  });
  const ways = [
    ...chain.map((one, at) => way(`C${at}`, placeIds[at]!, placeIds[at + 1]!, one.mode, one.hours)),
    ...across.map((one, at) => way(`X${at}`, placeIds[one.from]!, placeIds[one.to]!, 'river', one.hours)),
  ];
  const carrier = (carrierId: string, mode: 'boat' | 'truck') => ({
    ...{ carrierId, name: carrierId, mode, limit_kg: 500, limit_L: null, longest_m: null, stowage_fraction: 1 },
    ...{ carriers_count: 1, freeboard_cm: null, leastFreeboard_cm: null, freeboardEmpty_cm: null, length_m: null },
    ...{ limitSetBy: null, limitSetOn: null },
  });
  const places = placeIds.map(
    (placeId): PlaceFacts => ({
      ...{ placeId, name: placeId, kind: null, latitude_deg: null, longitude_deg: null, changeOver_h: 0.7 },
      ...{ maySleep: !noSleep.includes(placeId), filledFrom: null, filledBy: null, setUp_amount: null },
    }),
  );
  return readyWays({
    ...{ places, ways, siteIds: [], closures: [], riverLevels: [], wayLevels: [], travel: [] },
    ...{ carriers: [carrier('boat', 'boat'), carrier('truck', 'truck')], firstDay: readIsoDay('2027-01-01')! },
    horizon_days: 100,
    settings: { changeOver_h: 1, porterLoad_kg: 25, openChance_fraction: 0.8 },
  });
}

it('hours of a river part in the tables of legs are those of a diary kept day by day, landing by landing', () => {
  let long = 0;
  let waited = 0;
  fc.assert(
    fc.property(network, (drawn) => {
      const { riverDay_h } = drawn;
      const ready = built(drawn);
      const party = { partyId: 'crew', carrierIds: ['boat', 'truck'], porters_count: 2 };
      const stops = placeIds.map((id) => ({ stopId: id, place: id, load: null }));
      const { travels, states } = travelBetween(ready, stops, [party, { ...party, riverDay_h }]);
      const [straight, byDays] = travels.map(({ byPeriod }) => byPeriod[0]!);
      stops.forEach((from, a) => {
        stops.forEach((to, b) => {
          const told = explainedWay(ready, { from, to, party, state: states[0]! });
          if (a === b || told.stretches === null) return;
          const leg = a * stops.length + b;
          expect(byDays!.landBefore_h[leg]).toBe(straight!.landBefore_h[leg]);
          expect(byDays!.landAfter_h[leg]).toBe(straight!.landAfter_h[leg]);
          const isRiver = told.stretches.map(({ mode }) => mode === 'river');
          const part = told.stretches.slice(isRiver.indexOf(true), isRiver.lastIndexOf(true) + 1);
          const { day, used_h } = diaryOf(isRiver.includes(true) ? part : [], riverDay_h);
          expect(byDays!.river_h[leg]).toBeCloseTo(day * riverDay_h + used_h, 4);
          const days = explainedWay(ready, { from, to, party: { ...party, riverDay_h }, state: states[0]! });
          if (days.stretches !== null) expect(days.river_h).toBeCloseTo(day * riverDay_h + used_h, 6);
          if (day > 0) long++;
          if (byDays!.river_h[leg]! > straight!.river_h[leg]! + 0.01) waited++;
        });
      });
    }),
    { numRuns, seed: 20261127 },
  );
  expect(long).toBeGreaterThan(1_000);
  expect(waited).toBeGreaterThan(1_000);
});

/** The earliest end of a chain of ways by river, of all the landings at which one might spend nights: days and hours of the last; null: it cannot be gone so. */
function earliest(
  hours: readonly number[],
  maySleep: readonly boolean[],
  most_h: number,
): readonly [days: number, used_h: number] | null {
  let best: readonly [number, number] | null = null;
  for (let nights = 0; nights < 2 ** (hours.length - 1); nights++) {
    const isNight = (at: number) => at > 0 && ((nights >> (at - 1)) & 1) === 1;
    if (hours.some((_, at) => isNight(at) && !maySleep[at])) continue;
    const days: number[] = [];
    for (const [at, own_h] of hours.entries())
      if (at === 0 || isNight(at)) days.push(own_h);
      else days.push(days.pop()! + own_h);
    if (days.some((day_h) => day_h > most_h + 1e-9)) continue;
    const found = [days.length - 1, days.at(-1)!] as const;
    if (best === null || found[0] < best[0] || (found[0] === best[0] && found[1] < best[1])) best = found;
  }
  return best;
}

it('a river part whose landings are not all to sleep at ends as early as any choice of nights lets it', () => {
  const chains = fc.record({
    chain: fc.array(hours, { minLength: 7, maxLength: 7 }),
    noSleep: fc.subarray(placeIds, { maxLength: 6 }),
    riverDay_h: fc.double({ min: 8, max: 16, noNaN: true }),
  });
  let [held, longer, impossible] = [0, 0, 0];
  fc.assert(
    fc.property(chains, ({ chain, noSleep, riverDay_h }) => {
      const ready = built({ chain: chain.map((own) => ({ mode: 'river', hours: own })), across: [] }, noSleep);
      const party = { partyId: 'crew', carrierIds: ['boat', 'truck'], porters_count: 2, riverDay_h };
      const stops = placeIds.map((id) => ({ stopId: id, place: id, load: null }));
      const { travels, states } = travelBetween(ready, stops, [party]);
      const { river_h } = travels[0]!.byPeriod[0]!;
      for (const [a, from] of stops.entries())
        for (const [b, to] of stops.entries()) {
          if (a === b) continue;
          const [low, high] = [Math.min(a, b), Math.max(a, b)];
          const own = chain.slice(low, high);
          const sleeps = placeIds.slice(low, high + 1).map((id) => !noSleep.includes(id));
          const isBack = a > b;
          const there = isBack ? [...own].reverse() : own;
          const starts = isBack ? [...sleeps].reverse() : sleeps;
          const found = earliest(there, starts, riverDay_h);
          if (found === null) {
            impossible++;
            continue;
          }
          const [days, used_h] = found;
          expect(river_h[a * stops.length + b]).toBeCloseTo(days * riverDay_h + used_h, 4);
          const told = explainedWay(ready, { from, to, party, state: states[0]! });
          expect(told.stretches?.map(({ maySleep }) => maySleep)).toEqual(starts.slice(0, -1));
          held++;
          const anywhere = earliest(
            there,
            starts.map(() => true),
            riverDay_h,
          )!;
          if (anywhere[0] < days || anywhere[1] < used_h - 1e-6) longer++;
        }
    }),
    { numRuns, seed: 20261128 },
  );
  expect(held).toBeGreaterThan(1_000);
  expect(longer).toBeGreaterThan(100);
  expect(impossible).toBeGreaterThan(10);
});
