export {
  type CartridgeRating,
  type FlowRating,
  flowAtResistance_L_per_h,
  growthOfLoad,
  mostResistance_ratio,
  resistanceRead_ratio,
  wornLitres_factor,
} from './cartridgeRating.ts';
export {
  failures_count_per_year,
  futures_count,
  lnWearSpread_ratio,
  lookAhead_years,
  readingError_fraction,
} from './constants.ts';
export { askedAhead_L, type YearAhead, yearsAhead } from './daysAhead.ts';
export { evenDraws } from './evenDraws.ts';
export type { SetEnd } from './firstEnd.ts';
export { type SiteReading, type SiteTurbidity, type SiteWear, siteWear } from './siteWear.ts';
export { type TankAhead, type UnitLitres, unitLitres } from './unitLitres.ts';
export { type WearBelief, type WearReading, wearAtShare_factor, wearBelief } from './wearBelief.ts';
export {
  type FuturesGiven,
  type PassedSoFar,
  type TankToCome,
  type WearFutures,
  type WearRange,
  wearFutures,
  wearRange,
  type YearsToCome,
  type YearToCome,
} from './wearFutures.ts';
export {
  newSet,
  type PassingWater,
  resistance_ratio,
  type SetSoFar,
  type WearFound,
  wearThroughDays,
} from './wearThroughDays.ts';
