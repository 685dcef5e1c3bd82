export { type LitresNeeded, serviceLevels_L_per_person_per_day, survivalNeeds } from './constants.ts';
export { type DailyDemand, dailyDemand } from './dailyDemand.ts';
export { demandOnDays_L } from './demandOnDays.ts';
export { demandWithBackwash } from './demandWithBackwash.ts';
export { countedPeople, type Headcount, headcount, type PeopleGrowing } from './headcount.ts';
export { litresByMonth_L_per_person_per_day } from './litresByMonth.ts';
export { daysOfPeriod, type PresentByDay, presentByDay } from './presentByDay.ts';
export { purposesOf } from './purposesOf.ts';
export { survivalNeed_L_per_person_per_day } from './survivalNeed.ts';
