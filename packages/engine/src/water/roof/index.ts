export { type RoofCaution, type RoofCovering, roofCoverings, usualPlanArea_m2, usualSide_m } from './constants.ts';
export { chamberHeight_m, type FirstFlushChamber, firstFlushChamber, loadLeft_fraction } from './firstFlushChamber.ts';
export { type FirstFlush, firstFlushDepth } from './firstFlushDepth.ts';
export { firstFlushFindings } from './firstFlushFindings.ts';
export { roofYield_mm, type YieldRule } from './roofYield.ts';
export { type RunoffFraction, runoffFractionOf } from './runoffFractionOf.ts';
export { siteInflow_L, type YieldsByRecord } from './siteInflow.ts';
export { type RoofCatch, siteRoofs } from './siteRoofs.ts';
export { yearlyInflow_L } from './yearlyInflow.ts';
