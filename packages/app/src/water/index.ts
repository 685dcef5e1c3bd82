export { type Draft, type DraftStep, emptyDraft, isAsked, isRainAsked, noQuestion, type Question } from './draft.ts';
export type { KeptSaid } from './keptRows.ts';
export { type Limit, limits } from './limits.ts';
export type { Judged, JudgedStorage } from './siteJudge.ts';
export { type KeepOutcome, type SiteWater, useSiteWater } from './useSiteWater.ts';
export type { WaterState } from './waterDesk.ts';
export type { WaterProblem } from './waterMessages.ts';
