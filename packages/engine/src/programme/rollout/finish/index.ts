export type { AreaWeather, WeatherDrawn } from './areaWeather.ts';
export type { FinishAsked, FinishBudget } from './drawing.ts';
export {
  type FinishDates,
  finishDates,
  type ProgrammeFinish,
  type SiteFinish,
  type WeekServed,
} from './finishDates.ts';
export { type CrewFinish, latestOf, type PertFinish, pertFinish } from './pertFinish.ts';
export { quantileRanks, type Ranked, type Ranks, type Spans } from './ranks.ts';
export {
  type Distribution,
  lognormalOfMean,
  lognormalOfShares,
  type SpreadKind,
  type SpreadMoments,
  spreadDraw,
  spreadKinds,
  spreadMoments,
  spreadOf,
  spreadQuantile,
} from './spread.ts';
export {
  type ChainMeans,
  type ClosedChain,
  type ClosedDays,
  chainMeans,
  closedByLevel,
  closedByRain,
  fittedChain,
} from './weatherChain.ts';
