export { type BurdenRange, burdenRange, type DrunkRange, type RawRange, rawWithin_per_L } from './burdenRange.ts';
export {
  australianPathogens,
  type GuidelineValue,
  guidelineValues,
  mostCredited,
  referencePathogens,
  type Substance,
  tolerableBurden_DALY_per_person_per_year,
} from './constants.ts';
export { type Barrier, type BarrierEvidence, creditedReductions, rowReductions } from './creditedReductions.ts';
export {
  betaPoissonInfection_fraction,
  doseThatInfects_organisms,
  exponentialInfection_fraction,
  infection_fraction,
  lowDoseInfection_fraction,
} from './doseResponse.ts';
export { exactBetaPoisson_fraction } from './exactBetaPoisson.ts';
export type { DoseResponse, GermClass, PathogenId, ReferencePathogen } from './germs.ts';
export {
  meanReduction_log10,
  type ParallelCartridge,
  parallelReduction_log10,
  reductionWithDaysOff_log10,
  type WaterShare,
} from './meanReduction.ts';
export { performanceTier_count } from './performanceTier.ts';
export type { Reductions, StatedReductions } from './reductions.ts';
export {
  type ChemistryWarning,
  type ChemistryWarningCode,
  type CollectionGiven,
  collectionWarnings,
  type OverGuideline,
  overGuideline,
} from './roofChemistry.ts';
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
  type EffectiveReduction,
  effectiveReductions,
  type MeanOf,
  yearOfDrinking,
} from './yearOfDrinking.ts';
