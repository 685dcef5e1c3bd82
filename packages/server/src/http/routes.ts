import { Readable } from 'node:stream';
import { demoProgramme } from '@eavewell/demo';
import { recordProblem } from '@eavewell/records';
import type { FastifyInstance, FastifyReply } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { Designs } from '../designs/designs.ts';
import { exportZip } from '../exportZip.ts';
import type { Changed, OpenProgramme } from '../openProgramme.ts';
import type { Overviews } from '../overview.ts';
import type { Programmes } from '../programmes.ts';
import type { Reviews } from '../reviews.ts';
import { largestUpload_bytes } from '../uploads.ts';
import * as answers from './answers.ts';
import type { Listeners } from './events.ts';
import { orRefuse, Refused } from './problemReply.ts';
import * as schemas from './schemas.ts';

/** Sites of a demo programme. */
export const demoSites = 60;

/** What the routes answer from. */
export interface Behind {
  readonly programmes: Programmes;
  readonly designs: Designs;
  readonly overviews: Overviews;
  readonly reviews: Reviews;
  readonly listeners: Listeners;
}

type App = ReturnType<typeof typed>;
const typed = (app: FastifyInstance) => app.withTypeProvider<ZodTypeProvider>();

const one = '/api/programmes/:programmeId';
const failing = { default: schemas.problemBody };
const answering = <T extends z.ZodType>(summary: string, answer: T) => ({
  summary,
  response: { 200: answer, ...failing },
});

/** An answer that is sent as it is, put together elsewhere. */
const asIs = (reply: unknown) => reply as FastifyReply;

/** The programme a request is about. */
type Find = (request: { readonly params: { readonly programmeId: string } }) => Promise<OpenProgramme>;

/** All that can be asked of the server. */
export function addRoutes(plain: FastifyInstance, behind: Behind): void {
  const app = typed(plain);
  const find: Find = async ({ params }) => orRefuse(await behind.programmes.programme(params.programmeId));
  programmeRoutes(app, behind, find);
  factRoutes(app, behind, find);
  designRoutes(app, behind, find);
  changeRoutes(app, find);
  historyRoutes(app, find);
  importRoutes(app, behind, find);
  const events = { summary: 'Tells what changes, as it happens (server-sent events).' };
  app.get('/api/events', { schema: events }, (_, reply) => behind.listeners.add(reply));
}

function programmeRoutes(app: App, { programmes, designs }: Behind, find: Find): void {
  app.get(
    '/api/programmes',
    { schema: answering('The programmes of this data folder.', schemas.programmes) },
    async () => ({ programmes: (await programmes.list()).map((entry) => ({ ...entry })) }),
  );
  app.post(
    '/api/programmes',
    {
      schema: {
        summary: 'Makes a programme: empty, or invented to try things on.',
        body: schemas.newProgramme,
        response: { 201: schemas.programmeEntry, ...failing },
      },
    },
    async (request, reply) => {
      const { name, from, by } = request.body;
      const tables = from === 'demo' ? demoProgramme({ sites: demoSites }) : null;
      const made = orRefuse(await programmes.make(name, by, tables, from === 'demo' ? 'demo' : null));
      return reply.code(201).send({ ...made.entry });
    },
  );
  const state = answering('Where a programme stands.', schemas.programmeState);
  app.get(one, { schema: { ...state, params: schemas.programmeId } }, async (request) => {
    const programme = await find(request);
    return answers.stateAnswer(programme, await designs.state(programme));
  });
  const zip = { summary: 'The whole programme as a zip: its tables and its records.', params: schemas.programmeId };
  app.get(`${one}/export.zip`, { schema: zip }, async (request, reply) => {
    const programme = await find(request);
    const name = programme.entry.name.replace(/[^A-Za-z0-9 _-]/g, '').trim() || programme.entry.programmeId;
    reply.header('content-disposition', `attachment; filename="${name}.zip"`);
    return reply.type('application/zip').send(Buffer.from(exportZip(programme)));
  });
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
    return answers.sitesAnswer(programme, await designs.state(programme));
  });
  const site = answering('One site in full.', schemas.siteInFull);
  app.get(`${one}/sites/:siteId`, { schema: { ...site, params: schemas.siteAsked } }, async (request) => {
    const programme = await find(request);
    const { siteId } = request.params;
    const state = await designs.state(programme);
    const found = answers.siteAnswer(programme, siteId, state, await designs.site(programme, siteId));
    if (found === null) throw new Refused([recordProblem('request.not_found', {}, { value: siteId })]);
    return found;
  });
  const problems = answering('What is wrong in the tables of the programme.', schemas.problemsFound);
  app.get(`${one}/problems`, { schema: { ...problems, params } }, async (request) => {
    const programme = await find(request);
    return answers.problemsAnswer(programme, await designs.state(programme));
  });
}

function designRoutes(app: App, { designs, overviews }: Behind, find: Find): void {
  const { programmeId: params } = schemas;
  const list = answering(
    'What the page of sites needs, small: sent once for each state, with ETag and packed where the page takes it.',
    schemas.overview,
  );
  app.get(`${one}/overview`, { schema: { ...list, params } }, async (request, typedReply) => {
    const reply = asIs(typedReply);
    const programme = await find(request);
    const state = await designs.state(programme);
    const etag = `"${overviews.nameOf(programme, state)}"`;
    reply.header('cache-control', 'private, no-cache').header('vary', 'accept-encoding').header('etag', etag);
    if (request.headers['if-none-match'] === etag) return reply.code(304).send();
    const { text, packed } = await overviews.text(programme, state);
    reply.type('application/json; charset=utf-8');
    const isPacked = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
    return isPacked ? reply.header('content-encoding', 'gzip').send(packed) : reply.send(text);
  });
  const design = answering('The design, as far as it is; asking begins it where it is not made yet.', schemas.design);
  app.get(`${one}/design`, { schema: { ...design, params } }, async (request, reply) => {
    const programme = await find(request);
    const head = JSON.stringify(answers.designHead(programme, await designs.state(programme)));
    const text = async function* () {
      yield `${head.slice(0, -1)},"report":`;
      yield* designs.reportText(programme);
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

/** What a change came to. */
function changed(programme: OpenProgramme, made: Changed) {
  return answers.changedAnswer(programme, { ok: true, value: orRefuse(made), problems: made.problems });
}

function changeRoutes(app: App, find: Find): void {
  const { programmeId: params } = schemas;
  const change = answering('Changes rows: one record of all that is asked, or nothing.', schemas.changed);
  app.post(`${one}/changes`, { schema: { ...change, params, body: schemas.changesAsked } }, async (request) => {
    const programme = await find(request);
    return changed(programme, await programme.change(request.body.by, request.body.changes));
  });
  for (const step of ['undo', 'redo'] as const) {
    const what = step === 'undo' ? 'Takes back the last change made on this computer.' : 'Takes back the last undo.';
    const schema = { ...answering(what, schemas.changed), params, body: schemas.byWhom };
    app.post(`${one}/${step}`, { schema }, async (request) => {
      const programme = await find(request);
      return changed(programme, await programme[step](request.body.by));
    });
  }
}

function historyRoutes(app: App, find: Find): void {
  const { programmeId: params } = schemas;
  const records = answering('The records, newest first.', schemas.records);
  const recordsSchema = { ...records, params, querystring: schemas.recordsAsked };
  app.get(`${one}/changes`, { schema: recordsSchema }, async (request) =>
    answers.recordsAnswer(await find(request), request.query),
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

function importRoutes(app: App, { reviews }: Behind, find: Find): void {
  const oneImport = `${one}/imports/:importId`;
  const { importAsked: params } = schemas;
  const begin = {
    summary:
      'Sends a zip of a programme folder, or one table, to be looked at. Nothing is written. The body is the file.',
    consumes: ['application/octet-stream'],
    params: schemas.programmeId,
    querystring: schemas.uploadAsked,
    response: { 201: schemas.review, ...failing },
  };
  app.post(`${one}/imports`, { schema: begin, bodyLimit: largestUpload_bytes + 1 }, async (request, reply) => {
    const programme = await find(request);
    const { name, absent, table = null, gaugeId = null } = request.query;
    const body: unknown = request.body;
    const bytes = body instanceof Uint8Array ? body : new Uint8Array();
    const begun = orRefuse(await reviews.begin(programme, { name, bytes, table, gaugeId }, absent));
    return reply.code(201).send(answers.reviewAnswer(begun));
  });
  const look = answering('What a file brings, what is wrong in it, and what it would change.', schemas.review);
  app.get(oneImport, { schema: { ...look, params } }, async (request) => {
    const programme = await find(request);
    return answers.reviewAnswer(orRefuse(await reviews.review(programme, request.params.importId)));
  });
  const mend = answering('Mends one cell of a file that waits.', schemas.review);
  app.patch(oneImport, { schema: { ...mend, params, body: schemas.mended } }, async (request) => {
    const programme = await find(request);
    return answers.reviewAnswer(orRefuse(await reviews.mend(programme, request.params.importId, request.body)));
  });
  const cancel = { summary: 'Lets a file go: nothing of it stays.', params, response: { 204: z.null(), ...failing } };
  app.delete(oneImport, { schema: cancel }, async (request, reply) => {
    const programme = await find(request);
    orRefuse(await reviews.cancel(programme, request.params.importId));
    return reply.code(204).send(null);
  });
  const accept = answering('Takes a file in, as one record.', schemas.changed);
  app.post(`${oneImport}/accept`, { schema: { ...accept, params, body: schemas.byWhom } }, async (request) => {
    const programme = await find(request);
    return changed(programme, await reviews.accept(programme, request.params.importId, request.body.by));
  });
}
