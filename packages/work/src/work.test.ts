import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Stopped, threadWork, type Work, workHere } from './index.ts';

/** The same jobs for both: as text, so that a thread can be started with them. */
const jobs = `({
  add: async ({ a, b }, around) => { around.report(0.5, 'half'); return new Map([['sum', a + b]]); },
  fail: async () => { throw new TypeError('no such roof'); },
  long: async (input, around) => {
    for (let i = 0; i < 2000 && !around.stopped(); i++) { around.report(i / 2000); await new Promise((later) => setTimeout(later, 5)); }
    return 'to its end';
  },
})`;

let room: string;
let file: URL;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-work-'));
  file = pathToFileURL(join(room, 'thread.mjs'));
  const door = new URL('../dist/index.js', import.meta.url).href;
  await writeFile(file, `import { answerWork } from ${JSON.stringify(door)};\nawait answerWork(${jobs});\n`);
});
afterAll(() => rm(room, { recursive: true, force: true }));

const ways: readonly (readonly [name: string, make: () => Work])[] = [
  ['threads', () => threadWork(file)],
  ['one thread', () => workHere(new Function(`return ${jobs}`)())],
];

describe.each(ways)('long work in %s', (_, make) => {
  it('reports, and gives what the job comes to', async () => {
    const work = make();
    const told: unknown[] = [];
    const job = work.start(
      'add',
      { a: 2, b: 3 },
      { onReport: (done_fraction, piece) => told.push([done_fraction, piece]) },
    );
    expect(await job.result).toEqual(new Map([['sum', 5]]));
    expect(told).toEqual([[0.5, 'half']]);
    await work.close();
  });

  it('rejects with what went wrong in the job, and with a job that is not there', async () => {
    const work = make();
    await expect(work.start('fail', {}).result).rejects.toThrow('no such roof');
    await expect(work.start('none', {}).result).rejects.toThrow('there is no job none');
    await work.close();
  });

  it('calls off one that runs, those that wait, and takes none once it is closed', async () => {
    const work = make();
    const all = [1, 2, 3].map(() => work.start('long', {}));
    const results = all.map(({ result }) =>
      result.then(
        () => 'done',
        (error: unknown) => error instanceof Stopped,
      ),
    );
    await new Promise((later) => setTimeout(later, 100));
    all[0]!.cancel();
    expect(await results[0]).toBe(true);
    await work.close();
    expect(await Promise.all(results)).toEqual([true, true, true]);
    await expect(work.start('add', { a: 1, b: 1 }).result).rejects.toThrow(Stopped);
  });
});
