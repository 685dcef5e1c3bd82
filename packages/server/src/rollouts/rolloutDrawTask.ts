import { type FinishDates, finishDates, type WaitingBounds } from '@eavewell/engine';
import type { JobAround } from '@eavewell/work';
import type { DrawStart } from './rolloutAsks.ts';
import { boundsOf } from './rolloutSearchTask.ts';

/** Futures of a plan, and the bounds of its rollout. */
export interface DrawnFound {
  readonly futures: FinishDates;
  readonly bounds: WaitingBounds | null;
}

/** Futures, and the seed they are drawn with: the same plan has the same futures. Ours, as the command has it. */
const [futures_count, seed] = [2000, 1] as const;

/** Draws futures of a plan. */
export async function rolloutDrawTask(
  { problem, plan, weather, bounds }: DrawStart,
  around: JobAround,
): Promise<DrawnFound> {
  const futures = finishDates(problem, plan, {
    ...{ seed, replicates_count: futures_count, weather },
    budget: { left: () => 1, report: (done) => around.report(done), stopped: () => around.stopped() },
  });
  return { futures, bounds: await boundsOf(problem, bounds) };
}
