import { YearsTexts } from '../years.ts';
import { type App, answering, asIs, type Behind, type Find, one } from './routing.ts';
import * as schemas from './schemas.ts';

/** How each year of the record went at every site, from the design that is kept. */
export function yearsRoutes(app: App, { designs }: Behind, find: Find): void {
  const texts = new YearsTexts();
  const years = answering(
    'The water years of every site as they were judged: sent once for each state, with ETag and packed where the page takes it.',
    schemas.years,
  );
  app.get(`${one}/years`, { schema: { ...years, params: schemas.programmeId } }, async (request, typedReply) => {
    const reply = asIs(typedReply);
    const programme = await find(request);
    const state = await designs.state(programme);
    const etag = `"${texts.nameOf(programme, state)}"`;
    reply.header('cache-control', 'private, no-cache').header('vary', 'Accept-Encoding').header('etag', etag);
    if (request.headers['if-none-match'] === etag) return reply.code(304).send();
    const { text, packed } = await texts.text(programme, state);
    reply.type('application/json; charset=utf-8');
    const isPacked = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
    return isPacked ? reply.header('content-encoding', 'gzip').send(packed) : reply.send(text);
  });
}
