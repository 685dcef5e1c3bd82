import { mostCredited } from './constants.ts';
import { byClass, type Reductions, type StatedReductions } from './reductions.ts';

/**
 * Why a barrier is believed: a challenge test of the very model with the class of germs, a credit of an authority, or nothing. A stated pore size is
 * nothing: a membrane of 15 nm pores was seen to hold back anything from hardly any virus to all of them.
 */
export type BarrierEvidence = 'challengeTest' | 'credited' | 'none';

/** One barrier of a row: a cartridge, a dose of chlorine, boiling. */
export interface Barrier {
  readonly barrierId: string;
  readonly evidence: BarrierEvidence;
  /** What is claimed for it; null where nothing is stated, which earns nothing. */
  readonly claimed: StatedReductions;
  /** The most it may be credited with, where that is less than for any barrier: for example what its test of tightness can see. */
  readonly most: StatedReductions | null;
}

/**
 * With how much may a barrier be credited? What is claimed, where there is evidence for it, and never more than its own most and the most of any barrier.
 *
 * @param barrier - the barrier: claims and most by class [log10]
 * @returns credited log reduction by class [log10], 0 or more
 * @law never more than claimed, nor than the most; 0 without evidence
 * @source who-gdwq-4, Table 7.8 (from memory); the rule itself is ours, docs/decisions/0222-credited-log-reduction.md
 */
export function creditedReductions(barrier: Barrier): Reductions {
  return byClass((field) => {
    const claimed_log10 = barrier.claimed[field];
    if (barrier.evidence === 'none' || claimed_log10 === null || !(claimed_log10 > 0)) return 0;
    const own_log10 = barrier.most?.[field] ?? Infinity;
    return Math.max(0, Math.min(claimed_log10, own_log10, mostCredited[field]));
  });
}

/**
 * What do barriers one after another take out together? Each takes its share of what the one before let through, so that log reductions add up.
 *
 * @param barriers - the barriers, in any order
 * @returns credited log reduction by class [log10]
 * @law never more than the sum of what each barrier is credited with; one more barrier never makes it less
 * @source who-hwt-2011, barriers in a row (from memory)
 */
export function rowReductions(barriers: readonly Barrier[]): Reductions {
  const credited = barriers.map(creditedReductions);
  return byClass((field) => credited.reduce((sum, one) => sum + one[field], 0));
}
