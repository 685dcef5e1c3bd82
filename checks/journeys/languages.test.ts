import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { atEveryPage } from './everyPage.ts';
import { journey, type Opened } from './journey.ts';
import { brackets, inOneForm, languageFile, textsOf, trialLanguage } from './messages.ts';
import { textsIn, textsToRead } from './reading.ts';

/** Texts of English messages that no Spanish message has, with a word of more than two letters in them. */
function englishOnly(): readonly string[] {
  const [english, spanish] = [languageFile('en'), languageFile('es')].map(({ sections }) =>
    Object.values(sections).flatMap((section) => Object.values(section).flatMap(textsOf)),
  );
  const known = new Set(spanish);
  return [...new Set(english)].filter((text) => !known.has(text) && /\p{L}{3}/u.test(text));
}

/** Is a text of English found in what stands on a page? One word alone only where it is all that stands there. */
const isIn = (piece: string, text: string) => (/\p{L}+\s+\p{L}+/u.test(piece) ? text.includes(piece) : text === piece);

journey('in Spanish no page has a text of English left', async ({ open }) => {
  const opened = await open({ language: 'es-PE' });
  const pieces = englishOnly();
  expect(pieces.length).toBeGreaterThan(30);
  expect(await opened.page.locator('html').getAttribute('lang')).toMatch(/^es/);
  const found: string[] = [];
  const answered = heard(opened.page);
  await opened.page.reload();
  await atEveryPage(opened, async (name) => {
    const texts = await textsToRead(opened.page);
    expect(texts.length).toBeGreaterThan(3);
    for (const text of texts) {
      // Names are data. Sentences of the program itself are still English: docs/next.md.
      if (answered.has(text)) continue;
      const piece = pieces.find((one) => isIn(one, text));
      if (piece !== undefined) found.push(`${name}: "${piece}" in "${text}"`);
    }
  });
  expect(found).toEqual([]);
});

/** Keeps every text the server answers from now on: data, and sentences it makes. */
function heard(page: Page): ReadonlySet<string> {
  const answered = new Set<string>();
  page.on('response', async (response) => {
    if (!response.url().includes('/api/') || response.url().endsWith('/events')) return;
    for (const text of textsIn(await response.json().catch(() => null))) answered.add(inOneForm(text));
  });
  return answered;
}

/** Gives the pages a language for trial in place of English. */
async function speakTrial(context: BrowserContext, direction: 'ltr' | 'rtl'): Promise<void> {
  await context.route('**/assets/*.js', async (route) => {
    const answer = await route.fetch();
    const text = await answer.text();
    const isEnglish = /^(?:const|var|let) \w+=\{code:[`"]en[`"]/.test(text);
    await route.fulfill(isEnglish ? { response: answer, body: trialLanguage(direction) } : { response: answer });
  });
}

/** The program in a language for trial, and everything the server answered. */
async function openedInTrial(opened: Opened, direction: 'ltr' | 'rtl'): Promise<ReadonlySet<string>> {
  const { page, context } = opened;
  await speakTrial(context, direction);
  const answered = heard(page);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: brackets[0] }).first().waitFor();
  return answered;
}

/** What stands outside the brackets of a text. */
function outsideBrackets(text: string): string {
  let depth = 0;
  let outside = '';
  for (const letter of text) {
    if (letter === brackets[0]) depth++;
    else if (letter === brackets[1]) depth--;
    else if (depth === 0) outside += letter;
  }
  return outside;
}

journey(
  'every text is a message of the languages, or an answer of the program: none is made in the pages',
  async ({ open }) => {
    const opened = await open();
    const answered = await openedInTrial(opened, 'ltr');
    const found: string[] = [];
    await atEveryPage(opened, async (name) => {
      for (const text of await textsToRead(opened.page)) {
        const rest = outsideBrackets(text).trim();
        // Names the program has for itself, for units and for what has no words: the same in every language.
        const isNamed = !/\p{L}{3}/u.test(rest) || rest === 'Eavewell' || answered.has(rest);
        if (!isNamed) found.push(`${name}: "${rest}"`);
      }
    });
    expect(found).toEqual([]);
  },
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

journey(
  'a language that is 40 % longer fits, and one that runs from right to left is drawn as in a mirror',
  async ({ open }) => {
    const starts: Record<string, Record<string, number>> = {};
    const found: string[] = [];
    for (const direction of ['ltr', 'rtl'] as const) {
      const opened = await open();
      await openedInTrial(opened, direction);
      starts[direction] = {};
      await atEveryPage(opened, async (name) => {
        for (const width of [1280, 360, 320]) {
          await opened.page.setViewportSize({ width, height: 800 });
          const { isRightToLeft, start, tooWide } = await placeOfHeading(opened.page);
          expect(isRightToLeft).toBe(direction === 'rtl');
          starts[direction]![`${name} at ${width}`] = start;
          if (tooWide > 0) found.push(`${name}, ${direction}, at ${width}: ${tooWide} px too wide`);
        }
      });
    }
    expect(found).toEqual([]);
    expect(starts['rtl']).toEqual(starts['ltr']);
  },
);
