import { stormOrigins } from '@eavewell/engine';
import { z } from 'zod';
import { range } from './parts.ts';

/** Five minutes of rain, once in so many years. */
export const storm = z
  .strictObject({
    said: z.string(),
    gaugeId: z
      .string()
      .describe('The gauge it is of: another within reach where nothing is said of storms at this one.'),
    returnPeriod_years: z.number(),
    intensity_mm_per_h: z.number(),
    intensity_range: range
      .nullable()
      .describe('In mm/h. Null where none is stated: stormMargin_fraction stands for it.'),
    from: z
      .enum(stormOrigins)
      .describe('stated, by coefficients, from short intervals, or from the wettest days and a stated share of them.'),
    source: z.string().nullable().describe('Who says so; null where that is not said.'),
    years_count: z.int().nullable().describe('Years of maxima it was fitted to.'),
    cappedBy: z.string().nullable().describe('The assumption that keeps what is judged by it from holding.'),
  })
  .meta({ id: 'storm' });
