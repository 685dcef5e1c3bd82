import { expect, it } from 'vitest';
import { tasks } from '../../packages/cli/src/threads/tasks.ts';
import { budgetOfTries, costWithin_fraction, planRollout, rolloutVariants } from '../../packages/engine/src/index.ts';
import { tinyRollout } from '../../packages/engine/src/programme/rollout/tinyRollout.testing.ts';

it('a plan made in a thread is the plan', async () => {
  const around = { report: () => {}, stopped: () => false };
  for (const { problem } of rolloutVariants(tinyRollout(4))) {
    const { outcome } = planRollout(problem, { seed: 3, budget: budgetOfTries(256), costWithin_fraction });
    const made = await tasks.plan({ problem, start: null, seed: 3, tries: 256, seconds: null }, around);
    expect(made).toEqual({ waiting: outcome.waiting, cost: outcome.cost, finish: outcome.finish, leftOut_count: 0 });
  }
});

it('sites that no trip serves are counted', async () => {
  const rollout = tinyRollout(2);
  const problem = { ...rollout, jobs: rollout.jobs.map((job, at) => (at === 0 ? job : { ...job, kg: 1e6 })) };
  const made = await tasks.plan(
    { problem, start: null, seed: 1, tries: 128, seconds: null },
    { report: () => {}, stopped: () => false },
  );
  expect(made.leftOut_count).toBe(1);
});
