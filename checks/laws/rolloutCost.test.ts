import { expect, it } from 'vitest';
import {
  budgetOfTries,
  evaluatePlan,
  type Outcome,
  planRollout,
} from '../../packages/engine/src/programme/rollout/index.ts';
import { madeRollout } from '../twins/madeRollouts.ts';

const grave = ({ broken }: Outcome) => broken.filter(({ kind }) => kind !== 'late').length;

it('a cheaper plan costs no more than the quickest, makes people wait hardly longer and breaks no more', () => {
  let [cheaper, waited_more, shared] = [0, 0, 0];
  for (let seed = 1; seed <= 24; seed++) {
    const kind = { jobs: [13, 18], crews: [2, 3], horizon_days: [150, 200], trouble_fraction: 0.15 } as const;
    const problem = madeRollout(seed, kind);
    const start = planRollout(problem, { budget: budgetOfTries(256), seed });
    const locked = start.plan.trips.map((own) => own.map((trip, at) => ({ ...trip, isLocked: at === 0 })));
    const asked = { seed, start: { trips: locked }, costWithin_fraction: 0.15 };
    const found = planRollout(problem, { ...asked, budget: budgetOfTries(3072) });
    if (seed === 1) expect(found).toEqual(planRollout(problem, { ...asked, budget: budgetOfTries(3072) }));
    const { before, outcome, plan } = found;
    // The quickest: the same search without the share that is for cost.
    const quickest = planRollout(problem, { seed, start: asked.start, budget: budgetOfTries(0.75 * 3072) }).outcome;
    expect([quickest.waiting, quickest.cost]).toEqual([before!.waiting, before!.cost]);
    expect(outcome).toEqual(evaluatePlan(problem, plan));
    expect(outcome.cost).toBeLessThanOrEqual(before!.cost);
    expect(outcome.waiting).toBeLessThanOrEqual(1.15 * before!.waiting);
    expect(grave(outcome)).toBeLessThanOrEqual(grave(quickest));
    for (const [crew, own] of locked.entries()) if (own.length > 0) expect(plan.trips[crew]![0]).toEqual(own[0]);
    if (outcome.cost < before!.cost) cheaper++;
    if (outcome.waiting > before!.waiting) waited_more++;
    if (problem.stores.some(({ filledBy }) => filledBy !== null)) shared++;
  }
  expect(cheaper).toBeGreaterThan(3);
  expect(waited_more).toBeGreaterThan(0);
  expect(shared).toBeGreaterThan(0);
});
