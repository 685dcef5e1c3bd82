import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { readingJourney } from './journey.ts';
import { paperPages } from './pdfText.ts';

/** A4, 210 × 297 mm, in points. Source: iso-216, from memory. */
const a4_pt = { width: 595.28, height: 841.89 };

readingJourney(
  'every site of the list is on paper: A4, dark text on white, also from a dark screen',
  async ({ open }) => {
    for (const isDark of [false, true]) {
      const { page } = await open({ isDark });
      const { sites } = await designedDemo(page);
      const needing = sites.filter(({ verdict }) => verdict !== 'holds' && verdict !== 'notUsed');
      await page.getByRole('button', { name: 'Print the list' }).waitFor();
      await page.getByText(new RegExp(`^${needing.length} sites shown$`)).waitFor();
      const pages = paperPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
      // A word may be drawn in several pieces: spaces between letters do not count.
      const squeezed = (one: string) => one.replaceAll(/\s/g, '');
      const text = squeezed(pages.map((one) => one.text).join(' '));
      const has = (one: string) => text.includes(squeezed(one));
      expect(needing.length).toBeGreaterThan(20);
      expect(needing.filter(({ siteId, name }) => !has(`${name} (${siteId.split('#')[0]})`))).toEqual([]);
      const told = text.match(/(?:tank|roof|unit|gutter|stand|tap|cup)(?:short|tight|unknown)/g) ?? [];
      // A row that cannot be used (a second S020) has no verdict.
      expect(told.length).toBeGreaterThanOrEqual(needing.filter(({ siteId }) => !siteId.includes('#')).length);
      expect(has('not safe to drink until it is treated and tested')).toBe(true);
      // What can only be pressed is of no use on paper.
      expect(['Find a village', 'Choose several', 'Print the list', 'Skip to the page'].filter(has)).toEqual([]);
      expect(text).not.toContain('?');
      for (const { width_pt, height_pt } of pages) {
        expect(width_pt).toBeCloseTo(a4_pt.width, -1);
        expect(height_pt).toBeCloseTo(a4_pt.height, -1);
      }
      await page.emulateMedia({ media: 'print', colorScheme: isDark ? 'dark' : 'light' });
      const colours = await page.evaluate(() => {
        const { color, backgroundColor } = getComputedStyle(document.body);
        return { color, ground: getComputedStyle(document.documentElement).backgroundColor, backgroundColor };
      });
      expect(colours).toMatchObject({ color: 'rgb(0, 0, 0)', ground: 'rgb(255, 255, 255)' });
    }
  },
);
