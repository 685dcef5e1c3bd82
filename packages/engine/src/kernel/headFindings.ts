import type { Verdict } from './verdicts.ts';

/** The way of the water from the tanks of one body of water to the taps. */
export interface HeadFinding {
  readonly tankIds: readonly string[];
  readonly verdict: Verdict;
  /** With every tap open. */
  readonly flowWanted_L_per_min: number | null;
  /** Flow without a hand pump, with the tank at its outlet and at its overflow. */
  readonly flowLow_L_per_min: number | null;
  readonly flowFull_L_per_min: number | null;
  /** Head left at the taps at the flow wanted, the tank at its outlet; below 0: so much is missing. */
  readonly headLeft_m: number | null;
  /** What the hand pump must add; null where nothing, or there is none. */
  readonly pumpAdds_m: number | null;
  readonly pumpPower_W: number | null;
}
