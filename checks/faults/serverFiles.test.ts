import { request } from 'node:http';
import { describe, expect, it } from 'vitest';
import { changed, good } from './folder.ts';
import { accept, addedOf, passing, sendForm, told, withServer, zipOf } from './served.ts';
import { bookBytes, changedCell, changedSheet, goodSheets } from './workbook.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('files that are sent', () => {
  it('several at once, or those of a folder, are one review and one record', async () => {
    await withServer(async (page, folder) => {
      const at = await page.empty();
      const whole = await sendForm(
        page,
        at,
        Object.fromEntries(Object.entries(good).map(([path, text]) => [`tarn/${path}`, text])),
      );
      expect([whole.status, told(whole)]).toEqual([201, []]);
      expect(addedOf(whole)).toMatchObject({ sites: 3, roofs: 4, tanks: 4, gauges: 2, rain: 4 });
      expect((await accept(page, at, whole)).body).toMatchObject({ version: 1 });
      expect(await passing(folder)).toEqual([]);
      const some = await sendForm(page, at, {
        'sites.csv': good['sites.csv']!.replace(',120,', ',130,'),
        'tanks.csv': good['tanks.csv']!,
        'notes.docx': 'x\0y',
      });
      expect(told(some)).toEqual(['file.unknown notes.docx']);
      expect(some.body.changes).toMatchObject([{ table: 'sites', edited: 1 }]);
      expect(some.body.files.map((one: { from: string }) => one.from)).toEqual(['sites.csv', 'tanks.csv']);
      const twice = await sendForm(page, at, {
        'a/sites.csv': good['sites.csv']!,
        'all.zip': zipOf(changed('sites.csv', ',120,', ',7,')),
      });
      expect([twice.status, told(twice)]).toEqual([422, ['import.table_twice sites.csv']]);
    });
  });

  it('a workbook brings the same as the folder it was made of', async () => {
    await withServer(async (page) => {
      const [a, b] = [await page.empty('a'), await page.empty('b')];
      const book = bookBytes({ sheets: goodSheets() });
      const review = await page.send(a, 'plan.xlsx', book);
      expect([review.status, told(review)]).toEqual([201, []]);
      await accept(page, a, review);
      await page.takeIn(b, 'tarn.zip', zipOf(good));
      for (const table of ['sites', 'roofs', 'tanks', 'gauges', 'rain', 'settings'])
        expect((await page.ask('GET', `${a}/tables/${table}`)).body.rows, table).toEqual(
          (await page.ask('GET', `${b}/tables/${table}`)).body.rows,
        );
      expect((await page.send(a, 'plan.xlsx', book)).body.changes).toEqual([]);
    });
  });

  it('a faulty workbook is mended where it is wrong; a sheet of another name is taken once that is said', async () => {
    await withServer(async (page) => {
      const at = await page.empty();
      const sheets = changedCell('sites', 'E3', 'many');
      const renamed = sheets.map((one) => (one.name === 'roofs' ? { ...one, name: 'Roofs of villages' } : one));
      const review = await page.send(at, 'plan.xlsx', bookBytes({ sheets: renamed }));
      expect(review.body.sheets).toMatchObject([
        { workbook: 'plan.xlsx', sheet: 'Roofs of villages', likely: 'roofs' },
      ]);
      expect(addedOf(review).roofs).toBeUndefined();
      expect(told(review).filter((text: string) => text.includes('people'))).toEqual([
        'cell.not_a_number sites.csv 3 people',
      ]);
      const place = `${at}/imports/${review.body.importId}`;
      const mended = await page.ask('PATCH', place, { file: 'sites.csv', row: 3, column: 'people', value: '85' });
      expect(told(mended).filter((text: string) => text.includes('people'))).toEqual([]);
      const said = await page.ask('PATCH', place, {
        sheets: [{ workbook: 'plan.xlsx', sheet: 'Roofs of villages', table: 'roofs' }],
      });
      expect(told(said)).toEqual(['sheet.matched plan.xlsx/Roofs of villages']);
      expect(addedOf(said)).toMatchObject({ sites: 3, roofs: 4 });
      await accept(page, at, said);
      const { body } = await page.ask('GET', `${at}/tables/sites`);
      expect(body.rows.map(({ cells }: { cells: { people: string } }) => cells.people)).toEqual(['120', '85', '240']);
    });
  });

  it('a workbook with lines above its header and an empty row is told by the rows of its sheets', async () => {
    await withServer(async (page) => {
      const at = await page.empty();
      const sheets = changedSheet('sites', ({ rows }) => {
        rows[2]![4] = 'many';
        // Two title lines above the header; an empty row before the last; and the first site once more at the end.
        rows.splice(3, 0, []);
        rows.push([...rows[1]!]);
        rows.at(-1)![1] = 'Tarn again';
        rows.unshift(['Survey of the north'], []);
      });
      const review = await page.send(at, 'plan.xlsx', bookBytes({ sheets }));
      const { problems, inSheets, files } = review.body;
      const many = problems.find(({ code }: { code: string }) => code === 'cell.not_a_number');
      // Title, empty line, header, first site: the second site stands in row 5 of the sheet.
      expect(inSheets.find(({ row }: { row: number }) => row === many.place.row)).toEqual({
        ...{ file: 'sites.csv', row: many.place.row, inSheet: 5 },
      });
      const twice = problems.find(({ code }: { code: string }) => code === 'row.key_twice');
      expect(inSheets.find(({ row }: { row: number }) => row === twice.place.row).inSheet).toBe(8);
      expect(twice.what).toMatch(/already stands in row 4,/);
      expect(files.find(({ file }: { file: string }) => file === 'sites.csv')).toMatchObject({
        ...{ from: 'plan.xlsx', sheet: 'sites' },
      });
      // It is mended where it is told.
      const cell = { file: 'sites.csv', row: many.place.row, column: 'people', value: '85' };
      const mended = await page.ask('PATCH', `${at}/imports/${review.body.importId}`, cell);
      expect(told(mended).filter((text: string) => text.includes('not_a_number'))).toEqual([]);
    });
  });

  it('whose headers are not ours are proposed, and read only once that is said', async () => {
    await withServer(async (page) => {
      const at = await page.empty();
      await page.takeIn(at, 'tarn.zip', zipOf(good));
      const other = good['sites.csv']!.replace('people', 'Number of people').replace(',120,', ',121,');
      const renamed = changedSheet('sites', ({ rows }) => {
        rows[0]![4] = 'Number of people';
        rows[1]![4] = 121;
      });
      for (const [name, content, workbook] of [
        ['sites.csv', bytes(other), null],
        ['plan.xlsx', bookBytes({ sheets: renamed }), 'plan.xlsx'],
      ] as const) {
        const review = await page.send(at, name, content);
        const header = review.body.headers.find((one: { header: string }) => one.header === 'Number of people');
        expect(header).toMatchObject({ workbook, header: 'Number of people', column: 'people', open: null });
        const sites = review.body.changes.find((one: { table: string }) => one.table === 'sites');
        // Not guessed: it stands as a column of its own until somebody says so.
        expect(JSON.stringify(sites.rows)).not.toContain('"people":"121"');
        const { file, column } = header;
        const said = await page.ask('PATCH', `${at}/imports/${review.body.importId}`, {
          columns: [{ workbook, file, header: 'Number of people', column }],
        });
        expect(said.body.changes.find((one: { table: string }) => one.table === 'sites').rows).toEqual([
          { kind: 'edited', table: 'sites', key: 'S001', before: { people: '120' }, after: { people: '121' } },
        ]);
        const wrong = await page.ask('PATCH', `${at}/imports/${review.body.importId}`, {
          columns: [{ workbook, file, header: 'Number of people', column: 'nothing' }],
        });
        expect(wrong.status).toBe(422);
        expect((await page.ask('GET', `${at}/imports/${review.body.importId}`)).body.changes).toEqual(
          said.body.changes,
        );
      }
    });
  });

  it('whose name does not say which table it is waits until somebody says so', async () => {
    await withServer(async (page) => {
      const at = await page.empty();
      await page.takeIn(at, 'tarn.zip', zipOf(good));
      const sent = await sendForm(page, at, {
        'Survey 2026.csv': good['roofs.csv']!,
        'G-east.csv': 'date,rain_mm\n2001-06-01,3\n',
      });
      expect(sent.body).toMatchObject({
        mayBeAccepted: false,
        unplaced: [
          { name: 'Survey 2026.csv', table: 'roofs', gaugeId: null },
          { name: 'G-east.csv', table: 'rain', gaugeId: 'G-east' },
        ],
      });
      const place = `${at}/imports/${sent.body.importId}`;
      await page.ask('PATCH', place, { place: { name: 'Survey 2026.csv', table: 'roofs' } });
      const placed = await page.ask('PATCH', place, {
        place: { name: 'G-east.csv', table: 'rain', gaugeId: 'G-east' },
      });
      expect(placed.body).toMatchObject({ mayBeAccepted: true, unplaced: [], changes: [{ table: 'rain', added: 1 }] });
    });
  });

  it('of a wrong kind are named for what they are, and nothing of them stays', async () => {
    await withServer(async (page, folder) => {
      const at = await page.empty();
      const cases: readonly (readonly [name: string, content: Uint8Array, code: string, said: RegExp])[] = [
        [
          'roof.jpg',
          new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 16]),
          'import.kind_unknown',
          /roof.jpg is a photograph/,
        ],
        ['sites.csv', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10]), 'import.kind_unknown', /is a photograph/],
        ['plan.pdf', bytes('%PDF-1.7\n'), 'import.kind_unknown', /is a PDF/],
        ['all.rar', bytes('Rar!\x1a'), 'import.kind_unknown', /packed in a way that is not read/],
        ['tarn.kml', bytes('<?xml version="1.0"?><kml><Document/></kml>'), 'import.kind_unknown', /is a map file/],
        ['page.csv', bytes('<!DOCTYPE html><html></html>'), 'import.kind_unknown', /is a web page/],
        ['old.xls', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 1, 2, 3]), 'workbook.other_format', /\.xls/],
        ['plan.xlsx', bytes('no workbook'), 'workbook.not_a_workbook', /plan.xlsx/],
      ];
      for (const [name, content, code, said] of cases) {
        const answer = await page.send(at, name, content);
        expect([name, answer.status, answer.body.problems[0].code]).toEqual([name, 422, code]);
        expect(`${answer.body.title} ${answer.body.detail}`).toMatch(said);
      }
      // A zip with a password on it: the mark stands in the flags of each entry.
      const locked = zipOf({ 'sites.csv': 'siteId,name\n' });
      for (let i = 0; i + 4 < locked.length; i++) {
        const mark = Buffer.from(locked).readUInt32LE(i);
        if (mark === 0x04034b50) locked[i + 6]! |= 1;
        if (mark === 0x02014b50) locked[i + 8]! |= 1;
      }
      const answer = await page.send(at, 'locked.zip', locked);
      expect(answer.body.title).toMatch(/locked with a password/);
      expect(await passing(folder)).toEqual([]);
    });
  });

  it('that break off leave no trace, one file or many', async () => {
    await withServer(async (page, folder) => {
      const at = await page.empty();
      const half =
        '--edge\r\nContent-Disposition: form-data; name="files"; filename="sites.csv"\r\n\r\nsiteId,name\nS0';
      for (const [type, body] of [
        ['multipart/form-data; boundary=edge', half],
        ['text/csv', 'siteId,name\nS0'],
      ] as const) {
        await new Promise<void>((ended) => {
          const headers = { cookie: page.cookie, 'content-type': type, 'content-length': 100_000 };
          const sending = request(`${page.origin}${at}/imports?name=sites.csv`, { method: 'POST', headers });
          sending.on('error', () => ended());
          sending.write(body);
          setTimeout(() => sending.destroy(), 100);
        });
        await expect.poll(() => passing(folder), { timeout: 20_000 }).toEqual([]);
      }
      expect((await page.ask('GET', `${at}/imports`)).body.imports).toEqual([]);
    });
  });

  it('become a programme of their own, also from an export', async () => {
    await withServer(async (page) => {
      const review = await sendForm(page, '/api', good);
      expect(review.body).toMatchObject({ programmeId: null, mayBeAccepted: true });
      expect((await page.ask('GET', '/api/programmes')).body.programmes).toEqual([]);
      expect((await page.ask('GET', '/api/imports')).body.imports).toHaveLength(1);
      const made = await accept(page, '/api', review, { name: 'Tarn' });
      expect(made.status).toBe(200);
      const list = (await page.ask('GET', '/api/programmes')).body.programmes;
      expect(list).toMatchObject([{ programmeId: made.body.programmeId, name: 'Tarn' }]);
      const at = `/api/programmes/${made.body.programmeId}`;
      expect((await page.ask('GET', `${at}/tables/sites`)).body.rows).toHaveLength(3);
      const zip = (await page.ask('GET', `${at}/export.zip`)).body as Uint8Array;
      const there = await page.ask('POST', '/api/imports?name=tarn.zip', zip);
      expect([there.status, there.body.there]).toEqual([201, { programmeId: made.body.programmeId, name: 'Tarn' }]);
      // Unasked nothing is made of it.
      const unasked = await accept(page, '/api', there);
      expect([unasked.status, told(unasked)]).toEqual([409, ['import.programme_there tarn.zip']]);
      expect((await page.ask('GET', '/api/programmes')).body.programmes).toHaveLength(1);
    });
  });
});
