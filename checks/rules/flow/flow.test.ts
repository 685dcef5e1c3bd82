import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import rules from '../../../.dependency-cruiser.cjs';
import { repository } from '../repository.ts';
import { cruise } from './cruise.ts';
import { soundTree, writeTree } from './madeUpTree.ts';

const engine = 'packages/engine/src';

/** One file more, and the rule it must break. */
const breaches: readonly { readonly rule: string; readonly file: string; readonly text: string }[] = [
  { rule: 'rooms-take-values', file: `${engine}/water/roof/a.ts`, text: "import '../people/index.ts';" },
  { rule: 'rooms-take-values', file: `${engine}/water/roof/b.ts`, text: "import '../../parts/part.ts';" },
  { rule: 'rooms-take-values', file: `${engine}/water/roof/c.ts`, text: "import '../../site.ts';" },
  {
    rule: 'rooms-take-values',
    file: `${engine}/programme/cost/a.ts`,
    text: "import type { p } from '../../water/people/index.ts';",
  },
  { rule: 'parts-take-the-kernel', file: `${engine}/parts/a.ts`, text: "import '../site.ts';" },
  { rule: 'kernel-stands-alone', file: `${engine}/kernel/a.ts`, text: "import '../parts/index.ts';" },
  { rule: 'few-call-rooms', file: `${engine}/report.ts`, text: "import './water/people/index.ts';" },
  { rule: 'rooms-by-their-door', file: `${engine}/plan.ts`, text: "import './water/roof/roof.ts';" },
  { rule: 'parts-by-their-door', file: `${engine}/remedies/a.ts`, text: "import '../parts/part.ts';" },
  { rule: 'packages-by-their-door', file: 'packages/tables/src/a.ts', text: "import '../../engine/src/index.ts';" },
  { rule: 'engine-is-pure', file: `${engine}/kernel/b.ts`, text: "import 'node:fs';" },
  { rule: 'engine-is-pure', file: `${engine}/kernel/c.ts`, text: "import 'crypto';" },
  { rule: 'engine-allow-list', file: `${engine}/kernel/d.ts`, text: "import 'left-over';" },
  { rule: 'tables-records-and-words-are-pure', file: 'packages/words/src/a.ts', text: "import 'node:os';" },
  { rule: 'layers-engine', file: `${engine}/kernel/e.ts`, text: "import '@eavewell/tables';" },
  { rule: 'layers-tables', file: 'packages/tables/src/b.ts', text: "import '@eavewell/formats';" },
  { rule: 'layers-formats', file: 'packages/formats/src/a.ts', text: "import '@eavewell/words';" },
  { rule: 'layers-records', file: 'packages/records/src/a.ts', text: "import '@eavewell/tables';" },
  { rule: 'layers-report', file: 'packages/report/src/a.ts', text: "import '@eavewell/formats';" },
  { rule: 'layers-drawing', file: 'packages/drawing/src/a.ts', text: "import '@eavewell/tables';" },
  { rule: 'layers-paper', file: 'packages/paper/src/a.ts', text: "import '@eavewell/formats';" },
  { rule: 'layers-linear', file: 'packages/linear/src/a.ts', text: "import '@eavewell/tables';" },
  { rule: 'layers-work', file: 'packages/work/src/a.ts', text: "import '@eavewell/engine';" },
  { rule: 'layers-server', file: 'packages/server/src/a.ts', text: "import '@eavewell/cli';" },
  { rule: 'layers-app', file: 'packages/app/src/a.ts', text: "import '@eavewell/server';" },
  { rule: 'layers-database', file: 'packages/database/src/a.ts', text: "import '@eavewell/tables';" },
  { rule: 'layers-words', file: 'packages/words/src/b.ts', text: "import '@eavewell/formats';" },
  { rule: 'layers-demo', file: 'demo/src/a.ts', text: "import '@eavewell/cli';" },
  { rule: 'layers-cli', file: 'packages/cli/src/a.ts', text: "import '../../../checks/laws/a.ts';" },
  { rule: 'no-circles', file: 'demo/src/b.ts', text: "import './c.ts';" },
  { rule: 'no-built-files', file: 'checks/laws/b.ts', text: "import '../../packages/engine/dist/index.js';" },
  { rule: 'nothing-unresolved', file: 'checks/laws/c.ts', text: "import './not-there.ts';" },
];

const folders: string[] = [];
function cruiseOf(files: Readonly<Record<string, string>>) {
  const folder = mkdtempSync(join(tmpdir(), 'made up tree '));
  folders.push(folder);
  writeTree(folder, files);
  return cruise(folder);
}
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

describe('rules of flow', () => {
  test('hold in the repository, with every package read', () => {
    const found = cruise(repository);
    expect(found.modules).toBeGreaterThan(0);
    expect(found.dependencies).toBeGreaterThan(0);
    expect(found.breaches).toEqual([]);
  });

  test('let a sound tree pass', () => {
    const found = cruiseOf(soundTree);
    expect(found.modules).toBeGreaterThanOrEqual(Object.keys(soundTree).length);
    expect(found.dependencies).toBeGreaterThan(10);
    expect(found.breaches).toEqual([]);
  });

  test('bite, each at the very file that breaks it', () => {
    const broken = {
      ...soundTree,
      'packages/engine/dist/index.js': 'export const x = 1;\n',
      'demo/src/c.ts': "export type { x } from './b.ts';\n",
    };
    const files = Object.fromEntries(breaches.map(({ file, text }) => [file, `${text}\nexport const x = 1;\n`]));
    const found = cruiseOf({ ...broken, ...files });
    for (const { rule, file } of breaches) expect(found.breaches).toContain(`${rule}: ${file}`);
    const sound = found.breaches.filter((breach) =>
      Object.keys(soundTree).some((file) => breach.endsWith(`: ${file}`)),
    );
    expect(sound).toEqual([]);
  });

  test('are each proved to bite', () => {
    const names = (rules.forbidden ?? []).map(({ name }) => name);
    expect(names.length).toBeGreaterThan(0);
    expect([...new Set(breaches.map(({ rule }) => rule))].sort()).toEqual([...names].sort());
  });
});
