/** The steps of a working of room drainage, in their order; those of a first-flush chamber are room roof's. */
export const drainageWorkings = [
  'drainage.storm',
  'drainage.area',
  'drainage.flow',
  'drainage.waterway',
  'drainage.gutter',
  'drainage.uniform',
  'drainage.outlet',
  'drainage.downpipe',
  'drainage.overflow',
  'drainage.carries',
  'drainage.lost',
  'drainage.verdict',
  'drainage.chamber',
  'drainage.loadLeft',
  'drainage.emptying',
] as const;
