/** The steps of a working of room stand, in their order. */
export const standWorkings = [
  'stand.massFull',
  'stand.bearing',
  'stand.bearingAllowed',
  'stand.wind',
  'stand.overturningEmpty',
  'stand.overturningFull',
  'stand.slidingEmpty',
  'stand.slidingFull',
  'stand.looseOverturning',
  'stand.looseSliding',
  'stand.leastHeld',
  'stand.verdict',
] as const;
