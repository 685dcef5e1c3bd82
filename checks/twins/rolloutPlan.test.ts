import { expect, it } from 'vitest';
import {
  brokenKinds,
  budgetOfTries,
  planRollout,
  type Retiming,
  type RolloutProblem,
} from '../../packages/engine/src/programme/rollout/index.ts';
import { bestPlan } from './everyPlan.ts';
import { madeRollout } from './madeRollouts.ts';

/** A day over the time promised counts as ten days of waiting: docs/methods/rollout.md, "The search for plans of crews". */
function priced(problem: RolloutProblem, waiting: number, late: Iterable<readonly [number, number]>): number {
  let sum = waiting;
  for (const [job, by] of late) sum += 10 * problem.jobs[job]!.weight * by;
  return sum;
}

const lateKind = brokenKinds.indexOf('late');

function* lateIn({ broken }: Retiming): Iterable<readonly [number, number]> {
  for (let at = 0; at < broken.count; at++) if (broken.kind[at] === lateKind) yield [broken.what[at]!, broken.by[at]!];
}

it('the search finds the best of all plans of 100 tiny programmes and more', () => {
  let compared = 0;
  const worse: string[] = [];
  for (let seed = 1; compared < 100; seed++) {
    const jobs = seed % 40 === 0 ? 5 : 4;
    const kind = { jobs: [jobs, jobs], crews: [2, 2], horizon_days: [60, 90], trouble_fraction: 0.2 } as const;
    const problem = madeRollout(seed, kind);
    const best = bestPlan(problem, { price: (waiting, ready) => priced(problem, waiting, lateIn(ready)) });
    if (best === null) continue;
    compared++;
    const { outcome } = planRollout(problem, { budget: budgetOfTries(1536), seed });
    const late = outcome.broken.flatMap((one) => (one.kind === 'late' ? [[one.job, one.by] as const] : []));
    const found = priced(problem, outcome.waiting, late);
    if (found > best.price + 1e-6)
      worse.push(`seed ${seed}: ${found} > ${best.price}, ${outcome.broken.map((one) => one.kind)}`);
  }
  expect(worse).toEqual([]);
});
