import type { EngineProblemCode } from './engineProblems.ts';
import type { Verdict } from './verdicts.ts';

/** What a settling tank lets go of one size of grain; null where the flow is not known. */
export interface GrainLeaving {
  readonly grain_um: number;
  readonly leavesByDay_fraction: number | null;
  readonly leavesInStorm_fraction: number | null;
}

/** What one settling tank lets go of and keeps. Fine clay and germs stay in the water, whatever its verdict. */
export interface SettlingFinding {
  /** Null where a site that is to be judged has none. */
  readonly tankId: string | null;
  readonly verdict: Verdict;
  /** The assumption or the missing fact that keeps it from holding. */
  readonly cappedBy: EngineProblemCode | null;
  readonly planArea_m2: number | null;
  /** Mixed cells in a row: 1 where nothing is said of walls in it. */
  readonly cells_count: number;
  /** In the hours people pump on the day that asks for most, and in the storm; null where not known. */
  readonly flowByDay_L_per_s: number | null;
  readonly flowInStorm_L_per_s: number | null;
  /** Flow over plan area. */
  readonly overflowRateByDay_m_per_h: number | null;
  readonly overflowRateInStorm_m_per_h: number | null;
  /** The grain asked about, how fast it sinks, and what share of it settles. */
  readonly grain_um: number;
  readonly sinks_m_per_h: number | null;
  readonly settledByDay_fraction: number | null;
  readonly settledInStorm_fraction: number | null;
  /** After so long a tenth of the water has gone through by day. */
  readonly firstTenth_min: number | null;
  /** What leaves, from clay to sand; empty where it is not known. */
  readonly grains: readonly GrainLeaving[];
  /** Null where it is not known what roofs shed. */
  readonly sludge_L_per_year: number | null;
  /** Until the sludge comes near the draw-off; null where that is not known or never. */
  readonly cleanAfter_months: number | null;
}
