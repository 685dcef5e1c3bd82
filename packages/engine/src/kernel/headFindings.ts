import type { PipeLeg } from './buildingFacts.ts';
import type { EngineProblemCode } from './engineProblems.ts';
import type { Verdict } from './verdicts.ts';

/** What one pipe, or the treatment unit between the pipes, takes of the head at the flow wanted. */
export interface HeadSegment {
  /** Null for the treatment unit. */
  readonly pipeId: string | null;
  readonly leg: PipeLeg | null;
  readonly bore_mm: number | null;
  readonly length_m: number | null;
  readonly velocity_m_per_s: number | null;
  /** To its wall, and to what stands in it; all that the unit takes is in the second. */
  readonly friction_m: number;
  readonly minor_m: number;
}

/** Places on the way of the water from a tank to the taps. */
export const headPlaces = ['tank', 'pipe', 'unitInlet', 'unitOutlet', 'tap'] as const;
export type HeadPlace = (typeof headPlaces)[number];

/** A point of the line to which the water would rise: over the ground of the tanks, at the flow wanted, the tank at its outlet. */
export interface GradePoint {
  readonly place: HeadPlace;
  /** The pipe that ends there; null at the tank and behind the unit. */
  readonly pipeId: string | null;
  /** Along the pipes from the tank. */
  readonly along_m: number;
  /** Height of the place itself; null between places that were measured. */
  readonly elevation_m: number | null;
  readonly grade_m: number;
}

/** The way of the water from the tanks of one body of water to the taps. Heights are above the ground the tanks stand on. */
export interface HeadFinding {
  /** Empty where a site that is to be judged has no tank or no pipe. */
  readonly tankIds: readonly string[];
  readonly verdict: Verdict;
  /** The assumption that keeps it from holding. */
  readonly cappedBy: EngineProblemCode | null;
  /** With every tap open. */
  readonly flowWanted_L_per_min: number | null;
  /** Of the water, with the tank at its outlet and at its overflow. */
  readonly lowLevel_m: number | null;
  readonly fullLevel_m: number | null;
  /** How far the taps, and the inlet of the unit, lie below the outlet of the tank; under 0: above it. */
  readonly fallToTap_m: number | null;
  readonly fallToUnit_m: number | null;
  /** What pipes and unit take at the flow wanted. */
  readonly lossToUnit_m: number | null;
  readonly lossInUnit_m: number | null;
  readonly lossToTap_m: number | null;
  /** Flow without a hand pump, with the tank at its outlet and at its overflow. */
  readonly flowLow_L_per_min: number | null;
  readonly flowFull_L_per_min: number | null;
  /** Head left at the taps at the flow wanted, the tank at its outlet and at its overflow; below 0: so much is missing. */
  readonly headLeft_m: number | null;
  readonly headLeftFull_m: number | null;
  readonly hasHandPump: boolean;
  /** What the hand pump must add; null where there is none. */
  readonly pumpAdds_m: number | null;
  /** What one person must give at its handle for all the taps. */
  readonly pumpPower_W: number | null;
  /** What one person can keep up; null where the water comes by itself. */
  readonly onePerson_L_per_min: number | null;
  /** How far the pump draws water up, losses included; 0: it runs to it. Null where there is no pump. */
  readonly suction_m: number | null;
  /** Pipe by pipe, in the order of the water. */
  readonly segments: readonly HeadSegment[];
  readonly grade: readonly GradePoint[];
  /** The narrowest bore of all its pipes with which it holds; null where none does. */
  readonly leastBore_mm: number | null;
  /** The narrowest pipe of the catalogue with which it holds; null where none does. */
  readonly leastPartId: string | null;
  readonly leastPart_mm: number | null;
}
