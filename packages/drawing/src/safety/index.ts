export { type DueRow, type DueWords, duePicture } from './duePicture.ts';
export { type RiskRow, type RiskWords, riskPicture } from './riskPicture.ts';
export { type SampleDot, type SamplesWords, samplesPicture } from './samplesPicture.ts';
export type { WayStopKind } from './wayGlyphs.ts';
export { type WayInput, type WayStop, type WayWords, wayPicture } from './wayPicture.ts';
