/** The steps of a working of room chlorine, in their order. */
export const chlorineWorkings = [
  'chlorine.ct',
  'chlorine.giardia',
  'chlorine.viruses',
  'chlorine.stock',
  'chlorine.product',
] as const;
