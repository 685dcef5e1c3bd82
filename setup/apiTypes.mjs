import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import openapiTS, { astToString } from 'openapi-typescript';
import { root } from './run.mjs';

/**
 * What the server answers, as types for the pages, made from docs/openapi.json.
 *
 * @returns {Promise<string>}
 */
export async function apiTypesText() {
  const api = readFileSync(join(root, 'docs/openapi.json'), 'utf8');
  const types = astToString(await openapiTS(JSON.parse(api), { alphabetize: true }));
  return `// long: made from the description of the API\n/** Made from docs/openapi.json by \`npm run generate\`. */\n${types}`;
}
