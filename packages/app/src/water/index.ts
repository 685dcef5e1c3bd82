export { type DraftStep, type FittingStep, fittingMeasures, isAsked, type Question } from './draft.ts';
export { limits } from './limits.ts';
export type { Judged } from './siteJudge.ts';
export { type KeepOutcome, type SiteWater, useSiteWater } from './useSiteWater.ts';
export { yearsToAsk } from './yearsToAsk.ts';
