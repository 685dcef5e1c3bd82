import { drainageParts } from '@eavewell/engine';
import { z } from 'zod';
import { range, verdict } from './parts.ts';

const part = z.strictObject({
  part: z.enum(drainageParts),
  id: z.string().describe('The gutter, the downpipe, or the first tank of the body of water.'),
  roofId: z.string().nullable().describe('Null for an overflow: it takes what all its roofs bring.'),
  flow_L_per_s: z.number().nullable().describe('What the storm brings to it; null where that is not known.'),
  flow_L_per_s_range: range.nullable(),
  capacity_L_per_s: z.number().nullable().describe('Null where it was not measured well enough.'),
  use_fraction: z.number().nullable().describe('Flow over capacity.'),
  verdict,
  smallestPartId: z
    .string()
    .nullable()
    .describe('Smallest part of the catalogue that holds; null where none does, or this one does.'),
  smallest_mm: z.number().nullable().describe('Its width or bore.'),
});

const firstFlush = z
  .strictObject({
    roofId: z.string(),
    diverted_mm: z.number().describe('Depth on the plan roof that is let go.'),
    chamber_L: z.number().nullable(),
    chamberWanted_L: z.number().nullable(),
    emptying_h: z.number().nullable(),
    leak_mm_per_h: z.number().nullable().describe('Rain that just keeps up with its hole while it is full.'),
    isBlocked: z.boolean(),
    loadLeft_fraction: z.number().describe('Dirt that still comes: a rule of thumb, no barrier to germs.'),
    said: z.string(),
  })
  .describe('What a first-flush chamber does; told, not judged.');

/** What the storm does to gutters, outlets, downpipes and overflows. */
export const drainage = z
  .strictObject({
    verdict,
    finding: z.string(),
    storm_mm_per_h: z.number().nullable(),
    returnPeriod_years: z.number().nullable(),
    parts: z.array(part),
    governing: z.int().nullable().describe('Which of parts is fullest, counted from 0.'),
    carries_mm_per_h: z.number().nullable().describe('The hardest rain that everything carries.'),
    firstFlush: z.array(firstFlush),
    lost_fraction: z.number().nullable().describe('Share of the measured rain that runs over; null: not known.'),
    cappedBy: z.string().nullable().describe('The assumption that keeps it from holding: the code of its problem.'),
  })
  .meta({ id: 'drainage' });
