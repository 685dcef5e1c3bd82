import { z } from 'zod';
import { day } from './parts.ts';

const within = day.nullable().describe('Null: not within the days looked at.');

/** Half of all futures are before `p50`, eight in ten between the others. */
export const futures = z
  .strictObject({ p10: within, p50: within, p90: within })
  .describe('Of futures drawn; null where none were.');

/** How many futures were drawn, and how well they tell the ninth in ten. */
export const howSure = {
  runs_count: z.int(),
  p90Between: z
    .array(day.nullable())
    .nullable()
    .describe('Two days: how well the ninth in ten is known, from that many futures.'),
} as const;

/** When all drink: the first day of service of the last site. */
export const drinking = z.strictObject({
  likely: day.nullable().describe('If all goes as likely; null: no trip serves a site.'),
  futures: futures.nullable(),
  ...howSure,
});
