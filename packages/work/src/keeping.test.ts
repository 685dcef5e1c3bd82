import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Keeping, keepingHere, keepingThread, Stopped } from './index.ts';

/** The same asks for both: as text, so that a thread can be started with them. */
const asks = `(() => {
  let kept = 0;
  return {
    add: async ({ by }, around) => { around.report(0.5, 'half'); kept += by; return new Map([['kept', kept]]); },
    fail: async () => { throw new TypeError('no such roof'); },
    long: async (input, around) => {
      for (let i = 0; i < 2000 && !around.stopped(); i++) await new Promise((later) => setTimeout(later, 5));
      kept += 100;
      return 'to its end';
    },
    die: async () => { process.exit(3); },
  };
})()`;

let room: string;
let file: URL;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-keeping-'));
  file = pathToFileURL(join(room, 'thread.mjs'));
  const door = new URL('../dist/index.js', import.meta.url).href;
  await writeFile(file, `import { answerAsks } from ${JSON.stringify(door)};\nanswerAsks(${asks});\n`);
});
afterAll(() => rm(room, { recursive: true, force: true }));

const ways: readonly (readonly [name: string, make: () => Keeping])[] = [
  ['a thread', () => keepingThread(file)],
  ['this thread', () => keepingHere(new Function(`return ${asks}`)())],
];

describe.each(ways)('what is kept in %s', (_, make) => {
  it('is there for the next ask; asks are answered in their order, and one that fails ends nothing', async () => {
    const keeping = make();
    const told: unknown[] = [];
    const onReport = (...report: readonly unknown[]) => told.push(report);
    const first = keeping.ask('add', { by: 2 }, { onReport }).result;
    const failed = expect(keeping.ask('fail', {}).result).rejects.toThrow('no such roof');
    const none = expect(keeping.ask('none', {}).result).rejects.toThrow('none');
    const second = keeping.ask('add', { by: 3 }).result;
    expect([await first, await second]).toEqual([new Map([['kept', 2]]), new Map([['kept', 5]])]);
    await Promise.all([failed, none]);
    expect(told).toEqual([[0.5, 'half']]);
    await keeping.close();
    await expect(keeping.ask('add', { by: 1 }).result).rejects.toThrow(Stopped);
  });

  it('may be called off while it is answered and while it waits; the next is answered', async () => {
    const keeping = make();
    const long = keeping.ask('long', {});
    const waiting = keeping.ask('add', { by: 1000 });
    const next = keeping.ask('add', { by: 1 });
    const both = [long, waiting].map(({ result }) => expect(result).rejects.toThrow(Stopped));
    await new Promise((later) => setTimeout(later, 50));
    long.cancel();
    waiting.cancel();
    await Promise.all(both);
    // The long one left off, and what it does then it has done; the one that waited was never begun.
    expect(await next.result).toEqual(new Map([['kept', 101]]));
    await keeping.close();
  });
});

it('a thread that ends by itself fails what it answered; what waits is asked of a new one', async () => {
  const keeping = keepingThread(file);
  expect(await keeping.ask('add', { by: 7 }).result).toEqual(new Map([['kept', 7]]));
  const died = expect(keeping.ask('die', {}).result).rejects.toThrow('ended with 3');
  const after = keeping.ask('add', { by: 1 }).result;
  await died;
  expect(await after).toEqual(new Map([['kept', 1]]));
  await keeping.close();
});

it('what is called off by closing is told so', async () => {
  const keeping = keepingThread(file);
  const all = [1, 2].map(() => expect(keeping.ask('long', {}).result).rejects.toThrow(Stopped));
  await new Promise((later) => setTimeout(later, 50));
  await keeping.close();
  await Promise.all(all);
});
