import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axeFindings } from './axeFindings.ts';
import { laidOut, settled } from './everyPage.ts';
import { journey } from './journey.ts';
import { paperPages } from './pdfText.ts';
import { withSafetySites } from './safetySites.ts';

const rows = (page: Page) => page.locator('.cups > li');

/** Opens the section from the head, as a person does. */
async function openSafety(page: Page): Promise<string> {
  const { programmeId } = await withSafetySites(page);
  await page.goto(new URL(`/p/${programmeId}/sites`, page.url()).href);
  await page.getByRole('navigation').getByRole('link', { name: 'Safety', exact: true }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await rows(page).first().waitFor();
  return programmeId;
}

journey('the worst stands first; its page tells why, a figure opens, and its page prints', async ({ atDoor: page }) => {
  const programmeId = await openSafety(page);
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(/^Do not drink at \d+ sites? of \d+\./);
  await page.getByText(/^This is a planning aid/).waitFor();
  // Those where germs were found stand before all others, and the site of this test is one of them.
  const first = await rows(page).first().textContent();
  expect(first).toMatch(/Do not drink\.\s*The last sample that counts held E\.\s*coli/);
  await page.getByRole('link', { name: /do not drink$/ }).click();
  await page.getByRole('link', { name: 'Osk landing' }).click();
  await page.waitForURL(/\/sites\/S991\/safety$/);
  await page
    .locator('.site-safety')
    .getByText(/^Do not drink\.$/)
    .waitFor();
  await page.getByText(/^This is a planning aid/).waitFor();
  const way = page.getByRole('region', { name: 'From roof to cup' });
  await way.getByRole('img').waitFor();
  await way.getByRole('button', { name: 'How 6.0 was reached' }).first().click();
  const working = way.getByRole('region', { name: 'How it was reached' });
  // The line asked for stands first, and the others are behind a heading until they are asked for.
  expect(await working.getByRole('listitem').first().getAttribute('class')).toBe('asked');
  const few = await working.getByRole('listitem').count();
  await working.getByText(/^The other \d+ lines of the working$/).click();
  await expect.poll(() => working.getByRole('listitem').count()).toBeGreaterThan(few + 5);
  // The working is of these rooms alone.
  expect(await working.textContent()).not.toMatch(/first flush|dry days/i);
  await working.getByRole('button', { name: 'Close' }).click();
  expect(await page.getByRole('row', { name: /1 March 2026/ }).textContent()).toMatch(/risk/);
  await page.getByRole('link', { name: 'Water-safety page to print' }).click();
  await page.waitForURL(new RegExp(`/p/${programmeId}/sites/S991/water-safety$`));
  await settled(page);
  const pages = paperPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  expect(pages.length).toBeLessThanOrEqual(2);
  const text = pages
    .map((one) => one.text)
    .join(' ')
    .replaceAll(/\s+/g, '');
  for (const told of ['Donotdrink', 'Stop:closethetaps.', 'Healthauthority', 'Boiling', 'challengetest'])
    expect(text).toContain(told);
  // What can only be pressed is of no use on paper.
  expect(text).not.toContain('Safety:Osklanding');
});

journey(
  'on paper nothing is nearly as large as "Do not drink"; where it is fit it is told by what',
  async ({ atDoor: page }) => {
    const { programmeId } = await withSafetySites(page);
    const sizes = async (siteId: string) => {
      await page.goto(new URL(`/p/${programmeId}/sites/${siteId}/water-safety`, page.url()).href);
      await settled(page);
      await page.emulateMedia({ media: 'print' });
      const found = await page.evaluate(() =>
        [...document.querySelectorAll('.water-safety *')]
          .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
          .map((one) => ({
            text: one.textContent!.trim(),
            size_px: Number.parseFloat(getComputedStyle(one).fontSize),
          }))
          .sort((a, b) => b.size_px - a.size_px),
      );
      await page.emulateMedia({ media: 'screen' });
      return found;
    };
    const [large, next] = await sizes('S991');
    expect(large?.text).toBe('Do not drink');
    expect(large!.size_px).toBeGreaterThan(3 * next!.size_px);
    const fit = await sizes('S992');
    expect(fit.map(({ text }) => text)).toContain('Fit to drink by plan and samples');
    expect(fit.map(({ text }) => text).join(' ')).toMatch(/challenge test of this product/);
    expect(fit.map(({ text }) => text)).not.toContain('Do not drink');
  },
);

journey('what is asked of the list stands in the address, and back brings it again', async ({ atDoor: page }) => {
  await openSafety(page);
  await page
    .getByRole('link', { name: /fit by plan and samples$/ })
    .first()
    .click();
  await page.waitForURL(/\?drink=yes$/);
  const told = () => rows(page).locator('.line').allTextContents();
  const areAll = (said: RegExp) =>
    expect
      .poll(async () => {
        const lines = await told();
        return lines.length > 0 && lines.every((one) => said.test(one));
      })
      .toBe(true);
  await areAll(/^Fit by plan and samples\./);
  await page.getByRole('link', { name: /in need of a test$/ }).click();
  await page.waitForURL(/due=sample/);
  await page.goBack();
  await page.waitForURL(/\?drink=yes$/);
  await areAll(/^Fit by plan and samples\./);
  await page.getByRole('link', { name: 'Show those that need you' }).click();
  // Those that are fit are among those that need somebody: what was shown before fits the line above too.
  await expect.poll(async () => (await told())[0]).toMatch(/^Do not drink\./);
  expect((await told()).length).toBeGreaterThan(3);
  await areAll(/^(?:Do not drink|Not shown to be fit|Fit by plan and samples)\./);
});

journey('a village is found by its name, with what is due there', async ({ atDoor: page }) => {
  await openSafety(page);
  await page.getByRole('searchbox', { name: 'Find a village' }).fill('miremosa');
  await expect.poll(() => rows(page).count()).toBe(1);
  expect(await rows(page).first().textContent()).toMatch(/Mirremossa village hall.*Cartridges/);
  const due = page.getByRole('region', { name: 'Cartridges due' });
  expect(await due.getByRole('link').allTextContents()).toEqual(['Mirremossa village hall']);
});

journey(
  'at 360 px no word of the cartridges due is cut, and each germ of the picture has its name',
  async ({ open }) => {
    const { page } = await open({ width: 360, isAtDoor: true });
    await openSafety(page);
    const cut = await page.locator('.due-sets').evaluate((table) => {
      const found: string[] = [];
      const walker = document.createTreeWalker(table, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
        for (const { index, 0: word } of (node.textContent ?? '').matchAll(/[\p{L}\p{N}]+/gu)) {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + word.length);
          const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
          if (lines.size > 1) found.push(word);
        }
      return found;
    });
    expect(cut).toEqual([]);
    const { programmeId } = await withSafetySites(page);
    // Its people drink of a second source on some days, so that the names of its germs are long.
    await page.goto(new URL(`/p/${programmeId}/sites/S001/safety`, page.url()).href);
    const picture = page.getByRole('region', { name: 'What it does to those who drink' }).locator('svg');
    await picture.first().waitFor();
    for (const germ of ['Cryptosporidium', 'Campylobacter', 'rotavirus'])
      await expect.poll(() => picture.first().textContent()).toContain(germ);
  },
);

journey(
  'the water-safety page of a chlorinated site is one sheet, and tells nobody of tables',
  async ({ atDoor: page }) => {
    const { programmeId } = await withSafetySites(page);
    for (const [siteId, isChlorinated] of [
      ['S021', true],
      ['S994', true],
      ['S991', false],
    ] as const) {
      await page.goto(new URL(`/p/${programmeId}/sites/${siteId}/water-safety`, page.url()).href);
      await settled(page);
      const pages = paperPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
      const text = pages.map((one) => one.text.replaceAll(/\s+/g, '')).join('');
      expect(pages, siteId).toHaveLength(1);
      expect(text.includes('Chlorinedoses'), siteId).toBe(isChlorinated);
      expect(text).not.toMatch(/\.csv|,row\d|\.\./);
    }
  },
);

type BrokenOff = 'isFailed' | 'isCalledOff' | 'isRunning';

/**
 * What the program would answer had the work on the verdicts been broken off: the facts of now, the verdicts of before.
 *
 * @param how - in which way, each time it is asked
 */
async function brokenOff(page: Page, how: () => BrokenOff): Promise<void> {
  await page.route(/\/api\/programmes\/[^/]+(?:\/sites\/[^/]+)?$/, async (route) => {
    if (route.request().method() !== 'GET') return route.continue();
    const answer = await route.fetch();
    const body = (await answer.json()) as Record<string, unknown>;
    const state = { isFailed: how() === 'isFailed', isCalledOff: how() === 'isCalledOff', done_fraction: 0.4 };
    await route.fulfill({ response: answer, json: { ...body, ...state, version: Number(body['version']) + 1 } });
  });
}

journey(
  'what is being worked out is said, on the page and on paper, and nothing of before is hung up',
  async ({ atDoor: page }) => {
    const { programmeId } = await withSafetySites(page);
    await brokenOff(page, () => 'isRunning');
    await page.goto(new URL(`/p/${programmeId}/sites/S992/water-safety`, page.url()).href);
    await page.getByText('Being worked out: do not hang this up').waitFor();
    expect(await page.getByText('Fit to drink by plan and samples').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Print' }).count()).toBe(0);
    await page.goto(new URL(`/p/${programmeId}/sites/S992/safety`, page.url()).href);
    await page.getByText('Being worked out: do not hang this up.').waitFor();
    expect(await page.getByRole('button', { name: 'Try again' }).count()).toBe(0);
    // That nobody may drink is said even of before.
    await page.goto(new URL(`/p/${programmeId}/sites/S991/water-safety`, page.url()).href);
    await page.getByText('Before, it said: do not drink.').waitFor();
  },
);

journey(
  'a run that failed, or was stopped, is said with what to do, and nobody is left to wait',
  async ({ atDoor: page }) => {
    const { programmeId } = await withSafetySites(page);
    let now: BrokenOff = 'isFailed';
    await brokenOff(page, () => now);
    for (const [how, said, press] of [
      ['isFailed', /could not be worked out\. This is our fault/, 'Try again'],
      ['isCalledOff', /was stopped/, 'Work it out'],
    ] as const) {
      now = how;
      for (const path of ['sites/S992/water-safety', 'sites/S992/safety', 'safety']) {
        await page.goto(new URL(`/p/${programmeId}/${path}`, page.url()).href);
        await page.getByText(said).first().waitFor();
        expect(await page.getByText(/being worked out/i).count(), path).toBe(0);
        await page.getByRole('button', { name: press }).first().waitFor();
      }
      const asked = page.waitForRequest((one) => one.method() === 'POST' && /\/design$/.test(one.url()));
      await page.getByRole('button', { name: press }).first().click();
      await asked;
    }
  },
);

journey('a chlorinated site has its doses, on the page and on paper', async ({ atDoor: page }) => {
  const { programmeId } = await withSafetySites(page);
  await page.goto(new URL(`/p/${programmeId}/sites/S994/safety`, page.url()).href);
  const chlorine = page.getByRole('region', { name: 'Chlorine' });
  // 2 mg/L in 1,000 L by a stock of 10 g/L: 200 mL; a bucket of 10 L: 2 mL.
  await chlorine.getByRole('row', { name: /1,000 L.*200 mL/ }).waitFor();
  await chlorine.getByRole('row', { name: /^10 L.*2 mL/ }).waitFor();
  await page.getByRole('link', { name: 'Water-safety page to print' }).click();
  await page.getByRole('row', { name: /1,000 L.*200 mL/ }).waitFor();
  expect(await page.getByText(/Here water boils at/).textContent()).toMatch(/9[5-6](?:\.\d)? °C/);
});

journey('from Safety one press leads to the fields of samples of that site', async ({ atDoor: page }) => {
  const { programmeId } = await withSafetySites(page);
  await page.goto(new URL(`/p/${programmeId}/sites/S991/safety`, page.url()).href);
  await page.getByRole('link', { name: 'Write down a test' }).click();
  await page.waitForURL(/\/sites\/S991#form-waterTests$/);
  const fields = page.locator('#form-waterTests');
  await fields.waitFor();
  await expect
    .poll(() => fields.locator(':scope > button').evaluate((one) => one === document.activeElement))
    .toBe(true);
});

journey('the drawing of a site leads to its safety, and says so where nobody may drink', async ({ atDoor: page }) => {
  const { programmeId } = await withSafetySites(page);
  await page.goto(new URL(`/p/${programmeId}/sites/S991`, page.url()).href);
  await page.getByText('Do not drink.', { exact: true }).first().waitFor();
  const group = page.getByRole('region', { name: 'Treatment and safety' });
  await group.waitFor();
  await group.getByRole('link', { name: 'Safety of its water' }).click();
  await page.waitForURL(/\/sites\/S991\/safety$/);
});

// As in looks.test.ts: all rules once at each width, and those that read colours at both widths in both lights.
for (const { width, other, isDark } of [
  { width: 1280, other: 360, isDark: false },
  { width: 360, other: 1280, isDark: true },
])
  journey(
    `axe finds nothing on the pages of Safety, ${isDark ? 'dark' : 'light'}, opened ${width} px wide`,
    async ({ open }) => {
      const { page } = await open({ width, isDark, isAtDoor: true });
      const { programmeId } = await withSafetySites(page);
      const found: string[] = [];
      for (const path of ['safety', 'sites/S991/safety', 'sites/S994/safety', 'sites/S991/water-safety']) {
        await page.goto(new URL(`/p/${programmeId}/${path}`, page.url()).href);
        await settled(page);
        const here = [...(await axeFindings(page, 'all'))];
        await page.setViewportSize({ width: other, height: 800 });
        await laidOut(page);
        here.push(...(await axeFindings(page, 'colours')));
        await page.setViewportSize({ width: 320, height: 600 });
        const wide_px = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        if (wide_px > 0) here.push(`${wide_px} px too wide`);
        await page.setViewportSize({ width, height: 800 });
        found.push(...here.map((one) => `${path}: ${one}`));
      }
      expect(found).toEqual([]);
    },
  );

journey('by keys alone: the list is walked, a site opened, a working opened and closed', async ({ atDoor: page }) => {
  await openSafety(page);
  await page.getByRole('link', { name: /do not drink$/ }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/drink=no/);
  await rows(page).getByRole('link').first().focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/safety$/);
  const figure = page.locator('.safety-part .opens').first();
  await figure.focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator(':focus').textContent()).toBe('How it was reached');
});
