import { cp, mkdtemp, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { databaseFile } from '@eavewell/database';
import { type Problem, seededDice } from '@eavewell/engine';
import { type Served, serve, tasks } from '@eavewell/server';
import { english, problemSentence } from '@eavewell/words';
import { workHere } from '@eavewell/work';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { good } from './folder.ts';
import { Page, zipOf } from './served.ts';

let room = '';
let folder = '';
/** The export of the page before the program ended, and how many changes it holds. */
let exported: Uint8Array;
const version = 3;

async function started(data: string, from: string | null = null) {
  const faults: unknown[] = [];
  const problems: Problem[] = [];
  const found = await serve({
    ...{ folder: data, port: 0, version: '0.1.0', demoName: null, by: 'Eavewell', from, work: workHere(tasks) },
    onFault: (error) => faults.push(error),
    onProblem: (problem) => problems.push(problem),
  });
  expect(faults).toEqual([]);
  return found;
}

async function page(data: string, from: string | null = null): Promise<{ served: Served; asked: Page }> {
  const found = await started(data, from);
  if (!found.ok) throw new Error(found.problems.map(({ code }) => code).join());
  return { served: found.value, asked: await Page.open(found.value) };
}

const edit = (before: string, after: string) => ({
  by: 'Sela',
  changes: [{ kind: 'edited', table: 'sites', key: 'S001', before: { people: before }, after: { people: after } }],
});

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell damaged '));
  folder = join(room, 'data');
  const { served, asked } = await page(folder);
  const programme = await asked.empty('Tarn water');
  await asked.takeIn(programme, 'tarn.zip', zipOf(good));
  await asked.ask('POST', `${programme}/changes`, edit('120', '125'));
  await asked.ask('POST', `${programme}/changes`, edit('125', '130'));
  exported = (await asked.ask('GET', `${programme}/export.zip`)).body;
  await served.close();
});
afterAll(() => rm(room, { recursive: true, force: true }));

let copies = 0;
async function copied(damage: (file: string) => Promise<void>): Promise<string> {
  const copy = join(room, `copy${++copies}`);
  await cp(folder, copy, { recursive: true });
  await damage(join(copy, databaseFile));
  return copy;
}
const bytesIn = async (copy: string) => readFile(join(copy, databaseFile)).catch(() => null);

/** Is the folder refused, left as it is, and its last good export named and good? */
async function refusedWith(copy: string, codes: readonly string[]): Promise<void> {
  const before = await bytesIn(copy);
  const found = await started(copy);
  if (found.ok) await found.value.close();
  expect(found.ok).toBe(false);
  const [problem] = found.problems as readonly Problem[];
  expect(codes).toContain(problem!.code);
  const { what, todo } = problemSentence(problem!);
  expect(what).not.toMatch(/undefined|not said/);
  expect(todo).toContain(join(copy, 'exports'));
  expect(todo).toContain('Tarn water');
  expect(todo).toContain(english.numbers.date(new Date().toISOString().slice(0, 10)));
  expect(todo).toContain('What was entered after may be lost.');
  const [, data, from] = /eavewell serve --data "(.+?)" --from "(.+?)" to open it/.exec(todo)!;
  expect(await bytesIn(copy)).toEqual(before);
  const { served, asked } = await page(data!, from);
  const { body } = await asked.ask('GET', '/api/programmes');
  const at = `/api/programmes/${body.programmes[0].programmeId}`;
  expect(body.programmes).toMatchObject([{ name: 'Tarn water' }]);
  expect((await asked.ask('GET', at)).body.version).toBe(version);
  expect((await asked.ask('GET', `${at}/export.zip`)).body).toEqual(exported);
  await served.close();
  await rm(data!, { recursive: true });
}

describe('a data folder that is damaged', () => {
  it.each<readonly [string, (file: string) => Promise<void>, string]>([
    ['replaced by text', (file) => writeFile(file, 'no database, though it has its name\n'.repeat(200)), 'damaged'],
    ['without its first page', (file) => mangled(file, 0, 100), 'damaged'],
    ['cut in half', async (file) => truncate(file, Math.floor((await readFile(file)).length / 2)), 'damaged'],
    ['cut to nothing', (file) => truncate(file, 0), 'missing'],
    ['gone', (file) => rm(file), 'missing'],
    ['with one digit changed', oneDigit, 'damaged'],
  ])('%s: refused with the export that opens in a new folder, and left as it is', async (_, damage, code) => {
    await refusedWith(await copied(damage), [`database.${code}`]);
  });

  it('in any one page, wholly or in a spot: refused, or nothing of it is missing', async () => {
    const below = seededDice(5).next;
    const pages = (await readFile(join(folder, databaseFile))).length / 4096;
    let refused = 0;
    for (let n = 0; n < 2 * pages; n++) {
      const isWhole = n < pages;
      const at = (n % pages) * 4096;
      const copy = await copied((file) => mangled(file, isWhole ? at : at + below(4000), isWhole ? 4096 : 40));
      const found = await started(copy);
      if (!found.ok) {
        if (isWhole) refused++;
        await rm(copy, { recursive: true });
        continue;
      }
      const asked = await Page.open(found.value);
      const { body } = await asked.ask('GET', '/api/programmes');
      const same = await asked.ask('GET', `/api/programmes/${body.programmes[0].programmeId}/export.zip`);
      expect([n, Buffer.from(same.body).equals(exported)]).toEqual([n, true]);
      await found.value.close();
      await rm(copy, { recursive: true });
    }
    expect(refused).toBe(pages);
  });

  it('that holds less than was exported from it: told, and not gone on with', async () => {
    const other = join(room, 'other');
    await (await page(other)).served.close();
    await refusedWith(await copied(async (file) => cp(join(other, databaseFile), file)), ['database.behind']);
  });
});

async function mangled(file: string, at: number, length: number): Promise<void> {
  const bytes = await readFile(file);
  for (let i = at; i < at + length; i++) bytes[i] = bytes[i]! ^ 0x5a;
  await writeFile(file, bytes);
}

async function oneDigit(file: string): Promise<void> {
  const bytes = await readFile(file);
  const at = bytes.lastIndexOf('"130"');
  expect(at).toBeGreaterThan(0);
  bytes.write('"180"', at);
  await writeFile(file, bytes);
}

describe('a new folder from an export', () => {
  const exportsIn = async () => {
    const exports = join(folder, 'exports');
    const [own] = await readdir(exports);
    return { exports, own: join(exports, own!), names: (await readdir(join(exports, own!))).sort() };
  };

  it('comes from one zip as well, kept or made by the page', async () => {
    const { own, names } = await exportsIn();
    const byHand = join(room, 'Tarn by hand.zip');
    await writeFile(byHand, exported);
    for (const from of [join(own, names.at(-2)!), byHand]) {
      const { served, asked } = await page(join(room, `new${++copies}`), from);
      const { body } = await asked.ask('GET', '/api/programmes');
      const at = `/api/programmes/${body.programmes[0].programmeId}`;
      expect((await asked.ask('GET', `${at}/export.zip`)).body).toEqual(exported);
      await served.close();
    }
  });

  it('passes over an export that is cut off, for the one before it', async () => {
    const copy = await copied(async (file) => writeFile(file, 'x'.repeat(9999)));
    const own = join(copy, 'exports', (await readdir(join(copy, 'exports')))[0]!);
    const zips = (await readdir(own)).filter((name) => name.endsWith('.zip')).sort();
    expect(zips.length).toBeGreaterThan(1);
    await truncate(join(own, zips.at(-1)!), 900);
    const found = await started(join(room, `new${++copies}`), join(copy, 'exports'));
    if (!found.ok) throw new Error('not opened');
    const asked = await Page.open(found.value);
    const { body } = await asked.ask('GET', '/api/programmes');
    const { body: state } = await asked.ask('GET', `/api/programmes/${body.programmes[0].programmeId}`);
    expect(state.version).toBe(Number(/-(\d+)\.zip/.exec(zips.at(-2)!)![1]));
    await found.value.close();
  });

  it('is refused where it would mix with programmes, or where nothing can be read; nothing is made', async () => {
    const { exports } = await exportsIn();
    const text = join(room, 'text.zip');
    await writeFile(text, 'no zip');
    const tables = join(room, 'tables.zip');
    await writeFile(tables, zipOf(good));
    for (const [data, from, code] of [
      [folder, exports, 'export.folder_used'],
      [join(room, 'none1'), text, 'export.unreadable'],
      [join(room, 'none2'), tables, 'export.unreadable'],
      [join(room, 'none3'), join(room, 'nowhere'), 'export.unreadable'],
      [join(room, 'none4'), room, 'export.unreadable'],
    ] as const) {
      const found = await started(data, from);
      expect([from, found.problems[0]?.code]).toEqual([from, code]);
    }
  });

  it('takes the history of an export whose tables were edited, and says so', async () => {
    const { unzipSync } = await import('fflate');
    const files = unzipSync(exported);
    const edited = join(room, 'edited.zip');
    await writeFile(
      edited,
      zipOf({ ...files, 'sites.csv': new TextDecoder().decode(files['sites.csv']).replace('130', '131') }),
    );
    const found = await started(join(room, 'from edited'), edited);
    expect(found.problems.map(({ code }) => code)).toEqual(['export.tables_differ']);
    if (found.ok) await found.value.close();
  });
});

it('keeps an export after an import, at the end, and after every 50 changes; three of them', async () => {
  const data = join(room, 'many');
  const { served, asked } = await page(data);
  const programme = await asked.empty('Tarn water');
  await asked.takeIn(programme, 'tarn.zip', zipOf(good));
  for (let i = 0; i < 160; i++) await asked.ask('POST', `${programme}/changes`, edit(String(120 + i), String(121 + i)));
  await served.close();
  const own = join(data, 'exports', programme.split('/').at(-1)!);
  const kept = (await readdir(own)).filter((name) => name.endsWith('.zip')).sort();
  expect(kept).toHaveLength(3);
  expect(kept.at(-1)).toMatch(/-161\.zip$/);
  const versions = kept.map((name) => Number(/-(\d+)\.zip/.exec(name)![1]));
  for (const [i, one] of versions.entries()) if (i > 0) expect(one - versions[i - 1]!).toBeLessThanOrEqual(60);
});
