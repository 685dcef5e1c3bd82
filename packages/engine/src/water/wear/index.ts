export { type DaysAhead, type WearGiven, wearFindings } from './wearFindings.ts';
