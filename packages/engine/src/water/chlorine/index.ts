export { airPressure_Pa, type BoilingAtHeight, boilingAtHeight, boilingPoint_C } from './boiling.ts';
export { chlorineFinding } from './chlorineFinding.ts';
export { activeChlorine_fraction, baffling_ratio, onePercent_g_per_L } from './constants.ts';
export { giardiaCt } from './giardiaCt.ts';
export { giardiaCtOlder, giardiaCtSmith } from './giardiaRegression.ts';
export {
  contactCt_mg_min_per_L,
  cryptosporidiumInactivation_log,
  giardiaInactivation,
  type Inactivation,
  stayFor_min,
  virusInactivation,
} from './inactivation.ts';
export type { CtReading, OutsideTable } from './reading.ts';
export {
  bucketDose_mg_per_L,
  type ChlorineClarity,
  chlorineWait_min,
  clarityForChlorine,
  type ResidualPlace,
  residualAfterWait_mg_per_L,
  residualBand,
  residualWanted_mg_per_L,
} from './residual.ts';
export {
  doseOfStock_mg_per_L,
  productMadeUp_g,
  stockAdded_g_per_L,
  stockForDose_mL,
  stockMadeUp_g_per_L,
  tablets_count,
} from './stock.ts';
export { virusCt } from './virusCt.ts';
