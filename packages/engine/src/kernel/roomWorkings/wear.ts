/** The steps of a working of room wear, in their order. */
export const wearWorkings = [
  'wear.litresADay',
  'wear.turbidity',
  'wear.fouling',
  'wear.readings',
  'wear.ends',
  'wear.endsOn',
  'wear.litres',
] as const;
