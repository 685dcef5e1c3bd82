export { sludgeClearance_m, sludgeDry_kg_per_m3 } from './constants.ts';
export {
  fergusonChurchVelocity_m_per_s,
  type GrainInWater,
  grainInWater,
  stokesVelocity_m_per_s,
} from './grainVelocity.ts';
export { overflowRate_m_per_s } from './overflowRate.ts';
export { firstTenth_fraction, settledFraction } from './settledFraction.ts';
export { type SettlingGiven, settlingFindings } from './settlingFindings.ts';
export { monthsToClean, type SludgeRise, sludgeRise } from './sludge.ts';
