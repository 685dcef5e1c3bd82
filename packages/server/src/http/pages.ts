import type { Language } from '@eavewell/words';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { languageOf } from './spokenTo.ts';

/** A page without script, in a language. */
function plainPage({ code, direction, commandLine }: Language, text: (page: PageWords) => string): string {
  const { page } = commandLine.serve;
  return `<!doctype html>
<html lang="${code}" dir="${direction}"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${page.title}</title><main><h1>${page.title}</h1>${text(page)}</main></html>
`;
}

type PageWords = Language['commandLine']['serve']['page'];

/** What stands at the first address where no pages were built: what runs here. */
const runsPage = (language: Language) =>
  plainPage(language, ({ runs, list }) => `<p>${runs}</p><p><a href="/api/programmes">${list}</a></p>`);

/** What a person sees who opens a page of an earlier start: where to find the address of this one. */
const refusedPage = (language: Language) => plainPage(language, ({ refused }) => `<p>${refused}</p>`);

/** Is this a person who opens an address, rather than a page that asks? */
export const isOpened = ({ method, headers }: FastifyRequest): boolean =>
  method === 'GET' && headers['sec-fetch-dest'] !== 'empty' && (headers.accept ?? '').includes('text/html');

/** Answers a person who is not let in, with a page that says why. */
export const sendRefusedPage = (request: FastifyRequest, reply: FastifyReply): FastifyReply =>
  reply
    .code(403)
    .type('text/html; charset=utf-8')
    .send(refusedPage(languageOf(request)));

/**
 * The pages for people, from the folder they were built into. Every address of theirs is the same page, which then shows
 * what stands there; what has a hash in its name never changes and is kept by the browser.
 *
 * @param app - the server
 * @param folder - where the built pages are; null: there are none
 * @definition ours: docs/decisions/0121-pages.md
 */
export async function addPages(app: FastifyInstance, folder: string | null): Promise<void> {
  if (folder === null) {
    app.get('/', { schema: { hide: true } }, (request, reply) =>
      reply.type('text/html; charset=utf-8').send(runsPage(languageOf(request))),
    );
    return;
  }
  await app.register(fastifyStatic, {
    root: folder,
    wildcard: false,
    cacheControl: false,
    setHeaders: (reply, path) => {
      const isHashed = /[\\/]assets[\\/]/.test(path);
      reply.setHeader('cache-control', isHashed ? 'private, max-age=31536000, immutable' : 'no-cache');
    },
  });
  for (const path of ['/programmes', '/programmes/*', '/kept', '/p/*'])
    app.get(path, { schema: { hide: true } }, (_, reply) => reply.sendFile('index.html'));
}
