/// <reference lib="dom" />
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { readingJourney } from './journey.ts';

const pages = [
  ['rollout/happened', 'What happened'],
  ['rollout/sites', 'Which sites go in'],
  ['rollout/plans', 'Plans side by side'],
  ['rollout/trips/T1', 'Manifest of T1'],
  ['rollout/crews/C1', 'C1'],
] as const;

readingJourney(
  'a page of the rollout has its name, and says what is awaited, until its data are there',
  async ({ open }) => {
    for (const width of [1280, 360]) {
      const { page, watch } = await open({ width, isPhone: width < 500 });
      watch.expect(/status of 404/);
      const { programmeId } = await designedDemo(page);
      await page.route(/\/rollout(\/trips\/[^/]+)?(\?|$)/, async (route) => {
        if (route.request().resourceType() === 'document') await route.continue();
        // What is asked for is never answered: the page is all there is.
      });
      for (const [path, title] of pages) {
        await page.goto(new URL(`/p/${programmeId}/${path}`, page.url()).href);
        await page.getByRole('heading', { level: 1, name: title, exact: true }).waitFor();
        const status = page.locator('main').getByRole('status').first();
        expect(await status.textContent()).toMatch(/The plan is being worked out.*The page appears by itself/);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
      await page.close();
    }
  },
);
