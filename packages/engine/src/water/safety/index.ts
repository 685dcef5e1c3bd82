export { type SafetyGiven, safetyFinding } from './safetyFinding.ts';
