export { type ChangedSite, changedSite } from './changedSite.ts';
export {
  type ChangeKind,
  changeKinds,
  type DeclaredSource,
  type FewerLitres,
  type FittingChange,
  fittingKinds,
  type GroupKind,
  groupKinds,
  isFitting,
  type LargerGutter,
  type LargerOverflow,
  type LargerPipe,
  type LargerTank,
  type LessFirstFlush,
  type MoreDownpipe,
  type MoreGutter,
  type MoreOutlet,
  type PeopleSplit,
  type RemedyChange,
  type RoofChange,
  type SecondTank,
  type SiteChange,
  type TankChange,
  type Where,
} from './changes.ts';
export {
  type BoughtPart,
  compareCosts,
  type HungGutter,
  type NoCostReason,
  type RemedyCost,
  remedyCost,
  type ToBuy,
} from './cost.ts';
export { type FlushedRoofs, flushRoofs } from './flushRoofs.ts';
export { type GutteredRoofs, gutterRoofs } from './gutterRoofs.ts';
export { type LeaveIt, worstYear } from './leaveIt.ts';
export { type Market, type MarketMoney, marketOn } from './market.ts';
export { nextId } from './nextId.ts';
export type { NotMendedReason } from './notMended.ts';
export { mostCarried, type PeopleCarried } from './peopleCarried.ts';
export { litreSteps, promisedLess } from './promisedLitres.ts';
export {
  type RemediesTogether,
  type RemedyGroup,
  remediesTogether,
  type SitesTogether,
  type SmallestRemedy,
  type Sum,
} from './remediesTogether.ts';
export { compareRemedies, kindsOf, othersOf, type Remedy } from './remedy.ts';
export type { RemedyCase } from './remedyCase.ts';
export { type SiteRemedies, siteRemedies } from './siteRemedies.ts';
export { type AsFitted, wantsFacts } from './wantsFacts.ts';
