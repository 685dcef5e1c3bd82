import type { Verdict } from './verdicts.ts';

/** What one settling tank lets go of and keeps. */
export interface SettlingFinding {
  readonly tankId: string;
  readonly verdict: Verdict;
  /** Flow over plan area, in the hours people pump and in the storm; null where not known. */
  readonly overflowRateByDay_m_per_h: number | null;
  readonly overflowRateInStorm_m_per_h: number | null;
  /** Share of the grain asked about that settles. */
  readonly settledByDay_fraction: number | null;
  readonly settledInStorm_fraction: number | null;
  readonly sludge_L_per_year: number | null;
  /** Until the sludge comes near the draw-off. */
  readonly cleanAfter_months: number | null;
}
