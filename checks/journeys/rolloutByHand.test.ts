import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

interface TripTold {
  readonly tripId: string;
  readonly state: string;
  readonly stops: readonly { readonly siteId: string; readonly name: string }[];
}
interface SheetTold {
  readonly planId: string;
  readonly crews: readonly { readonly crewId: string; readonly trips: readonly TripTold[] }[];
}

/** The demo, opened at the rollout of its plan in force. */
async function withPlan(
  page: Page,
): Promise<{ readonly ask: <T>(path: string) => Promise<T>; readonly planId: string }> {
  const { programmeId } = await designedDemo(page);
  const at = (path: string) => new URL(`/api/programmes/${programmeId}/${path}`, page.url());
  const ask = async <T>(path: string) => (await (await page.request.get(at(path).href)).json()) as T;
  const { planId } = await ask<SheetTold>('rollout');
  await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
  await page.goto(new URL(`/p/${programmeId}/rollout?plan=${planId}`, page.url()).href);
  await page.locator('[data-trip]').first().waitFor();
  return { ask, planId };
}

/** Which trip each site is in. */
const tripsOf = ({ crews }: SheetTold) =>
  new Map(
    crews.flatMap(({ trips }) => trips.flatMap(({ tripId, stops }) => stops.map((stop) => [stop.siteId, tripId]))),
  );

const panel = (page: Page) => page.getByRole('region', { name: 'Moving by hand' });

journey('a site is moved by keys, laid down as one step, and undone', async ({ page }) => {
  const { ask, planId } = await withPlan(page);
  const sheet = () => ask<SheetTold>(`rollout?plan=${planId}`);
  const before = await sheet();
  const trip = before.crews
    .flatMap(({ trips }) => trips)
    .find(({ state, stops }) => state === 'planned' && stops.length > 1)!;
  const [site] = trip.stops;
  await page.locator(`[data-trip="${trip.tripId}"]`).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: `Move ${site!.name}` }).press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toMatch(/by-hand-panel/);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => panel(page).textContent()).toMatch(/drinks from/);
  await page.keyboard.press('Escape');
  await expect.poll(() => panel(page).textContent()).toMatch(/is where it was/);
  expect(tripsOf(await sheet())).toEqual(tripsOf(before));

  await page.locator(`[data-trip="${trip.tripId}"]`).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: `Move ${site!.name}` }).press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toMatch(/by-hand-panel/);
  await page.keyboard.press('Delete');
  await expect.poll(() => panel(page).textContent()).toMatch(/in no trip/);
  await page.keyboard.press('Enter');
  await expect.poll(() => panel(page).textContent(), { timeout: 20_000 }).toMatch(/It is done/);
  await expect.poll(async () => tripsOf(await sheet()).has(site!.siteId)).toBe(false);

  await page.keyboard.press('Control+z');
  await expect.poll(async () => tripsOf(await sheet()).get(site!.siteId), { timeout: 20_000 }).toBe(trip.tripId);
});

journey('a site is pulled to another trip; where it cannot be is explained', async ({ page }) => {
  const { ask, planId } = await withPlan(page);
  const sheet = await ask<SheetTold>(`rollout?plan=${planId}`);
  const planned = sheet.crews.map(({ trips }) => trips.filter(({ state }) => state === 'planned'));
  const [first, second] = planned.find((trips) => trips.length > 2)!;
  const hull = (tripId: string) => page.locator(`[data-trip="${tripId}"]`);
  // Only hulls in view are drawn, and the one that Tab leads to: it brings the others with it.
  await page.locator('[data-trip]').first().scrollIntoViewIfNeeded();
  await hull(first!.tripId).scrollIntoViewIfNeeded();
  const [from, to] = [(await hull(first!.tripId).boundingBox())!, (await hull(second!.tripId).boundingBox())!];
  // The hull stands in the middle of what is pressed of a trip, a little above it.
  const y = from.y + 24;
  await page.mouse.move(from.x + from.width / 2, y);
  await page.mouse.down();
  await page.mouse.move(from.x + from.width / 2 + 12, y, { steps: 3 });
  await page.mouse.move(to.x + to.width * 0.75, y, { steps: 6 });
  await expect.poll(() => page.locator('.by-hand-beside').textContent()).toMatch(/after|before|trip/);
  await page.mouse.up();
  await expect.poll(() => panel(page).textContent(), { timeout: 20_000 }).toMatch(/It is done|It cannot be there/);
  const said = (await panel(page).textContent()) ?? '';
  if (/It cannot be there/.test(said)) {
    await expect.poll(() => panel(page).textContent(), { timeout: 20_000 }).toMatch(/Put it |No place near/);
  }
});
