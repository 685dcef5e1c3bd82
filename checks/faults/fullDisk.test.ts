import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, mkdirSync, openSync, rmSync, writeSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { good } from './folder.ts';
import { type Answer, type Page, withServer, zipOf } from './served.ts';
import { begunFolder, inRoom, pageOf, type Started, start } from './started.ts';

/** Mounts a disk of so many megabytes that lives in memory; false where this system does not let it. */
function mounted(at: string, size_MB: number): boolean {
  mkdirSync(at, { recursive: true });
  return spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${size_MB}m`, 'tmpfs', at]).status === 0;
}

const mayMount = await (async () => {
  let may = false;
  await inRoom(async (room) => {
    may = mounted(join(room, 'disk'), 1);
    if (may) spawnSync('umount', [join(room, 'disk')]);
  });
  return may;
})();

/** Writes until nothing more goes onto the disk. */
function fill(disk: string): void {
  for (const size_bytes of [65_536, 4096, 1]) {
    const file = openSync(join(disk, `filler ${size_bytes}`), 'w');
    try {
      for (;;) writeSync(file, Buffer.alloc(size_bytes, 1));
    } catch (error) {
      expect((error as NodeJS.ErrnoException).code).toBe('ENOSPC');
    } finally {
      closeSync(file);
    }
  }
}
const makeRoom = (disk: string) => {
  for (const size_bytes of [65_536, 4096, 1]) rmSync(join(disk, `filler ${size_bytes}`), { force: true });
};

const edit = (people: string, notes: string) => ({
  by: 'Sela',
  changes: [
    {
      ...{ kind: 'edited', table: 'sites', key: 'S001' },
      ...{ before: { people: '120', notes: null }, after: { people, notes } },
    },
  ],
});

function expectFull(answer: Answer): void {
  expect([answer.status, answer.body.problems?.[0]?.code]).toEqual([507, 'database.disk_full']);
  expect(answer.body.title).toMatch(/^The disk is full: nothing could be written to .*, and nothing was lost\.$/);
  expect(answer.body.detail).toMatch(/Make room on the disk/);
}

const begunHere: Started[] = [];
async function begin(folder: string): Promise<Started> {
  const running = await start(folder);
  begunHere.push(running);
  return running;
}

async function stopped(running: Started): Promise<void> {
  running.process.kill('SIGTERM');
  expect(await running.ended).toBe(0);
}

async function designed(page: Page, programme: string): Promise<void> {
  for (const end = Date.now() + 60_000; Date.now() < end; ) {
    const { body } = await page.ask('GET', `${programme}/design`);
    if (body.done_fraction === 1) return;
    await new Promise((later) => setTimeout(later, 100));
  }
  throw new Error('no design');
}

/** A table of some 300 KB. */
const manySites = () =>
  new TextEncoder().encode(
    `siteId,name,notes\n${Array.from({ length: 3000 }, (_, i) => `T${i},Upper Stones ${i},${'y'.repeat(80)}\n`).join('')}`,
  );

/** Tarn water taken in, and a table that waits to be taken in. */
async function begun(page: Page) {
  const programme = await page.empty('Tarn water');
  expect((await page.takeIn(programme, 'tarn.zip', zipOf(good))).status).toBe(200);
  const notes = 'y'.repeat(200_000);
  const { body: waiting } = await page.send(programme, 'sites.csv', manySites());
  expect(waiting.mayBeAccepted).toBe(true);
  const accept = () => page.ask('POST', `${programme}/imports/${waiting.importId}/accept`, { by: 'Nadi' });
  const change = () => page.ask('POST', `${programme}/changes`, edit('130', notes));
  const makeDemo = () => page.ask('POST', '/api/programmes', { name: 'Islands', from: 'demo', by: 'Nadi' });
  return { programme, accept, change, makeDemo };
}

describe('a full disk', () => {
  it.skipIf(!mayMount)(
    '(needs the right to mount one): told, nothing lost, and all goes on when there is room',
    async () => {
      await inRoom(async (room) => {
        const disk = join(room, 'disk');
        expect(mounted(disk, 32)).toBe(true);
        try {
          const running = await begin(await begunFolder(join(disk, 'data')));
          const page = await pageOf(running);
          const { programme, accept, change, makeDemo } = await begun(page);
          const before = (await page.ask('GET', `${programme}/export.zip`)).body;
          fill(disk);
          expectFull(await change());
          expectFull(await accept());
          expectFull(await page.send(programme, 'tarn.zip', zipOf(good)));
          const made = await makeDemo();
          expectFull(made);
          // What stands is read; it goes out whole, or not at all where packing it takes room.
          expect((await page.ask('GET', `${programme}/tables/sites`)).body.rows).toHaveLength(3);
          const out = await page.ask('GET', `${programme}/export.zip`);
          if (out.status === 200) expect(Buffer.from(out.body).equals(before)).toBe(true);
          else expectFull(out);
          await page.ask('GET', `${programme}/design`);
          await new Promise((later) => setTimeout(later, 1500));
          expect(running.text()).not.toMatch(/our fault/);
          expect((await page.ask('GET', programme)).body.version).toBe(1);
          makeRoom(disk);
          expect(Buffer.from((await page.ask('GET', `${programme}/export.zip`)).body).equals(before)).toBe(true);
          expect((await change()).status).toBe(200);
          // What was looked at is what would be written still: the change bears on other rows.
          expect((await accept()).status).toBe(200);
          await designed(page, programme);
          expect((await makeDemo()).status).toBe(201);
          const after = (await page.ask('GET', `${programme}/export.zip`)).body;
          // Filled again: the end of the program says what could not be kept, and loses nothing.
          fill(disk);
          await stopped(running);
          expect(running.text()).not.toMatch(/our fault/);
          makeRoom(disk);
          const again = await begin(join(disk, 'data'));
          const there = await pageOf(again);
          expect(Buffer.from((await there.ask('GET', `${programme}/export.zip`)).body).equals(after)).toBe(true);
          await stopped(again);
          const names = await readdir(join(disk, 'data'), { recursive: true });
          expect(names.filter((name) => name.endsWith('.unfinished'))).toEqual([]);
        } finally {
          spawnSync('umount', ['-l', disk]);
        }
      });
    },
  );

  it.skipIf(!mayMount)('before anything was kept: told, and the next start is whole', async () => {
    await inRoom(async (room) => {
      const disk = join(room, 'disk');
      expect(mounted(disk, 2)).toBe(true);
      try {
        fill(disk);
        const first = await begin(join(disk, 'data'));
        expect([first.address, await first.ended]).toEqual([null, 1]);
        expect(first.text()).toMatch(/The disk is full: nothing could be written to .*Make room on the disk/);
        makeRoom(disk);
        const second = await begin(join(disk, 'data'));
        const { body } = await (await pageOf(second)).ask('GET', '/api/programmes');
        expect(body.programmes).toHaveLength(1);
        await stopped(second);
      } finally {
        // A program that still runs when a check fails is ended with it.
        for (const running of begunHere.splice(0)) running.process.kill('SIGKILL');
        spawnSync('umount', ['-l', disk]);
      }
    });
  });

  it.skipIf(process.platform === 'win32')(
    'in a program whose files may grow no more: told, nothing lost, and all goes on without that limit',
    async () => {
      await inRoom(async (room) => {
        const folder = join(room, 'data');
        // No file over 256 KiB (bash counts in KiB): the system refuses to write behind that, as a full disk does.
        const limited = ['bash', '-c', 'ulimit -f 256; exec "$@"', 'limited'];
        const running = await start(folder, ['--from', await smallExport(room)], { through: limited });
        expect(running.address).not.toBeNull();
        const page = await pageOf(running);
        const { body } = await page.ask('GET', '/api/programmes');
        const programme = `/api/programmes/${body.programmes[0].programmeId}`;
        const notes = 'y'.repeat(300_000);
        expectFull(await page.ask('POST', `${programme}/changes`, edit('130', notes)));
        expectFull(await page.send(programme, 'sites.csv', manySites()));
        const made = await page.ask('POST', '/api/programmes', { name: 'Islands', from: 'demo', by: 'Nadi' });
        expectFull(made);
        expect((await page.ask('POST', `${programme}/changes`, edit('131', 'short'))).status).toBe(200);
        const after = (await page.ask('GET', `${programme}/export.zip`)).body;
        await stopped(running);
        expect(running.text()).not.toMatch(/our fault/);
        const again = await start(folder);
        const there = await pageOf(again);
        expect(Buffer.from((await there.ask('GET', `${programme}/export.zip`)).body).equals(after)).toBe(true);
        expect((await there.ask('POST', `${programme}/changes`, edit('130', notes))).status).toBe(200);
        await stopped(again);
        expect(existsSync(join(folder, 'passing'))).toBe(false);
      });
    },
  );
});

/** An export of Tarn water, made by a program without limits. */
async function smallExport(room: string): Promise<string> {
  const folder = join(room, 'first');
  const programme = await withServer(
    async (page) => {
      const made = await page.empty('Tarn water');
      await page.takeIn(made, 'tarn.zip', zipOf(good));
      return made;
    },
    { folder, keep: true },
  );
  const own = join(folder, 'exports', programme.split('/').at(-1)!);
  return join(own, (await readdir(own)).find((name) => name.endsWith('.zip'))!);
}
