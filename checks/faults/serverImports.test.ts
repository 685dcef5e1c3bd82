import { readdir } from 'node:fs/promises';
import { connect } from 'node:net';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { dayOnClock, isoDay } from '@eavewell/engine';
import { filesOfProgramme } from '@eavewell/formats';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { changed, good } from './folder.ts';
import { type Page, withServer, zipOf } from './served.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const versionOf = async (page: Page, programme: string) => (await page.ask('GET', programme)).body.version as number;
const passing = (folder: string) => readdir(join(folder, 'passing', 'imports')).catch(() => []);

describe('a file that is sent', () => {
  it('is shown and not written; taken in, it is one record; a second time it changes nothing', async () => {
    await withServer(async (page, folder) => {
      const programme = await page.empty();
      const review = await page.send(programme, 'tarn.zip', zipOf(good));
      expect(review.status).toBe(201);
      expect(review.body).toMatchObject({ mayBeAccepted: true, file: 'tarn.zip', freshRecords: 0, notUsed: [] });
      const counts = Object.fromEntries(
        review.body.changes.map((one: { table: string; added: number }) => [one.table, one.added]),
      );
      expect(counts).toMatchObject({ sites: 3, roofs: 4, tanks: 4, gauges: 2, rain: 4, settings: 2 });
      expect(await versionOf(page, programme)).toBe(0);
      const accepted = await page.ask('POST', `${programme}/imports/${review.body.importId}/accept`, { by: 'Nadi' });
      expect(accepted.body).toMatchObject({ version: 1, problems: [] });
      expect(await passing(folder)).toEqual([]);
      const again = await page.send(programme, 'tarn.zip', zipOf(good));
      expect(again.body).toMatchObject({ mayBeAccepted: true, changes: [] });
      const none = await page.ask('POST', `${programme}/imports/${again.body.importId}/accept`, { by: 'Nadi' });
      expect(none.body).toMatchObject({ version: 1, record: null, problems: [] });
      const { body } = await page.ask('GET', `${programme}/changes`);
      expect(body.records).toHaveLength(1);
      expect(body.records[0]).toMatchObject({ by: 'Nadi', source: { kind: 'import', name: 'tarn.zip' } });
    });
  });

  it('is compared row by row; rows it lacks stay unless they are to go; columns it lacks stay', async () => {
    await withServer(async (page) => {
      const programme = await page.empty();
      await page.takeIn(programme, 'tarn.zip', zipOf(good));
      const fewer = 'siteId,name,people\nS001,Upper Tarn,130\nS004,New Stones,40\n';
      const stay = await page.send(programme, 'sites.csv', bytes(fewer));
      const [one] = stay.body.changes;
      expect(stay.body.changes).toHaveLength(1);
      expect(one).toMatchObject({ table: 'sites', added: 1, edited: 1, removed: 0 });
      expect(one.rows[0]).toEqual({
        kind: 'edited',
        table: 'sites',
        key: 'S001',
        before: { people: '120' },
        after: { people: '130' },
      });
      const go = await page.send(programme, 'sites.csv', bytes(fewer), '&absent=go');
      expect(go.body.changes[0]).toMatchObject({ added: 1, edited: 1, removed: 2 });
      const rain = await page.send(
        programme,
        'east.csv',
        bytes('date,rain_mm\n2001-02-28,7\n2001-03-09,1\n'),
        '&table=rain&gaugeId=G-east',
      );
      expect(rain.body.changes[0].rows.map((row: { after: unknown }) => row.after)).toEqual([
        { readings: `${'_;'.repeat(25)}0;12.5;7` },
        { readings: '3.25;0.2;41;0;_;_;_;_;1' },
      ]);
      expect(await versionOf(page, programme)).toBe(1);
    });
  });

  it('is mended cell by cell before it is taken in, and the change is undone and redone', async () => {
    await withServer(async (page) => {
      const programme = await page.empty();
      const broken = {
        ...changed('sites.csv', 'Lower Tarn,-8.55,125.3,85,', 'Lower Tarn,-8.55,125.3,many,'),
        'roofs.csv': good['roofs.csv']!.replace('S002,hall', 'S02,hall'),
      };
      const review = await page.send(programme, 'tarn.zip', zipOf(broken));
      const told = (body: { problems: { code: string; place: { file?: string; row?: number; column?: string } }[] }) =>
        body.problems.map(({ code, place }) => `${code} ${place.file} ${place.row} ${place.column}`);
      expect(told(review.body)).toEqual([
        'cell.not_a_number sites.csv 3 people',
        'link.unknown_site roofs.csv 4 siteId',
      ]);
      const at = `${programme}/imports/${review.body.importId}`;
      const wrong = await page.ask('PATCH', at, { file: 'sites.csv', row: 99, column: 'people', value: '85' });
      expect([wrong.status, wrong.body.problems[0].code]).toEqual([422, 'positions.table_broken']);
      const outside = await page.ask('PATCH', at, { file: '../device.txt', row: 2, column: 'people', value: '85' });
      expect(outside.status).toBe(422);
      await page.ask('PATCH', at, { file: 'sites.csv', row: 3, column: 'people', value: '85' });
      const mended = await page.ask('PATCH', at, { file: 'roofs.csv', row: 4, column: 'siteId', value: 'S002' });
      expect(told(mended.body)).toEqual([]);
      await page.ask('POST', `${at}/accept`, { by: 'Nadi' });
      const people = async () =>
        (await page.ask('GET', `${programme}/tables/sites`)).body.rows.map(
          (row: { cells: { people?: string } }) => row.cells.people,
        );
      expect(await people()).toEqual(['120', '85', '240']);
      expect((await page.ask('POST', `${programme}/undo`, { by: 'Nadi' })).body).toMatchObject({
        version: 2,
        problems: [],
      });
      expect(await people()).toEqual([]);
      await page.ask('POST', `${programme}/redo`, { by: 'Nadi' });
      expect(await people()).toEqual(['120', '85', '240']);
    });
  });

  it('that was compared with what no longer stands is compared anew', async () => {
    await withServer(async (page) => {
      const programme = await page.empty();
      await page.takeIn(programme, 'tarn.zip', zipOf(good));
      const review = await page.send(programme, 'sites.csv', bytes(good['sites.csv']!.replace(',120,', ',130,')));
      const edit = { kind: 'edited', table: 'sites', key: 'S001', before: { people: '120' }, after: { people: '125' } };
      await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [edit] });
      const at = `${programme}/imports/${review.body.importId}`;
      const refused = await page.ask('POST', `${at}/accept`, { by: 'Nadi' });
      expect([refused.status, refused.body.problems[0].code]).toEqual([409, 'import.changed_since']);
      const anew = await page.ask('GET', at);
      expect(anew.body.changes[0].rows[0]).toMatchObject({ before: { people: '125' }, after: { people: '130' } });
      expect((await page.ask('POST', `${at}/accept`, { by: 'Nadi' })).body).toMatchObject({ version: 3 });
    });
  });

  it('that is cancelled, or breaks off, leaves no trace', async () => {
    await withServer(async (page, folder) => {
      const programme = await page.empty();
      const review = await page.send(programme, 'tarn.zip', zipOf(good));
      expect(await passing(folder)).toHaveLength(1);
      const at = `${programme}/imports/${review.body.importId}`;
      expect((await page.ask('DELETE', at)).status).toBe(204);
      expect((await page.ask('POST', `${at}/accept`, { by: 'Nadi' })).body.problems[0].code).toBe('import.gone');
      await new Promise<void>((broken) => {
        const socket = connect(page.served.port, '127.0.0.1', () => {
          const head = `POST ${programme}/imports?name=tarn.zip HTTP/1.1\r\nHost: 127.0.0.1:${page.served.port}\r\nCookie: ${page.cookie}\r\n`;
          socket.write(`${head}Content-Type: application/zip\r\nContent-Length: 5000\r\n\r\nhalf of it`);
          setTimeout(() => socket.destroy(), 50);
        });
        socket.on('close', () => broken());
      });
      expect(await versionOf(page, programme)).toBe(0);
      await expect.poll(() => passing(folder), { timeout: 20_000 }).toEqual([]);
    });
  });
});

it('names what is wrong with a bad upload, and keeps nothing of it', async () => {
  await withServer(async (page, folder) => {
    const programme = await page.empty();
    await page.takeIn(programme, 'tarn.zip', zipOf(good));
    const zip = zipOf(good);
    const bomb = zipOf({ 'sites.csv': 'a'.repeat(50e6) });
    const cases: readonly (readonly [name: string, content: Uint8Array, status: number, code: string])[] = [
      ['photo.png', bytes('x'), 422, 'import.kind_unknown'],
      ['survey.csv', bytes('a,b\n1,2\n'), 201, 'import.table_unknown'],
      ['../../sites.csv', bytes('a,b\n1,2\n'), 201, 'import.table_unknown'],
      ['half.zip', zip.subarray(0, zip.length / 2), 422, 'import.zip_unreadable'],
      ['text.zip', bytes('no zip at all'), 422, 'import.zip_unreadable'],
      ['empty.zip', bytes(''), 422, 'import.zip_unreadable'],
      ['bomb.zip', bomb, 422, 'import.zip_unreadable'],
      ['photos.zip', zipOf({ 'photo.png': 'x' }), 422, 'import.nothing_known'],
      ['records.zip', zipOf({ ...good, 'records.jsonl': '{"device":"x"}\n' }), 422, 'import.record_unreadable'],
      ['huge.zip', new Uint8Array(100e6 + 2), 413, 'import.too_large'],
    ];
    for (const [name, content, status, code] of cases) {
      const answer = await page.send(programme, name, content);
      expect([name, answer.status, answer.body.problems?.[0]?.code]).toEqual([name, status, code]);
    }
    // Entries that would climb out of the folder, or that nobody knows, are named and left.
    const odd = await page.send(
      programme,
      'odd.zip',
      zipOf({ ...good, '../../evil.csv': 'x', 'rain/../G-east.csv': 'x', 'notes.txt': 'x' }),
    );
    expect(
      odd.body.problems.map(({ code, place }: { code: string; place: { file: string } }) => `${code} ${place.file}`),
    ).toEqual(['file.unknown ../../evil.csv', 'file.unknown rain/../G-east.csv', 'file.unknown notes.txt']);
    // A file that is no table cannot be compared with rows that stand.
    const twice = await page.send(programme, 'sites.csv', bytes('siteId,siteId,name\nS001,S001,Tarn\n'));
    expect(twice.body.mayBeAccepted).toBe(false);
    expect(twice.body.problems.map(({ code }: { code: string }) => code)).toContain('import.not_a_table');
    const refused = await page.ask('POST', `${programme}/imports/${twice.body.importId}/accept`, { by: 'Nadi' });
    expect([refused.status, refused.body.problems[0].code]).toEqual([422, 'import.not_a_table']);
    expect(await versionOf(page, programme)).toBe(1);
    expect(
      (await readdir(folder)).filter(
        (name) => !/^(eavewell|in-use)\.sqlite|^device\.txt$|^(passing|derived|exports)$/.test(name),
      ),
    ).toEqual([]);
  });
});

it('an export brought in again changes nothing; elsewhere it is the same programme with its history', async () => {
  await withServer(async (page) => {
    const made = await page.ask('POST', '/api/programmes', { name: 'Islands', from: 'demo', by: 'Nadi' });
    const programme = `/api/programmes/${made.body.programmeId}`;
    const { body: rows } = await page.ask('GET', `${programme}/tables/sites`);
    const [first] = rows.rows;
    const edit = {
      kind: 'edited',
      table: 'sites',
      key: first.key,
      before: { people: first.cells.people },
      after: { people: '77' },
    };
    expect((await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [edit] })).status).toBe(200);
    const zip = (await page.ask('GET', `${programme}/export.zip`)).body as Uint8Array;
    // What is exported is what the tables are, letter for letter; the rollout of the demo is under way on the day it is made.
    const today = made.headers.get('date')!;
    const { planted: _, ...tables } = demoProgramme({ sites: 60, today: isoDay(dayOnClock(new Date(today))) });
    const files = filesOfProgramme(tables);
    // The pages have the demo without the row that has a cell too many: it could not be kept in rows.
    const served = (text: string) => text.replace(/,leaks at the foot$/m, '');
    const inZip = unzipSync(zip);
    for (const path of ['roofs.csv', 'tanks.csv', 'rain/G1.csv', 'settings.json'])
      expect(new TextDecoder().decode(inZip[path]), path).toBe(served(files.get(path) as string));
    const same = await page.send(programme, 'islands.zip', zip);
    expect(same.body).toMatchObject({ mayBeAccepted: true, changes: [], freshRecords: 0 });
    const copy = await page.empty('Copy');
    const here = await page.send(copy, 'islands.zip', zip);
    expect([here.status, here.body.there.name]).toEqual([201, 'Islands']);
    const unasked = await page.ask('POST', `${copy}/imports/${here.body.importId}/accept`, { by: 'Nadi' });
    expect([unasked.status, unasked.body.problems[0].code]).toEqual([409, 'import.programme_there']);
    await withServer(async (elsewhere) => {
      const there = await elsewhere.empty('Islands');
      const review = await elsewhere.send(there, 'islands.zip', zip);
      expect(review.body).toMatchObject({ mayBeAccepted: true, changes: [], freshRecords: 2 });
      await elsewhere.ask('POST', `${there}/imports/${review.body.importId}/accept`, { by: 'Nadi' });
      const again = (await elsewhere.ask('GET', `${there}/export.zip`)).body as Uint8Array;
      expect(again).toEqual(zip);
      const asked = `${there}/history?table=sites&key=${first.key}&column=people`;
      const { body: history } = await elsewhere.ask('GET', asked);
      expect(
        history.entries.map((entry: { after: string; record: { by: string } }) => [entry.record.by, entry.after]),
      ).toEqual([
        ['Nadi', first.cells.people],
        ['Sela', '77'],
      ]);
      // Changed there, and brought back: the records are merged, and both see the same.
      const back = {
        kind: 'edited',
        table: 'sites',
        key: first.key,
        before: { people: '77' },
        after: { people: '78' },
      };
      await elsewhere.ask('POST', `${there}/changes`, { by: 'Tomo', changes: [back] });
      await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [{ ...back, after: { people: '79' } }] });
      const theirs = (await elsewhere.ask('GET', `${there}/export.zip`)).body as Uint8Array;
      await page.takeIn(programme, 'theirs.zip', theirs);
      const { body: conflicts } = await page.ask('GET', `${programme}/conflicts`);
      expect(conflicts.conflicts).toHaveLength(1);
      expect([conflicts.conflicts[0].stands, conflicts.conflicts[0].over].sort()).toEqual(['78', '79']);
    });
  });
});
