import { english, type Language, loadLanguage, tagAsked } from '@eavewell/words';
import type { FastifyInstance } from 'fastify';

declare module 'fastify' {
  interface FastifyRequest {
    /** The language its sentences are asked in; null before it is known. */
    language: Language | null;
  }
}

/** The language a request is answered in. */
export const languageOf = (request: { readonly language?: Language | null }): Language => request.language ?? english;

/** Files of the pages, by their addresses: those of the program's own answers have no ending. */
const isFile = /^\/(?!api\/)[^?]*\.[a-z0-9]+(?:\?|$)/;

/**
 * Answers every request in the language it asks for, and says so: whoever keeps an answer must keep one for each language.
 * The files of the pages are the same in every language, and a browser that keeps them is not to look for another of each.
 *
 * @source rfc9110, sections 8.5, 12.5.4 and 12.5.5
 */
export function speakAsAsked(app: FastifyInstance): void {
  app.decorateRequest('language', null);
  app.addHook('onRequest', async (request, reply) => {
    request.language = await loadLanguage(tagAsked(request.headers['accept-language']));
    if (isFile.test(request.url)) return;
    reply.header('content-language', request.language.code).header('vary', 'Accept-Language');
  });
}
