import { z } from 'zod';
import { day, workingLine } from './parts.ts';
import { rolloutReport } from './rollout.ts';
import { planListed } from './rolloutSheet.ts';

const { shape } = rolloutReport;
const perhapsDay = day.nullable();

/** How a figure of a plan was reached. */
export const rolloutWorking = z.strictObject({
  stamp: z.string(),
  planId: z.string().nullable(),
  opens: z.string().describe('The code of the line that was asked for.'),
  said: z.array(z.string()).describe('Of why a village comes when it does: what it says in sentences; else none.'),
  working: z
    .array(workingLine)
    .describe('Days of the plan (`planDay`, `planTime`) are counted from its first; `said` has them by the calendar.'),
});
export type RolloutWorking = z.infer<typeof rolloutWorking>;

/** Two plans side by side: what differs, for whom, what it costs. */
export const rolloutComparison = z.strictObject({
  people_count: z.int().describe('People of all sites that can be planned.'),
  servedA: shape.served,
  servedB: shape.served,
  stamp: z.string(),
  a: planListed,
  b: planListed,
  said: z.array(z.string()).describe('The difference in sentences, the greatest first.'),
  finish_days: z.number().describe('b after a: above 0 later.'),
  waiting_personDays: z.number(),
  cost: z.number(),
  fuel_L: z.number(),
  trips_count: z.int(),
  sites: z.array(
    z.strictObject({
      siteId: z.string(),
      name: z.string(),
      people: z.int(),
      crewA: z.string().nullable(),
      crewB: z.string().nullable(),
      servedA: perhapsDay,
      servedB: perhapsDay,
      later_days: z.number().nullable(),
    }),
  ),
  byArea: z.array(
    z.strictObject({ area: z.string().nullable(), people: z.int(), meanA_days: z.number(), meanB_days: z.number() }),
  ),
});
export type RolloutComparison = z.infer<typeof rolloutComparison>;
