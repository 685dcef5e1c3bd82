import type { EngineProblemCode } from './engineProblems.ts';
import type { Problem } from './problems.ts';
import type { Range } from './range.ts';
import type { WorkingLine } from './working.ts';

/** Where a storm comes from: someone states it, a coefficient set, a record of short intervals, or the wettest days and a stated share. */
export const stormOrigins = ['stated', 'coefficients', 'shortRecord', 'dailyMaxima'] as const;
export type StormOrigin = (typeof stormOrigins)[number];

/** Five minutes of rain so hard that it comes once in so many years. */
export interface DesignStorm {
  readonly gaugeId: string;
  readonly returnPeriod_years: number;
  readonly intensity_mm_per_h: number;
  /** Null where none is stated and none follows. */
  readonly intensity_range: Range | null;
  readonly from: StormOrigin;
  /** Who says so; null where that is not stated. */
  readonly source: string | null;
  /** Years of maxima it was fitted to; null where it was not. */
  readonly years_count: number | null;
  /** The assumption that keeps what is judged by it from holding. */
  readonly cappedBy: EngineProblemCode | null;
}

/** What is said of a storm at the sites that are judged by it. */
export interface StormTold {
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** Rain of short intervals by how hard it fell, hardest last: what rain of each intensity and more comes to. */
export interface RainByIntensity {
  /** Each once, rising. */
  readonly intensities_mm_per_h: Float64Array;
  /** Rain that fell as hard or harder, and how long it fell. */
  readonly asHard_mm: Float64Array;
  readonly asHard_min: Float64Array;
}
