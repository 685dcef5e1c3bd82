import type { TableName } from '../../api/queries.ts';

/** Tables of the whole programme that are changed by hand, in the order a person asks for them. */
export const tablesAsked = [
  'targets',
  'demand',
  'gauges',
  'normals',
  'storms',
  'stormCoefficients',
  'shortRain',
  'secondSources',
  'rawWater',
  'barriers',
  'presence',
  'places',
  'parts',
  'prices',
  'kitRules',
  'kitConditions',
  'carriers',
  'keptApart',
  'costs',
  'rates',
  'redenominations',
  'ways',
  'closures',
  'riverLevels',
  'wayLevels',
  'crews',
  'crewCarriers',
  'workCalendars',
  'arrivals',
  'carriersAway',
  'plans',
  'planTrips',
  'planStops',
] as const satisfies readonly TableName[];

export type TableAsked = (typeof tablesAsked)[number];

export const isTableAsked = (name: string): name is TableAsked => (tablesAsked as readonly string[]).includes(name);

/** Tables whose rows the cells of these may name. */
export const namedHere = [
  ...(['gauges', 'parts', 'secondSources', 'kitRules'] as const),
  ...(['places', 'ways', 'carriers', 'crews', 'workCalendars', 'plans', 'planTrips'] as const),
] as const satisfies readonly TableName[];
