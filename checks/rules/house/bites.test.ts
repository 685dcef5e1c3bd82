import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyNames } from './files.ts';
import { roomFaults } from './rooms.ts';
import { longIn } from './sizes.ts';
import { machinePaths, wordsNotUsed, wordsNotUsedInCode } from './words.ts';

test('names for nothing in particular are found, whole words only', () => {
  const bad = [
    'a/utils/b.ts',
    'a/helpers.ts',
    'common/a.ts',
    'a/rainUtils.ts',
    'a/core.ts',
    'a/shared-types.ts',
    'StoreManager.ts',
  ];
  expect(emptyNames(bad)).toEqual(bad);
  expect(emptyNames(['a/score.ts', 'a/commonest.ts', 'coreless/a.ts', 'a/management.md'])).toEqual([]);
});

test('long files and functions are found, comments and blank lines not counted', () => {
  const statements = (count: number) => '  x += 1;\n'.repeat(count);
  const fn = (count: number) => `function f(x) {\n${statements(count)}}\n`;
  expect(longIn('a.ts', fn(48), false)).toEqual([]);
  expect(longIn('a.ts', fn(49), false)).toEqual([{ place: 'a.ts:1', lines: 51, reason: null }]);
  expect(longIn('a.ts', fn(49), true)).toEqual([]);
  expect(
    longIn('a.ts', fn(40).replace('{\n', '{\n  // a word\n\n\n  /* and\n  more */\n\n\n\n\n\n\n\n'), false),
  ).toEqual([]);
  expect(longIn('a.ts', `// long: one hot loop\n${fn(60)}`, false)).toEqual([
    { place: 'a.ts:2', lines: 62, reason: 'one hot loop' },
  ]);
  expect(longIn('a.ts', `// long:\n${fn(60)}`, false)[0]?.reason).toBeNull();
  expect(longIn('a.ts', `const f = (x) => {\n${statements(60)}};\n`, false)).toHaveLength(1);
  expect(longIn('a.ts', `class A {\n  f(x) {\n${statements(60)}}\n}\n`, false)).toHaveLength(1);
  expect(longIn('a.ts', 'x += 1;\n'.repeat(300), false)).toEqual([]);
  expect(longIn('a.test.ts', 'x += 1;\n'.repeat(301), true)).toEqual([
    { place: 'a.test.ts', lines: 301, reason: null },
  ]);
});

test('rooms without README, door or sources are found', () => {
  const folder = mkdtempSync(join(tmpdir(), 'made up rooms '));
  const files: Record<string, string> = {
    'water/roof/README.md': 'Roof\n',
    'water/roof/index.ts': "export * from './a.ts';\n",
    'water/roof/constants.ts':
      '/** Depth [mm]. Source: a-book-1999. */\nexport const a_mm = 3;\n\n/** Depth [mm]. */\nexport const b_mm = 4;\n\nexport const name = { a: [2] };\n\nexport const word = name;\n',
    'water/roof/a.ts':
      'const few = 5;\nconst one = 1;\n\nconst not = 0;\nconst open = 1;\nconst shut = 2;\n\nconst less = -2.5;\nconst more = 3;\n\nexport const name = few + one;\n',
    'water/tap/index.ts': '',
    'parts/README.md': 'Parts\n',
  };
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  expect(roomFaults(folder)).toEqual([
    'water/roof/a.ts few: a number belongs in constants.ts',
    'water/roof/a.ts less: a number belongs in constants.ts',
    'water/roof/a.ts more: a number belongs in constants.ts',
    'water/roof/constants.ts b_mm: no source stands beside it',
    'water/roof/constants.ts name: no source stands beside it',
    'water/tap has no README.md',
    'water/tap has no index.ts',
    'parts has no index.ts',
  ]);
  rmSync(folder, { recursive: true });
});

test('words not used are found in texts, not in names', () => {
  expect(wordsNotUsed('Your Dashboard and its assets.')).toEqual(['Dashboard', 'assets']);
  expect(wordsNotUsed('assessment, insightful')).toEqual([]);
  expect(wordsNotUsedInCode("import a from './wizard.ts';\nconst ticket = 1;")).toEqual([]);
  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is the text of a template
  expect(wordsNotUsedInCode("const a = 'a wizard'; const b = `${a} insight ${a} tickets`;")).toEqual([
    'wizard',
    'insight',
    'tickets',
  ]);
});

test('places of one machine are found', () => {
  expect(machinePaths('see /home/ann/x and C:\\Users')).toEqual(['/home/ann', 'C:\\Users']);
  expect(machinePaths('https://example.org/home/x, ./tmp/x, a/home/b')).toEqual([]);
});
