export {
  combinedPriority,
  type EcoliClass,
  ecoliBand,
  ecoliClass,
  type InspectionBandSet,
  type InspectionScore,
  inspectionBand,
} from './bands.ts';
export { meanWhenClean_per_sample, samplesByBinomial_count, samplesForClaim_count } from './cleanSamples.ts';
export { garwoodLimits_count } from './countLimits.ts';
export {
  boundWhenAll_per_100mL,
  boundWhenNone_per_100mL,
  type EcoliEstimate,
  ecoliEstimate,
} from './ecoliEstimate.ts';
export { type JarvisLimits, jarvisLimits } from './jarvisLimits.ts';
export {
  type Plate,
  type Portion,
  type PortionFault,
  portionFault,
  presenceAbsence,
  type UncountablePlate,
  type Wells,
} from './portion.ts';
export { scatter_fraction } from './scatter.ts';
export { waterTestsFinding } from './waterTestsFinding.ts';
