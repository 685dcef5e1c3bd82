import { z } from 'zod';

/** A number of the facts. */
export const figure = z
  .union([z.number(), z.strictObject({ figure: z.enum(['NaN', 'Infinity', '-Infinity', '-0']) })])
  .meta({ id: 'figure', description: 'A number as it is; what JSON has no word for is named.' });

/** The same, or null: not known. */
export const known = figure.nullable();

/** A text, or null: not known. */
export const text = z.string().nullable();

/** Where something stands. */
export const place = z.strictObject({
  file: z.string().optional(),
  row: figure.optional(),
  column: z.string().optional(),
  siteId: z.string().optional(),
  gaugeId: z.string().optional(),
  day: z.string().optional(),
});
