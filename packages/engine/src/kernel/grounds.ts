/** What a stand rests on, as a crew can tell it; `softOrMadeGround` is peat, fill, organic, swelling or washed-out ground. */
export const groundClasses = [
  'rock',
  'softRock',
  'denseGravel',
  'looseGravel',
  'denseSand',
  'looseSand',
  'silt',
  'stiffClay',
  'firmClay',
  'softClay',
  'softOrMadeGround',
] as const;
export type GroundClass = (typeof groundClasses)[number];

/** How open a place lies to the wind. */
export const windExposures = ['builtUp', 'openGround', 'openWater'] as const;
export type WindExposure = (typeof windExposures)[number];
