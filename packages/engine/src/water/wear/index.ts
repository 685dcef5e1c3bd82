export {
  type CartridgeRating,
  type FlowRating,
  flowAtResistance_L_per_h,
  growthOfLoad,
  mostResistance_ratio,
  resistanceRead_ratio,
  wornLitres_factor,
} from './cartridgeRating.ts';
export { askedAhead_L, type YearAhead, yearsAhead } from './daysAhead.ts';
export { type FoulingBelief, type FoulingReading, foulingAtShare_ratio, foulingBelief } from './foulingBelief.ts';
export { type SiteFouling, type SiteReading, type SiteTurbidity, siteFouling } from './siteFouling.ts';
export { type WearGiven, wearFindings } from './wearFindings.ts';
export {
  type DaysAhead,
  type FuturesGiven,
  type PassedSoFar,
  type WearFutures,
  type WearRange,
  wearFutures,
  wearRange,
} from './wearFutures.ts';
export {
  newSet,
  type PassingWater,
  resistance_ratio,
  type SetSoFar,
  type WearFound,
  wearThroughDays,
} from './wearThroughDays.ts';
