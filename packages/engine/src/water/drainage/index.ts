export { runSlack_fraction } from './constants.ts';
export { downpipeCapacity_L_per_s } from './downpipeCapacity.ts';
export { type DrainageGiven, drainageFinding } from './drainageFinding.ts';
export { effectiveArea_m2, pitchFactor } from './effectiveArea.ts';
export { type GutterCapacity, type GutterRule, gutterCapacity } from './gutterCapacity.ts';
export {
  type GutterSection,
  gutterSection,
  type SectionFacts,
  type SectionFault,
  sectionFaults,
  type WaterAt,
  waterway_mm2,
} from './gutterSection.ts';
export { type IdealGutterFlow, idealGutterFlow } from './idealGutterFlow.ts';
export { longGutterFactor } from './longGutterFactor.ts';
export { headAtOutlet_mm, outletCapacity_L_per_s } from './outletCapacity.ts';
export { overflowCapacity_L_per_s } from './overflowCapacity.ts';
export { type PartCarrying, smallestThatHolds } from './smallestThatHolds.ts';
export { stormCarried_mm_per_h, stormFlow_L_per_s } from './stormFlow.ts';
export { stormFlows_L_per_s } from './stormFlows.ts';
export { fallOverRun_mm, uniformVelocity_m_per_s } from './uniformVelocity.ts';
