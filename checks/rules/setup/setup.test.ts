import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { checkGenerated, pages } from '../../../setup/generate.mjs';
import { whyNotInstalled, writeStamp } from '../../../setup/installed.mjs';
import { nodeIsSupported } from '../../../setup/nodeVersion.mjs';
import { filesOf } from '../house/files.ts';
import { repository } from '../repository.ts';

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

function treeOf(files: Readonly<Record<string, unknown>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'made up setup '));
  folders.push(folder);
  for (const [path, content] of Object.entries(files)) put(folder, path, content);
  return folder;
}

function put(folder: string, path: string, content: unknown): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), typeof content === 'string' ? content : JSON.stringify(content));
}

test('Node is refused where the tools would not run', () => {
  const fit = ['20.19.0', '20.20.2', '22.12.0', '22.20.1', '24.0.0', '25.1.0'];
  const unfit = ['16.20.2', '18.20.8', '20.18.3', '21.7.3', '22.11.0', '23.11.1', ''];
  expect(fit.filter((version) => !nodeIsSupported(version))).toEqual([]);
  expect(unfit.filter(nodeIsSupported)).toEqual([]);
});

describe('an install', () => {
  const machine = { platform: 'linux', arch: 'x64', libc: 'glibc' };
  const left = { version: '1.0.0', integrity: 'sha512-a' };
  const forThis = {
    version: '1.0.0',
    integrity: 'sha512-b',
    optional: true,
    os: ['linux'],
    cpu: ['x64'],
    libc: ['glibc'],
  };
  const lock = {
    packages: {
      '': {},
      'packages/cli': {},
      'node_modules/left': left,
      'node_modules/for-this': forThis,
      'node_modules/for-musl': { ...forThis, libc: ['musl'] },
      'node_modules/for-mac': { ...forThis, os: ['darwin'] },
      'node_modules/fallback': { version: '1.0.0', optional: true },
    },
  };
  const installed = { packages: { 'node_modules/left': left, 'node_modules/for-this': forThis } };
  const whole = {
    'package.json': {},
    'package-lock.json': lock,
    'demo/package.json': {},
    'packages/cli/package.json': { bin: { eavewell: './bin/eavewell.js' } },
    'node_modules/.package-lock.json': installed,
    'node_modules/.bin/eavewell': '',
    'node_modules/left/package.json': {},
    'node_modules/for-this/package.json': {},
  };
  const why = (files: Readonly<Record<string, unknown>>) => whyNotInstalled(treeOf(files), machine);
  const without = (start: string) =>
    Object.fromEntries(Object.entries(whole).filter(([path]) => !path.startsWith(start)));

  test('that is whole is used, stamp or none', () => {
    const folder = treeOf(whole);
    expect(whyNotInstalled(folder, machine)).toBeNull();
    writeStamp(folder);
    rmSync(join(folder, 'node_modules/.package-lock.json'));
    expect(whyNotInstalled(folder, machine)).toBeNull();
  });

  test('with a stamp of another lock or another package.json is compared again', () => {
    for (const file of ['package-lock.json', 'packages/cli/package.json']) {
      const folder = treeOf(whole);
      writeStamp(folder);
      rmSync(join(folder, 'node_modules/.package-lock.json'));
      writeFileSync(join(folder, file), `${readFileSync(join(folder, file), 'utf8')} `);
      expect(whyNotInstalled(folder, machine), file).toBe('the last install did not finish');
    }
  });

  test('that is not whole is named', () => {
    expect(why(without('node_modules/'))).toBe('node_modules is not there yet');
    expect(why(without('node_modules/.bin'))).toBe('the command eavewell is not linked');
    expect(why(without('node_modules/.package-lock.json'))).toBe('the last install did not finish');
    expect(why(without('node_modules/left'))).toBe('node_modules/left is missing');
    expect(why({ ...whole, 'node_modules/.package-lock.json': { packages: { 'node_modules/left': left } } })).toBe(
      'node_modules/for-this is missing',
    );
    const older = { packages: { ...installed.packages, 'node_modules/left': { ...left, version: '0.9.0' } } };
    expect(why({ ...whole, 'node_modules/.package-lock.json': older })).toBe('node_modules/left is another version');
  });

  test('made for another machine is refused', () => {
    const folder = treeOf(whole);
    expect(whyNotInstalled(folder, { platform: 'darwin', arch: 'x64', libc: null })).toBe(
      'node_modules/for-mac is missing',
    );
    expect(whyNotInstalled(folder, { ...machine, libc: 'musl' })).toBe('node_modules/for-musl is missing');
  });
});

describe('generated pages', () => {
  const page = { file: 'docs/page.md', from: 'page.ts', maker: 'page' };
  const source = 'export const page = (): string => "One\\nTwo\\n";\n';
  const check = (files: Readonly<Record<string, unknown>>) => checkGenerated([page], treeOf(files));

  test('fresh ones pass', async () => {
    expect(await check({ 'page.ts': source, 'docs/page.md': 'One\nTwo\n' })).toBe(0);
  });
  test('stale, absent and unmade ones fail', async () => {
    expect(await check({ 'page.ts': source, 'docs/page.md': 'One\n' })).toBe(1);
    expect(await check({ 'page.ts': source })).toBe(1);
    expect(await check({ 'page.ts': 'export const other = 1;\n', 'docs/page.md': 'One\nTwo\n' })).toBe(1);
    expect(await check({ 'page.ts': 'export const page = () => "";\n', 'docs/page.md': '' })).toBe(1);
    expect(await check({ 'docs/page.md': 'One\nTwo\n' })).toBe(1);
  });
  test('are listed', () => {
    expect(pages.map(({ file }) => file)).toContain('docs/tables.md');
    expect(new Set(pages.map(({ file }) => file)).size).toBe(pages.length);
  });
});

describe('the repository', () => {
  const manifest = (path: string) =>
    JSON.parse(readFileSync(join(repository, path), 'utf8')) as Record<string, unknown>;

  test('names exact versions only', () => {
    const listed = filesOf(repository).filter((path) => path.endsWith('package.json'));
    expect(listed.length).toBeGreaterThan(5);
    for (const path of listed) {
      const { dependencies = {}, devDependencies = {} } = manifest(path) as Record<string, Record<string, string>>;
      const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
        ([, version]) => !/^(?:npm:[@\w/-]+@)?\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version),
      );
      expect(loose, path).toEqual([]);
    }
  });

  test('runs in its pipeline what npm test runs, and nothing else', () => {
    const lines = readFileSync(join(repository, '.ci/run'), 'utf8')
      .split('\n')
      .map((line) => line.trim());
    const commands = lines.filter((line) => line !== '' && !line.startsWith('#') && !/^(?:set|cd) /.test(line));
    expect(commands).toEqual(['npm test']);
    expect((manifest('package.json')['scripts'] as Record<string, string>)['test']).toBe('node setup/test.mjs');
  });

  test('carries the licence it names', () => {
    expect(manifest('package.json')['license']).toBe('Apache-2.0');
    const text = readFileSync(join(repository, 'LICENSE'), 'utf8');
    expect(text).toContain('Version 2.0, January 2004');
    expect(text).toContain('END OF TERMS AND CONDITIONS');
  });
});
