export { type BarPlan, type BarStock, barPlan, type Cut, type CutBar, type CutRun } from './bars.ts';
export { binBounds, roomOf } from './binBound.ts';
export { barWork_count, carton_kg, floorToTruck, twoPeople_kg } from './constants.ts';
export { type BarsFilled, fewestBars } from './fewestBars.ts';
export { carriedBy, heaviestPiece, type LiftedPart } from './heaviestPiece.ts';
export {
  type Lift,
  type LiftFactors,
  liftFactors,
  liftingLimit_kg,
  limitOfFactors_kg,
} from './liftingLimit.ts';
export { partById } from './partById.ts';
export { type PriceFound, priceOn } from './priceOn.ts';
export { type TankPart, tankSizes } from './tankSizes.ts';
