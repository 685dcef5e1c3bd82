import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { appLanguages } from '@eavewell/words/app';
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { repository } from '../rules/repository.ts';
import { readingJourney } from './journey.ts';
import { messagesOf } from './messages.ts';

/** Signs that figures and drawings of this trade want, whether a message uses them yet or not. */
const wanted = [...'±×÷−–…·°²³½¼¾µ≤≥≈→←↑↓▽Ø'];

/**
 * Signs the typeface does not have as it is carried (in pieces by script): the system's own face draws them, another on each
 * computer. No message may use one; the level sign ▽ is drawn as a shape.
 */
const notCarried = [...'≤≥≈→←▽'];

/** What a message does use though the typeface lacks it: π, in one formula; the faces of Windows, macOS, Android and Debian have it. */
const leftToTheSystem = ['π'];

/** Which of these characters a file of ours draws, asked of the browser itself. */
async function drawnByOurs(page: Page, context: BrowserContext, characters: readonly string[], weight: number) {
  await page.evaluate(
    async ({ characters, weight }) => {
      const spans = characters.map((character) => {
        const span = document.createElement('span');
        span.className = 'tried';
        span.style.fontWeight = String(weight);
        span.textContent = character;
        return span;
      });
      const tried = document.createElement('p');
      tried.append(...spans);
      document.querySelectorAll('.tried').forEach((one) => {
        one.remove();
      });
      document.body.append(tried);
      await document.fonts.load(`${weight} 16px Andika`, characters.join(''));
      await document.fonts.ready;
    },
    { characters, weight },
  );
  const asked = await context.newCDPSession(page);
  await asked.send('DOM.enable');
  await asked.send('CSS.enable');
  const { root } = await asked.send('DOM.getDocument', { depth: -1 });
  const { nodeIds } = await asked.send('DOM.querySelectorAll', { nodeId: root.nodeId, selector: '.tried' });
  const drawn = new Set<string>();
  for (const [index, nodeId] of nodeIds.entries()) {
    const { fonts } = await asked.send('CSS.getPlatformFontsForNode', { nodeId });
    if (fonts.length > 0 && fonts.every(({ isCustomFont }) => isCustomFont)) drawn.add(characters[index]!);
  }
  await asked.detach();
  return drawn;
}

readingJourney(
  'every letter of every language is drawn by the typeface that is carried, in both weights',
  async ({ open }) => {
    const { page, context, watch } = await open();
    // The browser's own tools read a style sheet again for themselves, without the page's cookie.
    watch.expect(/status of 403/);
    // Languages for paper alone are set by the faces of paper.
    const languages = readdirSync(join(repository, 'packages/words/languages'))
      .map((file) => basename(file, '.json'))
      .filter((code) => appLanguages.some((one) => one.code === code));
    expect(languages).toContain('es');
    // A terminal has a typeface of its own.
    const used = new Set(
      languages.flatMap((code) => messagesOf(code, ['commandLine']).flatMap((message) => [...message])),
    );
    const letters = [...used].filter((character) => !/\s/u.test(character)).sort();
    expect(letters.length).toBeGreaterThan(80);
    expect(letters.filter((letter) => notCarried.includes(letter))).toEqual([]);
    for (const weight of [400, 700]) {
      const all = [...new Set([...letters, ...wanted])];
      const drawn = await drawnByOurs(page, context, all, weight);
      expect(all.filter((letter) => !drawn.has(letter)).sort()).toEqual([...notCarried, ...leftToTheSystem].sort());
    }
  },
);
