import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { seededDice } from '@eavewell/engine';
import { filesOfProgramme } from '@eavewell/formats';
import { describe, expect, it } from 'vitest';
import { good } from './folder.ts';
import { zipOf } from './served.ts';
import { begunFolder, inRoom, pageOf, start } from './started.ts';

const kills = process.env['EAVEWELL_SOAK'] === '1' ? 50 : 3;

describe('the program that serves', () => {
  it('makes the demo in an empty folder, designs it in a thread, and ends when it is told to', async () => {
    await inRoom(async (room) => {
      const first = await start(join(room, 'data'));
      const page = await pageOf(first);
      const { body } = await page.ask('GET', '/api/programmes');
      expect(body.programmes).toHaveLength(1);
      const at = `/api/programmes/${body.programmes[0].programmeId}`;
      const events = await fetch(`${page.origin}/api/events`, { headers: { cookie: page.cookie } });
      let state = (await page.ask('GET', `${at}/design`)).body;
      while (state.done_fraction < 1) {
        // The page is answered while the design runs beside it.
        const asked = performance.now();
        state = (await page.ask('GET', `${at}/design`)).body;
        expect(performance.now() - asked).toBeLessThan(2000);
        expect(state.isFailed).toBe(false);
        await new Promise((later) => setTimeout(later, 50));
      }
      expect(state.report.sites).toHaveLength(60);
      const { value } = await events.body!.getReader().read();
      expect(new TextDecoder().decode(value)).toMatch(/^: here/);
      const second = await start(join(room, 'data'));
      expect([second.address, await second.ended]).toEqual([null, 1]);
      expect(second.text()).toMatch(/Another program has the data folder .* open\. Close the other one/);
      const taken = await start(join(room, 'other'), ['--port', String(new URL(first.address!).port)]);
      expect([taken.address, await taken.ended]).toEqual([null, 1]);
      expect(taken.text()).toMatch(/Another program uses port \d+\. Name another one with --port/);
      first.process.kill('SIGTERM');
      expect(await first.ended).toBe(0);
      expect(await readdir(join(room, 'data'))).toEqual([
        'derived',
        'device.txt',
        'eavewell.sqlite',
        'exports',
        'in-use.sqlite',
      ]);
    });
  });

  it('says what is wrong with a data folder, and touches nothing', async () => {
    await inRoom(async (room) => {
      await writeFile(join(room, 'file'), 'x');
      await writeFile(
        join(room, 'eavewell.sqlite'),
        'no database at all, and long enough to be looked at as one'.repeat(40),
      );
      for (const [folder, said] of [
        [join(room, 'file'), /A file stands where the data folder .* should be/],
        [room, /The data file does not hold together/],
      ] as const) {
        const started = await start(folder);
        expect([started.address, await started.ended]).toEqual([null, 1]);
        expect(started.text()).toMatch(said);
        expect(started.text()).not.toMatch(/ at .*\.js:/);
      }
    });
  });

  it(`killed ${kills} times in an import: all of it is there, or nothing`, async () => {
    await inRoom(async (room) => {
      const folder = await begunFolder(join(room, 'data'));
      const wanted = zipOf(good);
      const below = seededDice(7).next;
      for (let i = 0; i < kills; i++) {
        const running = await start(folder);
        const page = await pageOf(running);
        const programme = await page.empty(`Tarn ${i}`);
        const { body: review } = await page.send(programme, 'tarn.zip', wanted);
        const at = `${programme}/imports/${review.importId}`;
        const answer = page.ask('POST', `${at}/accept`, { by: 'Nadi' }).catch(() => null);
        await new Promise((later) => setTimeout(later, below(30)));
        running.process.kill('SIGKILL');
        const accepted = await answer;
        await running.ended;
        const again = await start(folder);
        const after = await pageOf(again);
        const { body: state } = await after.ask('GET', programme);
        // What was answered is there; what was not answered is whole or not there.
        if (accepted?.status === 200) expect(state.version).toBe(1);
        expect([0, 1]).toContain(state.version);
        const { body: compared } = await after.send(programme, 'tarn.zip', wanted);
        if (state.version === 1) expect(compared.changes).toEqual([]);
        else expect(compared.changes.map((one: { table: string }) => one.table)).toContain('sites');
        expect(await readdir(join(folder, 'passing', 'imports'))).toHaveLength(1);
        again.process.kill('SIGINT');
        expect(await again.ended).toBe(0);
      }
    });
  });

  it('says after a restart which import was cut off, until that is dismissed', async () => {
    await inRoom(async (room) => {
      const folder = await begunFolder(join(room, 'data'));
      const first = await start(folder);
      const page = await pageOf(first);
      const { planted: _, ...tables } = demoProgramme({ sites: 60 });
      const at = await page.empty('Islands');
      const files = Object.fromEntries(filesOfProgramme(tables)) as Record<string, string>;
      const sent = await page.send(at, 'islands.zip', zipOf(files), '&wait=no');
      expect(sent.body.isReading).toBe(true);
      const isMarked = async () =>
        (await readdir(join(folder, 'derived', 'tasks')).catch(() => [])).some((name) => name.endsWith('.json'));
      await expect.poll(isMarked, { timeout: 20_000, interval: 10 }).toBe(true);
      first.process.kill('SIGKILL');
      await first.ended;
      const second = await start(folder);
      const after = await pageOf(second);
      const { tasks } = (await after.ask('GET', '/api/tasks')).body;
      const cut = tasks.filter(({ kind }: { kind: string }) => kind === 'import');
      expect(cut).toMatchObject([{ state: 'cutOff', name: 'islands.zip', importId: sent.body.importId }]);
      expect((await after.ask('GET', `${at}/imports`)).body.imports).toEqual([]);
      expect((await after.ask('GET', at)).body.version).toBe(0);
      expect((await after.ask('DELETE', `/api/tasks/${cut[0].taskId}`)).status).toBe(204);
      // Asking where the programme stands began its design; of the import nothing is told any more.
      const left = (await after.ask('GET', '/api/tasks')).body.tasks;
      expect(left.filter(({ kind }: { kind: string }) => kind !== 'design')).toEqual([]);
      second.process.kill('SIGTERM');
      expect(await second.ended).toBe(0);
    });
  });
});
