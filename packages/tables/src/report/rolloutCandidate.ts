import { z } from 'zod';
import { day } from './parts.ts';

const perhapsDay = day.nullable();

/** A site that is not handed over. */
export const candidate = z.strictObject({
  siteId: z.string(),
  name: z.string(),
  area: z.string().nullable(),
  people: z.number().nullable(),
  verdict: z.enum(['holds', 'tight', 'short', 'unknown']).nullable(),
  priority_factor: z.number(),
  priorityReason: z.string().nullable(),
  agreedOn: perhapsDay,
  readyFrom: perhapsDay,
  finishBy: perhapsDay,
  tripId: z.string().nullable().describe('Null: in no trip of the plan.'),
  reason: z.string().nullable().describe('Why it is not planned, as a word of the program; null: it may be.'),
  isUntreated: z.boolean().describe('No treatment unit is entered for it.'),
  said: z.string().describe('Why it is planned or not, for people.'),
});

/** What the first sentence does not say of sites. */
export const proviso = z.strictObject({
  kind: z
    .enum(['notDone', 'undated', 'leftOut', 'untreated', 'notHolding'])
    .describe(
      'In a trip that does not get them done; counted from the hand-over, as when water runs is not known; in no trip, for a reason; not treated; not shown to hold.',
    ),
  siteIds: z.array(z.string()),
  people_count: z.number().describe('As far as they are known.'),
  said: z.string(),
});
