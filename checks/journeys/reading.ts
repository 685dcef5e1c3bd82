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

/** What names in answers stand under: they are data, the same in every language. */
const namesStandUnder = ['name', 'siteId', 'key', 'area', 'gaugeId', 'programmeId', 'file', 'column', 'unit', 'by'];

/** What the server answered: every text, and those that are names. */
export interface Heard {
  readonly texts: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
}

/** Everything the server answers a page from here on. */
export function heardBy(page: Page): Heard {
  const [texts, names] = [new Set<string>(), new Set<string>()];
  const gather = (answer: unknown): void => {
    if (typeof answer !== 'object' || answer === null) return;
    for (const [key, value] of Object.entries(answer)) {
      if (typeof value === 'string') {
        const text = value.replaceAll(/\s+/g, ' ').trim();
        texts.add(text);
        if (namesStandUnder.includes(key)) names.add(text);
      }
      gather(value);
    }
  };
  page.on('response', async (response) => {
    if (!response.url().includes('/api/') || response.url().endsWith('/events')) return;
    gather(await response.json().catch(() => null));
  });
  return { texts, names };
}
