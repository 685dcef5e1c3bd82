import type { Page } from 'playwright-core';

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

/** What is drawn with a colour the person did not choose, among what is pressed and what tells a verdict. */
export const unseen = (page: Page) =>
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

/** What is wrong with the first heading and the ground it stands on; nothing where it is dark on light, or light on dark, and far enough from it. */
export async function faultsOfLight(page: Page, isDark: boolean): Promise<readonly string[]> {
  const { ground, ink } = await coloursOf(page);
  const [paper, text] = [lightness(ground), lightness(ink)];
  const ratio = (Math.max(paper, text) + 0.05) / (Math.min(paper, text) + 0.05);
  return [
    ...(paper > text === !isDark ? [] : [`${ink} on ${ground} is ${isDark ? 'dark on light' : 'light on dark'}`]),
    // wcag-2-2, 1.4.6: 7 : 1, which the look asks of its text.
    ...(ratio >= 7 ? [] : [`${ink} on ${ground}: ${ratio.toFixed(1)} : 1`]),
  ];
}

/** Goes to the next thing that can have the focus; what is wrong with how it is seen there. */
export async function faultsOfFocus(page: Page): Promise<readonly string[]> {
  await page.keyboard.press('Tab');
  const { outline, width_px } = await page.evaluate(() => {
    const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement!);
    return { outline: outlineStyle, width_px: Number.parseFloat(outlineWidth) };
  });
  return outline !== 'none' && width_px >= 2 ? [] : [`the focus is seen by a line of ${width_px} px, ${outline}`];
}

/** How many things on a page move. */
export const movingCount = (page: Page) =>
  page.evaluate(() => document.getAnimations().filter(({ playState }) => playState === 'running').length);
