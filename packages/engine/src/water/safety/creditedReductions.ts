import type { BarrierFinding, Reductions, StatedReductions } from '../../kernel/index.ts';
import { mostCredited } from './constants.ts';
import { byClass } from './reductions.ts';

/** One barrier of a row as it is stated: a membrane, a dose of chlorine, boiling. */
export interface StatedBarrier {
  readonly kind: BarrierFinding['kind'];
  readonly stated: StatedReductions;
  /** The most it may be credited with, where that is less than for any barrier: for example what its test of tightness can see. */
  readonly most: Reductions | null;
}

/**
 * With how much may a barrier be credited? What is stated, where a challenge test of the very product or a credit of an authority says so, and never more than its own most and
 * the most of any barrier. A membrane has its viruses from a challenge test alone: of pores of 15 nm some let through hardly any virus and some nearly all.
 *
 * @param barrier - the barrier: what is stated and the most by class [log10]
 * @returns credited log reduction by class [log10], 0 or more
 * @law never more than stated, nor than the most; 0 without evidence
 * @source who-gdwq-4, Table 7.8 (from memory)
 * @definition ours: docs/decisions/0222-credited-log-reduction.md
 */
export function creditedReductions(barrier: StatedBarrier): Reductions {
  const { kind, stated, most } = barrier;
  return byClass((field) => {
    const stated_log10 = stated[field];
    if (stated.evidence === null || stated.evidence === 'none') return 0;
    if (kind === 'membrane' && field === 'viruses_log10' && stated.evidence !== 'challengeTest') return 0;
    if (stated_log10 === null || !(stated_log10 > 0)) return 0;
    return Math.max(0, Math.min(stated_log10, most?.[field] ?? Infinity, mostCredited[field]));
  });
}

/**
 * What do barriers one after another take out together? Each takes its share of what the one before let through, so that log reductions add up.
 *
 * @param credited - what each is credited with by class [log10], in any order
 * @returns log reduction by class [log10]
 * @law the sum; one more barrier never makes it less
 * @source who-hwt-2011, barriers in a row (from memory)
 */
export function rowReductions(credited: readonly Reductions[]): Reductions {
  return byClass((field) => credited.reduce((sum, one) => sum + one[field], 0));
}
