export { colebrookFactor, frictionFactor, swameeJainFactor } from './frictionFactor.ts';
export { gravityFlow_m3_per_s } from './gravityFlow.ts';
export { type HeadGiven, headFindings, headVerdicts } from './headFindings.ts';
export { labourerPower_W } from './labourerPower.ts';
export { type PipeLoss, type PipeRun, pipeLoss, rowLoss_m, type UnitLoss } from './pipeLoss.ts';
