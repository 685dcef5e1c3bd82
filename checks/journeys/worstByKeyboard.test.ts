import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { readingJourney } from './journey.ts';

/** What has the focus: its role as written or by its element, its name, and whether the focus is seen. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const one = document.activeElement!;
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    const { top, bottom, width, height } = one.getBoundingClientRect();
    return {
      role: one.getAttribute('role') ?? one.tagName.toLowerCase(),
      text: (one.textContent ?? '').trim(),
      isRinged: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2,
      isInView: width > 0 && height > 0 && bottom > 0 && top < window.innerHeight,
    };
  });

/** Presses Tab until something has the focus, and looks at every stop on the way. */
async function tabTo(page: Page, isThere: (at: Awaited<ReturnType<typeof focused>>) => boolean): Promise<number> {
  const most = 40;
  for (let presses = 1; presses <= most; presses++) {
    await page.keyboard.press('Tab');
    await page.waitForTimeout(30);
    const at = await focused(page);
    expect(at, `stop ${presses}`).toMatchObject({ isRinged: true, isInView: true });
    if (isThere(at)) return presses;
  }
  throw new Error(`Not reached by ${most} presses of Tab`);
}

readingJourney('from the address bar to the worst site and back by keyboard alone', async ({ page }) => {
  const { sites } = await designedDemo(page);
  await page.getByRole('row', { name: /short/ }).first().waitFor();
  await page.keyboard.press('Tab');
  expect((await focused(page)).text).toBe('Skip to the page');
  await page.keyboard.press('Enter');
  await tabTo(page, ({ role }) => role === 'row');
  const row = await focused(page);
  const { name, verdict } = sites.find((site) => row.text.includes(site.name))!;
  expect(verdict).toBe('short');
  expect(row.text).toContain(await page.getByRole('row').first().getByRole('link').textContent());

  await page.keyboard.press('ArrowDown');
  expect((await focused(page)).text).not.toContain(name);
  await page.keyboard.press('ArrowUp');
  expect((await focused(page)).text).toContain(name);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name }).waitFor();
  await tabTo(page, ({ text }) => /need you/.test(text));
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/sites(?:\?|$)/);
  await page.getByRole('row').first().waitFor();
  await tabTo(page, ({ role }) => role === 'row');
});

readingJourney('the keyboard is nowhere caught: Tab leads through the page and out of it', async ({ page }) => {
  await designedDemo(page);
  await page.getByRole('row').first().waitFor();
  const seen: string[] = [];
  for (let presses = 0; presses < 120; presses++) {
    await page.keyboard.press('Tab');
    const at = await focused(page);
    if (at.role === 'body' || (seen.length > 3 && at.text === seen[0])) return;
    seen.push(at.text);
  }
  throw new Error(`Tab never leaves the page: ${seen.slice(-5).join(' | ')}`);
});
