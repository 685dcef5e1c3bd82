import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { type Page, withServer } from './served.ts';
import { type TinyMap, tinyMap } from './tinyMap.ts';

/** Sends a map file as a page does. */
async function send(page: Page, name: string, bytes: Uint8Array) {
  const answer = await fetch(`${page.origin}/api/maps?name=${encodeURIComponent(name)}`, {
    method: 'POST',
    headers: { cookie: page.cookie, origin: page.origin, 'content-type': 'application/vnd.pmtiles' },
    body: new Uint8Array(bytes),
  });
  // biome-ignore lint/suspicious/noExplicitAny: an answer is looked into by tests, each of which knows its form
  return { status: answer.status, body: (await answer.json()) as any };
}
const filesOf = (folder: string) => readdir(join(folder, 'maps')).catch(() => []);
const piece = (page: Page, path: string, headers: Record<string, string>) =>
  fetch(`${page.origin}${path}`, { headers: { cookie: page.cookie, ...headers } });

it('keeps a map file that is sent, tells what is in it, and gives a page the pieces it asks for', async () => {
  await withServer(async (page, folder) => {
    const bytes = tinyMap({ attribution: 'Measured by <a href="https://survey.example">the survey</a>' });
    const sent = await send(page, 'islands.pmtiles', bytes);
    expect(sent.status).toBe(201);
    const { body } = await page.ask('GET', '/api/maps');
    expect(body.files).toEqual([{ file: 'islands.pmtiles', map: sent.body, problems: [] }]);
    expect(sent.body).toEqual({
      ...{ file: 'islands.pmtiles', size_bytes: bytes.length, tiles: 'vector', leastZoom: 0, mostZoom: 0 },
      ...{ west_deg: -180, south_deg: -85, east_deg: 180, north_deg: 85 },
      ...{ layers: ['water', 'roads'], attribution: 'Measured by the survey' },
    });
    const part = await piece(page, '/maps/islands.pmtiles', { range: 'bytes=0-6' });
    expect([part.status, await part.text()]).toEqual([206, 'PMTiles']);
    expect(part.headers.get('content-range')).toBe(`bytes 0-6/${bytes.length}`);
    expect((await piece(page, '/maps/islands.pmtiles', { range: 'bytes=99999-' })).ok).toBe(false);
    expect((await page.ask('DELETE', '/api/maps/islands.pmtiles')).status).toBe(204);
    expect([await filesOf(folder), (await page.ask('GET', '/api/maps')).body.files]).toEqual([[], []]);
    expect((await page.ask('DELETE', '/api/maps/islands.pmtiles')).status).toBe(404);
  });
});

const wrong: readonly (readonly [what: string, made: TinyMap | Uint8Array, said: RegExp])[] = [
  ['a photograph', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 0, 0, 0, 0, 0]), /no PMTiles file/],
  ['an empty file', new Uint8Array(), /no PMTiles file/],
  ['an older version', { header: { 7: 2 } }, /another version than 3/],
  ['a file that was cut', tinyMap().slice(0, -20), /its end is missing/],
  ['a header alone', tinyMap().slice(0, 60), /its end is missing/],
  ['tiles of no known kind', { header: { 99: 9 } }, /kind that is not known/],
  ['metadata that cannot be read', { metadata: Uint8Array.from([1, 2, 3]) }, /cannot be read/],
  ['a directory beyond the file', { header: { 12: 1 } }, /cannot be read/],
  ['tiles beyond the file', { header: { 60: 1 } }, /its end is missing/],
  ['packed in a way that is not known', { header: { 97: 7 } }, /cannot be read/],
];

it.each(wrong)('says what is wrong with %s, and keeps nothing of it', async (_, made, said) => {
  await withServer(async (page, folder) => {
    const bytes = made instanceof Uint8Array ? made : tinyMap(made);
    const { status, body } = await send(page, 'wrong.pmtiles', bytes);
    expect([status, body.problems[0].code]).toEqual([422, 'map.unreadable']);
    expect(body.problems[0].what).toMatch(said);
    expect(await filesOf(folder)).toEqual([]);
    // The same laid there by hand is listed with what is wrong, and does not hide the others.
    await mkdir(join(folder, 'maps'), { recursive: true });
    await writeFile(join(folder, 'maps', 'wrong.pmtiles'), bytes);
    await writeFile(join(folder, 'maps', 'right.pmtiles'), tinyMap({ tiles: 'raster' }));
    const { files } = (await page.ask('GET', '/api/maps')).body;
    expect(files.map((one: { map: { tiles: string } | null }) => one.map?.tiles ?? null)).toEqual(['raster', null]);
    expect(files[1].problems[0].what).toMatch(said);
  });
});

it('takes no name that could lead elsewhere, and writes over nothing', async () => {
  await withServer(async (page, folder) => {
    for (const name of ['../x.pmtiles', 'a/b.pmtiles', '.pmtiles', 'x.pmtiles.exe', `${'x'.repeat(61)}.pmtiles`]) {
      const { status, body } = await send(page, name, tinyMap());
      expect([name, status, body.problems[0].code]).toEqual([name, 422, 'map.name_wrong']);
    }
    expect((await send(page, 'one.pmtiles', tinyMap())).status).toBe(201);
    const again = await send(page, 'one.pmtiles', tinyMap({ tiles: 'raster' }));
    expect([again.status, again.body.problems[0].code]).toEqual([409, 'map.there']);
    expect((await page.ask('GET', '/api/maps')).body.files[0].map.tiles).toBe('vector');
    await writeFile(join(folder, 'maps', 'secret.txt'), 'not a map');
    for (const path of ['/maps/secret.txt', '/maps/..%2Feavewell.sqlite', '/maps/%2e%2e/device.txt', '/maps/'])
      expect([path, (await piece(page, path, {})).status]).toEqual([path, 404]);
  });
});

it('gives pieces of a map to its own page alone', async () => {
  await withServer(async (page) => {
    await send(page, 'one.pmtiles', tinyMap());
    const path = '/maps/one.pmtiles';
    expect((await fetch(`${page.origin}${path}`)).status).toBe(403);
    expect((await piece(page, path, { origin: 'https://weather.example' })).status).toBe(403);
    expect((await fetch(`${page.origin}/api/maps?name=x.pmtiles`, { method: 'POST', body: 'x' })).status).toBe(403);
  });
});

it('leaves no trace of a sending that is broken off', async () => {
  await withServer(async (page, folder) => {
    await new Promise<void>((done) => {
      const sending = request({
        ...{ host: '127.0.0.1', port: page.served.port, path: '/api/maps?name=half.pmtiles', method: 'POST' },
        headers: {
          ...{ cookie: page.cookie, origin: page.origin, 'content-type': 'application/vnd.pmtiles' },
          'content-length': '1000000',
        },
      });
      sending.on('error', () => done());
      sending.write(tinyMap());
      setTimeout(() => sending.destroy(), 200);
    });
    for (let i = 0; i < 50 && (await filesOf(folder)).length > 0; i++)
      await new Promise((next) => setTimeout(next, 20));
    expect(await filesOf(folder)).toEqual([]);
  });
});

it('a change that is sent twice under one name is made once', async () => {
  await withServer(async (page) => {
    const programme = await page.empty();
    const change = { kind: 'added', table: 'sites', key: 'S001', after: { siteId: 'S001', name: 'Ardi' } };
    const body = { by: 'Nadi', changes: [change], sendId: 'send-0001' };
    const first = await page.ask('POST', `${programme}/changes`, body);
    const again = await page.ask('POST', `${programme}/changes`, body);
    expect([again.status, again.body.record, again.body.version]).toEqual([200, first.body.record, first.body.version]);
    const other = await page.ask('POST', `${programme}/changes`, { ...body, sendId: 'send-0002' });
    expect([other.status, other.body.problems[0].code]).toEqual([409, 'change.row_there']);
    expect((await page.ask('GET', `${programme}/changes`)).body.records).toHaveLength(1);
  });
});
