import { resolve } from 'node:path';
import { recordProblem } from '@eavewell/records';
import { english } from '@eavewell/words';
import cookie from '@fastify/cookie';
import helmet from '@fastify/helmet';
import multipart from '@fastify/multipart';
import swagger from '@fastify/swagger';
import fastify, { type FastifyError, type FastifyInstance } from 'fastify';
import {
  jsonSchemaTransform,
  jsonSchemaTransformObject,
  serializerCompiler,
  validatorCompiler,
} from 'fastify-type-provider-zod';
import { largestUpload_bytes, mostFiles } from '../imports/sentFiles.ts';
import { MapFiles } from '../maps/mapFiles.ts';
import type { RolloutTold } from '../rollouts/rolloutTold.ts';
import { Listeners } from './events.ts';
import { cookieAt, isSameKey, type Keys, refusal } from './guard.ts';
import { addMaps } from './mapRoutes.ts';
import { addPages, isOpened, sendRefusedPage } from './pages.ts';
import { problemOfError, Refused, sendProblems } from './problemReply.ts';
import { addRoutes } from './routes.ts';
import type { Behind } from './routing.ts';
import { speakAsAsked } from './spokenTo.ts';

/** Largest body but for a file that is sent [byte]: some thousand changed rows. Ours. */
const largestBody_bytes = 5e6;

/** What the server is built of. */
export interface AppAsked extends Omit<Behind, 'listeners'> {
  readonly keys: Keys;
  readonly version: string;
  /** The folder the pages for people were built into; null: there are none. */
  readonly pages: string | null;
  /** Where programmes are kept, as a person is told. */
  readonly dataFolder: string;
  /** The port it listens on, once it does. */
  port(): number;
  /** Told what is our own fault; the page only hears that it is. */
  onFault(error: unknown): void;
}

/**
 * Builds the server, not listening yet.
 *
 * @param asked - what it answers from, its keys, its port
 * @returns the server
 * @definition ours: docs/decisions/0102-server-libraries.md
 */
export async function buildApp(asked: AppAsked): Promise<FastifyInstance> {
  const app = fastify({
    bodyLimit: largestBody_bytes,
    forceCloseConnections: true,
    routerOptions: { maxParamLength: 200 },
    // An address that cannot be one of ours: cut off, or longer than any.
    frameworkErrors: (error, _, reply) =>
      sendProblems(reply, [problemOfError(error, asked.dataFolder, largestBody_bytes)]),
  });
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  app.setErrorHandler((error: FastifyError | Refused, request, reply) => {
    if (error instanceof Refused) return sendProblems(reply, error.problems);
    const problem = problemOfError(error, asked.dataFolder, request.routeOptions.bodyLimit ?? largestBody_bytes);
    if (problem.code === 'request.our_fault') asked.onFault(error);
    return sendProblems(reply, [problem]);
  });
  app.setNotFoundHandler((request, reply) =>
    sendProblems(reply, [recordProblem('request.not_found', {}, { value: request.url.split('?')[0]! })]),
  );
  // Files are taken as they are, whatever the page calls them; JSON keeps its own reader.
  app.addContentTypeParser('*', (_, body, done) => done(null, body));
  await app.register(multipart, {
    preservePath: true,
    limits: { fileSize: largestUpload_bytes, files: mostFiles + 1, parts: mostFiles + 100 },
  });
  await app.register(cookie);
  await app.register(helmet, safety);
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { title: 'Eavewell', version: asked.version, description: english.commandLine.serve.page.api },
      servers: [{ url: 'http://127.0.0.1' }],
    },
    transform: jsonSchemaTransform,
    transformObject: jsonSchemaTransformObject,
  });
  speakAsAsked(app);
  guard(app, asked);
  const listeners = new Listeners();
  listen(asked, listeners);
  app.addHook('preClose', async () => listeners.close());
  addRoutes(app, { ...asked, listeners });
  const maps = new MapFiles(resolve(asked.dataFolder, 'maps'));
  if (asked.dataFolder !== '') await maps.tidy();
  await addMaps(app, maps);
  await addPages(app, asked.pages);
  return app;
}

const safety = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: ["'self'"],
      // Lists that are drawn in part set the places of their rows as styles.
      styleSrc: ["'self'", "'unsafe-inline'"],
      imgSrc: ["'self'", 'data:', 'blob:'],
      workerSrc: ["'self'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
      objectSrc: ["'none'"],
    },
  },
  // There is no https on this computer's own address.
  hsts: false,
  frameguard: { action: 'deny' as const },
  referrerPolicy: { policy: 'no-referrer' as const },
};

/** Lets in only this program's own pages. The address that is opened first gives the key once and gets a cookie for it. */
function guard(app: FastifyInstance, { keys, port }: AppAsked): void {
  app.addHook('onRequest', async (request, reply) => {
    reply.header('cache-control', 'no-store');
    const problem = refusal(request, port(), keys, request.url.startsWith('/open?'));
    if (problem) return isOpened(request) ? sendRefusedPage(request, reply) : sendProblems(reply, [problem]);
    return undefined;
  });
  app.get<{ Querystring: { key?: unknown } }>('/open', { schema: { hide: true } }, (request, reply) => {
    const { key } = request.query;
    if (!isSameKey(typeof key === 'string' ? key : undefined, keys.address))
      return sendProblems(reply, [recordProblem('request.refused', {}, { reason: 'token' })]);
    reply.setCookie(cookieAt(port()), keys.cookie, { path: '/', httpOnly: true, sameSite: 'strict' });
    return reply.redirect('/', 303);
  });
}

/** Passes on what happens to the pages that listen. */
function listen({ programmes, designs, rollouts, tasks, onFault }: AppAsked, listeners: Listeners): void {
  programmes.onChange = async (programmeId) => {
    const found = await programmes.programme(programmeId);
    if (found.ok) listeners.tell({ kind: 'changed', programmeId, version: found.value.version });
  };
  programmes.onList = () => listeners.tell({ kind: 'programmes' });
  designs.onProgress = (programmeId, version, done_fraction) =>
    listeners.tell({ kind: 'design', programmeId, version, done_fraction });
  designs.onFault = onFault;
  const tellRollout = (told: RolloutTold) => listeners.tell({ kind: 'rollout', ...told });
  [rollouts.onTold, rollouts.onFault] = [tellRollout, onFault];
  [rollouts.searches.onTold, rollouts.searches.onFault] = [tellRollout, onFault];
  tasks.onTask = (task) => listeners.tell({ kind: 'task', task });
}
