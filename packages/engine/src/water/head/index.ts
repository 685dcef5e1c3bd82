export { cautiousPersonPower_W, personPower_W } from './constants.ts';
export { colebrookFactor, frictionFactor, reynoldsFactor, swameeJainFactor } from './frictionFactor.ts';
export { gravityFlow_m3_per_s } from './gravityFlow.ts';
export { handPower_W, handPumped_m3_per_s, labourerPower_W } from './handPower.ts';
export { type HeadGiven, headFindings, headVerdicts } from './headFindings.ts';
export { type PipeLoss, type PipeRun, pipeLoss, rowLoss_m, type UnitLoss } from './pipeLoss.ts';
