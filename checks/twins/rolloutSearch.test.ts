import { type Dice, seededDice } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { Draws } from '../../packages/engine/src/programme/rollout/search/draws.ts';
import { budgetOfTries } from '../../packages/engine/src/programme/rollout/search/searchBudget.ts';
import { loadRules, windowRules } from '../../packages/engine/src/programme/rollout/search/searchRules.ts';
import { slackInduction } from '../../packages/engine/src/programme/rollout/search/slackInduction.ts';
import { TripsByLoad } from '../../packages/engine/src/programme/rollout/search/tripsByLoad.ts';
import { TripsByWindow } from '../../packages/engine/src/programme/rollout/search/tripsByWindow.ts';
import { leastCost, type PlainJobs, plainCost } from './slowTrips.ts';

const cases = process.env['EAVEWELL_SOAK'] ? 400 : 60;

/** Jobs at random on a square; with `oneWay`, against the stream takes longer. */
function madeJobs(dice: Dice, count: number, windows: boolean, oneWay: boolean): PlainJobs {
  const stops = count + 1;
  const places = Array.from({ length: stops }, () => [dice.next(100), dice.next(100)] as const);
  const cost = new Float64Array(stops * stops);
  for (let i = 0; i < stops; i++)
    for (let j = 0; j < stops; j++) {
      const straight = Math.hypot(places[i]![0] - places[j]![0], places[i]![1] - places[j]![1]);
      cost[i * stops + j] = oneWay && places[i]![0] < places[j]![0] ? straight * 1.5 : straight;
    }
  const demand = Array.from({ length: stops }, (_, stop) => (stop === 0 ? 0 : 1 + dice.next(9)));
  if (!windows) return { cost, demand, capacity: 9 + dice.next(20), windows: null };
  // Each window reaches to the first hour a trip there and back alone would meet, so that every job can be done.
  const opens = demand.map((_, stop) => (stop === 0 ? 0 : dice.next(300)));
  const closes = demand.map((_, stop) => (stop === 0 ? 2000 : Math.max(cost[stop]!, opens[stop]!) + dice.next(120)));
  const service = demand.map((_, stop) => (stop === 0 ? 0 : dice.next(20)));
  return { cost, demand, capacity: 9 + dice.next(20), windows: { opens, closes, service } };
}

function searched(jobs: PlainJobs, tries: number, seed: number) {
  const draws = new Draws(seed);
  const { cost, capacity, windows } = jobs;
  const facts = { cost_ratio: cost, demand_amount: Int32Array.from(jobs.demand), capacity_amount: capacity };
  const rules = windows === null ? loadRules : windowRules;
  const state =
    windows === null
      ? new TripsByLoad(facts, rules.blink_fraction, draws)
      : new TripsByWindow(
          {
            ...facts,
            time_ratio: cost,
            opens_ratio: Float64Array.from(windows.opens),
            closes_ratio: Float64Array.from(windows.closes),
            service_ratio: Float64Array.from(windows.service),
          },
          rules.blink_fraction,
          draws,
        );
  const found = slackInduction(state, rules, budgetOfTries(tries), draws);
  return { found, trips: state.trips() };
}

describe('the search against every way there is', () => {
  for (const windows of [false, true])
    for (const oneWay of [false, true])
      it(`finds the least cost of up to eight jobs${windows ? ' with windows' : ''}${oneWay ? ', ways that differ in direction' : ''}`, () => {
        for (let seed = 1; seed <= cases; seed++) {
          const dice = seededDice(seed + (windows ? 1000 : 0) + (oneWay ? 5000 : 0));
          const jobs = madeJobs(dice, 1 + dice.next(windows ? 6 : 7), windows, oneWay);
          const { found, trips } = searched(jobs, 4000, seed);
          const least = leastCost(jobs);
          expect(least).toBeLessThan(Number.POSITIVE_INFINITY);
          expect(found.best_amount / least, `seed ${seed}`).toBeCloseTo(1, 9);
          expect(plainCost(jobs, trips)! / found.best_amount, `seed ${seed}`).toBeCloseTo(1, 12);
        }
      });
});

it('costs what a plain count of its trips costs, with every limit kept, on larger plans', () => {
  for (let seed = 1; seed <= 12; seed++) {
    const dice = seededDice(seed);
    const jobs = madeJobs(dice, 20 + dice.next(80), seed % 2 === 0, seed % 3 === 0);
    const { found, trips } = searched(jobs, 3000, seed);
    expect(found.leftOut_count).toBe(0);
    expect(plainCost(jobs, trips)! / found.best_amount, `seed ${seed}`).toBeCloseTo(1, 12);
  }
});
