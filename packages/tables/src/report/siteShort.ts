import { standGates, stations } from '@eavewell/engine';
import { z } from 'zod';
import { range, target } from './parts.ts';
import { siteReport } from './site.ts';

/** What the figure of a station that is not the tank is: what the storm brings to a part, what settles, what ground and wind ask, what reaches the tap, the day at a treatment unit, what is drunk. */
export const decidingFigures = [
  ...(['gutter', 'outlet', 'downpipe', 'overflow'] as const),
  ...(['settledByDay', 'settledInStorm'] as const),
  ...(['bearing', 'wind', 'fastening'] as const),
  ...(['headLeft', 'pumpPower'] as const),
  ...(['hoursNeeded', 'hoursNeededWorn', 'lastWait', 'lastWaitWorn'] as const),
  ...(['germs', 'lostYears'] as const),
] as const;

const decides = z
  .strictObject({
    station: z.enum(stations),
    figure: z.enum(decidingFigures),
    id: z.string().describe('The gutter, the downpipe, the tank, the unit, the sample or the germ.'),
    value: z.number(),
    range: range.nullable(),
    limit: z.number().nullable().describe('What the part carries, the ground takes, or is wanted.'),
    unit: z.string(),
  })
  .nullable()
  .describe('The figure of the worst station, where that is not the tank and it is short or tight.');

/** What a list tells of one site: as much as fits into a row. */
export const siteShort = siteReport
  .pick({ siteId: true, name: true, siteClass: true, people: true, design_people: true, verdict: true, stations: true })
  .extend({
    latitude_deg: z.number().nullable(),
    longitude_deg: z.number().nullable(),
    finding: z.string().describe('The finding in a sentence or two.'),
    withheldBy: z
      .string()
      .nullable()
      .describe('What keeps it, or its worst station, from a verdict, in words; null where nothing does.'),
    decides,
    isNotToDrink: z.boolean().describe('Must its water not be drunk as it is? It is told before any other reason.'),
    standGate: z.enum(standGates).describe('Apart from the verdict. closed: not to be filled or handed over.'),
    hasStorm: z.boolean().describe('Is it known how hard it may rain there?'),
    remedy: z
      .strictObject({
        about: z.string().describe('The changes in words.'),
        sentence: z.string().describe('The changes, what it is then, and the cost, in a sentence.'),
        verdict: z.enum(['holds', 'tight']).describe('What it is then.'),
        promiseCut_count: z.int().describe('0: what was promised is kept.'),
        amount: z.number().nullable().describe('Of the parts alone; null where it is not known: noCost says why.'),
        currency: z.string().nullable(),
        noCost: z.string().nullable(),
      })
      .nullable()
      .describe('The smallest change that mends it; null where none does or none is needed.'),
    notMended: z.string().nullable().describe('Why no change mends it, in words.'),
    figures: z
      .strictObject({
        storages_count: z.int().describe('Bodies of water; the figures are of the one that is worst off.'),
        tankVolume_L: z.number(),
        judgedYears: z.int(),
        goodYears: z.int(),
        goodYearsNeeded: z.int(),
        comingGood_years_range: range.describe('Good years among as many coming years as were judged.'),
        dryDays_per_year: z.number().describe('To a tenth.'),
        dryDays_per_year_range: range.describe('To a tenth.'),
        dryDaysAllowed_per_year: z.number().describe('What the share of days of the target comes to, to a tenth.'),
        isDaysMet: z.boolean().describe('Is the share of days of the target met?'),
        longestRun_days: z.int().nullable(),
        cappedBy: z.string().nullable().describe('The assumption that keeps it from holding: the code of its problem.'),
        lacks: z.enum(['tank', 'water', 'ration']).nullable().describe('What keeps it short.'),
      })
      .nullable()
      .describe('Null where the site has no verdict.'),
    target,
    weight: z.number().describe('People times dry days a year: the order within a verdict.'),
  })
  .meta({ id: 'siteShort' });

export type SiteShort = z.infer<typeof siteShort>;
