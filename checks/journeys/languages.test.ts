import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { withoutAnswers } from './englishLeft.ts';
import { atEveryPage, laidOut } from './everyPage.ts';
import { type Opened, readingJourney } from './journey.ts';
import { inOneForm } from './messages.ts';
import { heardBy, textsToRead } from './reading.ts';

/** What stands outside the brackets that every message of the language for trial has at its ends; a message may be cut in two. */
function outsideBrackets(text: string): string {
  const [first, last] = [text.indexOf('⟦'), text.indexOf('⟧')];
  let depth = last >= 0 && (first < 0 || last < first) ? 1 : 0;
  let outside = '';
  for (const letter of text) {
    if (letter === '⟦') depth++;
    else if (letter === '⟧') depth--;
    else if (depth === 0) outside += letter;
  }
  return inOneForm(outside);
}

const months = 'January|February|March|April|May|June|July|August|September|October|November|December';

/** What is no message: our name, units, dates as the browser writes them, and the word of a library for a place to drop files. */
const sameEverywhere = new RegExp(
  `Eavewell|\\b(?:NTU|ratio|DropZone)\\b|\\d+ (?:${months})|^(?:${months}|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec)[\\s\\d]*$|\\bat \\d+`,
  'g',
);

/** Where the first heading begins, from the side a line begins at [px]; and how much too wide the page is. */
const placeOfHeading = (page: Page) =>
  page.evaluate(() => {
    const range = document.createRange();
    range.selectNodeContents(document.querySelector('h1')!);
    const { left, right } = range.getBoundingClientRect();
    const isRightToLeft = getComputedStyle(document.body).direction === 'rtl';
    const tooWide = document.documentElement.scrollWidth - window.innerWidth;
    return { isRightToLeft, start: Math.round(isRightToLeft ? window.innerWidth - right : left), tooWide };
  });

/** Where headings begin on a page at each width, and what is too wide there. */
async function placesOf({ page }: Opened, name: string, isRightToLeft: boolean) {
  const [starts, tooWide]: [Record<string, number>, string[]] = [{}, []];
  for (const width of [1280, 360, 320]) {
    await page.setViewportSize({ width, height: 800 });
    await laidOut(page);
    const place = await placeOfHeading(page);
    expect(place.isRightToLeft).toBe(isRightToLeft);
    starts[`${name} at ${width}`] = place.start;
    if (place.tooWide > 0) tooWide.push(`${name} at ${width}: ${place.tooWide} px too wide`);
  }
  await page.setViewportSize({ width: 1280, height: 800 });
  return { starts, tooWide };
}

/** Where headings begin in the language for trial that runs from the left: that which runs from the right is its mirror. */
const startsFromLeft: Record<string, number> = {};

readingJourney(
  'every text is a message of the languages or an answer, none is made in the pages; and a language that is 40 % longer fits',
  async ({ open }) => {
    const opened = await open({ chosen: 'en-XA' });
    await opened.page.getByRole('heading', { level: 1, name: '⟦' }).waitFor();
    const { texts: answered } = heardBy(opened.page);
    await opened.page.reload();
    const [made, wide]: [string[], string[]] = [[], []];
    await atEveryPage(opened, async (name) => {
      for (const text of await textsToRead(opened.page)) {
        const rest = withoutAnswers(outsideBrackets(text), answered).replaceAll(sameEverywhere, '');
        if (/\p{L}{3}/u.test(rest)) made.push(`${name}: "${rest}"`);
      }
      const { starts, tooWide } = await placesOf(opened, name, false);
      Object.assign(startsFromLeft, starts);
      wide.push(...tooWide);
    });
    expect.soft([...new Set(made)], 'texts that are no messages').toEqual([]);
    expect.soft(wide, 'pages too wide').toEqual([]);
  },
);

readingJourney('a language that runs from right to left fits, and is drawn as in a mirror', async ({ open }) => {
  const opened = await open({ chosen: 'ar-XB' });
  const startsFromRight: Record<string, number> = {};
  const wide: string[] = [];
  await atEveryPage(opened, async (name) => {
    const { starts, tooWide } = await placesOf(opened, name, true);
    Object.assign(startsFromRight, starts);
    wide.push(...tooWide);
  });
  expect.soft(wide, 'pages too wide').toEqual([]);
  expect(Object.keys(startsFromLeft).length).toBeGreaterThan(40);
  expect(startsFromRight).toEqual(startsFromLeft);
});
