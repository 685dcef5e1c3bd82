import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';
import { paperPages } from './pdfText.ts';

/** A site of the list as the program answers it. */
interface Listed {
  readonly siteId: string;
  readonly name: string;
  readonly verdict: string | null;
  readonly standGate: string | null;
  readonly stations: Readonly<Record<string, string>> | null;
}

/** The list of sites, and the address of one of them. */
async function listed(
  page: Page,
): Promise<{ readonly sites: readonly Listed[]; readonly at: (siteId: string) => string }> {
  const { programmeId } = await designedDemo(page);
  const answer = await page.request.get(new URL(`/api/programmes/${programmeId}/overview`, page.url()).href);
  const { sites } = (await answer.json()) as { sites: readonly Listed[] };
  return { sites, at: (siteId) => new URL(`/p/${programmeId}/sites/${siteId}`, page.url()).href };
}

const gutterIsWorst = ({ verdict, stations }: Listed) => verdict === 'short' && stations?.['gutter'] === 'short';

journey('by keyboard from the list to how a short gutter was judged', async ({ atDoor: page }) => {
  const { sites, at } = await listed(page);
  const site = sites.find(gutterIsWorst)!;
  await page.goto(`${new URL(at('')).href.replace(/\/$/, '')}?station=gutter`);
  const row = page.getByRole('row', { name: site.name }).first();
  await row.focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: site.name }).waitFor();
  const figure = page
    .getByRole('button', { name: /^How (?:gutter|the outlet|outlet|downpipe|overflow).* in the storm was reached$/ })
    .first();
  await figure.focus();
  await page.keyboard.press('Enter');
  const working = page.getByRole('region', { name: 'How it was reached' });
  await working.locator('.asked').first().waitFor();
  expect(await figure.getAttribute('aria-expanded')).toBe('true');
  // The line that is asked for is of this very gutter, and one line alone.
  expect(await working.locator('.asked').count()).toBe(1);
  const named = /(?:of |gutter |downpipe )?([A-Z]\d+):/.exec((await figure.textContent()) ?? '')![1]!;
  expect(await working.locator('.asked').textContent()).toContain(named);
  expect(await page.getByText('How hard it rains is told by:').textContent()).toMatch(/told by: \S+/);
});

journey(
  'a stand nobody signed for is told apart from the verdict, and the list shows those alone',
  async ({ page }) => {
    const { sites, at } = await listed(page);
    const closed = sites.filter(({ standGate }) => standGate === 'closed');
    expect(closed.length).toBeGreaterThan(0);
    await page.getByRole('link', { name: `${closed.length} not signed` }).click();
    await page.waitForURL(/gate=closed/);
    await page.getByText(new RegExp(`^${closed.length} sites? shown$`)).waitFor();
    const one = closed.find(({ verdict }) => verdict !== 'unknown') ?? closed[0]!;
    await page.goto(at(one.siteId));
    const band = page.getByRole('region', { name: 'May the tanks be filled?' });
    await band.waitFor();
    expect(await band.textContent()).toMatch(/^Not signed: do not fill or hand over\./);
    expect(await band.textContent()).toContain('nobody has signed');
    // It stands outside the verdict, which is what it is without it.
    const verdict = page.locator('.verdict').first();
    expect(await verdict.locator('.gate-band').count()).toBe(0);
    expect(await verdict.textContent()).toMatch(new RegExp(`^${one.verdict}`));
    expect(await verdict.textContent()).not.toContain('signed');
    const open = sites.find(({ standGate }) => standGate === 'open')!;
    await page.goto(at(open.siteId));
    await band.waitFor();
    expect(await band.textContent()).toMatch(/^The stand is signed for\. T\d+: \S+ \S+, \d/);
  },
);

journey('the caution of stands stands beside what was found of them', async ({ atDoor: page }) => {
  const { sites, at } = await listed(page);
  const site = sites.find(({ stations }) => stations?.['stand'] !== undefined && stations['stand'] !== 'notJudged')!;
  await page.goto(at(site.siteId));
  await page.locator('table.stations').waitFor();
  await page.locator('.drawn-frame svg').first().waitFor();
  expect(await page.locator('table.stations').textContent()).toContain('no structural design');
});

journey('a wider gutter is tried, answered and let go', async ({ atDoor: page }) => {
  const { sites, at } = await listed(page);
  const site = sites.find(gutterIsWorst)!;
  await page.goto(at(site.siteId));
  await page.locator('.drawn-frame svg').first().waitFor();
  await page.getByText('Gutters, pipes and stand').click();
  const fields = page.getByRole('textbox', { name: /^Gutter \S+: width/ });
  await fields.first().waitFor();
  for (let i = 0; i < (await fields.count()); i++) {
    await fields.nth(i).fill('400');
    await fields.nth(i).press('Enter');
  }
  const bar = page.getByRole('region', { name: 'Changed, not kept' });
  await bar.waitFor();
  await expect.poll(() => bar.getByRole('listitem').count()).toBe(await fields.count());
  await expect
    .poll(() => page.locator('table.stations').textContent())
    .not.toMatch(/gutter \S+: .* in the storm.*1\d\d % used/);
  await bar.getByRole('button', { name: 'Let go' }).click();
  await bar.waitFor({ state: 'detached' });
});

journey(
  'an installation sheet is printed on two pages of A4, with its gate, steps and boxes',
  async ({ atDoor: page }) => {
    const { sites, at } = await listed(page);
    const chosen = [
      sites.find(({ standGate }) => standGate === 'closed')!,
      sites.find(({ standGate }) => standGate === 'open')!,
      sites.find(gutterIsWorst)!,
    ];
    for (const { siteId, name, standGate } of chosen) {
      await page.goto(`${at(siteId)}`);
      await page.getByRole('link', { name: 'Installation sheet' }).click();
      await page.getByRole('heading', { level: 1, name: `Installation sheet: ${name}` }).waitFor();
      await page.locator('.installation .drawn-frame svg').waitFor();
      const pages = paperPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
      expect(pages.length, siteId).toBeLessThanOrEqual(2);
      const text = pages
        .map((one) => one.text)
        .join(' ')
        .replaceAll(/\s/g, '');
      const has = (one: string) => text.includes(one.replaceAll(/\s/g, ''));
      const wanted = ['To be fitted', 'Heights to set out', 'In this order', 'Not known:', 'Lid of the tank?', 'mm/m'];
      expect(
        wanted.filter((one) => !has(one)),
        siteId,
      ).toEqual([]);
      expect(has('Not signed: do not fill or hand over.'), siteId).toBe(standGate === 'closed');
      if (standGate !== 'notNeeded') expect(has('licence') && has('signature'), siteId).toBe(true);
      expect(['Skip to the page', 'Station by station'].filter(has)).toEqual([]);
    }
  },
);
