export { type CartridgeWear, cartridgeSets, type SetDates } from './cartridgeSets.ts';
export type { CostItem, CostReason, CostTiming } from './costItem.ts';
export { type CostSum, costSum, costsTogether } from './costsTogether.ts';
export { type CostThrows, type CostThrowsGiven, costThrows } from './costThrows.ts';
export { type Doubtful, doubtful, throwsOf, valueAtShare } from './doubtful.ts';
export { headOfSpending, type Spending, spendings } from './heads.ts';
export {
  type Capital,
  capitalRecovery,
  type DatedAmount,
  equivalentAnnualCost,
  levelPresentValue,
  presentValue,
  realInterest,
} from './interest.ts';
export {
  type CartridgeSet,
  type CostItemMade,
  cartridgeItem,
  type LifeSpread,
  type PartBought,
  type PartPrice,
  partItem,
  partPrice,
  rowItem,
} from './items.ts';
export { type PeopleServedGiven, servedPeople } from './peopleServed.ts';
export {
  type CostedLine,
  type CostMarket,
  type CostPeople,
  type CostsBeside,
  costsBeside,
  interestOf,
  type ProgrammeCost,
  programmeCost,
  type SiteCost,
  type SiteCostGiven,
  siteCost,
  throwsFor,
} from './siteCost.ts';
export { renewalsWithin, type SpentPerYear, spentPerYear } from './spending.ts';
export {
  type BoiledWater,
  type BoughtWater,
  boilingCost,
  boilingHeat_kJ_per_L,
  boughtWaterCost,
  fuelPerLitre_kg,
  type PersonYearCost,
  type PipedScheme,
  pipedSchemeCost,
  usedHeat_MJ_per_kg,
} from './spentNow.ts';
export { wholeLife } from './wholeLife.ts';
export type { CostSwing, HeadCost, WholeLifeCost, WholeLifeGiven, YearlyCost } from './wholeLifeCost.ts';
