import { chmodSync, chownSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { databaseFile } from '@eavewell/database';
import { describe, expect, it } from 'vitest';
import { good } from './folder.ts';
import { zipOf } from './served.ts';
import { begunFolder, inRoom, pageOf, type Started, start } from './started.ts';

/** Whoever may do everything on this computer is let in everywhere: then the program is started by somebody who may not. */
const isAll = process.getuid?.() === 0;
const nobody = 65_534;
const asNobody = isAll ? { uid: nobody } : {};
const isWindows = process.platform === 'win32';

async function stopped(running: Started): Promise<void> {
  running.process.kill('SIGTERM');
  expect(await running.ended).toBe(0);
}

describe('a start that cannot be', () => {
  it.skipIf(isWindows)('in a folder that may not be written, or made: told, and nothing of it is touched', async () => {
    await inRoom(async (room) => {
      chmodSync(room, 0o755);
      const kept = await begunFolder(join(room, 'kept'));
      const before = readFileSync(join(kept, databaseFile));
      const names = readdirSync(kept);
      const empty = join(room, 'empty');
      mkdirSync(empty);
      for (const folder of [kept, empty]) chmodSync(folder, 0o555);
      for (const folder of [kept, empty, join(empty, 'below')]) {
        const started = await start(folder, [], asNobody);
        expect([folder, started.address, await started.ended]).toEqual([folder, null, 1]);
        expect(started.text()).toMatch(
          /The data folder .* may not be written .* Choose another folder, or ask who looks after/,
        );
        expect(started.text()).not.toMatch(/our fault| at .*\.js:/);
      }
      expect(readFileSync(join(kept, databaseFile)).equals(before)).toBe(true);
      expect(readdirSync(kept)).toEqual(names);
      for (const folder of [kept, empty]) chmodSync(folder, 0o755);
      await stopped(await start(kept));
    });
  });

  it.skipIf(isWindows)('with a data file that may only be read: told, and nothing of it is touched', async () => {
    await inRoom(async (room) => {
      chmodSync(room, 0o755);
      const folder = await begunFolder(join(room, 'data'));
      const file = join(folder, databaseFile);
      const before = readFileSync(file);
      if (isAll) chownSync(folder, nobody, nobody);
      if (isAll) chownSync(join(folder, 'in-use.sqlite'), nobody, nobody);
      chmodSync(file, 0o444);
      const started = await start(folder, [], asNobody);
      expect([started.address, await started.ended]).toEqual([null, 1]);
      expect(started.text()).toMatch(/may not be written/);
      expect(started.text()).not.toMatch(/our fault/);
      expect(readFileSync(file).equals(before)).toBe(true);
    });
  });

  it('with a data file of a newer version: told, and nothing of it is touched', async () => {
    await inRoom(async (room) => {
      const folder = await begunFolder(join(room, 'data'));
      const file = join(folder, databaseFile);
      const bytes = readFileSync(file);
      // The version stands at byte 60 (SQLite file format, section 1.3.15, from memory).
      bytes.writeUInt32BE(bytes.readUInt32BE(60) + 1, 60);
      writeFileSync(file, bytes);
      const started = await start(folder);
      expect([started.address, await started.ended]).toEqual([null, 1]);
      expect(started.text()).toMatch(/written by a newer version .* It was not touched\. Use the newer version/);
      expect(readFileSync(file).equals(bytes)).toBe(true);
    });
  });

  it('a second time: told, and the first goes on', async () => {
    await inRoom(async (room) => {
      const folder = await begunFolder(join(room, 'data'));
      const first = await start(folder);
      const page = await pageOf(first);
      const programme = await page.empty();
      const second = await start(folder);
      expect([second.address, await second.ended]).toEqual([null, 1]);
      expect(second.text()).toMatch(/Another program has the data folder .* open\. Close the other one/);
      expect((await page.takeIn(programme, 'tarn.zip', zipOf(good))).status).toBe(200);
      await stopped(first);
    });
  });
});

/** Files in a folder and below it; none where it is not there. */
const filesIn = (folder: string) =>
  existsSync(folder) ? readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile()) : [];

/** The most memory a program held so far [MB], as Linux counts it; null elsewhere. */
function peak_MB({ process: { pid } }: Started): number | null {
  if (process.platform !== 'linux') return null;
  return Number(/VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))![1]) / 1024;
}

describe('an upload far too large', () => {
  it('is refused with the limit named, whatever its length says; the program keeps its memory and goes on', async () => {
    await inRoom(async (room) => {
      const running = await start(await begunFolder(join(room, 'data')));
      const page = await pageOf(running);
      const programme = await page.empty();
      const before = peak_MB(running);
      const block = Buffer.alloc(1 << 20, 'a');
      /** Sends so many MB; with or without a word of how long it is. */
      const send = (size_MB: number, isTold: boolean) =>
        new Promise<{ status: number; text: string } | null>((answered) => {
          const length = isTold ? { 'content-length': size_MB * block.length } : {};
          const asked = request({
            ...{ host: '127.0.0.1', port: Number(new URL(page.origin).port), method: 'POST' },
            path: `${programme}/imports?name=huge.zip`,
            headers: { cookie: page.cookie, 'content-type': 'application/zip', ...length },
          });
          asked.on('response', (answer) => {
            let text = '';
            answer.on('data', (piece) => {
              text += piece;
            });
            answer.on('end', () => answered({ status: answer.statusCode!, text }));
            answer.on('error', () => answered({ status: answer.statusCode!, text }));
          });
          // What is refused may be cut off while it is still being sent.
          asked.on('error', () => answered(null));
          let sent = 0;
          const more = () => {
            while (sent < size_MB && !asked.destroyed) {
              sent++;
              if (!asked.write(block)) return void asked.once('drain', more);
            }
            asked.end();
          };
          more();
        });
      const answers = [await send(1000, true), await send(400, false), await send(400, false)];
      for (const answer of answers) {
        if (answer === null) continue;
        expect(answer.status).toBe(413);
        const [problem] = JSON.parse(answer.text).problems;
        expect(problem).toMatchObject({ code: expect.stringMatching(/too_large$/), facts: { largest_MB: 100 } });
        expect(problem.what).toMatch(/100 MB\)?; nothing was (written|taken in)\.$/);
      }
      const after = peak_MB(running);
      // At most what is taken at once, twice: as it comes and put together.
      if (before !== null && after !== null) expect(after - before).toBeLessThan(260);
      expect(filesIn(join(room, 'data', 'passing'))).toEqual([]);
      expect((await page.takeIn(programme, 'tarn.zip', zipOf(good))).status).toBe(200);
      await stopped(running);
    });
  });
});
