export { designStorm } from './designStorm.ts';
export { limitsOfStorms_mm, stormDistribution } from './extremeLimits.ts';
export { type ExtremeFit, maximumOnceIn_mm, returnPeriodOf_years } from './extremes.ts';
export {
  type FiveMinuteMaxima,
  fiveMinuteMaxima,
  fixedWindowFactor,
  type YearOfFiveMinutes,
} from './fiveMinuteMaxima.ts';
export { gevByLikelihood } from './gevByLikelihood.ts';
export { gevByLMoments, gumbelByLMoments } from './gevFits.ts';
export { greatestIntensity_mm_per_h } from './greatestIntensity.ts';
export {
  gumbelByMoments,
  gumbelChow,
  gumbelThrough,
  type OnceIn,
  reducedMoments,
  type SampleMoments,
  sampleMoments,
} from './gumbelFits.ts';
export { intensityOfCoefficients_mm_per_h } from './intensityOfCoefficients.ts';
export { type LMoments, lMoments } from './lMoments.ts';
export { chanceOfTimes_fraction, returnPeriodAtRisk_years, risk_fraction } from './risk.ts';
export { rainByIntensity, shareOverCapacity_fraction } from './shareOverCapacity.ts';
export { type StormTable, type StormTableRow, stormTable } from './stormTable.ts';
export type { StormGiven } from './stormWay.ts';
