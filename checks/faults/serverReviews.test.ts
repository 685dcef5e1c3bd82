import { describe, expect, it } from 'vitest';
import { changed, good } from './folder.ts';
import { accept, passing, sendForm, told, withServer, zipOf } from './served.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('a review', () => {
  it('shows the rows of which something is said, and takes mends back and makes them again', async () => {
    await withServer(async (page) => {
      const at = await page.empty();
      const broken = changed('sites.csv', 'Lower Tarn,-8.55,125.3,85,', 'Lower Tarn,-8.55,125.3,many,');
      const review = await page.send(at, 'tarn.zip', zipOf(broken));
      const [shown] = review.body.rowsShown;
      expect(shown.file).toBe('sites.csv');
      const people = shown.columns.findIndex((one: { column: string }) => one.column === 'people');
      expect(shown.rows).toMatchObject([{ row: 3 }]);
      expect([shown.rows[0].cells[people], shown.rows[0].cells[1]]).toEqual(['many', 'Lower Tarn']);
      const place = `${at}/imports/${review.body.importId}`;
      const mend = (value: string) => page.ask('PATCH', place, { file: 'sites.csv', row: 3, column: 'people', value });
      await mend('lots');
      expect(told(await mend('85'))).toEqual([]);
      const back = await page.ask('POST', `${place}/undo`);
      expect(back.body.rowsShown[0].rows[0].cells[people]).toBe('lots');
      expect(back.body.mends).toMatchObject([{ value: 'lots' }]);
      expect(back.body.undone).toMatchObject([{ value: '85' }]);
      expect(told(await page.ask('POST', `${place}/redo`))).toEqual([]);
      await page.ask('POST', `${place}/undo`);
      const first = await page.ask('POST', `${place}/undo`);
      expect(first.body.rowsShown[0].rows[0].cells[people]).toBe('many');
      const none = await page.ask('POST', `${place}/undo`);
      expect([none.status, none.body.problems[0].code]).toEqual([409, 'import.nothing_to_undo']);
    });
  });

  it('says what taking it in would break in other tables, and nothing that was broken before', async () => {
    await withServer(async (page) => {
      const at = await page.empty();
      // A roof of a site that is not there: broken before, and not by the import.
      await page.takeIn(at, 'tarn.zip', zipOf(changed('roofs.csv', 'S003,', 'S333,')));
      const fewer = good['sites.csv']!.split('\n')
        .filter((line) => !line.startsWith('S002'))
        .join('\n');
      const stay = await page.send(at, 'sites.csv', bytes(fewer));
      expect(stay.body.elsewhere).toEqual([]);
      const go = await page.send(at, 'sites.csv', bytes(fewer), '&absent=go');
      const codes = new Set(
        go.body.elsewhere.map(({ code, place }: { code: string; place: { file: string } }) => `${code} ${place.file}`),
      );
      expect([...codes].sort()).toEqual(['link.unknown_site roofs.csv', 'link.unknown_site tanks.csv']);
      expect(go.body.elsewhere.every(({ facts }: { facts: { value: string } }) => facts.value === 'S002')).toBe(true);
      expect(go.body.elsewhere[0].what).not.toBe('');
      // A roof of a site that stands and was not sent beside it is no fault.
      const beside = await sendForm(page, at, { 'sites.csv': fewer, 'roofs.csv': good['roofs.csv']! });
      expect(told(beside)).toEqual([]);
    });
  });

  it('goes on while the page is loaded again, tells how far it is, and is called off', async () => {
    await withServer(async (page, folder) => {
      const at = await page.empty();
      const begun = await page.send(at, 'tarn.zip', zipOf(good), '&wait=no');
      expect(begun.body).toMatchObject({ isReading: true, mayBeAccepted: false, sent: ['tarn.zip'] });
      const early = await accept(page, at, begun);
      expect([200, 409]).toContain(early.status);
      const place = `${at}/imports/${begun.body.importId}`;
      if (early.status === 409) {
        const isReading = async () => (await page.ask('GET', place)).body.isReading;
        await expect.poll(isReading, { timeout: 30_000 }).toBe(false);
        expect((await page.ask('GET', `${at}/imports`)).body.imports[0].importId).toBe(begun.body.importId);
        expect((await page.ask('DELETE', place)).status).toBe(204);
      }
      expect(await passing(folder)).toEqual([]);
      expect((await page.ask('GET', '/api/tasks')).body.tasks).toEqual([]);
    });
  });
});
