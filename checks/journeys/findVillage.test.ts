import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { readingJourney } from './journey.ts';

readingJourney(
  'a village is found without the map: by name, without accents, with a slip, by number; on a phone as well',
  async ({ open }) => {
    for (const width of [1280, 360]) {
      const { page } = await open({ width, isPhone: width < 500 });
      const { sites } = await designedDemo(page);
      const wanted = sites.find(({ verdict }) => verdict === 'holds')!;
      const [village = ''] = wanted.name.split(' ');
      const slip = village.slice(0, 3) + village.slice(4);
      const find = page.getByRole('searchbox', { name: /Find a village/ });
      for (const typed of [wanted.name, village.toUpperCase(), slip, wanted.siteId]) {
        await find.fill(typed);
        await page.waitForURL(({ searchParams }) => searchParams.get('text') === typed);
        await page.getByRole('row', { name: new RegExp(wanted.name) }).waitFor();
      }
      await find.fill('zzzzzzzz');
      await page.getByText('No site fits.').waitFor();
      await find.fill(wanted.name);
      await page.waitForURL(({ searchParams }) => searchParams.get('text') === wanted.name);
      const link = page.getByRole('row', { name: new RegExp(wanted.name) }).getByRole('link', { name: wanted.name });
      await (width < 500 ? link.tap() : link.click());
      await page.getByRole('heading', { level: 1, name: new RegExp(wanted.name) }).waitFor();
      await page.goBack();
      await expect.poll(() => find.inputValue()).toBe(wanted.name);
      await page.getByRole('row', { name: new RegExp(wanted.name) }).waitFor();
    }
  },
);
