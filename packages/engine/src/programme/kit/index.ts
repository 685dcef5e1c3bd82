export { conditionFields } from './conditionFields.ts';
export { countedDesign } from './countedDesign.ts';
export {
  type Choices,
  type CountedBy,
  type CountedDesign,
  type CountedIn,
  type CountedOne,
  type Cutting,
  countedBys,
  countedIns,
  type KitCondition,
  type KitPart,
  type KitRounding,
  type KitRule,
  type KitTest,
  kitRoundings,
  kitTests,
} from './kitFacts.ts';
export type { KitFrom, KitLine } from './kitLine.ts';
export { kitOfSite, type SiteKit } from './kitOfSite.ts';
export { type KitSum, kitsTogether, type SumLine, uncountedIn } from './kitTogether.ts';
export { type OrderDays, type PriceOf, type Purchase, purchasesOf, type SupplierOrder } from './purchases.ts';
export { type ReadyRules, readyRules } from './readyRules.ts';
export { conditionsHold, type Held } from './ruleHolds.ts';
