/** The steps of a working of room storm, in their order. */
export const stormWorkings = [
  'storm.maxima',
  'storm.fixedWindow',
  'storm.distribution',
  'storm.onceIn',
  'storm.ofDay',
  'storm.coefficients',
  'storm.limits',
  'storm.intensity',
  'storm.risk',
] as const;
