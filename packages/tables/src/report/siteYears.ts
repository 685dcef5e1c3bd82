import { z } from 'zod';

/** What a list keeps of the water years of one site. Lists begin with `firstYear`, one entry a year. */
export const siteYears = z
  .strictObject({
    isMade: z.boolean().describe('Of made-up rain: its years are none of the calendar.'),
    limit_days: z.number().describe('The longest dry run its target allows.'),
    firstYear: z.int().describe('The calendar year in which the first water year ends.'),
    longestRun_days: z
      .array(z.int().nullable())
      .describe(
        'The longest dry run reached within each year, days before it included; null where the year is not judged. Of several bodies of water the longest.',
      ),
    dryDays: z.array(z.int().nullable()).describe('Dry days of each year; of several bodies of water the most.'),
  })
  .meta({ id: 'siteYears' });

export type SiteYears = z.infer<typeof siteYears>;
