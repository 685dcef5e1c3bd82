import {
  bestLift_kg,
  handHeight_cm,
  handHeightLoss_per_cm,
  reach_cm,
  travel_cm,
  travelBase_factor,
  travelShare_cm,
  turnLoss_per_deg,
  turnMost_deg,
} from './constants.ts';

/** A lift with both hands. */
export interface Lift {
  /** From the ankles out to the hands. */
  readonly reach_cm: number;
  /** Of the hands above the floor, where it begins. */
  readonly handHeight_cm: number;
  /** How far it goes up or down. */
  readonly travel_cm: number;
  readonly turn_deg: number;
  /** From the tables of the equation, 0 to 1. */
  readonly frequency_factor: number;
  readonly grip_factor: number;
}

/** What each side of a lift leaves of the best one: 1 is the best, 0 means that nobody should lift so. */
export interface LiftFactors {
  readonly reach_factor: number;
  readonly handHeight_factor: number;
  readonly travel_factor: number;
  readonly turn_factor: number;
  readonly frequency_factor: number;
  readonly grip_factor: number;
}

/**
 * What does each side of a lift leave of the best one?
 *
 * @param lift - reach, height, way [cm], turn [degree] and the factors of frequency and grip [factor]
 * @returns the factors [factor], 0 where a measure is beyond what the equation allows; null where one is no measure
 * @law none is above 1
 * @source niosh-94-110, multipliers: 25/H, 1 − 0.003|V − 75|, 0.82 + 4.5/D, 1 − 0.0032A
 */
export function liftFactors(lift: Lift): LiftFactors | null {
  const { reach_cm: reach, handHeight_cm: height, travel_cm: travel, turn_deg: turn } = lift;
  const { frequency_factor, grip_factor } = lift;
  const measures = [reach, height, travel, turn, frequency_factor, grip_factor];
  if (!measures.every((one) => Number.isFinite(one) && one >= 0)) return null;
  if (frequency_factor > 1 || grip_factor > 1) return null;
  return {
    reach_factor: reach > reach_cm.most ? 0 : reach_cm.best / Math.max(reach, reach_cm.best),
    handHeight_factor:
      height > handHeight_cm.most ? 0 : 1 - handHeightLoss_per_cm * Math.abs(height - handHeight_cm.best),
    travel_factor: travel > travel_cm.most ? 0 : travelFactor(travel),
    turn_factor: turn > turnMost_deg ? 0 : 1 - turnLoss_per_deg * turn,
    frequency_factor,
    grip_factor,
  };
}

function travelFactor(travel: number): number {
  return travelBase_factor + travelShare_cm / Math.max(travel, travel_cm.least);
}

/**
 * How much may be lifted so?
 *
 * @param factors - what each side of the lift leaves of the best one [factor]
 * @returns recommended limit [kg]
 * @source niosh-94-110, equation: 23 kg × HM × VM × DM × AM × FM × CM
 */
export function limitOfFactors_kg(factors: LiftFactors): number {
  return Object.values(factors).reduce<number>((limit, factor) => limit * factor, bestLift_kg);
}

/**
 * How much may one person lift in a lift like this? At most 23 kg, and mostly far less.
 *
 * @param lift - reach, height, way [cm], turn [degree] and the factors of frequency and grip [factor]
 * @returns recommended limit [kg]: 0 where nobody should lift so; null where a measure is no measure
 * @law a longer reach, a farther way or a larger turn never allows more
 * @source niosh-94-110, equation
 */
export function liftingLimit_kg(lift: Lift): number | null {
  const factors = liftFactors(lift);
  return factors === null ? null : limitOfFactors_kg(factors);
}
