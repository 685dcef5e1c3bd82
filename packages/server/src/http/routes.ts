import { Readable } from 'node:stream';
import { recordProblem } from '@eavewell/records';
import type { FastifyInstance } from 'fastify';
import * as answers from './answers.ts';
import { addFactsRoutes } from './factsRoutes.ts';
import { importRoutes } from './importRoutes.ts';
import { kitRoutes } from './kitRoutes.ts';
import { orRefuse, Refused } from './problemReply.ts';
import { programmeRoutes } from './programmeRoutes.ts';
import { rolloutPaperRoutes } from './rolloutPaperRoutes.ts';
import { rolloutRoutes } from './rolloutRoutes.ts';
import { type App, answering, asIs, type Behind, changed, type Find, one, typed } from './routing.ts';
import * as schemas from './schemas.ts';
import { siteTextRoutes } from './siteTextRoutes.ts';
import { languageOf } from './spokenTo.ts';
import { taskRoutes } from './taskRoutes.ts';

/** All that can be asked of the server. */
export function addRoutes(plain: FastifyInstance, behind: Behind): void {
  const app = typed(plain);
  const find: Find = async ({ params }) => orRefuse(await behind.programmes.programme(params.programmeId));
  programmeRoutes(app, behind, find);
  factRoutes(app, behind, find);
  addFactsRoutes(app, behind, find);
  overviewRoute(app, behind, find);
  siteTextRoutes(app, behind, find);
  kitRoutes(app, behind, find);
  rolloutRoutes(app, behind, find);
  rolloutPaperRoutes(app, behind, find);
  designRoutes(app, behind, find);
  changeRoutes(app, find);
  historyRoutes(app, find);
  importRoutes(app, behind, find);
  taskRoutes(app, behind, find);
  const events = {
    summary: 'Tells what changes, as it happens (server-sent events).',
    description:
      'changed: programmeId, version. design: programmeId, version, done_fraction. task: task, as in the list of tasks. programmes: one was made, named, set aside or brought back.',
  };
  app.get('/api/events', { schema: events }, (_, reply) => behind.listeners.add(reply));
}

function factRoutes(app: App, { designs }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const rows = answering('The rows of one table.', schemas.tableRows);
  app.get(`${one}/tables/:table`, { schema: { ...rows, params: schemas.tableAsked } }, async (request) =>
    answers.rowsAnswer(await find(request), request.params.table),
  );
  const sites = answering('Every site with its cells, and its verdict as far as it is known.', schemas.siteList);
  app.get(`${one}/sites`, { schema: { ...sites, params } }, async (request) => {
    const programme = await find(request);
    return answers.sitesAnswer(programme, await designs.state(programme), languageOf(request));
  });
  const site = answering('One site in full.', schemas.siteInFull);
  app.get(`${one}/sites/:siteId`, { schema: { ...site, params: schemas.siteAsked } }, async (request) => {
    const programme = await find(request);
    const { siteId } = request.params;
    const state = await designs.state(programme);
    const language = languageOf(request);
    const report = await designs.site(programme, siteId, language);
    const found = answers.siteAnswer(programme, siteId, state, report, language);
    if (found === null) throw new Refused([recordProblem('request.not_found', {}, { value: siteId })]);
    return found;
  });
  const problems = answering('What is wrong in the tables of the programme.', schemas.problemsFound);
  app.get(`${one}/problems`, { schema: { ...problems, params } }, async (request) => {
    const programme = await find(request);
    return answers.problemsAnswer(programme, await designs.state(programme), languageOf(request));
  });
}

function overviewRoute(app: App, { designs, overviews }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const list = answering(
    'What the page of sites needs, whole or in parts: sent once for each state, with ETag and packed where the page takes it.',
    schemas.overview,
  );
  app.get(
    `${one}/overview`,
    { schema: { ...list, params, querystring: schemas.overviewAsked } },
    async (request, typedReply) => {
      const reply = asIs(typedReply);
      const programme = await find(request);
      const state = await designs.state(programme);
      const language = languageOf(request);
      const { from, most = null } = request.query;
      const etag = `"${overviews.nameOf(programme, state, language, { from, most })}"`;
      reply
        .header('cache-control', 'private, no-cache')
        .header('vary', 'Accept-Language, Accept-Encoding')
        .header('etag', etag);
      if (request.headers['if-none-match'] === etag) return reply.code(304).send();
      const { text, packed } = await overviews.text(programme, state, language, { from, most });
      reply.type('application/json; charset=utf-8');
      const isPacked = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
      return isPacked ? reply.header('content-encoding', 'gzip').send(packed) : reply.send(text);
    },
  );
}

function designRoutes(app: App, { designs }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const design = answering('The design, as far as it is; asking begins it where it is not made yet.', schemas.design);
  app.get(`${one}/design`, { schema: { ...design, params } }, async (request, reply) => {
    const programme = await find(request);
    const head = JSON.stringify(answers.designHead(programme, await designs.state(programme)));
    const text = async function* () {
      yield `${head.slice(0, -1)},"report":`;
      yield* designs.reportText(programme, languageOf(request));
      yield '}';
    };
    return asIs(reply)
      .type('application/json; charset=utf-8')
      .send(Readable.from(text(), { objectMode: false }));
  });
  const cancelled = answering('Calls the running design off.', schemas.programmeState);
  app.delete(`${one}/design`, { schema: { ...cancelled, params } }, async (request) => {
    const programme = await find(request);
    await designs.cancel(programme);
    return answers.stateAnswer(programme, await designs.state(programme));
  });
  const again = answering('Begins a design again that was called off or failed.', schemas.programmeState);
  app.post(`${one}/design`, { schema: { ...again, params: schemas.programmeId } }, async (request) => {
    const programme = await find(request);
    await designs.again(programme);
    return answers.stateAnswer(programme, await designs.state(programme));
  });
}

function changeRoutes(app: App, find: Find): void {
  const { programmeId: params } = schemas;
  const change = answering('Changes rows: one record of all that is asked, or nothing.', schemas.changed);
  app.post(`${one}/changes`, { schema: { ...change, params, body: schemas.changesAsked } }, async (request) => {
    const programme = await find(request);
    const { by, changes, sendId } = request.body;
    return changed(request, programme, await programme.change(by, changes, sendId));
  });
  for (const step of ['undo', 'redo'] as const) {
    const what = step === 'undo' ? 'Takes back the last change made on this computer.' : 'Takes back the last undo.';
    const schema = { ...answering(what, schemas.changed), params, body: schemas.byWhom };
    app.post(`${one}/${step}`, { schema }, async (request) => {
      const programme = await find(request);
      return changed(request, programme, await programme[step](request.body.by));
    });
  }
}

function historyRoutes(app: App, find: Find): void {
  const { programmeId: params } = schemas;
  const records = answering('The records, newest first.', schemas.records);
  const recordsSchema = { ...records, params, querystring: schemas.recordsAsked };
  app.get(`${one}/changes`, { schema: recordsSchema }, async (request) =>
    answers.recordsAnswer(await find(request), request.query, languageOf(request)),
  );
  const history = answering('What stood in one cell, since when, and who put it there.', schemas.history);
  const historySchema = { ...history, params, querystring: schemas.historyAsked };
  app.get(`${one}/history`, { schema: historySchema }, async (request) =>
    answers.historyAnswer(await find(request), request.query),
  );
  const conflicts = answering('What two people said that cannot both be so.', schemas.conflicts);
  app.get(`${one}/conflicts`, { schema: { ...conflicts, params } }, async (request) =>
    answers.conflictsAnswer(await find(request)),
  );
}
