import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axeFindings } from './axeFindings.ts';
import { designedDemo } from './demo.ts';
import { settled } from './everyPage.ts';
import { readingJourney } from './journey.ts';
import { paperPages } from './pdfText.ts';

/** Opens the section, and waits until the trips of its plan stand there. */
async function openRollout(page: Page, trips: string): Promise<void> {
  const { programmeId } = await designedDemo(page);
  await page.goto(new URL(`/p/${programmeId}/rollout`, page.url()).href);
  await page.locator(trips).first().waitFor();
  await settled(page);
}

const overflow_px = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

const focused = (page: Page) => page.evaluate(() => document.activeElement?.getAttribute('data-trip') ?? null);

readingJourney(
  'the bands: one stop of Tab, arrows from trip to trip, Enter opens one, Escape leads back',
  async ({ atDoor: page }) => {
    await openRollout(page, '.trip-cell button');
    expect(await page.locator('.trip-cell button[tabindex="0"]').count()).toBe(1);
    await page.locator('.trip-cell button[tabindex="0"]').focus();
    const first = await focused(page);
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    const second = await focused(page);
    expect(second).not.toBeNull();
    await page.keyboard.press('ArrowDown');
    const third = await focused(page);
    expect(third).not.toBeNull();
    expect(new Set([first, second, third]).size).toBeGreaterThan(1);
    expect(third).not.toBe(second);
    expect(await page.locator('.trip-cell button[tabindex="0"]').count()).toBe(1);
    expect(await axeFindings(page, 'all')).toEqual([]);
    await page.keyboard.press('Enter');
    const opened = page.getByRole('dialog');
    await opened.getByRole('columnheader', { name: 'water from' }).waitFor();
    expect(await opened.getByRole('row').count()).toBeGreaterThan(1);
    const manifest = await opened.getByRole('link', { name: 'manifest' }).getAttribute('href');
    expect(manifest).toContain(`/rollout/trips/${third}`);
    expect(await axeFindings(page, 'all')).toEqual([]);
    await page.keyboard.press('Escape');
    await opened.waitFor({ state: 'detached' });
    expect(await focused(page)).toBe(third);
  },
);

readingJourney(
  'the weeks scroll in their frame and never the page; all of them fit into it',
  async ({ atDoor: page }) => {
    await openRollout(page, '.trip-cell button');
    const frame = page.locator('.bands-frame');
    const wider_px = () => frame.evaluate((at) => at.scrollWidth - at.clientWidth);
    await page.getByLabel('13 weeks', { exact: true }).check();
    await expect.poll(wider_px).toBeGreaterThan(100);
    expect(await overflow_px(page)).toBe(0);
    await page.getByLabel('all', { exact: true }).check();
    await expect.poll(wider_px).toBeLessThanOrEqual(1);
    const hulls = await page.locator('.hull').count();
    await page.getByText('All trips in words, crew by crew').click();
    // As many trips in words as hulls: nothing is told by the drawing alone.
    await expect.poll(() => page.locator('.crew-list li > details.trip').count()).toBe(hulls);
  },
);

readingJourney('on a phone a list by crew, and nothing to scroll sideways', async ({ open }) => {
  const { page } = await open({ width: 320, isPhone: true, isAtDoor: true });
  await openRollout(page, '.crew-list details.trip');
  expect(await page.locator('.hull').count()).toBe(0);
  await page.locator('.crew-list details.trip summary').first().click();
  await page.getByRole('columnheader', { name: 'water from' }).first().waitFor();
  expect(await overflow_px(page)).toBe(0);
  expect(await axeFindings(page, 'all')).toEqual([]);
});

/** What of the sheet the list on a phone is held against. */
interface NextTold {
  readonly crews: readonly {
    readonly name: string;
    readonly trips: readonly { readonly state: string; readonly leaves: string }[];
  }[];
  readonly stock: readonly { readonly name: string; readonly points: readonly unknown[] }[];
}

readingJourney(
  'on a phone it is told who leaves next over all crews, and what lies in the stores',
  async ({ open }) => {
    const { page } = await open({ width: 360, isPhone: true, isAtDoor: true });
    await openRollout(page, '.crew-list details.trip');
    const { programmeId } = await designedDemo(page);
    const answer = await page.request.get(new URL(`/api/programmes/${programmeId}/rollout`, page.url()).href);
    const { crews, stock } = (await answer.json()) as NextTold;
    const planned = crews.flatMap(({ name, trips }) =>
      trips.filter(({ state }) => state === 'planned').map(({ leaves }) => ({ name, leaves })),
    );
    planned.sort((a, b) => a.leaves.localeCompare(b.leaves));
    const next = page.getByRole('region', { name: 'Leaving next' }).getByRole('listitem');
    // Runs between stores stand among them, with a list of what they load.
    const trips = next.filter({ hasText: 'manifest' });
    expect(await trips.count()).toBe(Math.min(4, planned.length));
    expect(await next.count()).toBe((await trips.count()) + (await next.filter({ hasText: 'loading list' }).count()));
    const [day, year] = [Number(planned[0]!.leaves.slice(8)), planned[0]!.leaves.slice(0, 4)];
    expect(await trips.first().textContent()).toMatch(new RegExp(`${day} [A-Z][a-z]+ ${year}: ${planned[0]!.name}`));
    expect(
      await trips
        .first()
        .getByRole('link', { name: /^manifest of/ })
        .count(),
    ).toBe(1);
    const stores = page.getByRole('region', { name: 'Stock' });
    expect(await stores.locator('p').first().textContent()).toMatch(/in its store or comes in time|short/);
    const part = stores.locator('li').first();
    const said = (await part.locator('summary').textContent())!;
    expect(stock.some(({ name }) => said.startsWith(`${name}:`))).toBe(true);
    await part.locator('summary').click();
    const named = stock.filter(({ name }) => said.startsWith(`${name}:`)).map(({ points }) => points.length + 1);
    expect(named).toContain(await part.getByRole('row').count());
    expect(await overflow_px(page)).toBe(0);
    expect(await axeFindings(page, 'all')).toEqual([]);
  },
);

/** What of the sheet the drawing is held against. */
interface DrawnTold {
  readonly hauls: readonly { readonly haulId: string; readonly forTrip: string; readonly leaves: string }[];
}

const sheetNow = async (page: Page) => {
  const { programmeId } = await designedDemo(page);
  const at = new URL(`/api/programmes/${programmeId}/rollout`, page.url());
  return (await (await page.request.get(at.href)).json()) as DrawnTold;
};

readingJourney(
  'what is brought between stores is drawn, read by keys and in words, and led to its trip',
  async ({ atDoor: page }) => {
    await openRollout(page, '.trip-cell button');
    const sheet = await sheetNow(page);
    expect(sheet.hauls.length).toBeGreaterThan(1);
    await page.getByLabel('all', { exact: true }).check();
    await expect.poll(() => page.locator('[data-haul]').count()).toBe(sheet.hauls.length);
    // A line from each of them to a trip: up, on and up.
    const ties = (await page.locator('.b-tie').getAttribute('d'))!;
    expect(ties.match(/M[\d. ]+V\d+H[\d.]+V[\d.]+/g)).toHaveLength(sheet.hauls.length);
    const stop = page.locator('[data-haul][tabindex="0"]');
    expect(await stop.count()).toBe(1);
    await stop.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    const at = await page.evaluate(() => document.activeElement?.getAttribute('data-haul'));
    expect(at).toBe(sheet.hauls[1]!.haulId);
    await page.keyboard.press('Enter');
    const opened = page.getByRole('dialog');
    const link = opened.getByRole('link', { name: /^loading list/ });
    expect(await link.getAttribute('href')).toContain(`/rollout/trips/${sheet.hauls[1]!.forTrip}`);
    expect(await axeFindings(page, 'all')).toEqual([]);
    await page.keyboard.press('Escape');
    await opened.waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-haul'))).toBe(at);
    await page.getByText('All trips in words, crew by crew').click();
    await expect.poll(() => page.locator('.haul-list li').count()).toBe(sheet.hauls.length);
    await page.setViewportSize({ width: 360, height: 800 });
    await page.locator('.haul-list li summary').first().click();
    await page
      .locator('.haul-list li')
      .first()
      .getByText(/brings goods/)
      .waitFor();
    expect(await overflow_px(page)).toBe(0);
    await page.locator('.haul-list li').first().getByRole('link').click();
    await page.getByRole('heading', { name: 'What is brought before it leaves' }).waitFor();
    // There and back, each by its ways.
    expect(await page.locator('#trip-hauls ~ ul > li').first().locator('.trip-legs > li').count()).toBeGreaterThan(1);
  },
);

readingJourney('on paper the bands lie on A4 on its side, with every crew', async ({ atDoor: page }) => {
  await openRollout(page, '.trip-cell button');
  const crews = await page.locator('.crew-name').allTextContents();
  const pages = paperPages(await page.pdf({ preferCSSPageSize: true }));
  // ISO 216: A4 is 210 mm by 297 mm, 595 by 842 points.
  const sizes = pages.map(({ width_pt, height_pt }) => `${Math.round(width_pt)} ${Math.round(height_pt)}`);
  expect(new Set(sizes)).toEqual(new Set(['842 595']));
  // Every sheet says of which plan it is, and which of how many.
  for (const [nth, { text: said }] of pages.entries()) {
    expect(said.replaceAll(/\s/g, '')).toContain(`Weeksoftheplan,sheet${nth + 1}of${pages.length}`);
    expect(said.replaceAll(/\s/g, '')).toMatch(/FennubryIslands\.Plan:Allcrews\.Printed\d+[A-Z][a-z]+20\d\d\./);
  }
  const text = pages.map((one) => one.text.replaceAll(/\s/g, '')).join('');
  expect(crews.filter((name) => !text.includes(name.replaceAll(/\s/g, '')))).toEqual([]);
  // What is folded on the screen cannot be opened here.
  expect(await page.getByText('LOW2').isVisible()).toBe(false);
  expect(text).toContain('LOW2');
  // What is brought between stores stands there in words, each once at least.
  const sheet = await sheetNow(page);
  expect(text.split('bringsgoodsfrom').length - 1).toBeGreaterThanOrEqual(sheet.hauls.length);
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const printed = page.locator('.bands-on-paper').first();
  expect(await printed.locator('.crew-name').allTextContents()).toEqual(crews);
  // Between edges of 12 mm of the paper and of 32 px of the page, at 96 px to the inch.
  const drawn_px = await printed.evaluate((at) => {
    const left = at.getBoundingClientRect().left;
    return Math.max(...[...at.querySelectorAll('svg')].map((svg) => svg.getBoundingClientRect().right - left));
  });
  expect(drawn_px).toBeLessThanOrEqual(((297 - 2 * 12) * 96) / 25.4 - 2 * 32);
  expect(drawn_px).toBeGreaterThan(900);
});

readingJourney(
  'a figure of the plan opens to its working, and what it moved comes back when it is closed',
  async ({ atDoor: page }) => {
    await openRollout(page, '.trip-cell button');
    const hulls = page.locator('[data-trip]');
    const figure = page.locator('.plan-figures button').nth(1);
    const said = (await figure.textContent())!;
    await figure.click();
    const working = page.locator('.working');
    await working.waitFor();
    // The line that was asked for comes to what stood in the figure.
    expect(said).toContain((await working.locator('.asked .value').textContent())!);
    expect(await axeFindings(page, 'all')).toEqual([]);
    await working.locator('summary').click();
    expect(await working.locator('li').count()).toBeGreaterThan(10);
    await expect.poll(() => hulls.count()).toBe(1);
    await page.evaluate(() => scrollTo(0, 0));
    await working.getByRole('button', { name: 'Close' }).click();
    await page.setViewportSize({ width: 1280, height: 1900 });
    await figure.click();
    await working.locator('summary').click();
    await expect.poll(() => hulls.count()).toBe(1);
    // Closed without a scroll: what comes into view is drawn.
    await working.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => hulls.count()).toBeGreaterThan(1);
  },
);
