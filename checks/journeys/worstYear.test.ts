import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { readingJourney } from './journey.ts';

readingJourney(
  'from the sites to the worst year of the record, to another by the keys, and on to a site',
  async ({ open }) => {
    for (const width of [1280, 360]) {
      const { page } = await open({ width, isPhone: width < 500 });
      await designedDemo(page);
      await page.getByRole('navigation', { name: 'Sections' }).getByRole('link', { name: 'Water' }).click();
      await page.getByRole('heading', { level: 1, name: /was the worst: .* would have run dry/ }).waitFor();
      const years = page.getByRole('group', { name: 'Every water year of the record' }).getByRole('radio');
      expect(await years.count()).toBeGreaterThan(20);
      const worst = page.locator('input[type=radio]:checked');
      const named = (await worst.getAttribute('aria-label'))!.slice(0, 4);
      await page.getByRole('heading', { level: 2, name: `${named}: who would have run dry` }).waitFor();
      await worst.focus();
      await page.keyboard.press('ArrowUp');
      await page.waitForURL(({ searchParams }) => searchParams.has('year'));
      const before = String(Number(named) - 1);
      await page.getByRole('heading', { level: 2, name: `${before}: who would have run dry` }).waitFor();
      await page.keyboard.press('ArrowDown');
      await page.getByRole('heading', { level: 2, name: `${named}: who would have run dry` }).waitFor();
      const first = page.locator('.hurt-sites tbody tr').first().getByRole('link');
      const site = (await first.textContent())!;
      await first.click();
      await page.getByRole('heading', { level: 1, name: new RegExp(site) }).waitFor();
      await page.goBack();
      await page.getByRole('heading', { level: 2, name: `${named}: who would have run dry` }).waitFor();
    }
  },
);
