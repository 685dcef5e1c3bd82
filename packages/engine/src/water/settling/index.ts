export { type SettlingGiven, settlingFindings } from './settlingFindings.ts';
