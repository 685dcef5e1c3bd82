import { existsSync, mkdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { languageModules, writeLanguages } from './languages.mjs';
import { root } from './run.mjs';

/**
 * A page made by the program: where it stands, and the function without arguments that gives its text.
 *
 * @typedef {{ file: string, from: string, maker: string }} GeneratedPage
 */

/** Every generated page. They are committed, and the tests fail when one is stale. @type {readonly GeneratedPage[]} */
export const pages = [
  { file: 'docs/tables.md', from: 'packages/tables/src/index.ts', maker: 'tablesPage' },
  { file: 'docs/design.schema.json', from: 'packages/tables/src/index.ts', maker: 'designSchemaText' },
  { file: 'docs/kit.schema.json', from: 'packages/tables/src/index.ts', maker: 'kitSchemaText' },
  { file: 'docs/rollout.schema.json', from: 'packages/tables/src/index.ts', maker: 'rolloutSchemaText' },
  { file: 'docs/safety.schema.json', from: 'packages/tables/src/index.ts', maker: 'safetySchemaText' },
  { file: 'docs/wear.schema.json', from: 'packages/tables/src/index.ts', maker: 'wearSchemaText' },
  { file: 'docs/questions.md', from: 'packages/words/src/index.ts', maker: 'questionsPage' },
  { file: 'docs/openapi.json', from: 'packages/server/src/index.ts', maker: 'openApiText' },
  { file: 'packages/app/src/api/apiTypes.ts', from: 'setup/apiTypes.mjs', maker: 'apiTypesText' },
  { file: 'docs/methods/published.md', from: 'checks/published/table.ts', maker: 'publishedPage' },
];

/** Libraries that are loaded as they are. */
const outside = [
  ...['zod', 'papaparse', 'pure-rand', 'fflate', 'better-sqlite3', '@xmldom/xmldom', '@tmcw/togeojson', 'fastify'],
  ...['fastify-type-provider-zod', '@fastify/cookie', '@fastify/helmet', '@fastify/multipart', '@fastify/swagger'],
  ...['@fastify/static', 'openapi-typescript'],
];

/**
 * Makes the text of a page from the sources of the program.
 *
 * @param {GeneratedPage} page
 * @param {string} folder - the folder `from` starts at
 * @returns {Promise<string>}
 */
export async function makePage(page, folder = root) {
  const { runnerImport } = await import('vite');
  const conditions = ['eavewell-source', 'module', 'node', 'development|production'];
  const { module } = await runnerImport(join(folder, page.from), {
    root: folder,
    configFile: false,
    logLevel: 'warn',
    resolve: { conditions, external: outside },
    ssr: { resolve: { conditions } },
  });
  const make = /** @type {Record<string, unknown>} */ (module)[page.maker];
  if (typeof make !== 'function') throw new Error(`${page.from} exports no function ${page.maker}`);
  const text = await make();
  if (typeof text !== 'string' || text.trim() === '') throw new Error(`${page.maker} of ${page.from} gave no text`);
  return text.endsWith('\n') ? text : `${text}\n`;
}

/**
 * Compares every page with what the program makes of it now.
 *
 * @param {readonly GeneratedPage[]} list
 * @param {string} folder
 * @param {readonly { file: string, text: () => string }[]} modules - the messages of languages as modules
 * @returns {Promise<number>} 0 where all are fresh
 */
export async function checkGenerated(list = pages, folder = root, modules = list === pages ? languageModules() : []) {
  let stale = 0;
  for (const page of list) {
    const wrong = await whyStale(page, folder);
    console.log(`${page.file}: ${wrong ?? 'fresh'}`);
    if (wrong) stale++;
  }
  for (const { file, text } of modules) {
    const path = join(folder, file);
    const fresh = existsSync(path) && readFileSync(path, 'utf8') === text();
    console.log(`${file}: ${fresh ? 'fresh' : 'is stale'}`);
    if (!fresh) stale++;
  }
  if (stale > 0) console.log('Type:  npm run generate');
  return stale === 0 ? 0 : 1;
}

/** @param {GeneratedPage} page @param {string} folder @returns {Promise<string | null>} */
async function whyStale(page, folder) {
  try {
    const text = await makePage(page, folder);
    const path = join(folder, page.file);
    if (!existsSync(path)) return 'is not there';
    return readFileSync(path, 'utf8') === text ? null : 'is stale';
  } catch (error) {
    return `cannot be made: ${error instanceof Error ? error.message : String(error)}`;
  }
}

/** Writes every page; one that cannot be made leaves the others written and ends with 1. */
async function writeAll() {
  writeLanguages();
  for (const page of pages) {
    try {
      const path = join(root, page.file);
      const text = await makePage(page);
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, text);
      console.log(`${page.file}: written`);
    } catch (error) {
      console.error(`${page.file}: ${error instanceof Error ? error.message : String(error)}`);
      process.exitCode = 1;
    }
  }
}

const started = process.argv[1];
if (started && pathToFileURL(realpathSync(started)).href === import.meta.url) await writeAll();
