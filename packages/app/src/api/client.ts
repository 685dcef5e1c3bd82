import createClient from 'openapi-fetch';
import type { components, paths } from './apiTypes.ts';

/** What is wrong, in words: the server's own sentences. */
export type ProblemBody = components['schemas']['problems'];
export type ApiProblem = ProblemBody['problems'][number];

type ChangesAsked =
  paths['/api/programmes/{programmeId}/changes']['post']['requestBody']['content']['application/json'];

/** One row added, edited or removed, with what was seen before. */
export type RowChange = ChangesAsked['changes'][number];

/**
 * Why something asked was not done. `unreachable`: the program does not answer; `refused`: this page was opened for another
 * start of it; `problems`: it says what is wrong.
 */
export class NotDone extends Error {
  constructor(
    readonly reason: 'unreachable' | 'refused' | 'problems',
    readonly body: ProblemBody | null = null,
  ) {
    super(body?.detail ?? reason);
  }
}

/** The server on this computer. Paths, bodies and answers are typed from docs/openapi.json. */
export const api = createClient<paths>({
  baseUrl: '/',
  fetch: async (request) => {
    // To begin a question takes a slow computer some milliseconds: what asked it ends first.
    await new Promise((resolve) => setTimeout(resolve));
    return fetch(request);
  },
});

let spoken: string | null = null;
api.use({
  onRequest({ request }) {
    if (spoken !== null) request.headers.set('accept-language', spoken);
    return request;
  },
});

/** Asks for answers in the language of the pages, which may be another than that of the browser. */
export function askIn(language: string): void {
  spoken = language;
}

interface Answered {
  readonly data?: unknown;
  readonly error?: unknown;
  readonly response: Response;
}

/**
 * The answer of the server, or a `NotDone` thrown with what went wrong: queries and forms show it.
 *
 * @param asked - what `api` gives
 * @returns the answer's body
 */
export async function answerOf<A extends Answered>(asked: Promise<A>): Promise<NonNullable<A['data']>> {
  let answered: A;
  try {
    answered = await asked;
  } catch {
    throw new NotDone('unreachable');
  }
  const { data, error, response } = answered;
  if (response.ok && data !== undefined && data !== null) return data as NonNullable<A['data']>;
  const body = isProblemBody(error) ? error : null;
  throw new NotDone(response.status === 403 ? 'refused' : 'problems', body);
}

function isProblemBody(error: unknown): error is ProblemBody {
  return typeof error === 'object' && error !== null && 'problems' in error;
}
