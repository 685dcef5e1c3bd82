import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { docCommentOf } from '../docs/docRules.ts';
import { doorFunctions, readEngine } from '../docs/engineProgram.ts';
import { readSources, sourceFaults, sourceListFaults } from '../docs/sources.ts';
import { repository } from '../repository.ts';
import { emptyNames, filesOf } from './files.ts';
import { roomFaults } from './rooms.ts';
import { type Long, longIn } from './sizes.ts';
import { machinePaths, wordsNotUsed, wordsNotUsedInCode } from './words.ts';

const files = filesOf(repository);
const read = (path: string) => readFileSync(join(repository, path), 'utf8');
const code = files.filter((path) => /\.(?:tsx?|mjs|cjs|js)$/.test(path));
const engineFolder = join(repository, 'packages/engine/src');

test('every suite has tests', () => {
  for (const suite of ['published', 'laws', 'twins', 'faults', 'files', 'scale', 'rules', 'journeys'])
    expect(
      files.filter((path) => path.startsWith(`checks/${suite}/`) && path.endsWith('.test.ts')).length,
      suite,
    ).toBeGreaterThan(0);
});

test('every test belongs to a suite that is run', () => {
  const tests = files.filter((path) => /\.test\.\w+$/.test(path));
  const run =
    /^(?:packages\/[^/]+\/src|demo\/src|checks\/(?:published|laws|twins|faults|files|scale|rules|journeys))\/.*\.test\.tsx?$/;
  expect(tests.length).toBeGreaterThan(0);
  expect(tests.filter((path) => !run.test(path))).toEqual([]);
});

test('no file or folder is named for nothing in particular', () => {
  expect(files.length).toBeGreaterThan(50);
  expect(emptyNames(files)).toEqual([]);
});

test('files and functions keep to their size, or say why not', () => {
  const long: readonly Long[] = code.flatMap((path) => longIn(path, read(path), /\.test\.tsx?$/.test(path)));
  const excused = long.filter(({ reason }) => reason !== null);
  console.log(`${excused.length} long with a reason:`);
  for (const { place, lines, reason } of excused) console.log(`  ${place} ${lines} lines: ${reason}`);
  expect(long.filter(({ reason }) => reason === null)).toEqual([]);
});

test('every room has its README, its door and its numbers with their sources', () => {
  expect(roomFaults(engineFolder)).toEqual([]);
});

describe('words', () => {
  test('not used are not used in what a person reads', () => {
    const texts = code.filter(
      (path) => /^packages\/(?:app|words|cli|tables)\/src\//.test(path) && !path.endsWith('.test.ts'),
    );
    expect(texts.some((path) => path.startsWith('packages/words/'))).toBe(true);
    expect(texts.flatMap((path) => wordsNotUsedInCode(read(path)).map((word) => `${path} ${word}`))).toEqual([]);
    const pages = ['README.md', 'docs/tables.md', 'docs/glossary.md'].filter((path) => files.includes(path));
    expect(pages.flatMap((path) => wordsNotUsed(read(path)).map((word) => `${path} ${word}`))).toEqual([]);
  });

  test('of one machine stand nowhere', () => {
    const texts = files.filter(
      (path) => /\.(?:ts|mjs|cjs|js|json|md|csv|yml)$/.test(path) && !path.startsWith('checks/rules/house/'),
    );
    expect(texts.flatMap((path) => machinePaths(read(path)).map((found) => `${path} ${found}`))).toEqual([]);
    expect(read('package-lock.json')).not.toMatch(/"resolved": "https?:/);
  });
});

test('the list of sources is whole, and what is not used in it is told', () => {
  const list = readSources(join(repository, 'docs/sources.json'));
  expect(list.length).toBeGreaterThan(0);
  expect(sourceListFaults(list)).toEqual([]);
  const places = files.filter((path) => /\.(?:ts|md)$/.test(path));
  const text = places.map(read).join('\n').toLowerCase();
  const unused = list.filter(({ id }) => !text.includes(id)).map(({ id }) => id);
  if (unused.length > 0) console.log(`Sources nobody names: ${unused.join(', ')}`);
});

test('sources named beside values of the engine are in the list', () => {
  const ids = new Set(readSources(join(repository, 'docs/sources.json')).map(({ id }) => id));
  const own = ['survey', 'gauge', 'settings', 'definition', 'prices', 'catalogue'];
  const named = code
    .filter((path) => path.startsWith('packages/engine/src/') && !/\.test(?:ing)?\.ts$/.test(path))
    .flatMap((path) => [...read(path).matchAll(/\bsource: '([^']+)'/g)].map((found) => ({ path, text: found[1]! })));
  expect(named.length).toBeGreaterThan(0);
  const foreign = named.filter(({ text }) => !own.includes(text.split(/[,;(\s]/)[0]!));
  expect(foreign.flatMap(({ path, text }) => sourceFaults(text, ids).map((fault) => `${path} ${fault}`))).toEqual([]);
});

test('every law is named where it can be read', () => {
  const engine = readEngine(engineFolder);
  const laws = doorFunctions(engine).flatMap((one) => docCommentOf(one)?.tags.get('law') ?? []);
  expect(laws.length).toBeGreaterThan(0);
  expect(laws.filter((law) => law === '')).toEqual([]);
});
