export { arrivalDay } from './jobLengths.ts';
export {
  type TripPricesAsked,
  type TripPricesBound,
  type TripPricesBudget,
  tripPricesBound,
} from './tripPrices/tripPrices.ts';
export {
  type BoundName,
  type BoundsAsked,
  boundNames,
  type WaitingBound,
  type WaitingBounds,
  waitingBounds,
  withBound,
} from './waitingBounds.ts';
