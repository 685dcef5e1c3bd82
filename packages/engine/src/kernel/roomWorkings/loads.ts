/** The steps of a working of room loads, in their order. */
export const loadsWorkings = [
  'loads.carried',
  'loads.limit',
  'loads.room',
  'loads.least',
  'loads.loads',
  'loads.kitMass',
  'loads.kitsByMass',
  'loads.kitBulk',
  'loads.kitsByBulk',
  'loads.kits',
] as const;
