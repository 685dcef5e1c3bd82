export { type DrainageGiven, drainageFinding } from './drainageFinding.ts';
export { stormFlows_L_per_s } from './stormFlows.ts';
