import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { atEveryPage } from './everyPage.ts';
import { journey } from './journey.ts';

/** What axe finds against WCAG 2.2 A and AA and its own good practice, as lines: rule, how grave, where. */
async function findings(page: Page): Promise<readonly string[]> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations, passes } = await new AxeBuilder({ page }).withTags(tags).analyze();
  expect(passes.length, 'rules that axe could try').toBeGreaterThan(10);
  return violations.flatMap(({ id, impact, help, nodes }) =>
    nodes
      .slice(0, 3)
      .map(({ target, failureSummary }) => `${impact} ${id} (${help}): ${target.join(' ')} ${failureSummary}`),
  );
}

for (const isDark of [false, true])
  journey(
    `axe finds nothing on any page, ${isDark ? 'dark' : 'light'}, on a laptop and on a phone`,
    async ({ open }) => {
      const { page, watch } = await open({ isDark });
      watch.expect(/status of 404/);
      const demo = await designedDemo(page);
      const found: string[] = [];
      await atEveryPage(page, demo, async (name) => {
        for (const width of [1280, 360]) {
          await page.setViewportSize({ width, height: 800 });
          found.push(...(await findings(page)).map((one) => `${name} at ${width}: ${one}`));
        }
      });
      expect(found).toEqual([]);
    },
  );
