import type { EngineProblemCode } from './engineProblems.ts';
import type { Verdict } from './verdicts.ts';

/** May tanks be filled and handed over? `closed`: one on a stand has no signature. */
export const standGates = ['notNeeded', 'closed', 'open'] as const;
export type StandGate = (typeof standGates)[number];

/** What a stand can fail by: the ground gives way, the wind tips it or pushes it along, or takes the tank off it. */
export const standLacks = ['bearing', 'overturning', 'sliding', 'fastening'] as const;
export type StandLack = (typeof standLacks)[number];

/** How many times the wind's push could grow before something tips or slides; null where that is not known. */
export interface StandSafety {
  readonly overturning_factor: number | null;
  readonly sliding_factor: number | null;
}

/** What one tank does to its stand and ground: screening sums, no design. Null is not known. */
export interface StandFinding {
  readonly tankId: string;
  readonly verdict: Verdict;
  readonly standHeight_m: number | null;
  /** The most the tank can hold: to its rim, as an overflow may be blocked. */
  readonly mostHeld_L: number | null;
  /** Tank and stand, with nothing in it and with the most it can hold. */
  readonly massEmpty_kg: number | null;
  readonly massFull_kg: number | null;
  readonly bearing_kPa: number | null;
  /** What the ground is presumed to carry: the lowest of the listings. */
  readonly bearingAllowed_kPa: number | null;
  readonly bearingUse_factor: number | null;
  /** The wind it is held against, and its push on the tank. */
  readonly windSpeed_m_per_s: number | null;
  readonly windForce_N: number | null;
  /** Tank and stand as one. */
  readonly empty: StandSafety;
  readonly full: StandSafety;
  /** The empty tank alone on top of its stand; null on the ground. */
  readonly loose: StandSafety | null;
  /**
   * Water that would keep tank and stand, and a tank that is not fastened on its stand, from tipping and sliding in that wind; 0: none is needed. Null
   * where none would do, or it is not known. Where nobody says whether it is fastened, it holds only if it is.
   */
  readonly leastHeld_L: number | null;
  /** What it fails by, at the point. */
  readonly lacks: readonly StandLack[];
  /** The assumption that keeps it from holding: the code of its problem; null where there is none. */
  readonly cappedBy: EngineProblemCode | null;
}
