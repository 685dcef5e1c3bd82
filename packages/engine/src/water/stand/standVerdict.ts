import { type StandLack, type StandSafety, type Verdict, verdictOf } from '../../kernel/index.ts';
import { leastSafety_factor } from './constants.ts';
import type { StandChecks } from './standChecks.ts';

/** What the sums of a stand say. */
export interface StandJudged {
  readonly verdict: Verdict;
  readonly lacks: readonly StandLack[];
  /** It holds only if the tank is fastened to its stand, which nobody says. */
  readonly isFasteningAssumed: boolean;
}

interface Check {
  readonly lack: StandLack;
  /** What it has of what it needs, at the point and at the unfavourable end; null where that is not known. */
  readonly point_factor: number | null;
  readonly worst_factor: number | null;
}

/**
 * Do ground and weight hold a stand? Bearing with the most the tank can hold; tipping and sliding empty and full.
 *
 * @param checks - its sums [factor]
 * @param isFastened - is the tank fastened to its stand? null where nobody says
 * @param margin_fraction - what loads and wind may be more by, and the weight that resists the wind less [fraction]
 * @returns the verdict, what it fails by, and whether fastening was assumed
 * @law one check that fails at the point makes it short, whatever is not known beside; a larger margin never makes it better
 * @definition ours: docs/decisions/0184-wind-on-a-stand.md
 */
export function standVerdict(checks: StandChecks, isFastened: boolean | null, margin_fraction: number): StandJudged {
  const { bearingUse_factor: use, empty, full, loose } = checks;
  const bearing: Check = {
    lack: 'bearing',
    point_factor: use === null ? null : 1 / use,
    worst_factor: use === null ? null : 1 / (use * (1 + margin_fraction)),
  };
  const wind = [...safetyChecks(empty, margin_fraction), ...safetyChecks(full, margin_fraction)];
  const alone = loose === null ? [] : safetyChecks(loose, margin_fraction).map((one) => ({ ...one, lack: fastening }));
  const judged = [bearing, ...wind, ...(isFastened === false ? alone : [])];
  const failing = judged.filter(({ point_factor }) => point_factor !== null && point_factor < 1);
  const lacks = [...new Set(failing.map(({ lack }) => lack))];
  const isFasteningAssumed =
    isFastened === null && alone.some(({ worst_factor }) => !(worst_factor !== null && worst_factor >= 1));
  if (lacks.length > 0) return { verdict: 'short', lacks, isFasteningAssumed };
  if (judged.some(({ point_factor }) => point_factor === null))
    return { verdict: 'unknown', lacks, isFasteningAssumed };
  const meetsAtWorstEnd = judged.every(({ worst_factor }) => worst_factor! >= 1) && !isFasteningAssumed;
  return { verdict: verdictOf(true, meetsAtWorstEnd), lacks, isFasteningAssumed };
}

const fastening: StandLack = 'fastening';

/** Tipping and sliding: the wind may push more and the weight that resists it be less. */
function safetyChecks({ overturning_factor, sliding_factor }: StandSafety, margin_fraction: number): readonly Check[] {
  const check = (lack: StandLack, factor: number | null): Check => {
    const point_factor = factor === null ? null : factor / leastSafety_factor;
    const left_factor = (1 - margin_fraction) / (1 + margin_fraction);
    return { lack, point_factor, worst_factor: point_factor === null ? null : point_factor * left_factor };
  };
  return [check('overturning', overturning_factor), check('sliding', sliding_factor)];
}
