import type { Verdict } from '@eavewell/engine';
import type { CurveFrame } from './curveLines.ts';
import type { WaterCurve } from './waterCurve.ts';

/** A curve with the tank there is, and one that is proposed. */
export interface CurveInput {
  readonly curve: WaterCurve;
  readonly tankVolume_L: number;
  readonly verdict: Verdict;
  /** What is pointed at or tried; null where nothing is. */
  readonly proposed: { readonly tankVolume_L: number; readonly verdict: Verdict } | null;
  readonly longestDryRun_days: number;
}

/** The words of the curve, in the reader's language. */
export interface CurveWords {
  /** Heads of the two frames: `dry days a year`, `years of 32 with no dry run over 7 d`. */
  readonly dryDays: string;
  goodYears(judgedYears: number, longestDryRun_days: number): string;
  /** Where the width is small. */
  goodYearsNarrow(judgedYears: number, longestDryRun_days: number): string;
  /** `target: at most 18 d`, `target: 26 of 32` */
  daysTarget(days_per_year: number): string;
  yearsTarget(goodYears: number, judgedYears: number): string;
  /** `21.7 d`, `17 years` */
  daysAt(days_per_year: number): string;
  yearsAt(goodYears: number): string;
  count(count: number): string;
  /** `12,000` and `12,000 L` */
  size(volume_L: number): string;
  litres(volume_L: number): string;
  /** `to hold 24,100 L` */
  toHold(volume_L: number): string;
  /** `tank size in L; blue: in the catalogue` */
  readonly axis: string;
  /** `wanted: 214,000 L, beyond this` and `for the days: no tank would do` */
  beyond(volume_L: number): string;
  /** `sizes run one by one: nothing is known between` */
  readonly pointsOnly: string;
  /** What stands at the size pointed at. */
  at(volume_L: number, days_per_year: number | null, goodYears: number | null): string;
}

/** Both frames, and what they share. */
export interface CurveFrames {
  readonly days: CurveFrame;
  readonly years: CurveFrame;
  readonly width: number;
  readonly height: number;
}
