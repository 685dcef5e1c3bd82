import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @typedef {{ platform: string, arch: string, libc: string | null }} Machine
 * @typedef {{ version?: string, integrity?: string, link?: boolean, optional?: boolean, os?: string[], cpu?: string[], libc?: string[] }} LockedPackage
 */

/**
 * The machine this runs on, in the words package-lock.json uses.
 *
 * @returns {Machine}
 */
export function thisMachine() {
  let libc = null;
  if (process.platform === 'linux') {
    const report = /** @type {{ header: { glibcVersionRuntime?: string } }} */ (process.report.getReport());
    libc = report.header.glibcVersionRuntime ? 'glibc' : 'musl';
  }
  return { platform: process.platform, arch: process.arch, libc };
}

const stampPath = (/** @type {string} */ root) => join(root, 'node_modules', '.eavewell-stamp');

/**
 * What an install depends on, as one short text: every package.json, the lock, the machine and Node's major version.
 *
 * @param {string} root - the folder of the repository
 * @returns {string}
 */
export function installStamp(root) {
  const hash = createHash('sha256');
  for (const file of ['package-lock.json', ...packageFiles(root)])
    hash.update(`${file}\n`).update(readFileSync(join(root, file)));
  const { platform, arch, libc } = thisMachine();
  return [hash.digest('hex'), platform, arch, libc ?? '-', process.versions.node.split('.')[0]].join(' ');
}

/** The folders of the packages, from the repository's. @param {string} root @returns {string[]} */
export function packageFolders(root) {
  const folders = ['demo', ...readdirSync(join(root, 'packages')).map((name) => `packages/${name}`)];
  return folders.filter((folder) => existsSync(join(root, folder, 'package.json'))).sort();
}

/** @param {string} root */
function packageFiles(root) {
  return ['.', ...packageFolders(root)].map((folder) => `${folder}/package.json`);
}

/** @param {string} root */
export function writeStamp(root) {
  writeFileSync(stampPath(root), installStamp(root));
}

/**
 * Why node_modules cannot be used as it is, or null where it can. An install made by plain `npm ci` counts as well: it is
 * compared package by package with the lock, so that a machine without network need not install again.
 *
 * @param {string} root - the folder of the repository
 * @param {Machine} machine - the machine it must run on
 * @returns {string | null}
 */
export function whyNotInstalled(root, machine = thisMachine()) {
  if (!existsSync(join(root, 'node_modules'))) return 'node_modules is not there yet';
  const noLink = missingCommand(root);
  if (noLink) return noLink;
  if (existsSync(stampPath(root)) && readFileSync(stampPath(root), 'utf8') === installStamp(root)) return null;
  const hidden = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(hidden)) return 'the last install did not finish';
  return differenceFromLock(lockedPackages(join(root, 'package-lock.json')), lockedPackages(hidden), root, machine);
}

/** @param {string} file @returns {Record<string, LockedPackage>} */
function lockedPackages(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}

/** The command of the program is linked by npm only where its file was there at the time. @param {string} root */
function missingCommand(root) {
  const cli = JSON.parse(readFileSync(join(root, 'packages/cli/package.json'), 'utf8'));
  for (const name of Object.keys(cli.bin ?? {}))
    if (!existsSync(join(root, 'node_modules', '.bin', name))) return `the command ${name} is not linked`;
  return null;
}

/**
 * @param {Record<string, LockedPackage>} locked - package-lock.json
 * @param {Record<string, LockedPackage>} installed - node_modules/.package-lock.json, which npm writes last
 * @param {string} root
 * @param {Machine} machine
 * @returns {string | null}
 */
function differenceFromLock(locked, installed, root, machine) {
  for (const [path, wanted] of Object.entries(locked)) {
    if (!path.startsWith('node_modules/')) continue;
    const found = installed[path];
    if (!found && wanted.optional && !madeFor(wanted, machine)) continue;
    if (!found) return `${path} is missing`;
    if (found.version !== wanted.version || found.integrity !== wanted.integrity) return `${path} is another version`;
    if (!existsSync(join(root, path, 'package.json'))) return `${path} is missing`;
  }
  return null;
}

/** Is this an optional package made for this very machine? One that names no machine is a fallback for others. */
function madeFor(/** @type {LockedPackage} */ wanted, /** @type {Machine} */ machine) {
  if (!wanted.os && !wanted.cpu) return false;
  const fits = (/** @type {string[] | undefined} */ list, /** @type {string | null} */ own) =>
    !list || own === null || list.includes(own);
  return fits(wanted.os, machine.platform) && fits(wanted.cpu, machine.arch) && fits(wanted.libc, machine.libc);
}
