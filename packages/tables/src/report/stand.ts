import { siteCautions, standGates, standLacks } from '@eavewell/engine';
import { z } from 'zod';
import { verdict } from './parts.ts';

const safety = z
  .strictObject({ overturning_factor: z.number().nullable(), sliding_factor: z.number().nullable() })
  .describe('How many times the push of the wind could grow before it tips or slides; null: not known.');

/** What the sums of one tank's stand and ground came to. */
export const stand = z
  .strictObject({
    tankId: z.string(),
    verdict,
    said: z.string(),
    standHeight_m: z.number().nullable(),
    mostHeld_L: z.number().nullable().describe('To its rim, or what is written on it where that is more.'),
    massEmpty_kg: z.number().nullable().describe('Tank and stand.'),
    massFull_kg: z.number().nullable(),
    bearing_kPa: z.number().nullable(),
    bearingAllowed_kPa: z.number().nullable().describe('The lowest of the listings for its class of ground.'),
    bearingUse_factor: z.number().nullable(),
    windSpeed_m_per_s: z.number().nullable(),
    windForce_N: z.number().nullable(),
    empty: safety,
    full: safety,
    loose: safety.nullable().describe('The empty tank alone on its stand; null on the ground.'),
    leastHeld_L: z.number().nullable().describe('Water that would keep it standing; null: none would, or not known.'),
    lacks: z.array(z.enum(standLacks)).describe('What it fails by.'),
    cappedBy: z.string().nullable().describe('The assumption that keeps it from holding: the code of its problem.'),
  })
  .describe('Screening sums, no structural design: the caution `stand` is shown wherever they are.')
  .meta({ id: 'stand' });

/** Whether tanks may be filled, and what to take care of: shown whatever was judged. */
export const standsOfSite = {
  stands: z.array(stand).describe('One for each tank whose stand or ground is judged, the worst first.'),
  standGate: z
    .strictObject({ gate: z.enum(standGates), said: z.string() })
    .describe('closed: a tank on a stand is not to be filled or handed over before it is signed for. No verdict.'),
  cautions: z
    .array(z.strictObject({ caution: z.enum(siteCautions), said: z.string() }))
    .describe('Which cautions its work asks for.'),
  heaviestPiece: z
    .strictObject({
      partId: z.string(),
      name: z.string(),
      mass_kg: z.number(),
      from: z.enum(['site', 'catalogue']),
      liftingLimit_kg: z.number().describe('What one person may lift from the floor to a truck.'),
      liftingIndex_factor: z.number(),
      carriedBy: z.enum(['one', 'two', 'more']),
      said: z.string(),
    })
    .nullable()
    .describe('What is heaviest to carry; null where no part has a mass.'),
};
