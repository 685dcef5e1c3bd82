import { carrierModes, loadCautions, loadRules } from '@eavewell/engine';
import { z } from 'zod';
import { problem } from './parts.ts';

const known = z.number().nullable().describe('Null: not known.');

const pieces = z.strictObject({
  partId: z.string(),
  name: z.string(),
  each_count: z.number().describe('So many of the part are in one piece.'),
  count: z.int(),
});

const notCarried = pieces
  .extend({ over_kg: z.number().nullable(), over_L: z.number().nullable(), over_m: z.number().nullable() })
  .describe('By how much it is over a limit; null where that limit holds.');

/** What is taken in one go. */
const load = z.strictObject({
  carriedBy: z.enum(['one', 'two', 'carrier']),
  pieces: z.array(pieces).describe('In the order they are put in.'),
  mass_kg: z.number(),
  bulk_L: known,
  longest_m: known,
  isFragile: z.boolean(),
});

const said = <T extends readonly [string, ...string[]]>(names: T) =>
  z.array(z.strictObject({ name: z.enum(names), said: z.string() }));

/** How a kit is carried by one carrier. */
export const carrierLoads = z.strictObject({
  carrierId: z.string(),
  name: z.string(),
  mode: z.enum(carrierModes),
  finding: z.string().describe('In a sentence or two.'),
  limits: z
    .strictObject({
      load_kg: z.number().describe('Of a load of several pieces.'),
      piece_kg: z.number().describe('Of a piece by itself.'),
      load_L: z.number().nullable(),
      longest_m: z.number().nullable(),
    })
    .nullable()
    .describe('What loads were made by; null: nobody stated what the carrier holds, and there is no load.'),
  loads: z.array(load).describe('In the order they are to go.'),
  leastLoads_count: z.int().nullable().describe('No way of loading has fewer.'),
  isLeast: z.boolean(),
  cannotCarry: z.array(notCarried),
  noMass: z.array(pieces).describe('In no load: their mass is not known.'),
  noBulk: z.array(pieces),
  noLength: z.array(pieces),
  rules: said(loadRules),
  cautions: said(loadCautions),
  problems: z.array(problem),
});

/** The same as counts alone. */
export const loadCounts = z.strictObject({
  carrierId: z.string(),
  loads_count: z.int().nullable().describe('Null: nobody stated what the carrier holds.'),
  isLeast: z.boolean(),
  cannotCarry_count: z.int().describe('Pieces that it cannot take.'),
  noMass_count: z.int().describe('Pieces in no load, as their mass is not known.'),
});

/** What is put aboard next on a trip. */
export const stowed = pieces.extend({
  siteId: z.string().describe('The stop it is for.'),
  isFragile: z.boolean(),
  rules: said(loadRules),
});

/** How many whole kits go into a container, on a pallet or a truck. */
export const kitsCarried = z.strictObject({
  carrierId: z.string(),
  name: z.string(),
  mode: z.enum(carrierModes),
  finding: z.string(),
  sites_count: z.int().describe('Sites with a kit.'),
  known_count: z.int().describe('Of them those of whose kits it is known.'),
  least_count: z.int().nullable().describe('Whole kits of the site of which fewest go in.'),
  middle_count: z.number().nullable(),
  most_count: z.int().nullable(),
  limitedBy: z
    .strictObject({ mass: z.int(), bulk: z.int(), longest: z.int(), keptApart: z.int() })
    .describe('Sites by the limit that decides.'),
});

/** How a kit is carried by one carrier, as the report has it. */
export type CarrierLoadsReport = z.infer<typeof carrierLoads>;
export type LoadCountsReport = z.infer<typeof loadCounts>;
export type StowedReport = z.infer<typeof stowed>;
export type KitsCarriedReport = z.infer<typeof kitsCarried>;
