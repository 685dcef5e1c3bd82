import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { demoProgramme } from '@eavewell/demo';
import { dayOnClock, isoDay } from '@eavewell/engine';
import { tablesAsRead, writeProgramme } from '@eavewell/formats';
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
  // How far it is says how fast the machine is.
  const err = stderr.text.replaceAll(/^(?:reading|judging) .*\n/gm, '');
  return { code, out: stdout.text, err };
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
    // The demo that is served is under way on the day it is made.
    const { planted: _, ...tables } = demoProgramme({ sites: 60, today: isoDay(dayOnClock(new Date())) });
    await writeProgramme(join(room, 'islands'), tables);
    // The one row that has a cell too many cannot be kept in rows: the pages get the demo without it.
    const tanks = join(room, 'islands', 'tanks.csv');
    await writeFile(tanks, (await readFile(tanks, 'utf8')).replace(/,leaks at the foot$/m, ''));
    const [kept, folder] = [
      await eavewell(['check', '--data', data]),
      await eavewell(['check', join(room, 'islands')]),
    ];
    expect(kept).toEqual(folder);
    expect(kept.out).toMatch(/blocker/);
    const unknown = await eavewell(['check', '--data', data, '--programme', 'none']);
    expect(unknown).toMatchObject({ code: 1, err: expect.stringMatching(/There is no programme none in this folder/) });
    // Every command that takes a folder gives of the data folder what it gives of the folder.
    const islands = join(room, 'islands');
    const points = join(room, 'points.geojson');
    const [book, kept2] = [join(room, 'a.xlsx'), join(room, 'b.xlsx')];
    await writeFile(points, JSON.stringify({ type: 'FeatureCollection', features: [] }));
    const pairs: readonly (readonly [ofFolder: string[], ofData: string[]])[] = [
      [['design', islands], ['design']],
      [
        ['design', islands, '--site', 'S001'],
        ['design', '--site', 'S001'],
      ],
      [
        ['rain', islands, 'G1'],
        ['rain', 'G1'],
      ],
      [['columns', islands], ['columns']],
      [
        ['positions', islands, points],
        ['positions', points],
      ],
      [
        ['map', islands, '--out', join(room, 'a.kml')],
        ['map', '--out', join(room, 'b.kml')],
      ],
      [
        ['convert', islands, book],
        ['convert', kept2],
      ],
    ];
    for (const [ofFolder, ofData] of pairs) {
      const [a, b] = [await eavewell(ofFolder), await eavewell([...ofData, '--data', data])];
      const same = (text: string) =>
        text
          .replaceAll(islands, '@')
          .replaceAll(`--data ${data}`, '@')
          .replaceAll(/[ab]\.(kml|xlsx)/g, 'out')
          .replaceAll(/\s+/g, ' ');
      expect({ ...b, out: same(b.out) }, ofData.join(' ')).toEqual({ ...a, out: same(a.out) });
    }
    // A zip bears the time at which it was written: what counts is what is read from it.
    expect((await tablesAsRead(kept2)).programme).toEqual((await tablesAsRead(book)).programme);
    expect((await eavewell(['programmes', '--data', data])).out).toMatch(
      /^id +name +sites +people .*\np-\w+ +Demo programme +60 /,
    );
    for (const args of [
      ['columns', '--data', data, '--accept'],
      ['positions', points, '--data', data, '--accept-likely'],
    ])
      expect(await eavewell(args)).toMatchObject({ code: 2, err: expect.stringMatching(/cannot be used with --data/) });
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
}, 240_000);

it('keeps a person’s own programmes where each system keeps such things', () => {
  const of = (platform: string, env: Record<string, string>) => dataFolderOf({ platform, env });
  expect(of('linux', { HOME: '/own/nadi' })).toBe('/own/nadi/.local/share/eavewell');
  expect(of('linux', { HOME: '/own/nadi', XDG_DATA_HOME: '/data' })).toBe('/data/eavewell');
  expect(of('darwin', { HOME: '/own/nadi' })).toBe('/own/nadi/Library/Application Support/Eavewell');
  expect(of('win32', { LOCALAPPDATA: '/local' })).toBe('/local/Eavewell');
  expect(of('win32', { EAVEWELL_DATA: '/water' })).toBe('/water');
});
