export { airDensity_kg_per_m3, airViscosity_Pas } from './air.ts';
export { type AirTest, airToWaterSmooth_ratio, airToWaterStirred_ratio } from './airThroughDefects.ts';
export { leastTestPressure_kPa, roundAndWetted, smallestDefect_um, type Wetting } from './bubblePoint.ts';
export { type CutFibreLeak, type CutFibres, cutFibreLeak } from './cutFibres.ts';
export {
  type Backwash,
  hoursNeeded_h_per_day,
  litresPossible_L_per_day,
  membraneArea_m2,
  treatedLitres_L_per_day,
} from './dayOfTreating.ts';
export { erlangMeanWait_min, erlangWaiting_fraction } from './erlangC.ts';
export { handleForce_N, strokeFlow_L_per_min, strokeVolume_L } from './handStrokes.ts';
export { type FlowLimit, type KeptUpFlow, keptUpFlow, type PumpAtHand, type UnitAtWork } from './keptUpFlow.ts';
export {
  lineByMinute_L,
  type PeakDay,
  type PeakLine,
  peakArrivals_L_per_min,
  peakLines,
  tapsFlow_L_per_min,
} from './peakLines.ts';
export { type DecayTest, decayLimit_kPa_per_min, decayReduction_log10 } from './pressureDecay.ts';
export { treatmentFindings } from './treatmentFindings.ts';
export type { TreatmentGiven } from './treatmentGiven.ts';
export { unitHead_m } from './unitHead.ts';
