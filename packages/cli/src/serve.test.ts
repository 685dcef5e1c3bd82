import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { expect, it } from 'vitest';
import { dataFolderOf } from './commands/dataFolder.ts';
import { run } from './run.ts';

class Kept extends Writable {
  text = '';
  override _write(chunk: Buffer, _encoding: string, done: () => void): void {
    this.text += chunk.toString('utf8');
    done();
  }
}

async function eavewell(args: readonly string[], untilStopped: () => Promise<void> = async () => undefined) {
  const [stdout, stderr] = [new Kept(), new Kept()];
  const code = await run(args, { stdout, stderr, env: { LANG: 'C.UTF-8' }, platform: 'linux', untilStopped });
  return { code, out: stdout.text, err: stderr.text };
}

it('serves a data folder until it is ended; then check reads the programme from it as from its folder', async () => {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-serve-'));
  try {
    const data = join(room, 'data');
    const meanwhile: { code: number; err: string }[] = [];
    const served = await eavewell(['serve', '--data', data], async () => {
      meanwhile.push(await eavewell(['check', '--data', data]));
    });
    expect(served.code).toBe(0);
    expect(served.out).toMatch(
      /1 programme\. Open this address .*:\nhttp:\/\/127\.0\.0\.1:\d+\/open\?key=[\w-]{43}\nEnded\./,
    );
    expect(meanwhile).toMatchObject([{ code: 1, err: expect.stringMatching(/Another program has the data folder/) }]);
    expect((await eavewell(['demo', join(room, 'islands')])).code).toBe(0);
    const [kept, folder] = [
      await eavewell(['check', '--data', data]),
      await eavewell(['check', join(room, 'islands')]),
    ];
    expect(kept).toEqual(folder);
    expect(kept.out).toMatch(/blocker/);
    const unknown = await eavewell(['check', '--data', data, '--programme', 'none']);
    expect(unknown).toMatchObject({ code: 1, err: expect.stringMatching(/There is no programme none in this folder/) });
    for (const args of [['check'], ['check', data, '--data', data]])
      expect(await eavewell(args)).toMatchObject({
        code: 2,
        err: expect.stringMatching(/either a folder of tables or --data/),
      });
    expect((await eavewell(['serve', '--port', '70000'])).code).toBe(2);
    expect((await readdir(data)).sort()).toEqual(['device.txt', 'eavewell.sqlite', 'exports', 'in-use.sqlite']);
  } finally {
    await rm(room, { recursive: true, force: true });
  }
});

it('keeps a person’s own programmes where each system keeps such things', () => {
  const of = (platform: string, env: Record<string, string>) => dataFolderOf({ platform, env });
  expect(of('linux', { HOME: '/own/nadi' })).toBe('/own/nadi/.local/share/eavewell');
  expect(of('linux', { HOME: '/own/nadi', XDG_DATA_HOME: '/data' })).toBe('/data/eavewell');
  expect(of('darwin', { HOME: '/own/nadi' })).toBe('/own/nadi/Library/Application Support/Eavewell');
  expect(of('win32', { LOCALAPPDATA: '/local' })).toBe('/local/Eavewell');
  expect(of('win32', { EAVEWELL_DATA: '/water' })).toBe('/water');
});
