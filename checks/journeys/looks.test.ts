import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { atEveryPage } from './everyPage.ts';
import { journey } from './journey.ts';

/** How light a colour is, 0 black to 1 white. Source: wcag-2-2, relative luminance, from memory. */
function lightness(colour: string): number {
  const parts = [...colour.matchAll(/[\d.]+/g)].slice(0, 3).map(([part]) => Number(part) / 255);
  const [red = 0, green = 0, blue = 0] = parts.map((part) =>
    part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const coloursOf = (page: Page) =>
  page.evaluate(() => {
    const heading = document.querySelector('h1')!;
    return { ground: getComputedStyle(document.documentElement).backgroundColor, ink: getComputedStyle(heading).color };
  });

journey('light is dark on light and dark is light on dark, on every page', async ({ open }) => {
  for (const isDark of [false, true]) {
    const opened = await open({ isDark });
    await atEveryPage(opened, async (name) => {
      const { ground, ink } = await coloursOf(opened.page);
      const [paper, text] = [lightness(ground), lightness(ink)];
      expect(paper > text, name).toBe(!isDark);
      // wcag-2-2, 1.4.6: 7 : 1, which the look asks of its text.
      expect((Math.max(paper, text) + 0.05) / (Math.min(paper, text) + 0.05), name).toBeGreaterThanOrEqual(7);
    });
  }
});

journey('who asks for stillness sees nothing move', async ({ open }) => {
  const opened = await open({ isStill: true });
  await atEveryPage(opened, async (name) => {
    const moving = await opened.page.evaluate(
      () => document.getAnimations().filter(({ playState }) => playState === 'running').length,
    );
    expect(moving, name).toBe(0);
  });
});

/** What is drawn with a colour the person did not choose, among what is pressed and what tells a verdict. */
const unseen = (page: Page) =>
  page.evaluate(() => {
    const ground = getComputedStyle(document.body).backgroundColor;
    const marks = [...document.querySelectorAll('main svg path, main svg rect, main svg line, main svg circle')];
    const isGone = (one: Element) => {
      const { fill, stroke, visibility } = getComputedStyle(one);
      const isNone = (colour: string) => colour === 'none' || colour === ground || /^rgba.*, 0\)$/.test(colour);
      return visibility === 'visible' && isNone(fill) && isNone(stroke);
    };
    return marks.filter(isGone).map((one) => one.outerHTML.slice(0, 120));
  });

journey('in the colours a person chose, nothing is lost: marks are drawn and focus is seen', async ({ open }) => {
  for (const isDark of [false, true]) {
    const opened = await open({ isForced: true, isDark });
    const { page } = opened;
    await atEveryPage(opened, async (name) => {
      expect(await unseen(page), name).toEqual([]);
      await page.keyboard.press('Tab');
      const focus = await page.evaluate(() => {
        const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement!);
        return { outlineStyle, width_px: Number.parseFloat(outlineWidth) };
      });
      expect(focus.outlineStyle, name).not.toBe('none');
      expect(focus.width_px, name).toBeGreaterThanOrEqual(2);
    });
  }
});
