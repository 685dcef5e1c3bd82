import { buildApp } from './http/app.ts';

/**
 * What can be asked of the server, as docs/openapi.json holds it.
 *
 * @returns the description of the API, OpenAPI 3.1 [text]
 * @source openapi-spec, the form of a description
 */
export async function openApiText(): Promise<string> {
  // Nothing is asked of what stands behind: only the routes are described.
  const behind = {} as never;
  const app = await buildApp({
    ...{ programmes: behind, designs: behind, kits: behind, rollouts: { searches: {} } as never },
    ...{ rolloutPapers: behind, reviews: behind, overviews: behind, tasks: behind },
    keys: { address: '', cookie: '' },
    pages: null,
    version: '0.1.0',
    dataFolder: '',
    port: () => 0,
    onFault: () => undefined,
  });
  await app.ready();
  const text = `${JSON.stringify(app.swagger(), null, 2)}\n`;
  await app.close();
  return text;
}
