import { expect, it } from 'vitest';
import { evaluatePlan, retiming } from '../../packages/engine/src/programme/rollout/index.ts';
import { bestPlan, everyPlan } from './everyPlan.ts';
import { madePlan, madeRollout } from './madeRollouts.ts';

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

it('tells every plan once: orders times shares among crews times cuts into trips', () => {
  const cuts = (stops: number) => (stops === 0 ? 1 : 2 ** (stops - 1));
  for (const jobs of [1, 2, 3, 4]) {
    const seen = new Set<string>();
    let told = 0;
    everyPlan(jobs, 2, false, (tripsOf) => {
      told++;
      seen.add(
        tripsOf
          .map(
            ({ stops, ends, trips_count }) =>
              `${stops.slice(0, trips_count && ends[trips_count - 1])}|${ends.slice(0, trips_count)}`,
          )
          .join('/'),
      );
    });
    let wanted = 0;
    for (let first = 0; first <= jobs; first++) wanted += factorial(jobs) * cuts(first) * cuts(jobs - first);
    expect([told, seen.size]).toEqual([wanted, wanted]);
  }
});

it('no drawn plan of 60 tiny programmes that can be done waits less than the best of all', () => {
  let [found, compared] = [0, 0];
  for (let seed = 1; seed <= 60; seed++) {
    const kind = { jobs: [4, 4], crews: [2, 2], horizon_days: [60, 90], trouble_fraction: 0.25 } as const;
    const problem = madeRollout(seed, kind);
    const ready = retiming(problem);
    const best = bestPlan(problem);
    if (best === null) continue;
    found++;
    const outcome = evaluatePlan(problem, best.plan);
    expect(outcome.waiting).toBeCloseTo(best.waiting, 6);
    for (let draw = 0; draw < 40; draw++) {
      const { waiting, broken } = evaluatePlan(ready, madePlan(problem, seed * 1000 + draw, true));
      if (broken.some(({ kind: broke }) => broke !== 'late' && broke !== 'sleepsAtSite')) continue;
      compared++;
      expect(waiting).toBeGreaterThanOrEqual(best.waiting - 1e-6);
    }
  }
  expect(found).toBeGreaterThan(25);
  expect(compared).toBeGreaterThan(300);
});
