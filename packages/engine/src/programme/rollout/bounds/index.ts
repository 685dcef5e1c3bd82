export { arrivalDay } from './jobLengths.ts';
export {
  type BoundName,
  type BoundsAsked,
  boundNames,
  type WaitingBound,
  type WaitingBounds,
  waitingBounds,
} from './waitingBounds.ts';
