export { explainedWay, type WayQuestion } from './explainedWay.ts';
export { readyWays } from './readyWays.ts';
export { type LevelShares, levelShares, openChance, weekOf } from './riverChance.ts';
export { type RiverStretch, toSleep_h } from './riverDays.ts';
export { travelBetween } from './travelBetween.ts';
export { type ClosureOnDay, closuresOfWay } from './wayCauses.ts';
export type {
  ExplainedStretch,
  ExplainedWay,
  NetworkWay,
  NoWay,
  Party,
  ReadyWays,
  SingleLeg,
  StopLoad,
  WayCause,
  WaySettings,
  WayState,
  WayStop,
  WaysAsked,
  WaysFound,
} from './waysFacts.ts';
