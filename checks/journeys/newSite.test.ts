import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

journey(
  'a new site: what is not saved is said, it is seen where it stands, and undo tells it from others',
  async ({ open }) => {
    const { page, watch } = await open({ isAtDoor: true });
    // What is asked of a site while it is being taken back is not there any more.
    watch.expect(/status of 404/);
    const { programmeId } = await designedDemo(page);
    await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
    await page.goto(new URL(`/p/${programmeId}/new-site`, page.url()).href);
    const name = page.getByRole('textbox', { name: /^Name/ }).first();
    await name.waitFor();
    const head = page.getByRole('banner');
    // Nothing was typed: nothing is unsaved, neither in the head nor at the foot.
    await expect.poll(() => head.textContent()).toContain('All saved on this computer');
    await page.getByText('Nothing changed yet.').waitFor();
    await name.fill('Pellanta at the long bend of the river below the old landing');
    await head.getByText('One change not yet saved.').waitFor();
    // It is so on another page as well, until it is saved or let go.
    await page.goto(new URL(`/p/${programmeId}/settings`, page.url()).href);
    await head.getByText('One change not yet saved.').waitFor();
    await page.goBack();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: /^Pellanta/ }).waitFor();
    await head.getByText(/^All saved on this computer/).waitFor();

    const undo = page.getByRole('button', { name: /^Undo: Nadi added site Pellanta at the long bend/ });
    await undo.click();
    await page.getByText(/^Taken back: Nadi added site Pellanta/).waitFor();
    await page.getByRole('button', { name: /^Redo: Nadi added site Pellanta/ }).waitFor();
    // However long the sentences, the head of a laptop stays one line of its name and two of small print.
    await expect.poll(async () => (await head.boundingBox())!.height).toBeLessThan(70);
  },
);

journey('what a programme began with is not undone by one press', async ({ atDoor: page }) => {
  const { programmeId, sites } = await designedDemo(page);
  await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
  await page.goto(new URL(`/p/${programmeId}/changes`, page.url()).href);
  await page.getByRole('button', { name: /^Undo:/ }).waitFor();
  await page.getByRole('heading', { level: 1 }).click();
  const count = async () => {
    const at = new URL(`/api/programmes/${programmeId}/tables/sites`, page.url()).href;
    return ((await (await page.request.get(at)).json()) as { rows: readonly unknown[] }).rows.length;
  };
  const before = await count();
  await page.keyboard.press('Control+z');
  const ask = page.getByRole('alertdialog', { name: 'Take back all this programme began with?' });
  await ask.waitFor();
  // The press that changes nothing has the focus.
  await page.keyboard.press('Enter');
  await ask.waitFor({ state: 'detached' });
  expect(await count()).toBe(before);
  expect(before).toBeGreaterThanOrEqual(sites.length);
  await page.keyboard.press('Control+z');
  await ask.getByRole('button', { name: 'Take it back' }).click();
  await page.getByText(/^Taken back:/).waitFor();
  expect(await count()).toBe(0);
  await page.getByRole('button', { name: /^Redo:/ }).click();
  await page.getByText(/^Done again:/).waitFor();
  expect(await count()).toBe(before);
});

journey('a page that is no list is printed without what can only be pressed', async ({ atDoor: page }) => {
  const { programmeId } = await designedDemo(page);
  await page.goto(new URL(`/p/${programmeId}/settings`, page.url()).href);
  await page.getByRole('heading', { level: 1, name: 'Settings' }).waitFor();
  await page.emulateMedia({ media: 'print' });
  // biome-ignore lint/performance/useDomNodeTextContent: what is not shown on paper is not to be among it
  const seen = await page.locator('body').innerText();
  for (const pressed of ['Sites', 'All saved', 'Undo', 'History', 'Gauges', 'Save'])
    expect(seen).not.toContain(pressed);
  expect(seen).toContain('Days with all litres');
});
