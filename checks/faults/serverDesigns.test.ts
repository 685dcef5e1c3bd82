import { appendFile, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { demoProgramme } from '@eavewell/demo';
import { filesOfProgramme } from '@eavewell/formats';
import { schemas } from '@eavewell/server';
import { expect, it } from 'vitest';
import { type Page, withServer, zipOf } from './served.ts';

/** Waits until the design of the present facts is there. */
async function designed(page: Page, programme: string) {
  for (;;) {
    const { body } = await page.ask('GET', programme);
    expect(body.isFailed).toBe(false);
    if (body.done_fraction === 1) return body;
    await new Promise((later) => setTimeout(later, 20));
  }
}

async function demo(page: Page): Promise<string> {
  const made = await page.ask('POST', '/api/programmes', { name: 'Islands', from: 'demo', by: 'Nadi' });
  return `/api/programmes/${made.body.programmeId}`;
}

/** Some sites of the demo, for what is the same however many there are. */
const few = 12;

async function smallDemo(page: Page): Promise<string> {
  const programme = await page.empty('Islands');
  const { planted: _, ...tables } = demoProgramme({ sites: few });
  const files = Object.fromEntries(filesOfProgramme(tables)) as Record<string, string>;
  expect((await page.takeIn(programme, 'islands.zip', zipOf(files))).status).toBe(200);
  return programme;
}

const edit = (key: string, column: string, before: string | null, after: string | null) => ({
  ...{ kind: 'edited', table: 'sites', key },
  ...{ before: { [column]: before }, after: { [column]: after } },
});

it('an edit of one site judges one site again, and the whole is as if all were judged anew', async () => {
  const seen: string[] = [];
  let folderOfData = '';
  await withServer(
    async (page, folder, told) => {
      folderOfData = folder;
      const programme = await demo(page);
      await designed(page, programme);
      expect(told.done).toEqual([{ sites: 60, carried: 0 }]);
      const { body: rows } = await page.ask('GET', `${programme}/tables/sites`);
      const { key, cells } = rows.rows.find((row: { cells: { people?: string } }) => row.cells.people !== undefined);
      await page.ask('POST', `${programme}/changes`, {
        by: 'Sela',
        changes: [edit(key, 'people', cells.people, '31')],
      });
      await designed(page, programme);
      expect(told.done[1]).toEqual({ sites: 60, carried: 59 });
      await page.ask('POST', `${programme}/undo`, { by: 'Sela' });
      await designed(page, programme);
      // The name of the programme stands in no site; a setting by which they are judged stands in all.
      const setting = (field: string, before: string | null, after: string) => ({
        ...{ kind: before === null ? 'added' : 'edited', table: 'settings', key: field },
        ...(before === null ? { after: { value: after } } : { before: { value: before }, after: { value: after } }),
      });
      const { body: settings } = await page.ask('GET', `${programme}/tables/settings`);
      const name = settings.rows.find((row: { key: string }) => row.key === 'programme').cells.value;
      await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [setting('programme', name, '"Other"')] });
      await designed(page, programme);
      expect(told.done[3]).toEqual({ sites: 60, carried: 60 });
      await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [setting('leastYears', null, '12')] });
      await designed(page, programme);
      expect(told.done[4]).toEqual({ sites: 60, carried: 0 });
      // A day of one gauge: the sites that rest on it, and those that rest on every gauge, are judged again.
      const { body: rain } = await page.ask('GET', `${programme}/tables/rain`);
      const month = rain.rows.find((row: { key: string }) => /^G1\/2001-03$/.test(row.key));
      const days = month.cells.readings.split(';');
      const after = ['99', ...days.slice(1)].join(';');
      const wetter = { kind: 'edited', table: 'rain', key: month.key, before: month.cells, after: { readings: after } };
      await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [wetter] });
      await designed(page, programme);
      expect(told.done[5]!.carried).toBeGreaterThan(0);
      expect(told.done[5]!.carried).toBeLessThan(60);
      const carried = (await page.ask('GET', `${programme}/design`)).body.report;
      seen.push(JSON.stringify(carried));
    },
    { keep: true },
  );
  // Restarted, nothing is judged again; with what was kept taken away, all of it, and the report is the same letter for letter.
  await withServer(
    async (page, folder, told) => {
      const { body } = await page.ask('GET', '/api/programmes');
      const programme = `/api/programmes/${body.programmes[0].programmeId}`;
      expect((await page.ask('GET', programme)).body.done_fraction).toBe(1);
      expect(JSON.stringify((await page.ask('GET', `${programme}/design`)).body.report)).toBe(seen[0]);
      expect(told.done).toEqual([]);
      await rm(join(folder, 'derived'), { recursive: true });
    },
    { keep: true, folder: folderOfData },
  );
  await withServer(
    async (page, _, told) => {
      const { body } = await page.ask('GET', '/api/programmes');
      const programme = `/api/programmes/${body.programmes[0].programmeId}`;
      await designed(page, programme);
      expect(told.done).toEqual([{ sites: 60, carried: 0 }]);
      expect(JSON.stringify((await page.ask('GET', `${programme}/design`)).body.report)).toBe(seen[0]);
    },
    { folder: folderOfData },
  );
});

it('a kept design that was cut, altered or made by another build is not used', async () => {
  let folderOfData = '';
  let report = '';
  let programme = '';
  await withServer(
    async (page, folder) => {
      folderOfData = folder;
      programme = await smallDemo(page);
      await designed(page, programme);
      report = JSON.stringify((await page.ask('GET', `${programme}/design`)).body.report);
    },
    { keep: true },
  );
  const at = join(folderOfData, 'derived', 'designs', programme.split('/').at(-1)!);
  const file = async (form: RegExp) => join(at, (await readdir(at)).find((name) => form.test(name))!);
  const cut = async (form: RegExp, share: number) => {
    const path = await file(form);
    const bytes = await readFile(path);
    await writeFile(path, bytes.subarray(0, Math.floor(bytes.length * share)));
  };
  const harms: readonly (() => Promise<void>)[] = [
    () => cut(/^list/, 0.5),
    () => cut(/^judged/, 0.5),
    () => cut(/^sites/, 0.3),
    async () => writeFile(await file(/^sites/), 'x'.repeat(5e6)),
    async () => appendFile(await file(/^sites/), '{"half":'),
    async () => {
      for (const form of [/^list/, /^judged/]) {
        const path = await file(form);
        await writeFile(path, (await readFile(path, 'utf8')).replace(/"build":"[^"]+"/, '"build":"another"'));
      }
    },
  ];
  for (const [i, harm] of harms.entries()) {
    await harm();
    await withServer(
      async (page, _, told) => {
        await designed(page, programme);
        const first = await page.ask('GET', `${programme}/sites/S001`);
        expect(first.status).toBe(200);
        await designed(page, programme);
        const again = (await page.ask('GET', `${programme}/design`)).body.report;
        expect(JSON.stringify(again), `harm ${i}`).toBe(report);
        if (i === harms.length - 1) expect(told.done).toEqual([{ sites: few, carried: 0 }]);
      },
      { keep: i < harms.length - 1, folder: folderOfData },
    );
  }
});

it('the list of sites is small, exceptions first, sent once for each state', async () => {
  await withServer(async (page) => {
    const programme = await demo(page);
    const early = await page.ask('GET', `${programme}/overview`);
    expect(schemas.overview.parse(early.body).tally.notYet.sites).toBe(61);
    await designed(page, programme);
    const { body: report } = await page.ask('GET', `${programme}/design`);
    const full = await page.ask('GET', `${programme}/overview`);
    const list = schemas.overview.parse(full.body);
    expect(list.sites.map(({ key }) => key).sort()).toEqual(
      (await page.ask('GET', `${programme}/tables/sites`)).body.rows.map((row: { key: string }) => row.key).sort(),
    );
    const order = ['short', 'unknown', 'tight', 'holds', null];
    const places = list.sites.map(({ verdict }) => order.indexOf(verdict));
    expect(places).toEqual([...places].sort());
    // The 61st row has the id of another: it is not used.
    expect(list.tally.notYet.sites).toBe(1);
    for (const one of report.report.sites) {
      const listed = list.sites.find(({ key }) => key === one.siteId)!;
      expect(listed).toMatchObject({ verdict: one.verdict, finding: one.finding, people: one.people, name: one.name });
      expect(listed.remedy?.about ?? null).toBe(one.remedies?.ranked[0]?.about ?? null);
      expect(listed.remedy?.amount ?? null).toBe(one.remedies?.ranked[0]?.cost.amount ?? null);
      expect(list.targets[listed.target!]).toEqual(one.target);
    }
    const { tally, remedies } = list;
    for (const verdict of ['short', 'unknown', 'tight', 'holds'] as const)
      expect(tally[verdict].sites).toBe(
        report.report.sites.filter((site: { verdict: string }) => site.verdict === verdict).length,
      );
    expect(remedies).toMatchObject({
      looked: report.report.remedies.looked,
      pricesOn: report.report.remedies.pricesOn,
    });
    expect(remedies!.groups[0]!.about).not.toBe('');
    // The same again is not sent again; after a change it is.
    const etag = full.headers.get('etag')!;
    const ask = (match: string) =>
      fetch(`${page.origin}${programme}/overview`, { headers: { cookie: page.cookie, 'if-none-match': match } });
    const same = await ask(etag);
    expect([same.status, (await same.arrayBuffer()).byteLength]).toEqual([304, 0]);
    const { key, cells } = (await page.ask('GET', `${programme}/tables/sites`)).body.rows[0];
    const change = edit(key, 'name', cells.name, 'New name');
    await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [change] });
    await designed(page, programme);
    const other = await ask(etag);
    expect(other.status).toBe(200);
    expect(schemas.overview.parse(await other.json()).sites.find((site) => site.key === key)!.name).toBe('New name');
    // In parts it is the same, in its order.
    const parts = [];
    for (const from of [0, 20, 40, 60])
      parts.push(schemas.overview.parse((await page.ask('GET', `${programme}/overview?from=${from}&most=20`)).body));
    const now = schemas.overview.parse((await page.ask('GET', `${programme}/overview`)).body);
    expect(parts.map((part) => part.sites.length)).toEqual([20, 20, 20, 1]);
    expect(parts.flatMap((part) => part.sites).map(({ key: one }) => one)).toEqual(
      now.sites.map(({ key: one }) => one),
    );
    expect(parts[3]).toMatchObject({ count: 61, tally: now.tally });
    // Packed where the page takes it, whole where it does not.
    const { get } = await import('node:http');
    const packed = await new Promise<Buffer>((done) => {
      const headers = { cookie: page.cookie, 'accept-encoding': 'gzip' };
      get(`${page.origin}${programme}/overview`, { headers }, (answer) => {
        const pieces: Buffer[] = [];
        expect(answer.headers['content-encoding']).toBe('gzip');
        answer.on('data', (piece: Buffer) => pieces.push(piece));
        answer.on('end', () => done(Buffer.concat(pieces)));
      });
    });
    schemas.overview.parse(JSON.parse(gunzipSync(packed).toString()));
  });
});

it('a design that is called off stays so until it is begun again, and then is finished', async () => {
  await withServer(async (page, _, told) => {
    const programme = await smallDemo(page);
    await page.ask('GET', programme);
    const off = await page.ask('DELETE', `${programme}/design`);
    expect(off.body.isCalledOff).toBe(true);
    await new Promise((later) => setTimeout(later, 300));
    const { body } = await page.ask('GET', programme);
    expect([body.isCalledOff, body.designVersion, body.done_fraction < 1]).toEqual([true, null, true]);
    expect(told.done).toEqual([]);
    expect((await page.ask('POST', `${programme}/design`)).body.isCalledOff).toBe(false);
    await designed(page, programme);
    expect(told.done).toHaveLength(1);
  });
});
