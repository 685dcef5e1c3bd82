export { cautionsOfLoads } from './cautionsOfLoads.ts';
export {
  type BindingLimit,
  type CarriedBy,
  type CarrierLoads,
  type KitsFound,
  type Load,
  type LoadCaution,
  type LoadLimits,
  type LoadPieces,
  type LoadRule,
  loadCautions,
  loadRules,
  type NotCarried,
} from './foundLoads.ts';
export {
  type FreeboardRule,
  type FreeboardWithLoad,
  ferryFreeboard_mm,
  freeboardRules,
  freeboardWith,
  platePersons_count,
} from './freeboard.ts';
export { kitsIn } from './kitsIn.ts';
export { loadLimits } from './loadLimits.ts';
export { putIn } from './loadOrder.ts';
export { loadsOf } from './loadsOf.ts';
export type { Piece } from './piece.ts';
export { pieceBulk_L, pieceLongest_m } from './pieceBulk.ts';
export { type CarriedLine, piecesOf } from './piecesOf.ts';
export { type Stop, type Stowed, stowOrder } from './stowOrder.ts';
