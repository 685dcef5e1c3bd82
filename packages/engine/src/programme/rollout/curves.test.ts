import { describe, expect, it } from 'vitest';
import { moneyByMonth, servedCurve, serviceDaysOf, waitingByGroup } from './curves.ts';
import { evaluatePlan } from './evaluatePlan.ts';
import { retiming } from './makeReady.ts';
import type { RolloutPlan, RolloutProblem } from './problem.ts';
import { stockCurves } from './stockCurves.ts';
import { tinyCrew, tinyRollout } from './tinyRollout.testing.ts';

const slip_days = { low: 0, likely: 0, high: 0 };
const trip = (...stops: readonly number[]) => ({ stops, notBefore: 0, isLocked: false });

/** Four jobs that each take 2 of one of the goods; 3 are there, 5 come on day 40. Two crews; the last job is in no trip. */
const plain = tinyRollout(4);
const problem: RolloutProblem = {
  ...plain,
  jobs: plain.jobs.map((job, at) => ({ ...job, people: 10 * (at + 1), weight: 20 * (at + 1), needs: [2] })),
  crews: ['A', 'B'].map((crewId) => ({ ...tinyCrew(plain.horizon_days), crewId })),
  goods: [{ partId: 'P' }],
  stores: [
    {
      node: 0,
      arrivals: [
        { arrivalId: 'A1', day: 0, goods: 0, quantity_count: 3, slip_days },
        { arrivalId: 'A2', day: 40, goods: 0, quantity_count: 5, slip_days },
      ],
      filledBy: null,
    },
  ],
};
const plan: RolloutPlan = { trips: [[trip(0), trip(1)], [trip(2)]] };
const outcome = evaluatePlan(retiming(problem), plan);

describe('what comes of a plan, day by day', () => {
  it('people served never fall, and all of the trips are served at the end', () => {
    const curve = servedCurve(problem, serviceDaysOf(problem, outcome));
    for (const [at, { people_count, day }] of curve.entries()) {
      expect(people_count).toBeGreaterThan(curve[at - 1]?.people_count ?? 0);
      expect(day).toBeGreaterThan(curve[at - 1]?.day ?? -1);
    }
    expect(curve.at(-1)!.people_count).toBe(10 + 20 + 30);
  });

  it('who is in no trip waits to the horizon', () => {
    expect(serviceDaysOf(problem, outcome)[3]).toBe(problem.horizon_days);
  });

  it('groups together wait as long as all people', () => {
    const groups = waitingByGroup(problem, outcome, (job) => job % 2);
    const sum = groups.reduce((all, { people_count, mean_days }) => all + people_count * mean_days, 0);
    expect(sum).toBeCloseTo(outcome.waiting_personDays, 6);
    expect(groups[0]!.mean_days).toBeGreaterThanOrEqual(groups[1]!.mean_days);
  });

  it('months together are the cost, each once and in order', () => {
    const months = moneyByMonth(problem, outcome);
    expect(months.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(outcome.cost, 6);
    expect(outcome.cost).toBeGreaterThan(0);
    const names = months.map(({ month }) => month);
    expect(names).toEqual([...new Set(names)].toSorted());
  });

  it('stock is what came less what went, and never below none', () => {
    const [curve, ...others] = stockCurves(problem, plan, outcome);
    expect(others).toEqual([]);
    let left_count = 0;
    for (const point of curve!.points) {
      left_count += point.in_count - point.out_count;
      expect([point.left_count, left_count >= 0]).toEqual([left_count, true]);
    }
    // 3 and 5 came, 2 went to each of three jobs.
    expect(left_count).toBe(3 + 5 - 3 * 2);
    expect(outcome.trips.flat().filter(({ leaves }) => leaves < 40)).toHaveLength(1);
  });

  it('nobody goes: nothing is spent, nobody served', () => {
    const none = { ...problem, jobs: [] };
    const idle = evaluatePlan(retiming(none), { trips: [[], []] });
    expect([moneyByMonth(none, idle), servedCurve(none, serviceDaysOf(none, idle))]).toEqual([[], []]);
    expect(waitingByGroup(none, idle, () => 0)).toEqual([]);
  });
});
