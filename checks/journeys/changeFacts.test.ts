import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

/** Opens the facts of a site to be changed, under a name. */
async function changing(page: Page, programmeId: string, siteId: string): Promise<void> {
  await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
  await page.goto(new URL(`/p/${programmeId}/sites/${siteId}`, page.url()).href);
  await page.getByRole('button', { name: 'Change the facts' }).click();
  await page.getByRole('textbox', { name: 'Length' }).first().waitFor();
}

/** What stands in a cell, as the program answers it. */
async function cell(page: Page, programmeId: string, siteId: string, table: string, column: string) {
  const at = new URL(`/api/programmes/${programmeId}/sites/${siteId}`, page.url()).href;
  const { rows } = (await (await page.request.get(at)).json()) as {
    rows: readonly { table: string; cells: Readonly<Record<string, string>> }[];
  };
  return rows.find((row) => row.table === table)?.cells[column] ?? null;
}

/** The first site of the demo with a roof whose sides are known. */
async function siteWithRoof(page: Page): Promise<{ programmeId: string; siteId: string; length: string }> {
  const { programmeId, sites } = await designedDemo(page);
  for (const { siteId } of sites) {
    const length = await cell(page, programmeId, siteId, 'roofs', 'length_m');
    if (length !== null && /^\d+\.\d$/.test(length)) return { programmeId, siteId, length };
  }
  throw new Error('no site of the demo has a roof with a length');
}

journey(
  'a number with a comma is saved; what is impossible is refused beside its field; undo takes it back',
  async ({ atDoor: page }) => {
    const { programmeId, siteId, length } = await siteWithRoof(page);
    await changing(page, programmeId, siteId);
    const lengthField = page.getByRole('textbox', { name: 'Length' }).first();
    const widthField = page.getByRole('textbox', { name: 'Width' }).first();
    await lengthField.fill('13,25');
    await widthField.fill('700');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const summary = page.locator(':focus');
    await expect
      .poll(() => summary.textContent())
      .toMatch(/one thing is to be mended first[\s\S]*Width: This must lie/);
    expect(await widthField.getAttribute('aria-invalid')).toBe('true');
    expect(await cell(page, programmeId, siteId, 'roofs', 'length_m')).toBe(length);

    // Leaving the page loses nothing that was typed.
    await page.reload();
    await page.getByRole('button', { name: 'Go on with it' }).click();
    expect(await lengthField.inputValue()).toBe('13,25');
    await widthField.fill('7.5');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Saved on this computer.').waitFor();
    expect(await cell(page, programmeId, siteId, 'roofs', 'length_m')).toBe('13.25');
    expect(await cell(page, programmeId, siteId, 'roofs', 'width_m')).toBe('7.5');

    await page.keyboard.press('Control+z');
    await page.getByText(/^Taken back: Nadi changed/).waitFor();
    await expect.poll(() => cell(page, programmeId, siteId, 'roofs', 'length_m')).toBe(length);
    await page.keyboard.press('Control+Shift+Z');
    await expect.poll(() => cell(page, programmeId, siteId, 'roofs', 'length_m')).toBe('13.25');
  },
);

journey('a cell that another changed meanwhile is asked about, and a choice settles it', async ({ atDoor: page }) => {
  const { programmeId, siteId } = await siteWithRoof(page);
  await changing(page, programmeId, siteId);
  const name = page.getByRole('textbox', { name: 'Name', exact: true });
  const before = await name.inputValue();
  await name.fill('Tullen ford');
  const at = new URL(`/api/programmes/${programmeId}/changes`, page.url());
  const change = { kind: 'edited', table: 'sites', key: siteId, before: { name: before }, after: { name: 'Osk' } };
  const made = await page.request.post(at.href, {
    headers: { origin: at.origin },
    data: { by: 'Amara', changes: [change] },
  });
  expect(made.ok()).toBe(true);
  await page.getByText('Somebody changed this to Osk after you began.').waitFor();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(() => page.locator(':focus').textContent()).toMatch(/Choose which stands/);
  expect(await cell(page, programmeId, siteId, 'sites', 'name')).toBe('Osk');
  await page.getByRole('button', { name: 'Save mine: Tullen ford' }).click();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Saved on this computer.').waitFor();
  expect(await cell(page, programmeId, siteId, 'sites', 'name')).toBe('Tullen ford');

  // Who said what stays to be read.
  await page.getByRole('button', { name: 'Tullen ford', exact: true }).first().click();
  const history = page.getByRole('dialog');
  await expect.poll(() => history.textContent()).toMatch(/Tullen ford[\s\S]*instead of Osk[\s\S]*Nadi[\s\S]*Amara/);
});
