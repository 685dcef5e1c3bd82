import { Readable } from 'node:stream';
import { recordProblem } from '@eavewell/records';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { Step } from '../imports/decided.ts';
import { type ComingFile, largestUpload_bytes } from '../imports/sentFiles.ts';
import type { OpenProgramme } from '../openProgramme.ts';
import { reviewAnswer } from './answers.ts';
import { orRefuse, Refused } from './problemReply.ts';
import { type App, answering, type Behind, changed, type Find, failing, one } from './routing.ts';
import * as schemas from './schemas.ts';
import { languageOf } from './spokenTo.ts';

/** A form holds a little beside its files [byte]. */
const formRoom_bytes = 1e6;

/** The files of a request: those of a form one by one, or the body as one. */
async function* filesOf(request: FastifyRequest, name: string | undefined): AsyncGenerator<ComingFile> {
  if (Number(request.headers['content-length'] ?? 0) > largestUpload_bytes + formRoom_bytes)
    throw new Refused([recordProblem('request.too_large', {}, { largest_MB: largestUpload_bytes / 1e6 })]);
  if (request.isMultipart()) {
    for await (const part of request.files()) yield { name: part.filename, bytes: part.file };
    return;
  }
  if (name === undefined) throw new Refused([recordProblem('request.wrong', {}, { value: 'name' })]);
  yield { name, bytes: request.body instanceof Readable ? request.body : Readable.from([]) };
}

function stepOf(body: z.infer<typeof schemas.importStep>): Step {
  if ('stepsBack' in body) return { kind: 'stepsBack', taken: body.stepsBack };
  if ('place' in body) return { kind: 'place', ...body.place };
  if ('columns' in body) return { kind: 'columns', ...body };
  return { kind: 'mend', mend: body };
}

/** Imports: into a programme, or as a programme of their own. */
export function importRoutes(app: App, behind: Behind, find: Find): void {
  const into = async ({ params: { programmeId } }: { params: { programmeId?: string | undefined } }) =>
    programmeId === undefined ? null : find({ params: { programmeId } });
  for (const where of ['into', 'alone'] as const) {
    const at = where === 'into' ? `${one}/imports` : '/api/imports';
    sending(app, behind, { at, where }, into);
    looking(app, behind, { at, where }, into);
    ending(app, behind, { at, where }, into);
  }
}

/** The path of imports, and whether they go into a programme. */
interface Way {
  readonly at: string;
  readonly where: 'into' | 'alone';
}

type Into = (request: { params: { programmeId?: string | undefined } }) => Promise<OpenProgramme | null>;

function sending(app: App, { reviews }: Behind, { at, where }: Way, into: Into): void {
  const begin = {
    summary:
      'Sends files to be looked at: a form with files (multipart/form-data), or one file as the body. Zips of a programme folder, workbooks, tables, the files of a folder. Nothing is written.',
    consumes: ['application/octet-stream', 'multipart/form-data'],
    params: schemas.importOf[where],
    querystring: schemas.uploadAsked,
    response: { 201: schemas.review, ...failing },
  };
  app.post(at, { schema: begin }, async (request, reply) => {
    const programme = await into(request);
    const { name, absent, table = null, gaugeId = null, wait } = request.query;
    const asked = { absent, table, gaugeId, isWaitedFor: wait === 'yes' };
    const begun = await reviews.begin(programme, filesOf(request as unknown as FastifyRequest, name), asked);
    return reply.code(201).send(reviewAnswer(orRefuse(begun), languageOf(request)));
  });
  const list = answering('The imports that wait, such as after the page was loaded again.', schemas.reviews);
  app.get(at, { schema: { ...list, params: schemas.importOf[where] } }, async (request) => ({
    imports: reviews.list(await into(request)).map((review) => reviewAnswer(review, languageOf(request))),
  }));
}

function looking(app: App, { reviews }: Behind, { at, where }: Way, into: Into): void {
  const oneImport = `${at}/:importId`;
  const params = schemas.importAsked[where];
  const look = answering('What files bring, what is wrong in them, and what they would change.', schemas.review);
  app.get(oneImport, { schema: { ...look, params } }, async (request) => {
    const programme = await into(request);
    return reviewAnswer(orRefuse(await reviews.review(programme, request.params.importId)), languageOf(request));
  });
  const step = answering(
    'Mends one cell of files that wait; or says what headers and sheets stand for; or which table a file is.',
    schemas.review,
  );
  app.patch(oneImport, { schema: { ...step, params, body: schemas.importStep } }, async (request) => {
    const programme = await into(request);
    return reviewAnswer(
      orRefuse(await reviews.step(programme, request.params.importId, stepOf(request.body))),
      languageOf(request),
    );
  });
  for (const kind of ['undo', 'redo'] as const) {
    const back = answering(kind === 'undo' ? 'Takes back the last mend.' : 'Makes it again.', schemas.review);
    app.post(`${oneImport}/${kind}`, { schema: { ...back, params } }, async (request) => {
      const programme = await into(request);
      return reviewAnswer(
        orRefuse(await reviews.step(programme, request.params.importId, { kind })),
        languageOf(request),
      );
    });
  }
}

function ending(app: App, { reviews }: Behind, { at, where }: Way, into: Into): void {
  const oneImport = `${at}/:importId`;
  const params = schemas.importAsked[where];
  const cancel = { summary: 'Lets files go: nothing of them stays.', params, response: { 204: z.null(), ...failing } };
  app.delete(oneImport, { schema: cancel }, async (request, reply) => {
    const programme = await into(request);
    orRefuse(await reviews.cancel(programme, request.params.importId));
    return reply.code(204).send(null);
  });
  const accept = answering(
    'Takes files in, as one record. The name is for a programme that is made of them.',
    schemas.taken,
  );
  app.post(`${oneImport}/accept`, { schema: { ...accept, params, body: schemas.newFrom } }, async (request) => {
    const { by, name = null, beside: isBeside } = request.body;
    const found = await reviews.accept(await into(request), request.params.importId, { by, name, isBeside });
    const value = orRefuse(found.made);
    const programme = found.programme!;
    return {
      ...changed(request, programme, { ...found.made, ok: true, value }),
      programmeId: programme.entry.programmeId,
    };
  });
}
