import { type Dice, seededDice } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { Draws } from '../../packages/engine/src/programme/rollout/search/draws.ts';
import { budgetOfTries } from '../../packages/engine/src/programme/rollout/search/searchBudget.ts';
import { releaseRules } from '../../packages/engine/src/programme/rollout/search/searchRules.ts';
import { slackInduction } from '../../packages/engine/src/programme/rollout/search/slackInduction.ts';
import { TripsInTurn } from '../../packages/engine/src/programme/rollout/search/tripsInTurn.ts';
import { leastOfTurns, type PlainTurns, walkedRows } from './slowTurns.ts';

const cases = process.env['EAVEWELL_SOAK'] ? 400 : 40;

/** Jobs at random on a square. Each alone can be done by a vehicle that is free; all of them together not always. */
function madeTurns(dice: Dice, count: number, vehicles: number, oneWay: boolean): PlainTurns {
  const stops = count + 1;
  const places = Array.from({ length: stops }, () => [dice.next(100), dice.next(100)] as const);
  const straight = (i: number, j: number) => Math.hypot(places[i]![0] - places[j]![0], places[i]![1] - places[j]![1]);
  const cost = Float64Array.from({ length: stops * stops }, (_, at) => {
    const i = Math.floor(at / stops);
    const j = at % stops;
    return oneWay && places[i]![0] < places[j]![0] ? straight(i, j) * 1.5 : straight(i, j);
  });
  const demand = Array.from({ length: stops }, (_, stop) => (stop === 0 ? 0 : 1 + dice.next(9)));
  const release = demand.map((_, stop) => (stop === 0 || dice.next(2) === 0 ? 0 : dice.next(400)));
  const loading = dice.next(2) * 10;
  const opens = demand.map((_, stop) => (stop === 0 ? dice.next(20) : dice.next(500)));
  const closes = demand.map((_, stop) =>
    stop === 0
      ? 900
      : Math.max(opens[stop]!, Math.max(release[stop]!, opens[0]!) + loading + cost[stop]!) + dice.next(300),
  );
  const service = demand.map((_, stop) => (stop === 0 ? loading : dice.next(20)));
  const time = oneWay ? cost.map((each) => each * 1.2) : cost;
  if (oneWay) for (let stop = 1; stop < stops; stop++) closes[stop] = closes[stop]! + cost[stop]!;
  return { cost, time, demand, capacity: 9 + dice.next(20), vehicles, opens, closes, service, release };
}

function searched(jobs: PlainTurns, tries: number, seed: number) {
  const draws = new Draws(seed);
  const state = new TripsInTurn(
    {
      cost_ratio: jobs.cost,
      time_ratio: jobs.time,
      demand_amount: Int32Array.from(jobs.demand),
      capacity_amount: jobs.capacity,
      vehicles_count: jobs.vehicles,
      opens_ratio: Float64Array.from(jobs.opens),
      closes_ratio: Float64Array.from(jobs.closes),
      service_ratio: Float64Array.from(jobs.service),
      release_ratio: Float64Array.from(jobs.release),
    },
    releaseRules.blink_fraction,
    draws,
  );
  const found = slackInduction(state, releaseRules, budgetOfTries(tries), draws);
  return { found, rows: state.vehicles() };
}

describe('trips in turn against every plan there is', () => {
  for (const oneWay of [false, true])
    it(`finds the least cost of up to six jobs${oneWay ? ', ways that differ in direction' : ''}`, () => {
      let all = 0;
      let several = 0;
      for (let seed = 1; seed <= cases; seed++) {
        const dice = seededDice(seed + (oneWay ? 5000 : 0));
        const jobs = madeTurns(dice, 3 + dice.next(4), 1 + dice.next(2), oneWay);
        const least = leastOfTurns(jobs);
        const { found, rows } = searched(jobs, 1500, seed);
        const cost = walkedRows(jobs, rows);
        expect(cost, `case ${seed}`).not.toBeNull();
        expect(found.leftOut_count, `case ${seed}`).toBe(jobs.demand.length - 1 - rows.flat(2).length);
        expect(found.leftOut_count === 0, `case ${seed}`).toBe(least < Number.POSITIVE_INFINITY);
        if (found.leftOut_count > 0) continue;
        all++;
        if (rows.some((row) => row.length > 1)) several++;
        expect(cost!, `case ${seed}`).toBeCloseTo(least, 6);
        expect(found.best_amount, `case ${seed}`).toBeCloseTo(least, 6);
      }
      // The cases are worth something: many can be served, and many of those need a vehicle twice.
      expect(all).toBeGreaterThan(cases / 4);
      expect(several).toBeGreaterThan(cases / 10);
    });

  it('breaks no law on plans of 60 jobs, and tells their cost', () => {
    for (let seed = 1; seed <= 6; seed++) {
      const jobs = madeTurns(seededDice(seed + 900), 60, 8, seed % 2 === 0);
      const { found, rows } = searched(jobs, 1500, seed);
      const cost = walkedRows(jobs, rows);
      const served = rows.flat(2).length;
      expect(cost).not.toBeNull();
      expect(found.leftOut_count).toBe(60 - served);
      // The walk has what is served, leg by leg; what is out costs the same for each job, more than all ways of a plan.
      const each = 2 * 60 * Math.max(...jobs.cost) + 1;
      expect(found.best_amount).toBeCloseTo(cost! + found.leftOut_count * each, 4);
      expect(served).toBeGreaterThan(30);
    }
  });

  it('gives the same plan for the same seed and tries', () => {
    const jobs = madeTurns(seededDice(77), 40, 6, false);
    expect(searched(jobs, 1000, 3)).toEqual(searched(jobs, 1000, 3));
  });
});
