import { describe, expect, it } from 'vitest';
import { good } from './folder.ts';
import { accept, passing, sendForm, told, withServer, zipOf } from './served.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('files', () => {
  it('of a programme that is here become a second one beside it, which is never taken for the first', async () => {
    await withServer(async (page) => {
      const at = await page.empty('Tarn');
      await page.takeIn(at, 'tarn.zip', zipOf(good));
      const edit = (before: string, after: string) => ({
        by: 'Sela',
        changes: [
          { kind: 'edited', table: 'sites', key: 'S001', before: { people: before }, after: { people: after } },
        ],
      });
      await page.ask('POST', `${at}/changes`, edit('120', '130'));
      const zipIn = async (programme: string) => (await page.ask('GET', `${programme}/export.zip`)).body as Uint8Array;
      const zip = await zipIn(at);
      const review = await page.ask('POST', '/api/imports?name=tarn.zip', zip);
      expect(review.body).toMatchObject({ mayBeAccepted: true, changes: [], there: { name: 'Tarn' } });
      const made = await accept(page, '/api', review, { name: 'Tarn, as it may be', beside: true });
      expect([made.status, made.body.programmeId === at.split('/').at(-1)]).toEqual([200, false]);
      const second = `/api/programmes/${made.body.programmeId}`;
      const rows = async (programme: string, table: string) =>
        (await page.ask('GET', `${programme}/tables/${table}`)).body.rows;
      for (const table of ['sites', 'roofs', 'tanks', 'gauges', 'rain', 'settings'])
        expect(await rows(second, table), table).toEqual(await rows(at, table));
      // Its history is whole, under names of its own; a step back of the first is none of the second.
      const heads = async (programme: string) =>
        (await page.ask('GET', `${programme}/changes`)).body.records.map(
          (one: { by: string; at: string; changeCount: number }) => [one.by, one.at, one.changeCount],
        );
      expect(await heads(second)).toEqual(await heads(at));
      const devices = async (programme: string) =>
        (await page.ask('GET', `${programme}/changes`)).body.records.map((one: { device: string }) => one.device);
      const firsts = await devices(at);
      expect((await devices(second)).filter((device: string) => firsts.includes(device))).toEqual([]);
      expect((await page.ask('GET', second)).body).toMatchObject({ undo: null, name: 'Tarn, as it may be' });
      // What is changed in each stays there, also where their exports meet again.
      await page.ask('POST', `${second}/changes`, edit('130', '55'));
      await page.ask('POST', `${at}/changes`, edit('130', '66'));
      const inFirst = await page.send(at, 'second.zip', await zipIn(second));
      expect([told(inFirst), inFirst.body.there]).toEqual([['import.records_of_another second.zip'], null]);
      const own = await page.send(second, 'second.zip', await zipIn(second));
      expect(own.body).toMatchObject({ changes: [], freshRecords: 0, there: null, problems: [] });
      const first = await page.send(at, 'first.zip', await zipIn(at));
      expect(first.body).toMatchObject({ changes: [], freshRecords: 0, there: null, problems: [] });
      const anew = await page.ask('POST', '/api/imports?name=second.zip', await zipIn(second));
      expect(anew.body.there).toEqual({ programmeId: made.body.programmeId, name: 'Tarn, as it may be' });
    });
  });

  it('of one export, sent twice before either is taken in, do not become two programmes unasked', async () => {
    let zip = new Uint8Array();
    await withServer(async (page) => {
      const at = await page.empty('Tarn');
      await page.takeIn(at, 'tarn.zip', zipOf(good));
      zip = (await page.ask('GET', `${at}/export.zip`)).body;
    });
    await withServer(async (page) => {
      const [a, b] = [
        await page.ask('POST', '/api/imports?name=tarn.zip', zip),
        await page.ask('POST', '/api/imports?name=tarn.zip', zip),
      ];
      expect([a.body.there, b.body.there]).toEqual([null, null]);
      expect((await accept(page, '/api', a, { name: 'Tarn' })).status).toBe(200);
      const second = await accept(page, '/api', b, { name: 'Tarn' });
      expect([second.status, told(second)]).toEqual([409, ['import.programme_there tarn.zip']]);
    });
  });

  it('sent a second time leave what was mended here since, unless that is wanted', async () => {
    await withServer(async (page) => {
      const at = await page.empty();
      await page.takeIn(at, 'sites.csv', bytes(good['sites.csv']!));
      const [first] = (await page.ask('GET', `${at}/tables/sites`)).body.rows;
      const edit = { kind: 'edited', table: 'sites', key: first.key };
      const mended = { ...edit, before: { people: first.cells.people }, after: { people: '99' } };
      expect((await page.ask('POST', `${at}/changes`, { by: 'Sela', changes: [mended] })).status).toBe(200);
      const newer = good['sites.csv']!.replace(',85,', ',86,');
      const review = await page.send(at, 'sites.csv', bytes(newer));
      expect(review.body.stepsBack).toMatchObject([
        {
          ...{ table: 'sites', key: first.key, column: 'people', stands: '99', older: first.cells.people },
          ...{ by: 'Sela', isTaken: false },
        },
      ]);
      expect(review.body.changes).toMatchObject([{ table: 'sites', edited: 1, rows: [{ after: { people: '86' } }] }]);
      // It is the file's that is wanted after all; and then not.
      const place = `${at}/imports/${review.body.importId}`;
      const wanted = await page.ask('PATCH', place, { stepsBack: 'all' });
      expect(wanted.body.changes).toMatchObject([{ table: 'sites', edited: 2 }]);
      expect(wanted.body.stepsBack).toMatchObject([{ isTaken: true }]);
      const one = [{ table: 'sites', key: first.key, column: 'people' }];
      expect((await page.ask('PATCH', place, { stepsBack: one })).body.changes).toMatchObject([{ edited: 2 }]);
      expect((await page.ask('PATCH', place, { stepsBack: [] })).body.changes).toMatchObject([{ edited: 1 }]);
      expect((await accept(page, at, review)).status).toBe(200);
      const people = (await page.ask('GET', `${at}/tables/sites`)).body.rows.map(
        ({ cells }: { cells: { people: string } }) => cells.people,
      );
      expect(people).toEqual(['99', '86', '240']);
    });
  });

  it('without anything in them are called empty, not asked about', async () => {
    await withServer(async (page, folder) => {
      const at = await page.empty();
      await page.takeIn(at, 'tarn.zip', zipOf(good));
      const before = (await page.ask('GET', `${at}/tables/sites`)).body.rows;
      const alone: readonly (readonly [name: string, text: string, said: RegExp])[] = [
        ['sites.csv', '', /sites\.csv is empty/],
        ['sites.csv', '\uFEFF\r\n , ,\r\n', /sites\.csv is empty/],
        ['survey.csv', '', /survey\.csv is empty/],
        ['rain/G-east.csv', '\n', /G-east\.csv is empty/],
        ['settings.json', '', /settings\.json is empty/],
        ['survey.csv', 'siteId,roofId,length_m\n\n', /survey\.csv is empty: .*first line/],
      ];
      for (const [name, text, said] of alone) {
        const answer = await page.send(at, name, bytes(text));
        expect([name, answer.status, told(answer)]).toEqual([name, 422, [`import.empty ${name}`]]);
        expect(answer.body.title).toMatch(said);
      }
      // Among others it is left out, and told.
      const some = await sendForm(page, at, { 'survey.csv': '', 'tanks.csv': good['tanks.csv']! });
      expect([some.body.mayBeAccepted, told(some)]).toEqual([true, ['import.empty survey.csv']]);
      expect(some.body.files.map((one: { file: string }) => one.file)).toEqual(['tanks.csv']);
      // A line of readings under no header is more than a header: it is asked about.
      const readings = await page.send(at, 'G9.csv', bytes('2001-06-01,3\n2001-06-02,4\n'));
      expect(told(readings)).toEqual(['import.table_unknown G9.csv']);
      await page.ask('DELETE', `${at}/imports/${some.body.importId}`);
      await page.ask('DELETE', `${at}/imports/${readings.body.importId}`);
      expect((await page.ask('GET', `${at}/tables/sites`)).body.rows).toEqual(before);
      expect(await passing(folder)).toEqual([]);
    });
  });
});
