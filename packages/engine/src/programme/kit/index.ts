export { countedDesign } from './countedDesign.ts';
export type { Choices, CountedDesign, CountedOne, Cutting, KitMarket, KitPart } from './kitFacts.ts';
export type { KitFrom, KitLine } from './kitLine.ts';
export { kitOfDesign, kitOfSite, type SiteKit } from './kitOfSite.ts';
export { type KitSum, kitsTogether, type SumLine, uncountedIn } from './kitTogether.ts';
export {
  type PriceOf,
  type ProgrammeKit,
  type ProgrammeKitLine,
  programmeKit,
  type SupplierOrder,
} from './programmeKit.ts';
export { type ReadyRules, readyRules } from './readyRules.ts';
export { conditionsHold, type Held } from './ruleHolds.ts';
