import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { recordProblem } from '@eavewell/records';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { DesignState } from '../designs/designs.ts';
import { readingsText, siteFactsText, type TextFound } from '../designs/siteFacts.ts';
import * as schemas from './factsSchemas.ts';
import { Refused } from './problemReply.ts';
import { type App, answering, asIs, type Behind, type Find, one } from './routing.ts';
import { siteAsked } from './schemas.ts';

const pack = promisify(gzip);

/** What one site is judged by: for a page that judges it itself, with the network or without. */
export function addFactsRoutes(app: App, { designs }: Behind, find: Find): void {
  const facts = answering(
    'All that the design and the remedies of one site follow from, as the last design has it, with the addresses of the readings.',
    schemas.siteFacts,
  );
  app.get(`${one}/sites/:siteId/facts`, { schema: { ...facts, params: siteAsked } }, async (request, typedReply) => {
    const programme = await find(request);
    const { siteId } = request.params;
    const found = await siteFactsText(designs, programme, siteId);
    const state = await designs.state(programme);
    return sendOnce(request, asIs(typedReply), { found, state, asked: siteId, isForGood: false });
  });
  const readings = answering('The readings of one gauge, compact, as the last design has them.', schemas.gaugeReadings);
  app.get(
    `${one}/gauges/:gaugeId/readings`,
    { schema: { ...readings, params: schemas.gaugeAsked, querystring: schemas.readingsAsked } },
    async (request, typedReply) => {
      const programme = await find(request);
      const { gaugeId } = request.params;
      const { of = null } = request.query;
      const found = await readingsText(designs, programme, gaugeId, of);
      const state = await designs.state(programme);
      return sendOnce(request, asIs(typedReply), { found, state, asked: gaugeId, isForGood: of !== null });
    },
  );
}

interface ToSend {
  readonly found: TextFound;
  readonly state: DesignState;
  readonly asked: string;
  /** What stands at this address never becomes another text. */
  readonly isForGood: boolean;
}

/**
 * Sends a text once for each content: who has it already is told so.
 *
 * @source rfc9110, sections 8.8.3 and 13.1.2
 */
async function sendOnce(request: FastifyRequest, reply: FastifyReply, { found, state, asked, isForGood }: ToSend) {
  if (found === 'unknown') throw new Refused([recordProblem('request.not_found', {}, { value: asked })]);
  if (found === 'notYet') throw new Refused([recordProblem('request.not_judged_yet', {}, progressOf(state))]);
  const isPacked = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
  const etags = [`"${found.name}"`, `"${found.name}-gzip"`];
  reply
    .removeHeader('content-language')
    .header('cache-control', isForGood ? 'private, max-age=31536000, immutable' : 'private, no-cache')
    .header('vary', 'Accept-Encoding')
    .header('etag', etags[isPacked ? 1 : 0]);
  const known = String(request.headers['if-none-match'] ?? '').split(',');
  if (known.some((one) => etags.includes(one.trim().replace(/^W\//, '')))) return reply.code(304).send();
  reply.type('application/json; charset=utf-8');
  return isPacked ? reply.header('content-encoding', 'gzip').send(await pack(found.text)) : reply.send(found.text);
}

/** How far the design is, as a problem tells it. */
export function progressOf({ done_fraction, isFailed, isCalledOff }: DesignState) {
  const state = isFailed ? 'failed' : isCalledOff ? 'calledOff' : 'running';
  return { state, done_fraction };
}
