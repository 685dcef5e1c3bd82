import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { atEveryPage } from './everyPage.ts';
import { journey } from './journey.ts';

/** WCAG 2.2, levels A and AA, and what axe holds to be good practice. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** The rules that read colours: what else axe looks at is the same in every light. */
const ofColours = ['color-contrast', 'link-in-text-block'];

/** What axe finds, of any gravity, as lines: how grave, the rule, where. */
async function findings(page: Page, isOfColours: boolean): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  const { violations, passes } = await (isOfColours ? axe.withRules(ofColours) : axe.withTags(tags)).analyze();
  expect(passes.length, 'rules that had something to look at').toBeGreaterThan(isOfColours ? 0 : 10);
  return violations.flatMap(({ id, impact, help, nodes }) =>
    nodes.slice(0, 3).map(({ target, failureSummary }) => {
      const why = failureSummary?.replaceAll(/\s+/g, ' ');
      return `${impact} ${id} (${help}): ${target.join(' ')} ${why}`;
    }),
  );
}

const looks = [
  { isDark: false, width: 1280 },
  { isDark: false, width: 360 },
  { isDark: true, width: 1280 },
  { isDark: true, width: 360 },
];

for (const { isDark, width } of looks)
  journey(`axe finds nothing on any page, ${isDark ? 'dark' : 'light'}, ${width} px wide`, async ({ open }) => {
    const opened = await open({ isDark, width, height: 800 });
    const found: string[] = [];
    await atEveryPage(opened, async (name) => {
      found.push(...(await findings(opened.page, isDark)).map((one) => `${name}: ${one}`));
    });
    expect(found).toEqual([]);
  });

journey('what axe is there for is noticed: a picture without words, and pale text', async ({ page }) => {
  await page.evaluate(() => {
    document.body.innerHTML = '<main><h1>One</h1><p style="color:#ccc">pale</p><img src="/emblem.svg"></main>';
  });
  const all = (await findings(page, false)).join('\n');
  expect(all).toMatch(/critical image-alt/);
  expect(all).toMatch(/serious color-contrast/);
  expect(await findings(page, true)).toEqual([expect.stringMatching(/^serious color-contrast/)]);
});
