export { crewAlone, crewsTogether, setDrawn } from './crewsTogether.ts';
export { type CrewTrips, crewTripsOf } from './crewTrips.ts';
export { evaluatePlan } from './evaluatePlan.ts';
export * from './finish/index.ts';
export { retiming } from './makeReady.ts';
export type {
  Arrival,
  Broken,
  Crew,
  Drawn,
  Goods,
  Haul,
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
export { type BrokenFound, type BrokenKind, brokenKinds, type Retiming, type TripTimes, waits } from './retiming.ts';
