import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { good } from './folder.ts';
import { type Page, withServer, zipOf } from './served.ts';

/** Waits until the design of the present facts is there. */
async function designed(page: Page, programme: string) {
  for (;;) {
    const { body } = await page.ask('GET', programme);
    expect(body.isFailed).toBe(false);
    if (body.done_fraction === 1) return;
    await new Promise((later) => setTimeout(later, 20));
  }
}

async function tarn(page: Page): Promise<string> {
  const programme = await page.empty();
  expect((await page.takeIn(programme, 'tarn.zip', zipOf(good))).status).toBe(200);
  return programme;
}

const codesOf = ({ status, body }: Awaited<ReturnType<Page['ask']>>) => [
  status,
  ...(body.problems ?? []).map(({ code }: { code: string }) => code),
];

/** Asks as a browser does that has an answer already, or takes it packed. */
async function raw(page: Page, path: string, more: Readonly<Record<string, string>>) {
  const headers = { cookie: page.cookie, origin: page.origin, ...more };
  return fetch(`${page.origin}${path}`, { headers });
}

const edit = (table: string, key: string, column: string, before: string | null, after: string | null) => ({
  by: 'Sela',
  changes: [{ kind: 'edited', table, key, before: { [column]: before }, after: { [column]: after } }],
});

it('what is asked for oddly, or is not there, is answered by a problem', async () => {
  await withServer(async (page) => {
    const programme = await tarn(page);
    // The first design runs: there is nothing to be given yet, and the page is told what to wait for.
    const early = await page.ask('GET', `${programme}/sites/S001/facts`);
    expect(codesOf(early)).toEqual([409, 'request.not_judged_yet']);
    expect(early.body.problems[0].facts).toMatchObject({ state: 'running' });
    expect(early.headers.get('etag')).toBeNull();
    await designed(page, programme);
    expect((await page.ask('GET', `${programme}/sites/S001/facts`)).status).toBe(200);
    const odd: readonly (readonly [string, number, string])[] = [
      [`${programme}/sites/S999/facts`, 404, 'request.not_found'],
      [`${programme}/sites/..%2F..%2Fetc/facts`, 404, 'request.not_found'],
      [`${programme}/sites/__proto__/facts`, 404, 'request.not_found'],
      [`${programme}/sites/${'x'.repeat(65)}/facts`, 400, 'request.wrong'],
      [`${programme}/sites/${'x'.repeat(300)}/facts`, 400, 'request.wrong'],
      [`${programme}/sites/%zz/facts`, 400, 'request.wrong'],
      [`${programme}/gauges/G-north/readings`, 404, 'request.not_found'],
      [`${programme}/gauges/..%2F..%2Fetc/readings`, 404, 'request.not_found'],
      [`${programme}/gauges/${'x'.repeat(65)}/readings`, 400, 'request.wrong'],
      [`${programme}/gauges/G-east/readings?of=../../etc`, 400, 'request.wrong'],
      [`${programme}/gauges/G-east/readings?of=${'0'.repeat(32)}`, 404, 'request.not_found'],
      ['/api/programmes/nobody/sites/S001/facts', 404, 'database.programme_unknown'],
      ['/api/programmes/nobody/gauges/G-east/readings', 404, 'database.programme_unknown'],
    ];
    for (const [path, status, code] of odd)
      expect([path, ...codesOf(await page.ask('GET', path))]).toEqual([path, status, code]);
    // Nobody but the page that was opened gets them.
    for (const path of [`${programme}/sites/S001/facts`, `${programme}/gauges/G-east/readings`])
      expect((await fetch(`${page.origin}${path}`)).status).toBe(403);
  });
});

it('an answer is sent once for each content, packed where the page takes it', async () => {
  await withServer(async (page) => {
    const programme = await tarn(page);
    await designed(page, programme);
    const factsAt = `${programme}/sites/S001/facts`;
    const plain = await raw(page, factsAt, { 'accept-encoding': 'identity' });
    const text = await plain.text();
    const etag = plain.headers.get('etag')!;
    expect(etag).toMatch(/^"[0-9a-f]{32}"$/);
    expect(plain.headers.get('content-language')).toBeNull();
    const packed = await raw(page, factsAt, { 'accept-encoding': 'gzip' });
    expect(packed.headers.get('etag')).toBe(`"${etag.slice(1, -1)}-gzip"`);
    expect(await packed.text()).toBe(text);
    for (const known of [etag, packed.headers.get('etag')!, `"other", W/${etag}`]) {
      const again = await raw(page, factsAt, { 'if-none-match': known });
      expect([known, again.status, await again.text()]).toEqual([known, 304, '']);
    }
    expect((await raw(page, factsAt, { 'if-none-match': '"other"' })).status).toBe(200);
    // In whatever language, the same letters.
    const spanish = await raw(page, factsAt, { 'accept-encoding': 'identity', 'accept-language': 'es' });
    expect([spanish.headers.get('etag'), await spanish.text()]).toEqual([etag, text]);

    const { gauges } = JSON.parse(text);
    expect(gauges.map(({ gaugeId }: { gaugeId: string }) => gaugeId)).toEqual(['G-east', 'G-west']);
    const [{ readings: east }] = gauges;
    const first = await raw(page, east.address, { 'accept-encoding': 'identity' });
    expect(first.headers.get('cache-control')).toBe('private, max-age=31536000, immutable');
    expect((await raw(page, `${programme}/gauges/G-east/readings`, {})).headers.get('cache-control')).toMatch(
      /no-cache/,
    );
    const record = await first.text();
    expect(JSON.parse(record)).toMatchObject({ gaugeId: 'G-east', rows: [[2, expect.any(Number), 1]] });

    // A change of the site leaves the readings as they are, and is told with its version once it is judged.
    const { body: site } = await page.ask('GET', `${programme}/sites/S001`);
    const row = site.rows.find(({ table }: { table: string }) => table === 'sites');
    await page.ask('POST', `${programme}/changes`, edit('sites', row.key, 'people', row.cells.people, '99'));
    await designed(page, programme);
    const later = await raw(page, factsAt, { 'if-none-match': etag });
    expect(later.status).toBe(200);
    const after = await later.json();
    expect(after.site.people).toBe(99);
    expect(after.designVersion).toBe(after.version);
    expect(after.gauges[0].readings).toEqual(east);
    // A change of a reading gives them another name; under the old one there are none any more.
    const { body: rain } = await page.ask('GET', `${programme}/tables/rain`);
    const month = rain.rows.find(({ key }: { key: string }) => key.startsWith('G-east/'));
    const days = month.cells.readings.split(';');
    const wetter = ['77', ...days.slice(1)].join(';');
    const change = edit('rain', month.key, 'readings', month.cells.readings, wetter);
    expect((await page.ask('POST', `${programme}/changes`, change)).status).toBe(200);
    await designed(page, programme);
    const { body: last } = await page.ask('GET', factsAt);
    expect(last.gauges[0].readings.of).not.toBe(east.of);
    expect(last.gauges[1].readings).toEqual(gauges[1].readings);
    expect(codesOf(await page.ask('GET', east.address))).toEqual([404, 'request.not_found']);
    const { body: fresh } = await page.ask('GET', last.gauges[0].readings.address);
    expect(fresh.rain_mm).toContain(77);
    expect(record).not.toBe(JSON.stringify(fresh));
  });
});

it('a site that was added, and a design that was called off, are waited for', async () => {
  await withServer(async (page) => {
    const programme = await tarn(page);
    await designed(page, programme);
    const cells = { siteId: 'S004', name: 'New Tarn', people: '40', gaugeId: 'G-east' };
    const added = { by: 'Sela', changes: [{ kind: 'added', table: 'sites', key: 'S004', after: cells }] };
    expect((await page.ask('POST', `${programme}/changes`, added)).status).toBe(200);
    expect(codesOf(await page.ask('GET', `${programme}/sites/S004/facts`))).toEqual([409, 'request.not_judged_yet']);
    // The facts of others are those of the last design meanwhile, and say so.
    const { body } = await page.ask('GET', `${programme}/sites/S001/facts`);
    expect([body.version, body.designVersion]).toEqual([body.version, body.version - 1]);
    await designed(page, programme);
    expect((await page.ask('GET', `${programme}/sites/S004/facts`)).body.site.people).toBe(40);
  });
});

it('what is kept of a design that was damaged is made anew', async () => {
  await withServer(async (page, folder) => {
    const programme = await tarn(page);
    await designed(page, programme);
    const id = programme.split('/').at(-1)!;
    const kept = join(folder, 'derived', 'designs', id);
    const readings = (await readdir(kept)).filter((name) => name.startsWith('readings-'));
    expect(readings).toHaveLength(2);
    for (const name of readings) await writeFile(join(kept, name), '{"gaugeId":"G-east"');
    expect(codesOf(await page.ask('GET', `${programme}/gauges/G-east/readings`))).toEqual([
      409,
      'request.not_judged_yet',
    ]);
    await designed(page, programme);
    const { status, body } = await page.ask('GET', `${programme}/gauges/G-east/readings`);
    expect([status, body.gaugeId]).toEqual([200, 'G-east']);
    const { body: facts } = await page.ask('GET', `${programme}/sites/S001/facts`);
    expect(facts.gauges).toHaveLength(2);
  });
});

it('thirty years of a gauge that was read every day are a few stretches and one number a day', async () => {
  await withServer(async (page) => {
    const { body: made } = await page.ask('POST', '/api/programmes', { name: 'Islands', from: 'demo', by: 'Nadi' });
    const programme = `/api/programmes/${made.programmeId}`;
    await designed(page, programme);
    const answer = await raw(page, `${programme}/gauges/G3/readings`, { 'accept-encoding': 'gzip' });
    const record = await answer.json();
    expect(record.rain_mm.length).toBeGreaterThan(11_000);
    expect(record.days.length).toBeLessThan(record.rain_mm.length / 100);
    expect(JSON.stringify(record).length).toBeLessThan(6 * record.rain_mm.length);
  });
}, 60_000);
