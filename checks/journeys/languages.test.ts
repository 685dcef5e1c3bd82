import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { atEveryPage } from './everyPage.ts';
import { journey } from './journey.ts';
import { inOneForm, messagesOf, textsOf } from './messages.ts';
import { heardBy, textsToRead } from './reading.ts';

/** Texts of English messages that no Spanish message has, with a word of more than two letters in them. */
function englishOnly(): readonly string[] {
  const spanish = new Set(messagesOf('es').flatMap(textsOf));
  const english = new Set(messagesOf('en').flatMap(textsOf));
  return [...english].filter((text) => !spanish.has(text) && /\p{L}{3}/u.test(text));
}

/** Is a text of English found in what stands on a page? One word alone only where it is all that stands there. */
const isIn = (piece: string, text: string) =>
  /\p{L}{2}\P{L}+\p{L}{2}/u.test(piece) ? ` ${text} `.includes(` ${piece} `) : text === piece;

/**
 * What is left of a text without what the server answered: names, and the sentences of a design, which are made in the languages
 * there are and in no other.
 */
function withoutAnswers(text: string, answered: ReadonlySet<string>): string {
  if (answered.has(text)) return '';
  const parts = [...answered].filter((part) => part.length > 2 && text.includes(part));
  return parts.sort((a, b) => b.length - a.length).reduce((left, part) => left.replaceAll(part, ' '), text);
}

journey('in Spanish no page has a text of English left', async ({ open }) => {
  const opened = await open({ language: 'es-PE' });
  const pieces = englishOnly();
  expect(pieces.length).toBeGreaterThan(30);
  expect(isIn('of the next', 'likely 2 to 8 of the next 10')).toBe(true);
  expect(await opened.page.locator('html').getAttribute('lang')).toMatch(/^es/);
  const { names } = heardBy(opened.page);
  await opened.page.reload();
  const found: string[] = [];
  await atEveryPage(opened, async (name) => {
    const texts = await textsToRead(opened.page);
    expect(texts.length).toBeGreaterThan(3);
    for (const text of texts) {
      const left = inOneForm(withoutAnswers(text, names));
      const piece = pieces.find((one) => isIn(one, left));
      if (piece !== undefined) found.push(`${name}: "${piece}" in "${text}"`);
    }
  });
  expect(found).toEqual([]);
});

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
const sameEverywhere = new RegExp(`Eavewell|\\b(?:NTU|ratio|DropZone)\\b|\\d+ (?:${months})|\\bat \\d+`, 'g');

journey('every text is a message of the languages or an answer: none is made in the pages', async ({ open }) => {
  const opened = await open({ chosen: 'en-XA' });
  await opened.page.getByRole('heading', { level: 1, name: '⟦' }).waitFor();
  const { texts: answered } = heardBy(opened.page);
  await opened.page.reload();
  const found: string[] = [];
  await atEveryPage(opened, async (name) => {
    for (const text of await textsToRead(opened.page)) {
      const rest = withoutAnswers(outsideBrackets(text), answered).replaceAll(sameEverywhere, '');
      if (/\p{L}{3}/u.test(rest)) found.push(`${name}: "${rest}"`);
    }
  });
  expect([...new Set(found)]).toEqual([]);
});

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
    for (const [chosen, direction] of [
      ['en-XA', 'ltr'],
      ['ar-XB', 'rtl'],
    ] as const) {
      const opened = await open({ chosen });
      starts[direction] = {};
      await atEveryPage(opened, async (name) => {
        for (const width of [1280, 360, 320]) {
          await opened.page.setViewportSize({ width, height: 800 });
          await opened.page.waitForTimeout(50);
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
