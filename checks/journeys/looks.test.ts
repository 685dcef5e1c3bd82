import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axeFindings } from './axeFindings.ts';
import { faultsOfFocus, faultsOfLight, movingCount, unseen } from './colours.ts';
import { englishLeft, englishOnly, pieceIn, pieceOf } from './englishLeft.ts';
import { atEveryPage, laidOut } from './everyPage.ts';
import { readingJourney } from './journey.ts';
import { heardBy } from './reading.ts';
import { screens, sidewaysCauses, smallTargets } from './screens.ts';

/** What was found, by what was looked for: nothing where all is right. */
class Found {
  private readonly lists = new Map<string, string[]>();

  add(of: string, name: string, lines: readonly string[]): void {
    this.lists.set(of, [...(this.lists.get(of) ?? []), ...lines.map((line) => `${name}: ${line}`)]);
  }

  /** Fails for each thing looked for that was found, or was looked for at fewer places than two. */
  expectNothing(...all: readonly string[]): void {
    expect([...this.lists.keys()].sort()).toEqual([...all].sort());
    for (const [of, lines] of this.lists) expect.soft(lines, of).toEqual([]);
  }
}

/** Gives a page the size of a screen, and waits until it is laid out for it. */
async function onScreen(page: Page, width: number, height: number): Promise<void> {
  await page.setViewportSize({ width, height });
  await laidOut(page);
}

// Each page is loaded twice, as two people have it, and looked at in all ways that need no loading of its own: a narrower screen
// and other colours reach an open page as they reach one that opens (docs/decisions/0240-one-visit-many-looks.md).

readingJourney(
  'every page on a laptop by day: axe finds nothing, dark stands on light, nothing scrolls sideways at any width or zoom, and what is pressed is large enough',
  async ({ open }) => {
    const opened = await open({ width: 1280, height: 800 });
    const { page } = opened;
    const found = new Found();
    await atEveryPage(opened, async (name) => {
      found.add('light', name, await faultsOfLight(page, false));
      found.add('axe, 1280 px', name, await axeFindings(page, 'all'));
      for (const { name: at, width, height, least } of screens) {
        await onScreen(page, width, height);
        const causes = [...(await sidewaysCauses(page)), ...(await smallTargets(page, least))];
        found.add('sizes', `${name} on ${at}`, causes);
        if (width === 360) found.add('axe of colours, 360 px', name, await axeFindings(page, 'colours'));
      }
      await onScreen(page, 1280, 800);
    });
    found.expectNothing('light', 'axe, 1280 px', 'axe of colours, 360 px', 'sizes');
  },
);

readingJourney(
  'every page on a phone by night, of a person who speaks Spanish and asks for stillness and then for colours of their own: axe finds nothing, no English is left, light stands on dark, nothing moves, marks are drawn and focus is seen',
  async ({ open }) => {
    const opened = await open({ width: 360, height: 800, isDark: true, isStill: true, language: 'es-PE' });
    const { page } = opened;
    const pieces = englishOnly();
    expect(pieces.length).toBeGreaterThan(30);
    expect(pieceIn([pieceOf('of the next')], 'likely 2 to 8 of the next 10')).toBeDefined();
    expect(await page.locator('html').getAttribute('lang')).toMatch(/^es/);
    const { names } = heardBy(page);
    await page.reload();
    const found = new Found();
    await atEveryPage(opened, async (name) => {
      const moving = await movingCount(page);
      found.add('stillness', name, moving === 0 ? [] : [`${moving} move`]);
      found.add('dark', name, await faultsOfLight(page, true));
      found.add('axe, 360 px', name, await axeFindings(page, 'all'));
      found.add('English left', name, await englishLeft(page, names, pieces));
      await onScreen(page, 1280, 800);
      found.add('English left', name, await englishLeft(page, names, pieces));
      found.add('axe of colours, 1280 px', name, await axeFindings(page, 'colours'));
      for (const colorScheme of ['dark', 'light'] as const) {
        await page.emulateMedia({ forcedColors: 'active', colorScheme });
        await laidOut(page);
        found.add(`own colours, ${colorScheme}: marks`, name, await unseen(page));
        found.add(`own colours, ${colorScheme}: focus`, name, await faultsOfFocus(page));
      }
      await page.emulateMedia({ forcedColors: 'none', colorScheme: 'dark' });
      await onScreen(page, 360, 800);
    });
    const ofOwnColours = ['dark', 'light'].flatMap((one) =>
      ['marks', 'focus'].map((of) => `own colours, ${one}: ${of}`),
    );
    found.expectNothing(
      ...['stillness', 'dark', 'axe, 360 px', 'English left', 'axe of colours, 1280 px'],
      ...ofOwnColours,
    );
  },
);

readingJourney('what axe is there for is noticed: a picture without words, and pale text', async ({ page }) => {
  await page.evaluate(() => {
    document.body.innerHTML = '<main><h1>One</h1><p style="color:#ccc">pale</p><img src="/emblem.svg"></main>';
  });
  const all = (await axeFindings(page, 'all')).join('\n');
  expect(all).toMatch(/critical image-alt/);
  expect(all).toMatch(/serious color-contrast/);
  expect(await axeFindings(page, 'colours')).toEqual([expect.stringMatching(/^serious color-contrast/)]);
});

readingJourney('a page too wide and a thing too small to press are noticed', async ({ page }) => {
  await page.evaluate(() => {
    const wide = document.createElement('div');
    wide.innerHTML =
      '<div style="width:2000px">wide</div><button style="width:20px;height:20px;min-height:0;min-width:0;padding:0">x</button>';
    document.body.append(wide);
  });
  expect(await sidewaysCauses(page)).toEqual(expect.arrayContaining([expect.stringMatching(/too wide/)]));
  expect(await smallTargets(page, { all: 24, buttons: 24 })).toEqual([expect.stringMatching(/^20 × 20 px/)]);
});

readingJourney(
  'light, stillness and colours of a person are given to an open page, and faults of them noticed',
  async ({ open }) => {
    const { page } = await open({ isDark: true, isStill: true });
    const state = () =>
      page.evaluate(() =>
        ['(prefers-color-scheme: dark)', '(prefers-reduced-motion: reduce)', '(forced-colors: active)'].map(
          (asked) => matchMedia(asked).matches,
        ),
      );
    expect(await state()).toEqual([true, true, false]);
    expect(await faultsOfLight(page, true)).toEqual([]);
    expect(await faultsOfLight(page, false)).toEqual([expect.stringMatching(/ is light on dark$/)]);
    await page.emulateMedia({ forcedColors: 'active', colorScheme: 'light' });
    expect(await state()).toEqual([false, true, true]);
    await page.emulateMedia({ forcedColors: 'none', colorScheme: 'light' });
    expect(await state()).toEqual([false, true, false]);
    // The page is told of another light by an event of its own.
    await expect.poll(() => faultsOfLight(page, false)).toEqual([]);
    await page.evaluate(() => {
      const none = '<rect width="9" height="9" style="fill:none;stroke:none"/>';
      document.body.innerHTML = `<main><svg>${none}</svg><button style="outline:none">x</button></main>`;
      document.body.animate([{ opacity: 1 }, { opacity: 0.5 }], { duration: 1000, iterations: 99 });
    });
    expect(await unseen(page)).toEqual([expect.stringMatching(/^<rect/)]);
    expect(await faultsOfFocus(page)).toEqual([expect.stringMatching(/none$/)]);
    expect(await movingCount(page)).toBe(1);
  },
);
