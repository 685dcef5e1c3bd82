export { type Carrier, type CarrierMode, carrierModes, type KeptApart, type Piece } from './carrier.ts';
export { cautionsOfLoads } from './cautionsOfLoads.ts';
export {
  type CarriedBy,
  type Load,
  type LoadCaution,
  type LoadLimits,
  type LoadPieces,
  type LoadRule,
  type LoadsFound,
  loadCautions,
  loadRules,
  type NotCarried,
} from './foundLoads.ts';
export { type FreeboardRule, ferryFreeboard_mm, freeboardRules, platePersons_count } from './freeboard.ts';
export { type BindingLimit, type KitsFound, kitsIn } from './kitsIn.ts';
export { loadLimits } from './loadLimits.ts';
export { putIn } from './loadOrder.ts';
export { type LoadsCase, loadsFor } from './loadsFor.ts';
export { pieceBulk_L, pieceLongest_m } from './pieceBulk.ts';
export { type Stop, type Stowed, stowOrder } from './stowOrder.ts';
