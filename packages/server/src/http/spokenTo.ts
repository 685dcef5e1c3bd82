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

/**
 * Answers every request in the language it asks for, and says so: whoever keeps an answer must keep one for each language.
 *
 * @source rfc9110, sections 8.5, 12.5.4 and 12.5.5
 */
export function speakAsAsked(app: FastifyInstance): void {
  app.decorateRequest('language', null);
  app.addHook('onRequest', async (request, reply) => {
    request.language = await loadLanguage(tagAsked(request.headers['accept-language']));
    reply.header('content-language', request.language.code).header('vary', 'Accept-Language');
  });
}
