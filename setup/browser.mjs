import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Names a browser of the Chromium kind goes by on the path, the freest first. */
const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** Where one stands on systems that do not put it on the path. @type {Readonly<Record<string, readonly string[]>>} */
const usualPlaces = {
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: ['Google/Chrome/Application/chrome.exe', 'Chromium/Application/chrome.exe'],
};

/** What is installed where there is none, on Debian and its relatives: the browser, and a face for what ours lacks. */
const debianPackages = ['chromium', 'fonts-dejavu-core'];

/**
 * The machine a browser is looked for on.
 *
 * @typedef {object} Around
 * @property {Readonly<Record<string, string | undefined>>} env
 * @property {string} platform
 * @property {boolean} isRoot
 * @property {string} playwrights - where a browser installed by Playwright would be; empty: not known
 * @property {(command: string, args: readonly string[]) => number} run - runs a command; its exit code
 */

/** This machine. @returns {Promise<Around>} */
export async function thisAround() {
  const { chromium } = await import('playwright-core');
  return {
    env: process.env,
    platform: process.platform,
    isRoot: process.getuid?.() === 0,
    playwrights: chromium.executablePath(),
    run: (command, args) => spawnSync(command, [...args], { stdio: 'inherit' }).status ?? 70,
  };
}

/** @param {string} file */
function canRun(file) {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

/** @param {string} name @param {Around} around */
function onPath(name, { env, platform }) {
  const ending = platform === 'win32' ? '.exe' : '';
  const folders = (env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name + ending)).find(canRun);
}

/**
 * A browser of the Chromium kind: the one CHROMIUM names, one on the path, one at its usual place, Playwright's own.
 *
 * @param {Around} around
 * @returns {string | null} its file; null where there is none
 */
export function findBrowser(around) {
  const { env, platform, playwrights } = around;
  const named = env['CHROMIUM'];
  if (named) return canRun(named) ? named : null;
  const bases = platform === 'win32' ? [env['PROGRAMFILES'], env['PROGRAMFILES(X86)'], env['LOCALAPPDATA']] : [''];
  const places = bases
    .filter((base) => base !== undefined)
    .flatMap((base) => (usualPlaces[platform] ?? []).map((place) => (base === '' ? place : join(base, place))));
  const found = names.map((name) => onPath(name, around)).find((file) => file !== undefined);
  return found ?? [...places, playwrights].find((file) => file !== '' && canRun(file)) ?? null;
}

/**
 * What to type where there is no browser and none could be installed.
 *
 * @param {Around} around
 * @returns {string}
 */
export function browserWanted({ env, platform, isRoot }) {
  if (env['CHROMIUM'])
    return `CHROMIUM names ${env['CHROMIUM']}, and there is no program there that can be run.\nName the browser itself, or leave CHROMIUM out to have one looked for.`;
  const install = `apt-get install -y ${debianPackages.join(' ')}`;
  const debian = isRoot ? `apt-get update && ${install}` : `sudo apt-get update && sudo ${install}`;
  const any = 'npx playwright-core install chromium';
  const lines = platform === 'linux' ? [`on Debian:  ${debian}`, `elsewhere:  ${any}`] : [any];
  return `The journeys need a browser of the Chromium kind, and there is none here.\nType:  ${lines.join('\n       ')}\nOr, where there is one with another name:  CHROMIUM=FILE npm test`;
}

/**
 * The browser of the journeys. On Debian, for root, one is installed where there is none.
 *
 * @param {Around} around
 * @returns {{ browser: string } | { wanted: string }} its file, or what to type
 */
export function browserHere(around) {
  const found = findBrowser(around);
  if (found) return { browser: found };
  if (!around.env['CHROMIUM'] && around.isRoot && onPath('apt-get', around)) {
    console.log(`Installing a browser for the journeys: apt-get install ${debianPackages.join(' ')}`);
    const code = around.run('apt-get', ['update']) || around.run('apt-get', ['install', '-y', ...debianPackages]);
    const installed = code === 0 ? findBrowser(around) : null;
    if (installed) return { browser: installed };
  }
  return { wanted: browserWanted(around) };
}

/** Looks for the browser, and says where it is or what to type. @returns {Promise<number>} 0 where there is one */
export async function checkBrowser() {
  const here = browserHere(await thisAround());
  console.log('browser' in here ? here.browser : here.wanted);
  return 'browser' in here && existsSync(here.browser) ? 0 : 1;
}
