/// <reference lib="dom" />
import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

/** The page of the first site without a second source whose tank alone gives it its verdict, its drawing there and its remedies found. */
async function drawnSite(page: Page, verdict: string): Promise<{ programmeId: string; siteId: string }> {
  const { programmeId, sites } = await designedDemo(page);
  const { siteId } = sites.find(
    (site) => site.verdict === verdict && site.storage === verdict && site.isTankAlone && !site.hasSecondSource,
  )!;
  await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
  await page.goto(new URL(`/p/${programmeId}/sites/${siteId}`, page.url()).href);
  await page.locator('.drawn-frame svg').first().waitFor();
  return { programmeId, siteId };
}

const verdictLine = (page: Page) => page.locator('.verdict').first().textContent();
const bar = (page: Page) => page.getByRole('region', { name: 'Changed, not kept' });

/** Everything the programme has of a site, to be compared before and after. */
async function rowsOf(page: Page, { programmeId, siteId }: { programmeId: string; siteId: string }): Promise<string> {
  const at = new URL(`/api/programmes/${programmeId}/sites/${siteId}`, page.url()).href;
  const { rows } = (await (await page.request.get(at)).json()) as { rows: unknown };
  return JSON.stringify(rows);
}

journey('a change is tried by keys, let go, tried again, kept, and taken back by undo', async ({ atDoor: page }) => {
  const site = await drawnSite(page, 'short');
  const before = await rowsOf(page, site);
  const short = await verdictLine(page);
  const people = page.getByRole('textbox', { name: 'People' });
  const counted = Number(await people.inputValue());

  await people.focus();
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => bar(page).textContent()).toContain(`${counted - 1} people`);
  await bar(page).getByRole('button', { name: 'Let go' }).press('Enter');
  await bar(page).waitFor({ state: 'detached' });
  expect(await people.inputValue()).toBe(String(counted));
  expect(await rowsOf(page, site)).toBe(before);

  // One person in a village of any size holds.
  await people.fill('1');
  await people.press('Enter');
  await expect.poll(() => verdictLine(page), { timeout: 15_000 }).toMatch(/^holds/);
  expect(await verdictLine(page)).toContain('with what you changed, not kept');
  expect(await rowsOf(page, site)).toBe(before);
  await bar(page).getByRole('button', { name: 'Keep' }).press('Enter');
  await page.getByText('Kept. The programme is judged again.').waitFor();
  expect(await rowsOf(page, site)).not.toBe(before);
  expect(await verdictLine(page)).not.toContain('with what you changed');

  await page.locator('h1').click();
  await page.keyboard.press('Control+z');
  await expect.poll(() => rowsOf(page, site)).toBe(before);
  await page.getByText('Kept. The programme is judged again.').waitFor({ state: 'detached' });
  await expect.poll(() => verdictLine(page), { timeout: 30_000 }).toBe(short);
});

journey('a remedy is drawn in while it is pointed at, taken by a press, and stepped back', async ({ atDoor: page }) => {
  const site = await drawnSite(page, 'short');
  const before = await rowsOf(page, site);
  const first = page.getByRole('button', { name: /^Take:/ }).first();
  await first.waitFor();
  const about = (await first.textContent())!;
  const tried = page.locator('.drawn-frame svg .d-proposed');
  expect(await tried.count()).toBe(0);
  await first.focus();
  await expect.poll(() => tried.count()).toBeGreaterThan(0);
  await page.keyboard.press('Enter');
  await expect.poll(() => bar(page).textContent()).toContain(about);
  // A tank that is joined stands on ground that nobody has looked at yet.
  await expect.poll(() => verdictLine(page)).toMatch(/^(holds|tight|unknown at stand)/);
  await bar(page).getByRole('button', { name: 'One step back' }).click();
  await bar(page).waitFor({ state: 'detached' });
  await expect.poll(() => verdictLine(page)).toMatch(/^short/);
  expect(await rowsOf(page, site)).toBe(before);
});

journey('the rim of a tank is dragged by hand and by keys, and the drawing answers', async ({ atDoor: page }) => {
  await drawnSite(page, 'short');
  const rim = page.getByRole('slider', { name: /^Rim of tank/ }).first();
  const height = async () => Number.parseFloat((await rim.getAttribute('aria-valuetext'))!);
  const from = await height();
  await rim.focus();
  await page.keyboard.press('ArrowUp');
  // It goes to the next twentieth of a metre.
  await expect.poll(height).toBeGreaterThan(from);
  const stepped = await height();
  expect(stepped).toBeLessThanOrEqual(from + 0.075);
  // Clear of the bar that tells what was changed, which lies over the foot of the page.
  await rim.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const box = (await rim.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  for (const moved of [5, 10, 20, 30]) await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2 - moved);
  await page.mouse.up();
  await expect.poll(height).toBeGreaterThan(from + 0.2);
  // A drag is one step.
  await bar(page).getByRole('button', { name: 'One step back' }).click();
  await expect.poll(height).toBe(stepped);
});

journey('a question to the rain is answered beside what is, and is never kept', async ({ atDoor: page }) => {
  const site = await drawnSite(page, 'holds');
  const before = await rowsOf(page, site);
  await page.getByText('What if it rained otherwise?').click();
  const rain = page.getByRole('textbox', { name: /^Rain of a wet day/ });
  await rain.fill('10');
  await rain.press('Enter');
  await expect.poll(() => page.locator('.beside-drawing .then').textContent()).toMatch(/then\s+short/);
  expect(await bar(page).count()).toBe(0);
  expect(await rowsOf(page, site)).toBe(before);
  // What is saved of it is not taken for the record.
  const years = page.getByRole('region', { name: 'Dry days, year by year' });
  await years.getByText('As a table').click();
  const saving = page.waitForEvent('download');
  await years.getByRole('button', { name: 'Save as CSV' }).click();
  expect((await saving).suggestedFilename()).toMatch(/-years-what-if\.csv$/);
  await rain.fill('400');
  await rain.press('Enter');
  await page.getByText(/^Write a number from 10 to 300/).waitFor();
});

journey(
  'a day pointed at by keys lights up in every picture, and the tanks show its water',
  async ({ atDoor: page }) => {
    await drawnSite(page, 'short');
    const trace = page.getByRole('group', { name: /^Water in the tank/ });
    await trace.focus();
    await page.keyboard.press('ArrowRight');
    const level = page.locator('.level-words');
    await expect.poll(() => level.textContent()).toMatch(/^Water as on/);
    const lit = page.locator('.day-picture .pointed');
    await expect.poll(() => lit.count()).toBeGreaterThanOrEqual(3);
    const first = await level.textContent();
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(() => level.textContent()).not.toBe(first);
    await page.keyboard.press('Escape');
    await expect.poll(() => level.textContent()).toMatch(/^Water at the end/);
  },
);

journey('a picture has its table, and every day of it as a file', async ({ atDoor: page }) => {
  await drawnSite(page, 'short');
  const chart = page.getByRole('region', { name: /^Water in the tank/ }).first();
  await chart.getByText('As a table').click();
  await chart.getByRole('table').waitFor();
  const saving = page.waitForEvent('download');
  await chart.getByRole('button', { name: 'Save as CSV' }).click();
  const file = join(await mkdtemp(join(tmpdir(), 'eavewell-days-')), 'days.csv');
  await (await saving).saveAs(file);
  const text = await readFile(file, 'utf8');
  const [head, ...rows] = text.trimEnd().split('\r\n');
  expect(head).toMatch(/^date,waterYear,judged,content_L,rain_mm/);
  expect(rows.length).toBeGreaterThan(20 * 365);
  expect(new Set(rows.map((row) => row.split(',')[0])).size).toBe(rows.length);
});

journey('leaving with something not kept asks first', async ({ atDoor: page }) => {
  await drawnSite(page, 'short');
  const people = page.getByRole('textbox', { name: 'People' });
  await people.focus();
  await page.keyboard.press('ArrowUp');
  await bar(page).waitFor();
  await page.getByRole('link', { name: /that need you/ }).click();
  const asked = page.getByRole('alertdialog');
  await asked.getByRole('button', { name: 'Stay' }).click();
  await bar(page).waitFor();
  await page.getByRole('link', { name: /that need you/ }).click();
  await asked.getByRole('button', { name: 'Go, and let it go' }).click();
  await page.waitForURL(/\/sites$/);
});

journey('a working opens from a figure, and is copied line by line', async ({ atDoor: page }) => {
  await drawnSite(page, 'short');
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page
    .getByRole('button', { name: /^How .*dry days a year was reached$/ })
    .first()
    .click();
  const working = page.getByRole('region', { name: 'How it was reached' });
  await working.getByRole('button', { name: 'Copy' }).click();
  await working.getByText('Copied').waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  // Only what was asked for and what it comes from stands open; what is copied is the whole.
  const open_count = await working.getByRole('listitem').count();
  await working.getByText(/^The other \d+ lines of the working$/).click();
  const lines = await working.getByRole('listitem').count();
  expect(lines).toBeGreaterThan(open_count + 5);
  expect(copied.split('\n')).toHaveLength(lines);
  expect(copied).toMatch(/\t/);
  // The finding of a chart opens to the line it rests on; a cost to what is bought.
  await page.getByRole('region', { name: 'What each size of tank would do' }).getByText('how?').click();
  await page.locator('#working-storage-tankForTarget.asked').waitFor();
  const cost = page.locator('.remedies .cost').first();
  await cost.locator('summary').click();
  expect(await cost.getByRole('listitem').first().textContent()).toMatch(/^\d+ × .+, [\d,.]+ USD each, price of /);
});

journey('by Tab the drawing has its handles and no stop without a name', async ({ atDoor: page }) => {
  await drawnSite(page, 'short');
  await page.getByRole('slider').first().waitFor();
  await page.locator('.drawn-frame svg [data-part^="water:"] path').first().waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'from above' }).focus();
  await page.keyboard.press('Tab');
  const reached = page.locator(':focus');
  expect(await reached.getAttribute('role')).toBe('slider');
  expect(await reached.getAttribute('aria-label')).toBeTruthy();
});

journey('a trace is dragged over past its end, and the last days are shown', async ({ atDoor: page }) => {
  await drawnSite(page, 'short');
  const trace = page.getByRole('group', { name: /^Water in the tank/ });
  await trace.scrollIntoViewIfNeeded();
  const box = (await trace.locator('svg').first().boundingBox())!;
  const y = box.y + 60;
  await page.mouse.move(box.x + box.width * 0.7, y);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width + 25, y, { steps: 5 });
  await page.mouse.up();
  await page.getByRole('button', { name: 'Whole record' }).waitFor();
});

journey('a finger points at a day: it stays lit, and the tanks show its water', async ({ open }) => {
  const { page } = await open({ width: 360, isPhone: true, isAtDoor: true });
  await drawnSite(page, 'short');
  const trace = page.getByRole('group', { name: /^Water in the tank/ });
  await trace.scrollIntoViewIfNeeded();
  const box = (await trace.locator('svg').first().boundingBox())!;
  await page.touchscreen.tap(box.x + 150, box.y + 60);
  await expect.poll(() => page.locator('.level-words').textContent()).toMatch(/^Water as on/);
});

journey('in a language from right to left the letters of a picture stay beside its lines', async ({ open }) => {
  const { page } = await open({ chosen: 'ar-XB', isAtDoor: true });
  await drawnSite(page, 'short');
  const charts = page.locator('.charts svg.picture');
  await expect.poll(() => charts.count()).toBeGreaterThanOrEqual(5);
  const outside = await charts.evaluateAll((all) =>
    all.flatMap((svg) => {
      const { left, right } = svg.getBoundingClientRect();
      return [...svg.querySelectorAll('text')]
        .filter((text) => {
          const box = text.getBoundingClientRect();
          return box.left < left - 24 || box.right > right + 24;
        })
        .map(({ textContent }) => textContent);
    }),
  );
  expect(outside).toEqual([]);
});

journey(
  'a draft is kept while the program is stopped, and is saved when it answers again',
  async ({ open, served }) => {
    const { page, watch } = await open();
    watch.expect(/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED_ENCODING|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE/);
    watch.expect(/status of 403/);
    const site = await drawnSite(page, 'short');
    const people = page.getByRole('textbox', { name: 'People' });
    await page
      .getByRole('button', { name: /^Take:/ })
      .first()
      .waitFor();
    // What a page may ask for later is kept in the browser by then.
    await page.evaluate(async () => void (await navigator.serviceWorker.ready));
    await served.stop();
    await people.fill('20');
    await people.press('Enter');
    await expect.poll(() => bar(page).textContent()).toContain('20 people');
    await bar(page).getByRole('button', { name: 'Keep' }).click();
    await page.getByText('Kept in this browser until the program answers.').waitFor();
    expect(await people.inputValue()).toBe('20');
    await served.start();
    await page.goto(served.address);
    // Until the page has its key again the program answers with a refusal, which is no row either.
    const peopleNow = async () => {
      const rows = JSON.parse((await rowsOf(page, site)) ?? '[]') as { table: string; cells: { people?: string } }[];
      return rows.find(({ table }) => table === 'sites')?.cells.people;
    };
    await expect.poll(peopleNow, { timeout: 30_000 }).toBe('20');
  },
);
