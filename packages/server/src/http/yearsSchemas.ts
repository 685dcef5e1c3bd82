import { siteShort, siteYears } from '@eavewell/tables';
import { z } from 'zod';
import { version } from './schemaParts.ts';

/** How each water year of the record went at every site. */
export const years = z
  .strictObject({
    version,
    designVersion: version.nullable().describe('The version the years are of; null before the first design.'),
    sites: z.array(
      z.strictObject({
        key: z.string().describe('The key of its row in the table of sites.'),
        ...{ siteId: siteShort.shape.siteId, name: siteShort.shape.name },
        area: z.string().nullable(),
        people: siteShort.shape.people,
        verdict: siteShort.shape.verdict
          .nullable()
          .describe('Null where it is not worked out yet, or the row cannot be used.'),
        years: siteYears.nullable().describe('Null where it was not judged.'),
      }),
    ),
  })
  .meta({ id: 'years' });
