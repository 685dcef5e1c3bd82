import type { DayIndex } from './days.ts';
import type { EngineProblemCode } from './engineProblems.ts';
import type { Verdict } from './verdicts.ts';

/** What drives the water through a unit. */
export const drives = ['gravity', 'handPump', 'rated'] as const;
export type Drive = (typeof drives)[number];

/** The line at the taps in one of the two hours that most people come in. */
export interface PeakFinding {
  readonly peak: 'morning' | 'evening';
  readonly asked_L: number;
  /** What unit and taps give in that hour, as the set is now. */
  readonly possible_L: number;
  /** What the last one waits, as the set is now, and at the unfavourable end: worn, with the margin asked; null where that has no end within the day. */
  readonly lastWait_min: number | null;
  readonly lastWaitWorn_min: number | null;
}

/** What the last test with air under pressure says. */
export interface PressureTestFinding {
  readonly testedOn: DayIndex;
  readonly pressure_kPa: number;
  /** The smallest hole that lets air through at that pressure: smaller ones are not seen. */
  readonly smallestSeen_um: number;
  /** Log reduction of what is larger than such a hole that the fall supports; null where volume or flow is not known. */
  readonly supports_log10: number | null;
  /** The fall at which so much is no longer supported as is claimed of protozoa; null where nothing is claimed. */
  readonly fallLimit_kPa_per_min: number | null;
}

/** What one treatment unit passes. */
export interface TreatmentFinding {
  /** Null where a site that is to be judged has no unit. */
  readonly serial: string | null;
  readonly partId: string | null;
  readonly verdict: Verdict;
  /** The assumption or the missing fact that keeps it from holding. */
  readonly cappedBy: EngineProblemCode | null;
  readonly drive: Drive | null;
  /** Across its membranes. */
  readonly pressure_kPa: number | null;
  readonly waterTemperature_C: number;
  /** With what drives the water and its temperature: a clean set, the set as it is now (clean where nothing was read), and one that is due to be changed (with a hand pump, somebody nobody chose at it). */
  readonly flowClean_L_per_h: number | null;
  readonly flowNow_L_per_h: number | null;
  readonly flowWorn_L_per_h: number | null;
  /** Resistance over that of a clean set, by the last reading that can be used; null where there is none. */
  readonly resistanceNow_ratio: number | null;
  /** What the one who pumps gives, and how it feels; null where there is no hand pump or its piston is not known. */
  readonly pumpPower_W: number | null;
  readonly strokes_per_min: number | null;
  readonly handForce_N: number | null;
  /** On the day that asks for most, of this unit's share; with what goes back through it. */
  readonly asked_L_per_day: number | null;
  readonly treated_L_per_day: number | null;
  readonly backwash_min_per_day: number | null;
  /** Backwash among them; null where no number of hours would do. The second at the unfavourable end, worn and with the margin asked. */
  readonly hoursNeeded_h: number | null;
  readonly hoursNeededWorn_h: number | null;
  readonly peaks: readonly PeakFinding[];
  /** The mean wait at the taps in the morning's hour if people came one by one at random, as a check; null where the line has no end. */
  readonly meanWait_min: number | null;
  /** Head it takes at the flow of all its taps, clean; null where not known. */
  readonly unitHead_m: number | null;
  readonly pressureTest: PressureTestFinding | null;
}
