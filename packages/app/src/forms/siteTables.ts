/** Tables whose rows belong to one site, in the order of the water's path. */
export const siteTables = [
  ...(['sites', 'roofs', 'gutters', 'downpipes', 'diverters', 'tanks', 'pipes'] as const),
  ...(['treatmentUnits', 'cartridges', 'flowReadings', 'pressureTests'] as const),
  ...(['rawWater', 'barriers', 'chlorination', 'waterTests', 'testPortions', 'inspections', 'demand'] as const),
] as const;
