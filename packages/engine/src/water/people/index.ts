export { type LitresNeeded, serviceLevels_L_per_person_per_day, survivalNeeds } from './constants.ts';
export { type DailyDemand, dailyDemand } from './dailyDemand.ts';
export { purposesOf } from './purposesOf.ts';
export { survivalNeed_L_per_person_per_day } from './survivalNeed.ts';
