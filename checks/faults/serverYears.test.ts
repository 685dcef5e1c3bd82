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

/** The same question with the name of what is known already. */
const askedAgain = (page: Page, path: string, etag: string) =>
  fetch(`${page.origin}${path}`, { headers: { cookie: page.cookie, 'if-none-match': etag } });

it('the years of a programme are answered from its design, sent once for each state, and also before there is one', async () => {
  await withServer(async (page) => {
    const empty = await page.empty();
    const none = await page.ask('GET', `${empty}/years`);
    expect([none.status, none.body.sites]).toEqual([200, []]);
    const made = await page.ask('POST', '/api/programmes', { name: 'Islands', from: 'demo', by: 'Nadi' });
    const programme = `/api/programmes/${made.body.programmeId}`;
    const early = await page.ask('GET', `${programme}/years`);
    expect(schemas.years.safeParse(early.body).success).toBe(true);
    await designed(page, programme);
    const { body, headers } = await page.ask('GET', `${programme}/years`);
    expect(schemas.years.safeParse(body).success).toBe(true);
    const { body: list } = await page.ask('GET', `${programme}/overview`);
    expect(body.sites.length).toBe(list.count);
    const etag = headers.get('etag')!;
    expect((await askedAgain(page, `${programme}/years`, etag)).status).toBe(304);
    // A site in its list and in its years: the same people, the same verdict, as many judged years, as many good ones.
    for (const site of body.sites) {
      const listed = list.sites.find(({ key }: { key: string }) => key === site.key);
      expect([site.people, site.verdict]).toEqual([listed.people, listed.verdict]);
      expect(site.years === null).toBe(listed.figures === null);
      if (listed.figures?.storages_count !== 1) continue;
      const judged = site.years.longestRun_days.filter((days: number | null) => days !== null);
      expect(judged.length).toBe(listed.figures.judgedYears);
      expect(judged.filter((days: number) => days <= site.years.limit_days).length).toBe(listed.figures.goodYears);
    }
    const [{ siteId, name }] = body.sites;
    const edit = { kind: 'edited', table: 'sites', key: siteId, before: { name }, after: { name: 'Other' } };
    const changed = await page.ask('POST', `${programme}/changes`, { by: 'Sela', changes: [edit] });
    expect(changed.status).toBe(200);
    expect((await askedAgain(page, `${programme}/years`, etag)).status).toBe(200);
  });
});
