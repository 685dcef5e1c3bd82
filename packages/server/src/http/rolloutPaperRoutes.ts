import { recordProblem } from '@eavewell/records';
import { z } from 'zod';
import type { PaperFound } from '../rollouts/rolloutPapers.ts';
import { packAsked } from './kitAnswerSchemas.ts';
import { Refused } from './problemReply.ts';
import * as answers from './rolloutSchemas.ts';
import { type App, asIs, type Behind, type Find, one } from './routing.ts';
import * as schemas from './schemas.ts';
import { languageOf } from './spokenTo.ts';

const paperAsked = answers.planAsked.extend(packAsked.shape);
const noticesAsked = paperAsked.extend({ month: z.string().regex(/^\d{4}-(?:0[1-9]|1[0-2])$/) });

type Wanted = z.infer<typeof paperAsked>;

/** What of the rollout is printed and carried: the manifest of a trip, what is brought before it, notices to villages, the itinerary of a crew, each a PDF. */
export function rolloutPaperRoutes(app: App, { rolloutPapers: papers }: Behind, find: Find): void {
  const wantedOf = (request: { readonly query: Wanted }) => ({
    planId: request.query.plan ?? null,
    language: request.query.language ?? languageOf(request as never).code,
  });
  const ofTrip = { params: answers.tripAsked, querystring: paperAsked };
  for (const [kind, summary] of [
    ['manifest', 'The manifest of one trip, as a PDF in a language of paper.'],
    ['hauls', 'What is brought to its store before one trip leaves, as a PDF in a language of paper.'],
    ['notices', 'Notices to the villages of one trip, as a PDF in a language of paper.'],
  ] as const)
    app.get(`${one}/rollout/trips/:tripId/${kind}.pdf`, { schema: { summary, ...ofTrip } }, async (request, reply) => {
      const { tripId } = request.params;
      const found = await papers.ofTrip(kind, await find(request), tripId, wantedOf(request));
      return sent(asIs(reply), found, { name: `${kind}-${tripId}`, value: tripId });
    });
  const summary = 'Notices to all villages a crew comes to in a month, as a PDF in a language of paper.';
  const ofMonth = { summary, params: schemas.programmeId, querystring: noticesAsked };
  app.get(`${one}/rollout/notices.pdf`, { schema: ofMonth }, async (request, reply) => {
    const { month } = request.query;
    const found = await papers.ofMonth(await find(request), month, wantedOf(request));
    return sent(asIs(reply), found, { name: `notices-${month}`, value: month });
  });
  const ofCrew = {
    summary: 'What one crew does, day by day, as a PDF in a language of paper.',
    params: answers.crewAsked,
    querystring: paperAsked,
  };
  app.get(`${one}/rollout/crews/:crewId/itinerary.pdf`, { schema: ofCrew }, async (request, reply) => {
    const { crewId } = request.params;
    const found = await papers.ofCrew(await find(request), crewId, wantedOf(request));
    return sent(asIs(reply), found, { name: `itinerary-${crewId}`, value: crewId });
  });
}

function sent(
  reply: ReturnType<typeof asIs>,
  found: PaperFound,
  { name, value }: { readonly name: string; readonly value: string },
) {
  if (typeof found === 'string')
    throw new Refused([recordProblem('request.not_found', {}, { value: found === 'plan' ? 'rollout' : value })]);
  if (found.kind === 'lettersMissing')
    throw new Refused([recordProblem('request.letters_missing', {}, { letters: found.letters.join(' ') })]);
  // An id is made of letters, figures, - and _ alone.
  return reply
    .type('application/pdf')
    .header('content-disposition', `attachment; filename="${name}.pdf"`)
    .send(Buffer.from(found.bytes));
}
