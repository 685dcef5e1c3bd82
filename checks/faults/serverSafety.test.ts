import { schemas } from '@eavewell/server';
import { expect, it } from 'vitest';
import { type Page, withServer } from './served.ts';

async function designed(page: Page, programme: string) {
  for (;;) {
    const { body } = await page.ask('GET', programme);
    expect(body.isFailed).toBe(false);
    if (body.done_fraction === 1) return;
    await new Promise((later) => setTimeout(later, 20));
  }
}

it('the cups of a programme are counted by site: a second row of one id is none, and a site in doubt is one', async () => {
  await withServer(async (page) => {
    const made = await page.ask('POST', '/api/programmes', { name: 'Islands', from: 'demo', by: 'Nadi' });
    const programme = `/api/programmes/${made.body.programmeId}`;
    await designed(page, programme);
    const { body } = await page.ask('GET', `${programme}/safety`);
    expect(schemas.programmeSafety.safeParse(body).success).toBe(true);
    const ids = body.sites.map(({ siteId }: { siteId: string }) => siteId);
    expect([ids.length, new Set(ids).size]).toEqual([60, 60]);
    const { body: list } = await page.ask('GET', `${programme}/overview`);
    // The list of rows tells of the second row of S020.
    expect(list.count).toBe(61);
    const cupOf = (of: string) => body.sites.find(({ siteId }: { siteId: string }) => siteId === of).cup;
    expect(cupOf('S014')).toMatchObject({
      ...{ verdict: 'unknown', mayDrink: 'notShown', because: 'withheld' },
      withheldBy: [{ file: 'presence.csv', row: 9 }],
    });
    const portion = { siteId: 'S014', testId: 'W2', kind: 'plates', volume_mL: '100' };
    const { body: rows } = await page.ask('GET', `${programme}/tables/testPortions`);
    expect(rows, JSON.stringify(portion)).toBeDefined();
  });
});
