import { expect, it } from 'vitest';
import { evaluatePlan, retiming } from '../../packages/engine/src/programme/rollout/index.ts';
import { stateFor } from '../../packages/engine/src/programme/rollout/planRollout.ts';
import { Draws } from '../../packages/engine/src/programme/rollout/search/draws.ts';
import { madePlan, madeRollout } from './madeRollouts.ts';

/** A day over the time promised counts as ten days of waiting: docs/methods/rollout.md, "The search for plans of crews". */
const lateFactor = 10;

it('the search times a plan as the evaluator does: 250 plans that can be done', () => {
  let compared = 0;
  const otherwise: string[] = [];
  for (let seed = 1; compared < 250 && seed < 20_000; seed++) {
    const trouble_fraction = [0, 0.05, 0.15][seed % 3]!;
    const problem = madeRollout(seed, { jobs: [2, 6], crews: [1, 3], horizon_days: [80, 140], trouble_fraction });
    const plan = madePlan(problem, seed, true);
    const { waiting, broken } = evaluatePlan(problem, plan);
    if (broken.some(({ kind }) => kind !== 'late' && kind !== 'sleepsAtSite')) continue;
    compared++;
    const state = stateFor(retiming(problem), new Draws(seed));
    state.load(plan.trips.map((trips) => trips.map((trip) => ({ ...trip, stops: trip.stops.map((job) => job + 1) }))));
    const late = broken.reduce(
      (sum, one) => sum + (one.kind === 'late' ? lateFactor * problem.jobs[one.job]!.weight * one.by : 0),
      0,
    );
    const cost = state.cost();
    if (!(Math.abs(cost - waiting - late) <= 1e-6 * Math.max(1, waiting)))
      otherwise.push(`seed ${seed}: ${cost}, ${waiting} and ${late} for being late`);
  }
  expect(otherwise).toEqual([]);
  expect(compared).toBe(250);
});
