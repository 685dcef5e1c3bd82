import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axeFindings } from './axeFindings.ts';
import { designedDemo } from './demo.ts';
import { settled, toFit } from './everyPage.ts';
import { journey } from './journey.ts';

/** Opens the section from the head, as a person does. */
async function openKit(page: Page): Promise<{ readonly programmeId: string; readonly sites: readonly string[] }> {
  const { programmeId } = await designedDemo(page);
  const sites = await toFit(programmeId, page);
  await page.goto(new URL(`/p/${programmeId}/sites`, page.url()).href);
  await page.getByRole('navigation').getByRole('link', { name: 'Kit', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: /sites to fit/ }).waitFor();
  return { programmeId, sites };
}

journey(
  'sites are chosen for a trip: the address keeps it, the boat is drawn with its caution',
  async ({ atDoor: page }) => {
    const { sites } = await openKit(page);
    const boxes = page.getByRole('checkbox', { name: /take it on the trip/ });
    await expect.poll(() => boxes.count()).toBe(sites.length);
    await boxes.first().check();
    await page.getByRole('heading', { level: 1, name: 'A trip to 1 site.' }).waitFor();
    await boxes.nth(1).focus();
    await page.keyboard.press('Space');
    await page.getByRole('heading', { level: 1, name: 'A trip to 2 sites.' }).waitFor();
    expect(new URL(page.url()).searchParams.get('sites')).toMatch(/^S\d{3},S\d{3}$/);
    await page
      .getByRole('img', { name: /from the side/ })
      .first()
      .waitFor();
    await page.getByText('A life vest for everyone aboard, worn, not stowed.').first().waitFor();
    await page.getByRole('heading', { name: 'Load in this order: the last stop first' }).waitFor();
    await page.getByLabel('All is needed on').fill('2027-06-01');
    await page
      .getByText(/^To be ordered by/)
      .first()
      .waitFor();
    await settled(page);
    expect(await axeFindings(page, 'all')).toEqual([]);
  },
);

journey('a rule is changed in its form and the line of a site changes; a pack is a PDF', async ({ atDoor: page }) => {
  const { programmeId, sites } = await openKit(page);
  await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
  const siteId = sites[0]!;
  const address = `/p/${programmeId}/sites/${siteId}/kit`;
  await page.goto(new URL(address, page.url()).href);
  const line = page.getByRole('row', { name: /^calcium hypochlorite/ });
  await line.waitFor();
  const before = Number(await line.getByRole('button').textContent());
  expect(before).toBeGreaterThan(0);
  await line.getByRole('button').click();
  await page.getByRole('region', { name: 'How it was reached' }).waitFor();
  await page
    .getByRole('img', { name: /Bars of/ })
    .first()
    .waitFor();
  await settled(page);
  expect(await axeFindings(page, 'all')).toEqual([]);
  // The rule that asks for it, in the form of its table.
  await page.getByRole('link', { name: 'Rules of the kit' }).click();
  await page.getByRole('button', { name: 'Change K27' }).click();
  const field = page.getByRole('textbox', { name: /Parts for each|How many|each/i }).first();
  const each = Number(await field.inputValue());
  await field.fill(String(each + 3));
  await page.getByRole('button', { name: 'Save' }).click();
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  await page.goto(new URL(address, page.url()).href);
  await expect
    .poll(async () => Number(await line.getByRole('button').textContent()), { timeout: 30_000 })
    .toBe((before / each) * (each + 3));
  const pack = page.getByRole('link', { name: 'Site pack (PDF)' });
  const href = await pack.getAttribute('href');
  const ask = () => page.request.get(new URL(href!, page.url()).href);
  // Of a site that was changed the pack is made once it is judged again.
  await expect.poll(async () => (await ask()).status(), { timeout: 60_000 }).toBe(200);
  const answer = await ask();
  expect(answer.headers()['content-type']).toBe('application/pdf');
  expect((await answer.body()).subarray(0, 5).toString()).toBe('%PDF-');
});
