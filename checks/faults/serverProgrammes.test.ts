import { expect, it } from 'vitest';
import { good } from './folder.ts';
import { type Page, withServer, zipOf } from './served.ts';

const listOf = async (page: Page) => (await page.ask('GET', '/api/programmes')).body.programmes;
const idOf = (at: string) => at.split('/').at(-1)!;

it('several programmes stand side by side, are named, set aside and brought back, each with its own undo', async () => {
  let folderOfData = '';
  let [a, b] = ['', ''];
  await withServer(
    async (page, folder) => {
      folderOfData = folder;
      [a, b] = [await page.empty('Tarn'), await page.empty('Ford')];
      await page.takeIn(a, 'tarn.zip', zipOf(good));
      await page.takeIn(b, 'sites.csv', new TextEncoder().encode('siteId,name,people\nS001,Ford,7\nS002,Weir,\n'));
      const list = await listOf(page);
      const ofTarn = list.find((one: { name: string }) => one.name === 'Tarn');
      expect(ofTarn).toMatchObject({
        isSetAside: false,
        version: 1,
        sites: 3,
        people: 445,
        lastChange: { by: 'Nadi' },
      });
      expect(ofTarn.size_bytes).toBeGreaterThan(500);
      expect(list.find((one: { name: string }) => one.name === 'Ford')).toMatchObject({
        ...{ sites: 2, people: 7, withoutPeople_count: 1 },
      });
      // One's undo leaves the other alone.
      await page.ask('POST', `${a}/undo`, { by: 'Nadi' });
      expect((await page.ask('GET', `${b}/tables/sites`)).body.rows).toHaveLength(2);
      expect((await page.ask('GET', `${a}/tables/sites`)).body.rows).toHaveLength(0);
      await page.ask('POST', `${a}/redo`, { by: 'Nadi' });
      const named = await page.ask('PATCH', a, { by: 'Sela', name: 'Upper Tarn' });
      expect(named.body).toMatchObject({ programmeId: idOf(a), name: 'Upper Tarn', isSetAside: false });
      expect((await page.ask('GET', a)).body.name).toBe('Upper Tarn');
      const aside = await page.ask('PATCH', a, { by: 'Sela', isSetAside: true });
      expect(aside.body).toMatchObject({ name: 'Upper Tarn', isSetAside: true, version: 3 });
      const none = await page.ask('PATCH', '/api/programmes/p-none', { by: 'Sela', name: 'x' });
      expect([none.status, none.body.problems[0].code]).toEqual([404, 'database.programme_unknown']);
      expect((await page.ask('PATCH', a, { by: 'Sela', name: ' ' })).status).toBe(400);
    },
    { keep: true },
  );
  await withServer(
    async (page) => {
      const [one] = (await listOf(page)).filter(({ programmeId }: { programmeId: string }) => programmeId === idOf(a));
      expect(one).toMatchObject({ name: 'Upper Tarn', isSetAside: true, version: 3, sites: null, people: null });
      await page.ask('PATCH', a, { by: 'Nadi', isSetAside: false });
      expect(
        (await listOf(page)).find(({ programmeId }: { programmeId: string }) => programmeId === idOf(a)),
      ).toMatchObject({
        ...{ name: 'Upper Tarn', isSetAside: false, sites: 3, people: 445 },
      });
      expect((await page.ask('GET', `${a}/tables/sites`)).body.rows).toHaveLength(3);
    },
    { folder: folderOfData },
  );
});
