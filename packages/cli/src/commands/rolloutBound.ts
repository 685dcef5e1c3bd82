import { type Outcome, type RolloutProblem, tripPricesBound, type WaitingBounds, withBound } from '@eavewell/engine';
import { spoken } from '../language.ts';
import type { Context } from './context.ts';

const { rollout: words } = spoken.commandLine;

/** Pairs of stops a round of the bound may look at for each second it has [count/s]: some hundred rounds on a slow machine. */
const pairs_count_per_s = 1.6e6;

/** The bounds, and beside them the strong one where it was asked for: searched for so many seconds of the clock, and told as it goes. */
export function boundsAndStrong(
  bounds: WaitingBounds | null,
  problem: RolloutProblem,
  outcome: Outcome,
  strong_seconds: number | null,
  { progress }: Context,
): WaitingBounds | null {
  if (strong_seconds === null || problem.jobs.length === 0) return bounds;
  const started = Date.now();
  const left = () => 1 - (Date.now() - started) / (1000 * strong_seconds);
  const report = (waiting: number) => {
    const gap = waiting > 0 ? Math.max(0, outcome.waiting / waiting - 1) : null;
    progress.at(() => words.bounding(Math.max(0, left()), gap));
  };
  const budget = { left, report, stopped: () => false };
  const strong = tripPricesBound(problem, outcome, { budget, mostPairs_count: strong_seconds * pairs_count_per_s });
  return withBound(bounds, strong);
}
