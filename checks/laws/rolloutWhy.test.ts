import fc from 'fast-check';
import { expect, it } from 'vitest';
import { whyThen } from '../../packages/engine/src/index.ts';
import { evaluatePlan, retiming } from '../../packages/engine/src/programme/rollout/index.ts';
import { made, numRuns, planOf, seeds } from './byHandPlans.ts';

it('the days a village waits add up, and going there first is a plan like any other', () => {
  const met = new Set<string>();
  fc.assert(
    fc.property(seeds, fc.integer({ min: 0, max: 8 }), (seed, job) => {
      const problem = made(seed);
      const plan = planOf(problem, seed);
      const ready = retiming(problem);
      const outcome = evaluatePlan(ready, plan);
      if (problem.jobs[job] === undefined) return;
      const why = whyThen(ready, { plan, outcome }, job, () => []);
      const stop = outcome.trips
        .flat()
        .flatMap(({ stops }) => stops)
        .find((one) => one.job === job);
      if (why === null) return;
      met.add(why.most);
      const { parts, first } = why;
      const sum = Object.values(parts).reduce((all, days) => all + days, 0);
      expect(sum).toBe(stop!.serviceDay);
      const { others, ...waited } = parts;
      for (const days of Object.values(waited)) expect(days).toBeGreaterThanOrEqual(0);
      // With what a set first day adds, no less than nothing.
      expect(Number.isInteger(others)).toBe(true);
      expect(others).toBeGreaterThanOrEqual(0);

      const anew = evaluatePlan(retiming(problem), first.plan);
      const there = anew.trips[first.crew]![first.trip]!.stops.find((one) => one.job === job)!;
      expect([there.handOverDay, there.serviceDay]).toEqual([first.handOverDay, first.serviceDay]);
      expect(first.trip).toBe(0);
      expect(anew.trips[first.crew]![0]!.stops[0]!.job).toBe(job);
      const own = problem.jobs[job]!.people * (first.serviceDay - stop!.serviceDay);
      expect(why.othersWait_personDays).toBeCloseTo(anew.waiting_personDays - outcome.waiting_personDays - own, 6);
      const stops = (of: typeof plan) =>
        of.trips
          .flat()
          .flatMap((trip) => trip.stops)
          .sort((a, b) => a - b);
      expect(stops(first.plan)).toEqual(stops(plan));
    }),
    { numRuns },
  );
  // Most reasons are met by the rollouts that are made.
  expect([...met].sort()).toEqual(expect.arrayContaining(['going', 'others']));
});
