import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** WCAG 2.2, levels A and AA, and what axe holds to be good practice. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** The rules that read colours: what else axe looks at is the same in every light. */
const ofColours = ['color-contrast', 'link-in-text-block'];

/** What axe finds, of any gravity, as lines: how grave, the rule, where. */
export async function axeFindings(page: Page, look: 'all' | 'colours'): Promise<readonly string[]> {
  // Half a megabyte of script is given to a page once: what asks again finds it there.
  const isThere = await page.evaluate(() => 'axe' in window);
  const axe = new AxeBuilder(isThere ? { page, axeSource: 'void 0' } : { page })
    .setLegacyMode()
    .options({ resultTypes: ['violations'] });
  const asked = look === 'colours' ? axe.withRules(ofColours) : axe.withTags(tags);
  const { violations, passes } = await asked.analyze();
  expect(passes.length, 'rules that had something to look at').toBeGreaterThan(look === 'colours' ? 0 : 10);
  return violations.flatMap(({ id, impact, help, nodes }) =>
    nodes.slice(0, 3).map(({ target, html, failureSummary }) => {
      const why = failureSummary?.replaceAll(/\s+/g, ' ');
      return `${impact} ${id} (${help}): ${target.join(' ')} ${html.slice(0, 200)} ${why}`;
    }),
  );
}
