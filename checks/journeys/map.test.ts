/// <reference lib="dom" />
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { tinyMap } from '../faults/tinyMap.ts';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';
import type { Watch } from './watch.ts';

/** Opens the map of the demo programme. */
async function openMap(page: Page) {
  const demo = await designedDemo(page);
  await page.goto(new URL(`/p/${demo.programmeId}/map`, page.url()).href);
  const map = page.getByRole('group', { name: /^Map of \d+ sites?$/ });
  await map.waitFor();
  return { demo, map };
}

/** The length of the map's scale, as it is written beside it [km]. */
async function scale_km(page: Page): Promise<number> {
  const text = (await page.locator('.map-scale').textContent()) ?? '';
  const amount = Number(text.replace(/[^\d.]/g, ''));
  return text.includes('km') ? amount : amount / 1000;
}

journey('the map is moved and a site on it chosen with the keyboard alone', async ({ atDoor: page }) => {
  const { demo, map } = await openMap(page);
  const worst = demo.sites.filter(({ verdict }) => verdict === 'short').map(({ name }) => name);
  await map.focus();
  await page.keyboard.press('PageDown');
  const told = map.getByRole('status');
  await told.filter({ hasText: /: short\. 1 of \d+\.$/ }).waitFor();
  const name = ((await told.textContent()) ?? '').split(':')[0]!;
  expect(worst).toContain(name);
  const before = await scale_km(page);
  for (let i = 0; i < 4; i++) await page.keyboard.press('+');
  await expect.poll(() => scale_km(page)).toBeLessThan(before);
  await page.keyboard.press('0');
  await expect.poll(() => scale_km(page)).toBe(before);
  await page.keyboard.press('Enter');
  const chosen = page.getByRole('main').locator('.map-chosen');
  await chosen.filter({ hasText: name }).waitFor();
  // Found by name, without looking at the map.
  await page.getByRole('combobox', { name: 'Find on the map' }).fill(worst[1]!.toLowerCase());
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await chosen.filter({ hasText: worst[1]! }).waitFor();
});

journey('a map file is added, drawn under the sites and taken away; a wrong one is told in words', async ({ open }) => {
  const { page, watch } = await open({ isAtDoor: true });
  expectDrawing(watch);
  const { map } = await openMap(page);
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-map-'));
  try {
    const send = async (name: string, bytes: Uint8Array) => {
      await writeFile(join(folder, name), bytes);
      await page.locator('input[type=file]').setInputFiles(join(folder, name));
    };
    await send('photo.pmtiles', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 0, 0, 0, 0]));
    await page.getByText('photo.pmtiles cannot be drawn: it is no PMTiles file.').waitFor();
    await send('sea.pmtiles', tinyMap({ attribution: 'The survey office' }));
    await page.getByText('Under the sites: sea.pmtiles. Data: The survey office').waitFor();
    const canvas = map.locator('canvas');
    await canvas.waitFor({ state: 'attached' });
    // The square of water in its only tile ends at 90° east; the demo lies west of that, so its middle is water, not paper.
    await expect.poll(() => middleColour(page), { timeout: 15_000 }).not.toBe(await paperColour(page));
    await page.getByRole('radio', { name: 'Outlines the program carries' }).check();
    await expect.poll(() => canvas.count()).toBe(0);
    await page.getByRole('button', { name: 'Take sea.pmtiles away' }).click();
    await expect.poll(() => page.getByRole('radio', { name: /sea/ }).count()).toBe(0);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});

/** What a browser without a graphics card tells of its own, and a file that is refused. */
function expectDrawing(watch: Watch): void {
  watch.expect(/GL Driver Message/);
  watch.expect(/status of 422/);
}

/** The colour of the tiles a little off the middle of the map, as they are drawn. */
async function middleColour(page: Page): Promise<string> {
  return page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('.map-frame canvas');
    const copy = document.createElement('canvas').getContext('2d');
    if (!canvas || !copy) return '';
    copy.drawImage(canvas, canvas.width * 0.3, canvas.height * 0.5, 1, 1, 0, 0, 1, 1);
    return copy.getImageData(0, 0, 1, 1).data.join();
  });
}

/** The ground of the page, as a picture has it. */
async function paperColour(page: Page): Promise<string> {
  return page.evaluate(() => {
    const pen = document.createElement('canvas').getContext('2d')!;
    pen.fillStyle = getComputedStyle(document.documentElement).getPropertyValue('--paper').trim();
    pen.fillRect(0, 0, 1, 1);
    return pen.getImageData(0, 0, 1, 1).data.join();
  });
}
