import { Readable } from 'node:stream';
import { problemReport } from '@eavewell/report';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { type MapFiles, mapFileForm } from '../maps/mapFiles.ts';
import type { MapFile } from '../maps/readMapFile.ts';
import { orRefuse } from './problemReply.ts';
import * as schemas from './schemas.ts';
import { languageOf } from './spokenTo.ts';

/** What a file of map tiles is sent as: it is written as it comes, however large it is. */
const sentAs = 'application/vnd.pmtiles';

const degrees = z.number();
const mapFile = z
  .strictObject({
    file: z.string(),
    size_bytes: z.int(),
    tiles: z.enum(['vector', 'raster']),
    leastZoom: z.int(),
    mostZoom: z.int(),
    ...{ west_deg: degrees, south_deg: degrees, east_deg: degrees, north_deg: degrees },
    layers: z.array(z.string()).describe('Names of the layers of vector tiles.'),
    attribution: z.string().nullable().describe('Whose data it is; null where it does not say.'),
  })
  .meta({ id: 'mapFile' });
const mapFiles = z.strictObject({
  folder: z.string().describe('Where they stand; one may be laid there by hand.'),
  files: z.array(z.strictObject({ file: z.string(), map: mapFile.nullable(), problems: z.array(schemas.problem) })),
});

const answerOf = (map: MapFile): z.infer<typeof mapFile> => ({ ...map, layers: [...map.layers] });

/**
 * Map files: which there are, one more, one less, and the pieces of one that a page asks for.
 *
 * @param plain - the server
 * @param maps - the files
 * @definition ours: docs/decisions/0125-map-files.md
 */
export async function addMaps(plain: FastifyInstance, maps: MapFiles): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const failing = { default: schemas.problemBody };
  app.addContentTypeParser(sentAs, (_, payload, done) => done(null, payload));
  const list = { summary: 'The map files of this data folder.', response: { 200: mapFiles, ...failing } };
  app.get('/api/maps', { schema: list }, async (request) => ({
    folder: maps.folder,
    files: (await maps.list()).map(({ file, map, problems }) => ({
      ...{ file, map: map && answerOf(map) },
      problems: problems.map((problem) => problemReport(problem, languageOf(request))),
    })),
  }));
  const name = z.string().min(1).max(200).describe('The name of the file that is sent.');
  const add = {
    summary: `Keeps a file of map tiles (PMTiles, version 3). The body is the file, sent as ${sentAs}.`,
    consumes: [sentAs],
    querystring: z.strictObject({ name }),
    response: { 201: mapFile, ...failing },
  };
  app.post('/api/maps', { schema: add }, async (request, reply) => {
    const content = request.body instanceof Readable ? request.body : Readable.from([]);
    return reply.code(201).send(answerOf(orRefuse(await maps.add(request.query.name, content))));
  });
  const remove = {
    summary: 'Takes a map file away.',
    params: z.strictObject({ file: z.string().max(200) }),
    response: { 204: z.null(), ...failing },
  };
  app.delete('/api/maps/:file', { schema: remove }, async (request, reply) => {
    orRefuse(await maps.remove(request.params.file));
    return reply.code(204).send(null);
  });
  await app.register(fastifyStatic, {
    root: maps.folder,
    prefix: '/maps/',
    decorateReply: false,
    cacheControl: false,
    index: false,
    allowedPath: (path) => mapFileForm.test(path.replace(/^\//, '')),
    setHeaders: (reply) => reply.setHeader('cache-control', 'no-cache'),
  });
}
