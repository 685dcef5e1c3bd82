export { bearingPressure_kPa, weight_kN } from './bearingPressure.ts';
export { commonlyExempt_L } from './commonlyExempt.ts';
export {
  type BearingFigure,
  bearingFigures,
  friction_factor,
  gust_factor,
  leastSafety_factor,
  ordinaryGround_kPa,
  roundTank_factor,
  roundTankForce_factor,
} from './constants.ts';
export { type MostHeld, mostHeld } from './mostHeld.ts';
export { presumptiveBearing } from './presumptiveBearing.ts';
export { standFindings } from './standFindings.ts';
export { isUnsigned, type SignedStand, standGate } from './standGate.ts';
export type { StandGiven } from './standGiven.ts';
export { litresOfMass_L, waterMass_kg } from './waterMass.ts';
export { exposureFactor, velocityPressure_Pa, type WindOn, windForce_N } from './windPressure.ts';
export { type PushedBody, type WindSafety, windSafety } from './windSafety.ts';
export { type WindInOtherUnit, windInOtherUnit } from './windUnits.ts';
