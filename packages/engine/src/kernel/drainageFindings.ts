import type { EngineProblemCode } from './engineProblems.ts';
import type { Range } from './range.ts';
import type { Verdict } from './verdicts.ts';

/** What the storm must pass, one after the other. */
export const drainageParts = ['gutter', 'outlet', 'downpipe', 'overflow'] as const;
export type DrainagePart = (typeof drainageParts)[number];

/** One gutter, its outlets, one downpipe, or the overflow of a body of water. */
export interface DrainagePartFinding {
  readonly part: DrainagePart;
  /** The gutter, the downpipe, or the first tank. */
  readonly id: string;
  readonly roofId: string | null;
  /** What the storm brings to it, and to the worst end of its range; null where that is not known. */
  readonly flow_L_per_s: number | null;
  readonly flow_L_per_s_range: Range | null;
  /** Null where it was not measured well enough. */
  readonly capacity_L_per_s: number | null;
  /** What the storm asks of what it carries; null where either is not known. */
  readonly use_fraction: number | null;
  readonly verdict: Verdict;
  /** The smallest part of the catalogue that holds; null where none does or this one does. */
  readonly smallestPartId: string | null;
  /** Its width or bore. */
  readonly smallest_mm: number | null;
}

/** What a first-flush chamber does. */
export interface FirstFlushFinding {
  readonly roofId: string;
  /** Depth on the plan roof that is let go. */
  readonly diverted_mm: number;
  readonly chamber_L: number | null;
  /** For the depth wanted on this roof. */
  readonly chamberWanted_L: number | null;
  readonly emptying_h: number | null;
  /** Rain that just keeps up with its hole while it is full. */
  readonly leak_mm_per_h: number | null;
  readonly isBlocked: boolean;
  /** Share of the roof's load that is left once it has diverted: a rule of thumb. */
  readonly loadLeft_fraction: number;
}

/** What the storm does to gutters, outlets, downpipes and overflows. */
export interface DrainageFinding {
  readonly verdict: Verdict;
  /** The storm it was judged by, at the site; null where none is known. */
  readonly storm_mm_per_h: number | null;
  readonly returnPeriod_years: number | null;
  readonly parts: readonly DrainagePartFinding[];
  /** Which of `parts` is fullest; null where none is known. */
  readonly governing: number | null;
  /** The hardest rain that everything carries; null where a capacity is not known. */
  readonly carries_mm_per_h: number | null;
  readonly firstFlush: readonly FirstFlushFinding[];
  /** Share of the rain that gutters too small lose; null where no record of short intervals says. */
  readonly lost_fraction: number | null;
  /** The assumption that keeps it from holding, where the figures alone would: the code of its problem. */
  readonly cappedBy: EngineProblemCode | null;
}
