export {
  type BurdenRange,
  burdenRange,
  burdenRangeOfWaters,
  type DrunkRange,
  type RawRange,
  valueWithin,
} from './burdenRange.ts';
export {
  australianPathogens,
  type GuidelineValue,
  guidelineValues,
  mostCredited,
  referencePathogens,
  type Substance,
  tolerableBurden_DALY_per_person_per_year,
} from './constants.ts';
export { creditedReductions, rowReductions, type StatedBarrier } from './creditedReductions.ts';
export {
  betaPoissonInfection_fraction,
  doseThatInfects_organisms,
  exponentialInfection_fraction,
  infection_fraction,
  lowDoseInfection_fraction,
} from './doseResponse.ts';
export { exactBetaPoisson_fraction } from './exactBetaPoisson.ts';
export type { DoseResponse, ReferencePathogen } from './germs.ts';
export {
  meanReduction_log10,
  type ParallelCartridge,
  parallelReduction_log10,
  reductionWithDaysOff_log10,
  type WaterShare,
} from './meanReduction.ts';
export { type OverGuideline, overGuideline } from './overGuideline.ts';
export { performanceTier_count } from './performanceTier.ts';
export { type RoofLooked, type RoofWarningCode, roofWarnings } from './roofWarnings.ts';
export { isSafetyJudged, type SafetyGiven, safetyFinding } from './safetyFinding.ts';
export { safetyInDoubt } from './safetyInDoubt.ts';
export { staysInWater, type TreatmentKind, type WaterTrouble } from './staysInWater.ts';
export {
  type DaysAtRisk,
  neededReduction_log10,
  type YearlyBurden,
  yearlyBurden,
  yearlyInfection_fraction,
} from './yearlyBurden.ts';
export {
  type DirtiedAgain,
  type DrinkersGroup,
  type DrinkingGiven,
  drunk_per_L,
  type EffectiveReduction,
  effectiveReductions,
  type MeanOf,
  yearOfDrinking,
} from './yearOfDrinking.ts';
export {
  neededOfWaters_log10,
  type SecondWater,
  sourceDaysByYear,
  yearOfWaters,
} from './yearOfWaters.ts';
