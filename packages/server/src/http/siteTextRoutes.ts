import type { z } from 'zod';
import type { OpenProgramme } from '../openProgramme.ts';
import { SiteTexts } from '../siteTexts.ts';
import { type App, answering, asIs, type Behind, type Find, one } from './routing.ts';
import * as schemas from './schemas.ts';

type Years = z.infer<typeof schemas.years>['sites'][number];
type Safety = z.infer<typeof schemas.programmeSafety>['sites'][number];

/** One thing of every site, from the design that is kept: how its years went; what may be said of drinking its water. */
export function siteTextRoutes(app: App, { designs }: Behind, find: Find): void {
  const years = answering(
    'The water years of every site as they were judged: sent once for each state, with ETag and packed where the page takes it.',
    schemas.years,
  );
  const safety = answering(
    'The cup of every site as it was judged, with its last sample and the sets of cartridges that are due: sent as the years are.',
    schemas.programmeSafety,
  );
  const texts = {
    years: new SiteTexts('years', {
      isOfSites: false,
      entryOf: (row, told): Years => ({
        ...row,
        verdict: told?.short.verdict ?? null,
        years: told?.years ?? null,
      }),
    }),
    safety: new SiteTexts('safety', {
      isOfSites: true,
      entryOf: (row, told): Safety => ({ ...row, isJudged: told !== undefined, cup: told?.cup ?? null }),
    }),
  };
  const answer = async (
    programme: OpenProgramme,
    of: SiteTexts,
    request: Asked,
    typedReply: Parameters<typeof asIs>[0],
  ) => {
    const reply = asIs(typedReply);
    const state = await designs.state(programme);
    const etag = `"${of.nameOf(programme, state)}"`;
    reply.header('cache-control', 'private, no-cache').header('vary', 'Accept-Encoding').header('etag', etag);
    if (request.headers['if-none-match'] === etag) return reply.code(304).send();
    const { text, packed } = await of.text(programme, state);
    reply.type('application/json; charset=utf-8');
    const isPacked = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
    return isPacked ? reply.header('content-encoding', 'gzip').send(packed) : reply.send(text);
  };
  const params = schemas.programmeId;
  app.get(`${one}/years`, { schema: { ...years, params } }, async (request, reply) =>
    answer(await find(request), texts.years, request, reply),
  );
  app.get(`${one}/safety`, { schema: { ...safety, params } }, async (request, reply) =>
    answer(await find(request), texts.safety, request, reply),
  );
}

/** What is read of the one who asks. */
interface Asked {
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
}
