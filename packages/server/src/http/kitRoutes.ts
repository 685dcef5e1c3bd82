import { recordProblem } from '@eavewell/records';
import type { z } from 'zod';
import { siteKitAnswer } from '../kits/kitAnswers.ts';
import { marketOf } from '../kits/kitSumTask.ts';
import { progressOf } from './factsRoutes.ts';
import * as answers from './kitAnswerSchemas.ts';
import { Refused } from './problemReply.ts';
import { type App, answering, asIs, type Behind, type Find, one } from './routing.ts';
import * as schemas from './schemas.ts';
import { languageOf } from './spokenTo.ts';

/** What goes in the boat and what it costs: of the programme, of a trip, of one site. */
export function kitRoutes(app: App, behind: Behind, find: Find): void {
  const { kits } = behind;
  const programme = answering(
    'The kit of the programme, or of a trip: what is needed, short and to be bought, every site in short, what all of it costs.',
    answers.programmeKitAnswer,
  );
  app.get(
    `${one}/kit`,
    { schema: { ...programme, params: schemas.programmeId, querystring: answers.kitAsked } },
    async (request, reply) => {
      const text = await kits.sum(await find(request), sumAsked(request.query, languageOf(request).code));
      return asIs(reply).type('application/json; charset=utf-8').send(text);
    },
  );
  const site = answering('The kit, the loads and the whole-life cost of one site.', answers.siteKitAnswer);
  app.get(`${one}/sites/:siteId/kit`, { schema: { ...site, params: schemas.siteAsked } }, async (request, reply) => {
    const { siteId } = request.params;
    const found = await kits.site(await find(request), siteId);
    if (found === null) throw new Refused([recordProblem('request.not_found', {}, { value: siteId })]);
    const text = JSON.stringify(
      siteKitAnswer(found.site, found.kept, marketOf(found.kept).priceOf, languageOf(request)),
    );
    return asIs(reply).type('application/json; charset=utf-8').send(text);
  });
  packRoute(app, behind, find);
  workbookRoute(app, behind, find);
}

/** What is asked of a sum: the sites of a trip, each once, or all. */
function sumAsked({ sites, neededOn }: z.infer<typeof answers.kitAsked>, language: string) {
  const chosen = sites === undefined || sites === '' ? null : [...new Set(sites.split(',').filter(Boolean))];
  return { language, sites: chosen, neededOn: neededOn ?? null };
}

/** The kit of the programme or a trip, to be opened in a spreadsheet. */
function workbookRoute(app: App, { kits }: Behind, find: Find): void {
  const schema = {
    summary: 'The kit of the programme, or of a trip, as a workbook (.xlsx).',
    params: schemas.programmeId,
    querystring: answers.kitAsked,
  };
  app.get(`${one}/kit.xlsx`, { schema }, async (request, reply) => {
    const bytes = await kits.workbook(await find(request), sumAsked(request.query, languageOf(request).code));
    return asIs(reply)
      .type('application/vnd.openxmlformats-officedocument.spreadsheetml.sheet')
      .header('content-disposition', 'attachment; filename="kit.xlsx"')
      .send(Buffer.from(bytes));
  });
}

/** The pack that is carried to a site, as a PDF. */
function packRoute(app: App, { kits, designs }: Behind, find: Find): void {
  const schema = {
    summary: 'The pack that is carried to one site, as a PDF in a language of paper.',
    params: schemas.siteAsked,
    querystring: answers.packAsked,
  };
  app.get(`${one}/sites/:siteId/pack.pdf`, { schema }, async (request, reply) => {
    const programme = await find(request);
    const { siteId } = request.params;
    const language = request.query.language ?? languageOf(request).code;
    const made = await kits.pack(programme, siteId, language);
    if (made === 'unknown') throw new Refused([recordProblem('request.not_found', {}, { value: siteId })]);
    if (made === 'notYet')
      throw new Refused([recordProblem('request.not_judged_yet', {}, progressOf(await designs.state(programme)))]);
    if (made.kind === 'lettersMissing')
      throw new Refused([recordProblem('request.letters_missing', {}, { letters: made.letters.join(' ') })]);
    // An id is made of letters, figures, - and _ alone.
    const name = siteId.replace(/[^A-Za-z0-9_-]/g, '_');
    return asIs(reply)
      .type('application/pdf')
      .header('content-disposition', `attachment; filename="${name}.pdf"`)
      .send(Buffer.from(made.bytes));
  });
}
