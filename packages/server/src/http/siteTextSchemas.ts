import { siteCup, siteShort, siteYears } from '@eavewell/tables';
import { z } from 'zod';
import { version } from './schemaParts.ts';

/** What every such answer says of a site first. */
const rowOfSite = {
  key: z.string().describe('The key of its row in the table of sites.'),
  ...{ siteId: siteShort.shape.siteId, name: siteShort.shape.name },
  area: z.string().nullable(),
  people: siteShort.shape.people,
} as const;

/** How each water year of the record went at every site. */
export const years = z
  .strictObject({
    version,
    designVersion: version.nullable().describe('The version the years are of; null before the first design.'),
    sites: z.array(
      z.strictObject({
        ...rowOfSite,
        verdict: siteShort.shape.verdict
          .nullable()
          .describe('Null where it is not worked out yet, or the row cannot be used.'),
        years: siteYears.nullable().describe('Null where it was not judged.'),
      }),
    ),
  })
  .meta({ id: 'years' });

/** What may be said of drinking the water of every site. */
export const programmeSafety = z
  .strictObject({
    version,
    designVersion: version.nullable().describe('The version it is of; null before the first design.'),
    sites: z.array(
      z.strictObject({
        ...rowOfSite,
        isJudged: z.boolean().describe('False where it is not worked out yet, or the row cannot be used.'),
        cup: siteCup.nullable().describe('Null where nothing is told of its treatment and its water.'),
      }),
    ),
  })
  .meta({ id: 'programmeSafety' });
