export { type StandGiven, standFindings } from './standFindings.ts';
