import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

/** The page of what happened, with the form of a carrier that broke filled in. */
async function filledIn(page: Page, at: string, reason: string) {
  await page.goto(at);
  await page.getByRole('button', { name: 'One broke or is away' }).click();
  const form = page.locator('form.short-form');
  await form.getByRole('combobox').first().selectOption({ index: 1 });
  await form.getByLabel('First day').fill('2027-03-01');
  await form.getByLabel('Why').fill(reason);
  return form;
}

async function absencesFor(page: Page, programmeId: string, reason: string): Promise<number> {
  const at = new URL(`/api/programmes/${programmeId}/tables/carriersAway`, page.url()).href;
  const { rows } = (await (await page.request.get(at)).json()) as {
    rows: readonly { readonly cells: Readonly<Record<string, string>> }[];
  };
  return rows.filter(({ cells }) => cells['reason'] === reason).length;
}

const isKept = (page: Page, programmeId: string) =>
  page.evaluate((name) => localStorage.getItem(name) !== null, `eavewell.draft.${programmeId}.happened`);

journey(
  'without a name nothing is entered: the field that asks for it has the focus, with why beside it',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    const form = await filledIn(page, new URL(`/p/${programmeId}/rollout/happened`, page.url()).href, 'a broken shaft');
    await form.getByRole('button', { name: 'Enter it' }).click();
    const name = page.getByLabel('Your name');
    await expect.poll(() => name.evaluate((field) => field === document.activeElement)).toBe(true);
    const about = page.locator(`#${await name.getAttribute('aria-describedby')}`);
    expect(await about.textContent()).toMatch(/^Say your name/);
    const [field, why] = [(await name.boundingBox())!, (await about.boundingBox())!];
    expect(Math.abs(field.y - why.y)).toBeLessThan(60);
    expect(await absencesFor(page, programmeId, 'a broken shaft')).toBe(0);
  },
);

journey(
  'what was entered is no draft any more from the moment it is answered, however long the plan takes; sent twice it is one',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    const happened = new URL(`/p/${programmeId}/rollout/happened`, page.url()).href;
    await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
    const form = await filledIn(page, happened, 'a broken shaft');

    // The plan takes its time; the entry does not.
    let isHeld = true;
    await page.route(/\/rollout(\?|$)/, async (route) => {
      while (isHeld) await new Promise((later) => setTimeout(later, 50));
      await route.continue().catch(() => undefined);
    });
    const answered = page.waitForResponse((answer) => answer.url().endsWith('/changes'));
    await form.getByRole('button', { name: 'Enter it' }).click();
    expect((await answered).ok()).toBe(true);
    await expect.poll(() => isKept(page, programmeId), { timeout: 5000 }).toBe(false);
    await expect.poll(() => page.getByText(/not yet saved/).count()).toBe(0);
    expect(await absencesFor(page, programmeId, 'a broken shaft')).toBe(1);
    isHeld = false;
    await form.waitFor({ state: 'detached' });

    // The answer to it never came, and whoever comes back enters it again: it is one all the same.
    let isAnswered = false;
    await page.route('**/changes', async (route) => {
      if (isAnswered) await route.continue();
      else await route.fetch();
    });
    const again = await filledIn(page, happened, 'no more fuel');
    await again.getByRole('button', { name: 'Enter it' }).click();
    await expect.poll(() => absencesFor(page, programmeId, 'no more fuel')).toBe(1);
    await page.goto(happened);
    await page.getByText(/What you typed here on/).waitFor();
    isAnswered = true;
    const found = page.locator('form.short-form');
    await found.getByRole('button', { name: 'Enter it' }).click();
    await found.waitFor({ state: 'detached' });
    expect(await absencesFor(page, programmeId, 'no more fuel')).toBe(1);
  },
  180_000,
);
