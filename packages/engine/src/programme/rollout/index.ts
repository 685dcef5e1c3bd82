export {
  type BoundName,
  type BoundsAsked,
  boundNames,
  type TripPricesAsked,
  type TripPricesBound,
  type TripPricesBudget,
  tripPricesBound,
  type WaitingBound,
  type WaitingBounds,
  waitingBounds,
  withBound,
} from './bounds/index.ts';
export * from './byHand/index.ts';
export { leastThere } from './carriersAway.ts';
export {
  areaWorking,
  differenceWorking,
  type PlanBeside,
  type PlanDifference,
  siteDiffersLines,
} from './comparedWorkings.ts';
export { costWithin_fraction } from './constants.ts';
export { crewAlone, crewsTogether, setDrawn } from './crewsTogether.ts';
export { type CrewTrips, crewTripsOf } from './crewTrips.ts';
export {
  type GroupWaiting,
  type MonthMoney,
  moneyByMonth,
  type ServedPoint,
  servedCurve,
  serviceDaysOf,
  waitingByGroup,
} from './curves.ts';
export { evaluatePlan } from './evaluatePlan.ts';
export * from './finish/index.ts';
export { learnedShare, retiming } from './makeReady.ts';
export { type NamedPlan, namedAfter } from './namedAfter.ts';
export { type MovedSite, type PlanChanges, planChanges, type TimedPlan } from './planChanges.ts';
export { type FoundPlan, type PlanAsked, planRollout } from './planRollout.ts';
export type {
  Arrival,
  Broken,
  Crew,
  Drawn,
  Goods,
  Haul,
  HaulRun,
  Job,
  LegLimit,
  LegTable,
  Outcome,
  Period,
  PlannedTrip,
  Pool,
  RolloutPlan,
  RolloutProblem,
  Store,
  TimedHaul,
  TimedStop,
  TimedTrip,
  Travel,
} from './problem.ts';
export { type Replanned, replan } from './replan.ts';
export { type BrokenFound, type BrokenKind, brokenKinds, type Retiming, type TripTimes, waits } from './retiming.ts';
export { budgetOfTries, type SearchBudget, type SearchProgress } from './search/searchBudget.ts';
export { type SinceTold, sinceTold, type ToldOtherwise } from './sinceTold.ts';
export { type StockCurve, type StockMove, type StockPoint, stockCurves, stockMoves } from './stockCurves.ts';
export {
  boundWorking,
  finishWorking,
  type PlanTimed,
  personDay,
  planCostWorking,
  planDay,
  planTime,
  type RolloutNames,
  spanLines,
  stockWorking,
  waitingWorking,
} from './sumWorkings.ts';
export { type TightTrip, tightTrips } from './tightTrips.ts';
export { type ChangedTrip, tripChanges } from './tripChanges.ts';
export { pairedVariants, type RolloutChange, type RolloutVariant, rolloutVariants } from './variants.ts';
export { afterDays, afterRiver, endDay, stretchDays, type WorkDays, workDays } from './workDays.ts';
