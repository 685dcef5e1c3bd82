import { describe, expect, it } from 'vitest';
import { Draws } from './draws.ts';
import { held, out } from './routeState.ts';
import { budgetOfTries, type SearchProgress, triesBetweenPolls_count } from './searchBudget.ts';
import { loadRules } from './searchRules.ts';
import { slackInduction } from './slackInduction.ts';
import { TripsByLoad } from './tripsByLoad.ts';

/** Jobs on a line every 10 km from the base; each takes 1 of a load. */
function onALine(jobs: number, capacity: number, draws: Draws, demand = Array.from({ length: jobs }, () => 1)) {
  const stops = jobs + 1;
  const cost = Float64Array.from(
    { length: stops * stops },
    (_, at) => 10 * Math.abs((at % stops) - Math.floor(at / stops)),
  );
  return new TripsByLoad(
    { cost_ratio: cost, demand_amount: Int32Array.from([0, ...demand]), capacity_amount: capacity },
    0.01,
    draws,
  );
}

const run = (state: TripsByLoad, draws: Draws, tries = 2000) =>
  slackInduction(state, loadRules, budgetOfTries(tries), draws);

describe('slack induction', () => {
  it('finds what is best on a line: far jobs together, the rest together', () => {
    const draws = new Draws(1);
    const state = onALine(10, 5, draws);
    const found = run(state, draws);
    // The farther five are reached by one trip to 100 km and back, the nearer by one to 50.
    expect(found).toEqual({ best_amount: 300, tries_count: 2048, leftOut_count: 0 });
    expect(state.trips().map((trip) => [...trip].sort((a, b) => a - b))).toContainEqual([6, 7, 8, 9, 10]);
    expect(state.cost()).toBe(300);
  });

  it('gives the same plan for the same seed and tries, and needs no clock', () => {
    const plans = [1, 2].map(() => {
      const draws = new Draws(5);
      const state = onALine(30, 4, draws);
      return { found: run(state, draws, 500), trips: state.trips() };
    });
    expect(plans[1]).toEqual(plans[0]);
  });

  it('leaves out a job that no trip can carry, and plans the others', () => {
    const draws = new Draws(2);
    const state = onALine(4, 5, draws, [1, 9, 1, 1]);
    const found = run(state, draws);
    expect(found.leftOut_count).toBe(1);
    expect(state.trips().flat().sort()).toEqual([1, 3, 4]);
    expect([...state.tripOf].filter((trip, job) => job > 0 && trip === out)).toHaveLength(1);
  });

  it('overloads trips on the way and none in the plan it gives', () => {
    // The far jobs are the large ones: full trips of them and of near ones go far for little, an overload saves a way.
    const demand = Array.from({ length: 36 }, (_, at) => 3 + Math.floor(at / 12));
    let overloaded = 0;
    for (const seed of [1, 2]) {
      const draws = new Draws(seed);
      const state = onALine(36, 12, draws, demand);
      const { begin } = state;
      state.begin = () => {
        if (!state.holds()) overloaded++;
        begin.call(state);
      };
      run(state, draws, 100_000);
      for (const trip of state.trips())
        expect(trip.reduce((sum, job) => sum + demand[job - 1]!, 0)).toBeLessThanOrEqual(12);
    }
    expect(overloaded).toBeGreaterThan(0);
  });

  it('plans no job and one job', () => {
    for (const jobs of [0, 1]) {
      const draws = new Draws(1);
      const state = onALine(jobs, 5, draws);
      expect(run(state, draws).best_amount).toBe(20 * jobs);
      expect(state.trips()).toEqual(jobs === 0 ? [] : [[1]]);
    }
  });

  it('never moves a job that is held', () => {
    const draws = new Draws(1);
    const state = onALine(6, 3, draws);
    for (const job of [1, 2]) state.tripOf[job] = held;
    run(state, draws);
    expect(state.trips().flat()).toHaveLength(4);
    expect([...state.tripOf].filter((trip) => trip === held)).toHaveLength(2);
  });

  it('goes on from the plan it is given', () => {
    const draws = new Draws(1);
    const state = onALine(40, 4, draws);
    const first = run(state, draws, 3000);
    const second = run(state, draws, 128);
    expect(second.best_amount).toBeLessThanOrEqual(first.best_amount);
  });

  it('stops when it is told to, tells how far it is, and asks what is left once every so many tries', () => {
    const draws = new Draws(1);
    const told: SearchProgress[] = [];
    let asked = 0;
    const budget = {
      left: () => 1 - asked++ / 100,
      report: (found: SearchProgress) => void told.push(found),
      stopped: () => told.length === 3,
    };
    const found = slackInduction(onALine(10, 5, draws), loadRules, budget, draws);
    expect(found.tries_count).toBe(3 * triesBetweenPolls_count);
    expect(told.map(({ tries_count }) => tries_count)).toEqual([1, 2, 3].map((poll) => poll * triesBetweenPolls_count));
    expect(asked).toBe(4);
    expect(told.at(-1)!.best_amount).toBe(found.best_amount);
  });

  it('ends at once with a plan where nothing may be spent', () => {
    const draws = new Draws(1);
    const state = onALine(10, 5, draws);
    expect(run(state, draws, 0).tries_count).toBe(0);
    expect(state.trips().flat()).toHaveLength(10);
  });
});
