import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const names = ['engine', 'tables', 'formats', 'records', 'database', 'words', 'report', 'work', 'server', 'cli'];
const packages = names.map((name) => ({ name, folder: `packages/${name}` }));
const workspaces = [...packages, { name: 'demo', folder: 'demo' }];

/** Files of a small tree that keeps every rule of flow. */
export const soundTree: Readonly<Record<string, string>> = {
  'packages/engine/src/index.ts': "export * from './site.ts';\n",
  'packages/engine/src/site.ts':
    "export { roof } from './water/roof/index.ts';\nexport { part } from './parts/index.ts';\n",
  'packages/engine/src/kernel/index.ts': "export * from './days.ts';\n",
  'packages/engine/src/kernel/days.ts': 'export const day = 1;\n',
  'packages/engine/src/kernel/seeds.ts': "import { seed } from 'pure-rand';\nexport const own = seed;\n",
  'packages/engine/src/parts/index.ts': "export * from './part.ts';\n",
  'packages/engine/src/parts/part.ts': "import { day } from '../kernel/index.ts';\nexport const part = day;\n",
  'packages/engine/src/water/roof/index.ts': "export * from './roof.ts';\n",
  'packages/engine/src/water/roof/roof.ts':
    "import { day } from '../../kernel/days.ts';\nimport { part } from '../../parts/index.ts';\nexport const roof = day + part;\n",
  'packages/engine/src/water/people/index.ts': 'export const people = 1;\n',
  'packages/tables/src/index.ts': "export { day } from '@eavewell/engine';\n",
  'packages/formats/src/index.ts': "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
  'packages/records/src/index.ts': 'export const record = 1;\n',
  'packages/database/src/index.ts': "export * from '@eavewell/records';\n",
  'packages/words/src/index.ts': "export { day } from '@eavewell/tables';\n",
  'packages/report/src/index.ts': "export * from '@eavewell/words';\n",
  'packages/work/src/index.ts': 'export const work = 1;\n',
  'packages/server/src/index.ts': "export * from '@eavewell/work';\nexport * from '@eavewell/report';\n",
  'packages/app/src/index.ts': "export * from '@eavewell/words';\n",
  'packages/cli/src/index.ts': "export * from '@eavewell/words';\nexport * from '@eavewell/demo';\n",
  'demo/src/index.ts': "export * from '@eavewell/formats';\n",
  'checks/laws/a.ts': "export * from '@eavewell/engine';\n",
};

const manifest = (name: string) => ({
  name,
  version: '0.1.0',
  type: 'module',
  exports: { '.': { 'eavewell-source': './src/index.ts', default: './dist/index.js' } },
});

/** Writes a tree of workspaces with those files into an empty folder, with node_modules as npm would leave it. */
export function writeTree(folder: string, files: Readonly<Record<string, string>>): void {
  const put = (path: string, text: string) => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  };
  put('package.json', JSON.stringify({ name: 'made-up', type: 'module', workspaces: ['packages/*', 'demo'] }));
  for (const name of ['pure-rand', 'left-over']) {
    put(
      `node_modules/${name}/package.json`,
      JSON.stringify({ name, version: '1.0.0', type: 'module', exports: './index.js' }),
    );
    put(`node_modules/${name}/index.js`, 'export const seed = 1;\n');
  }
  mkdirSync(join(folder, 'node_modules/@eavewell'), { recursive: true });
  for (const { name, folder: place } of workspaces) {
    put(`${place}/package.json`, JSON.stringify(manifest(`@eavewell/${name}`)));
    symlinkSync(join(folder, place), join(folder, 'node_modules/@eavewell', name), 'junction');
  }
  for (const [path, text] of Object.entries(files)) put(path, text);
}
