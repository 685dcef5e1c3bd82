export { type BarPlan, type BarStock, barPlan, type Cut, type CutBar, type CutRun } from './bars.ts';
export { binBounds, roomOf } from './binBound.ts';
export { barWork_count, bestLift_kg, carton_kg, floorToTruck, hair_factor, twoPeople_kg } from './constants.ts';
export { type BarsFilled, fewestBars } from './fewestBars.ts';
export { carriedBy, heaviestPiece, type LiftedPart, peopleToLift } from './heaviestPiece.ts';
export {
  type Lift,
  type LiftFactors,
  liftFactors,
  liftingLimit_kg,
  limitOfFactors_kg,
} from './liftingLimit.ts';
export type { Money, MoneyBasis } from './money/moneyFacts.ts';
export { type MoneyMoved, type MoneyWanted, moneyIn, priceMoved } from './money/moneyIn.ts';
export { type MoneyOn, moneyOn, type PricedOn } from './money/moneyOn.ts';
export { type RateFound, rateOn } from './money/rateOn.ts';
export { currencyOn, type Redenominated, redenominated } from './money/redenominated.ts';
export { rowsThatDiffer } from './money/rowsThatDiffer.ts';
export { partById } from './partById.ts';
export { type PriceFound, priceOn } from './priceOn.ts';
export { type TankPart, tankSizes } from './tankSizes.ts';
