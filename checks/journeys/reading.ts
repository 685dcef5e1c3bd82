import type { Page } from 'playwright-core';

/** Everything a page gives to read: texts that are seen, and those that are only spoken or shown when pointed at. */
export function textsToRead(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const found: string[] = [document.title];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const around = node.parentElement!;
      if (around.closest('script,style,template') === null && around.getClientRects().length > 0)
        found.push(node.textContent ?? '');
    }
    const attributes = [
      'aria-label',
      'aria-description',
      'aria-roledescription',
      'aria-valuetext',
      'title',
      'placeholder',
      'alt',
    ];
    for (const one of document.querySelectorAll(attributes.map((name) => `[${name}]`).join(',')))
      for (const name of attributes) found.push(one.getAttribute(name) ?? '');
    return [...new Set(found.map((text) => text.replaceAll(/\s+/g, ' ').trim()))].filter((text) => text !== '');
  });
}

/** Every text in what the server answered: data, and sentences it made. */
export function textsIn(answer: unknown): readonly string[] {
  if (typeof answer === 'string') return [answer];
  if (typeof answer !== 'object' || answer === null) return [];
  return Object.entries(answer).flatMap(([key, value]) => [key, ...textsIn(value)]);
}
