import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Draws } from '../../packages/engine/src/programme/rollout/search/draws.ts';
import { budgetOfTries } from '../../packages/engine/src/programme/rollout/search/searchBudget.ts';
import { loadRules, windowRules } from '../../packages/engine/src/programme/rollout/search/searchRules.ts';
import { slackInduction } from '../../packages/engine/src/programme/rollout/search/slackInduction.ts';
import { TripsByLoad } from '../../packages/engine/src/programme/rollout/search/tripsByLoad.ts';
import { TripsByWindow } from '../../packages/engine/src/programme/rollout/search/tripsByWindow.ts';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 3_000 : 150, seed: 20261126 };

const stop = fc.record({
  x: fc.integer({ min: 0, max: 50 }),
  y: fc.integer({ min: 0, max: 50 }),
  demand: fc.integer({ min: 0, max: 12 }),
  opens: fc.integer({ min: 0, max: 150 }),
  wide: fc.integer({ min: 0, max: 90 }),
  service: fc.integer({ min: 0, max: 15 }),
});

const programme = fc.record({
  stops: fc.array(stop, { minLength: 1, maxLength: 30 }),
  capacity: fc.integer({ min: 0, max: 40 }),
  tries: fc.integer({ min: 0, max: 600 }),
  seed: fc.integer(),
});

type Stop = typeof stop extends fc.Arbitrary<infer T> ? T : never;

function factsOf(stops: readonly Stop[], capacity: number) {
  const cost = Float64Array.from(stops.flatMap((a) => stops.map((b) => Math.hypot(a.x - b.x, a.y - b.y))));
  const demand = Int32Array.from(stops, ({ demand }, at) => (at === 0 ? 0 : demand));
  return { cost_ratio: cost, demand_amount: demand, capacity_amount: capacity };
}

it('puts each job in one trip at most, overloads none, and leaves out only what no trip can carry', () => {
  fc.assert(
    fc.property(programme, ({ stops, capacity, tries, seed }) => {
      const facts = factsOf(stops, capacity);
      const draws = new Draws(seed);
      const state = new TripsByLoad(facts, loadRules.blink_fraction, draws);
      const { leftOut_count } = slackInduction(state, loadRules, budgetOfTries(tries), draws);
      const trips = state.trips();
      for (const trip of trips)
        expect(trip.reduce((sum, job) => sum + facts.demand_amount[job]!, 0)).toBeLessThanOrEqual(capacity);
      const fits = stops.map((_, job) => job).filter((job) => job > 0 && facts.demand_amount[job]! <= capacity);
      expect(trips.flat().sort((a, b) => a - b)).toEqual(fits);
      expect(leftOut_count).toBe(stops.length - 1 - fits.length);
    }),
    settings,
  );
});

it('keeps every window and every load, and leaves out only what no trip of its own could do', () => {
  fc.assert(
    fc.property(programme, ({ stops, capacity, tries, seed }) => {
      const facts = factsOf(stops, capacity);
      const width = stops.length;
      const leg = (from: number, to: number) => facts.cost_ratio[from * width + to]!;
      const opens = Float64Array.from(stops, ({ opens }, at) => (at === 0 ? 0 : opens));
      const closes = Float64Array.from(stops, ({ wide }, at) => (at === 0 ? 250 : opens[at]! + wide));
      const service = Float64Array.from(stops, ({ service }, at) => (at === 0 ? 0 : service));
      const draws = new Draws(seed);
      const state = new TripsByWindow(
        { ...facts, time_ratio: facts.cost_ratio, opens_ratio: opens, closes_ratio: closes, service_ratio: service },
        windowRules.blink_fraction,
        draws,
      );
      slackInduction(state, windowRules, budgetOfTries(tries), draws);
      const inTime = (trip: readonly number[]) => {
        let left = 0;
        let at = 0;
        for (const to of [...trip, 0]) {
          const begun = Math.max(left + leg(at, to), opens[to]!);
          if (begun > closes[to]!) return false;
          left = begun + service[to]!;
          at = to;
        }
        return trip.reduce((sum, job) => sum + facts.demand_amount[job]!, 0) <= capacity;
      };
      const trips = state.trips();
      expect(trips.every(inTime)).toBe(true);
      const alone = stops.map((_, job) => job).filter((job) => job > 0 && inTime([job]));
      expect(trips.flat().sort((a, b) => a - b)).toEqual(alone);
    }),
    settings,
  );
});

it('gives the same plan to the bit for the same tries and seed, and more tries never a dearer one at their end', () => {
  fc.assert(
    fc.property(programme, ({ stops, capacity, tries, seed }) => {
      const [first, again, none] = [tries, tries, 0].map((some) => {
        const draws = new Draws(seed);
        const state = new TripsByLoad(factsOf(stops, capacity), loadRules.blink_fraction, draws);
        const { best_amount } = slackInduction(state, loadRules, budgetOfTries(some), draws);
        return { best_amount, trips: state.trips() };
      });
      expect(again).toEqual(first);
      expect(first!.best_amount).toBeLessThanOrEqual(none!.best_amount * (1 + 1e-6));
    }),
    settings,
  );
});
