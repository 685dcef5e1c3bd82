export { partById } from './partById.ts';
export { type PriceFound, priceOn } from './priceOn.ts';
export { type TankPart, tankSizes } from './tankSizes.ts';
