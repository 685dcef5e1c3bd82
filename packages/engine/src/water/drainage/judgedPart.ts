import {
  type DrainagePart,
  type DrainagePartFinding,
  type EngineProblemCode,
  type Verdict,
  verdictOf,
} from '../../kernel/index.ts';
import type { StormFlow } from './siteStorm.ts';
import { type PartCarrying, smallestThatHolds } from './smallestThatHolds.ts';

/** A part as it was judged, and the assumption that alone keeps it from holding. */
export interface JudgedPart {
  readonly finding: DrainagePartFinding;
  readonly cappedBy: EngineProblemCode | null;
}

/** A part to be judged. */
export interface PartCase {
  readonly part: DrainagePart;
  readonly id: string;
  readonly roofId: string | null;
  /** Null where it is not known. */
  readonly flow: StormFlow | null;
  readonly capacity_L_per_s: number | null;
  /** Assumptions it was judged by that may be kinder than the facts. */
  readonly caps: readonly (EngineProblemCode | null)[];
  /** What could be bought in its place. */
  readonly choices: readonly PartCarrying[];
}

/** Does this part carry what the storm brings to it, and what would in its place? */
export function judgedPart({ part, id, roofId, flow, capacity_L_per_s, caps, choices }: PartCase): JudgedPart {
  const flows = { flow_L_per_s: flow?.flow_L_per_s ?? null, flow_L_per_s_range: flow?.flow_L_per_s_range ?? null };
  if (flow === null || capacity_L_per_s === null) {
    const unknown = {
      capacity_L_per_s,
      use_fraction: null,
      verdict: 'unknown',
      smallestPartId: null,
      smallest_mm: null,
    } as const;
    return { finding: { part, id, roofId, ...flows, ...unknown }, cappedBy: null };
  }
  const byFigures = verdictOf(flow.flow_L_per_s <= capacity_L_per_s, flow.flow_L_per_s_range.high <= capacity_L_per_s);
  const cap = byFigures === 'holds' ? (caps.find((code) => code !== null) ?? null) : null;
  const verdict: Verdict = cap === null ? byFigures : 'tight';
  const smallest = byFigures === 'holds' ? null : smallestThatHolds(choices, flow.flow_L_per_s_range.high);
  const finding: DrainagePartFinding = {
    part,
    id,
    roofId,
    ...flows,
    capacity_L_per_s,
    use_fraction: capacity_L_per_s > 0 ? flow.flow_L_per_s / capacity_L_per_s : null,
    verdict,
    smallestPartId: smallest?.partId ?? null,
    smallest_mm: smallest?.size_mm ?? null,
  };
  return { finding, cappedBy: cap };
}
