import type { Verdict } from './verdicts.ts';

/** May tanks be filled and handed over? `closed`: one on a stand has no signature. */
export const standGates = ['notNeeded', 'closed', 'open'] as const;
export type StandGate = (typeof standGates)[number];

/** What one tank does to its stand and ground: screening sums, no design. */
export interface StandFinding {
  readonly tankId: string;
  readonly verdict: Verdict;
  readonly massFull_kg: number | null;
  readonly bearing_kPa: number | null;
  readonly bearingAllowed_kPa: number | null;
  /** Factors of safety in the wind. */
  readonly overturningEmpty_factor: number | null;
  readonly overturningFull_factor: number | null;
  readonly slidingEmpty_factor: number | null;
  readonly slidingFull_factor: number | null;
}
