export { type BoatBlock, type BoatInput, type BoatWords, boatPicture } from './boatPicture.ts';
export { type BarRow, type CutsWords, cutsPicture } from './cutsPicture.ts';
export { type CarriedByDrawn, type LoadBox, type LoadsWords, loadsPicture } from './loadsPicture.ts';
export { type RangeRow, type RangesWords, rangesPicture } from './rangesPicture.ts';
export { type SwingRow, type SwingsWords, swingsPicture } from './swingsPicture.ts';
