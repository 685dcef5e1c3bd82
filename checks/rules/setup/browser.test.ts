import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { browserHere, findBrowser } from '../../../setup/browser.mjs';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A folder with programs of these names; one named `no-…` cannot be run. */
function folderWith(...names: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'made up programs '));
  folders.push(folder);
  for (const name of names) put(folder, name);
  return folder;
}

function put(folder: string, name: string, mode = 0o755): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, name), '');
  chmodSync(join(folder, name), mode);
}

/** A machine with these folders on its path, on which every command ends well and does `install`. */
function machine(path: readonly string[], more: Partial<Parameters<typeof browserHere>[0]> = {}, install = () => {}) {
  const commands: string[] = [];
  const run = (command: string, args: readonly string[]) => {
    commands.push([command, ...args].join(' '));
    if (args[0] === 'install') install();
    return 0;
  };
  const around = { env: { PATH: path.join(delimiter) }, platform: 'linux', isRoot: false, playwrights: '', run };
  return { around: { ...around, ...more }, commands };
}

test('a browser is found by its name, the freest first, and only where it can be run', () => {
  const [one, other] = [folderWith('google-chrome', 'chromium-browser'), folderWith('chromium')];
  expect(findBrowser(machine([one, other]).around)).toBe(join(other, 'chromium'));
  expect(findBrowser(machine([one]).around)).toBe(join(one, 'chromium-browser'));
  const locked = folderWith();
  put(locked, 'chromium', 0o644);
  mkdirSync(join(locked, 'google-chrome'));
  expect(findBrowser(machine([locked]).around)).toBeNull();
});

test('CHROMIUM goes before all others; where it names nothing, no other is taken in silence', () => {
  const folder = folderWith('chromium', 'own-browser');
  const env = (CHROMIUM: string) => ({ env: { PATH: folder, CHROMIUM } });
  expect(findBrowser(machine([], env(join(folder, 'own-browser'))).around)).toBe(join(folder, 'own-browser'));
  const wrong = machine([], { ...env('/nowhere/browser'), isRoot: true });
  expect(browserHere(wrong.around)).toEqual({ wanted: expect.stringMatching(/CHROMIUM names \/nowhere\/browser/) });
  expect(wrong.commands).toEqual([]);
});

test('Playwright’s own is taken last', () => {
  const folder = folderWith('own', 'chromium');
  const playwrights = join(folder, 'own');
  expect(findBrowser(machine([folder], { playwrights }).around)).toBe(join(folder, 'chromium'));
  expect(findBrowser(machine([], { playwrights }).around)).toBe(playwrights);
});

test('on Debian it is installed for root, and nobody else', () => {
  const folder = folderWith('apt-get');
  const root = machine([folder], { isRoot: true }, () => put(folder, 'chromium'));
  expect(browserHere(root.around)).toEqual({ browser: join(folder, 'chromium') });
  expect(root.commands).toEqual(['apt-get update', 'apt-get install -y chromium fonts-dejavu-core']);
  expect(browserHere(root.around)).toEqual({ browser: join(folder, 'chromium') });
  expect(root.commands).toHaveLength(2);

  const person = machine([folderWith('apt-get')]);
  expect(browserHere(person.around)).toEqual({ wanted: expect.stringMatching(/sudo apt-get install -y chromium/) });
  expect(person.commands).toEqual([]);
});

test('where the install gives none, what to type is said', () => {
  const silent = machine([folderWith('apt-get')], { isRoot: true });
  expect(browserHere(silent.around)).toEqual({
    wanted: expect.stringMatching(/Type: {2}on Debian: {2}apt-get update/),
  });
  const broken = machine([folderWith('apt-get')], { isRoot: true, run: () => 100 });
  expect(browserHere(broken.around)).toHaveProperty('wanted');
  expect(browserHere(machine([], { platform: 'darwin' }).around)).toEqual({
    wanted: expect.stringMatching(/npx playwright-core install chromium/),
  });
});
