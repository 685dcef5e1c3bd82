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
): Promise<{ readonly ask: <T>(path: string) => Promise<T>; readonly planId: string; readonly programmeId: string }> {
  const { programmeId } = await designedDemo(page);
  const at = (path: string) => new URL(`/api/programmes/${programmeId}/${path}`, page.url());
  const ask = async <T>(path: string) => (await (await page.request.get(at(path).href)).json()) as T;
  const { planId } = await ask<SheetTold>('rollout');
  await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
  await page.goto(new URL(`/p/${programmeId}/rollout?plan=${planId}`, page.url()).href);
  await page.locator('[data-trip]').first().waitFor();
  // Only hulls in view are drawn, and the one that Tab leads to: it brings the others with it.
  await page.locator('[data-trip]').first().scrollIntoViewIfNeeded();
  return { ask, planId, programmeId };
}

/** Which trip each site is in. */
const tripsOf = ({ crews }: SheetTold) =>
  new Map(
    crews.flatMap(({ trips }) => trips.flatMap(({ tripId, stops }) => stops.map((stop) => [stop.siteId, tripId]))),
  );

const panel = (page: Page) => page.getByRole('region', { name: 'Moving by hand' });

journey('a site is moved by keys, laid down as one step, and undone', async ({ atDoor: page }) => {
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

  // What undo would take back is told as what was done, and not by the rows it took.
  const undo = page.getByRole('button', { name: /^Undo:/ });
  const out = new RegExp(`${site!.name} was taken out of trip \\d+ of .*\\(Nadi\\)`);
  await expect.poll(() => undo.textContent()).toMatch(out);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => tripsOf(await sheet()).get(site!.siteId), { timeout: 20_000 }).toBe(trip.tripId);
});

journey('a site is pulled to another trip; where it cannot be is explained', async ({ atDoor: page }) => {
  const { ask, planId } = await withPlan(page);
  const sheet = await ask<SheetTold>(`rollout?plan=${planId}`);
  const planned = sheet.crews.map(({ trips }) => trips.filter(({ state }) => state === 'planned'));
  const [first, second] = planned.find((trips) => trips.length > 2)!;
  const hull = (tripId: string) => page.locator(`[data-trip="${tripId}"]`);
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

/** A finger on the glass, as the browser has it from the device: it scrolls where nothing stands against it. */
async function fingerOn(page: Page) {
  const device = await page.context().newCDPSession(page);
  const tell = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly { x: number; y: number }[]) =>
    device.send('Input.dispatchTouchEvent', { type, touchPoints: [...points] });
  return {
    down: (x: number, y: number) => tell('touchStart', [{ x, y }]),
    async move(from: { x: number; y: number }, to: { x: number; y: number }) {
      for (let step = 1; step <= 8; step++) {
        const [x, y] = [from.x + ((to.x - from.x) * step) / 8, from.y + ((to.y - from.y) * step) / 8];
        await tell('touchMove', [{ x, y }]);
        await page.waitForTimeout(20);
      }
    },
    up: () => tell('touchEnd', []),
  };
}

journey('on a tablet a finger that stays takes a site up and pulls it; one that goes on scrolls', async ({ open }) => {
  const { page } = await open({ width: 820, height: 1000, isPhone: true, isAtDoor: true });
  const { ask, planId } = await withPlan(page);
  const sheet = await ask<SheetTold>(`rollout?plan=${planId}`);
  const planned = sheet.crews.map(({ trips }) => trips.filter(({ state }) => state === 'planned'));
  const [first, second] = planned.find((trips) => trips.length > 2)!;
  const hull = (tripId: string) => page.locator(`[data-trip="${tripId}"]`);
  const finger = await fingerOn(page);
  await hull(first!.tripId).scrollIntoViewIfNeeded();
  const middle = async (tripId: string) => {
    const box = (await hull(tripId).boundingBox())!;
    return { x: box.x + box.width / 2, y: box.y + 24 };
  };

  // A finger that goes on at once scrolls the page, and takes nothing up.
  const swiped = await middle(first!.tripId);
  const scrolled = () => page.evaluate(() => window.scrollY);
  const before = await scrolled();
  await finger.down(swiped.x, swiped.y);
  await finger.move(swiped, { x: swiped.x, y: swiped.y - 120 });
  await finger.up();
  await expect.poll(scrolled).toBeGreaterThan(before + 50);
  expect(await page.locator('.by-hand-beside').count()).toBe(0);

  // It glides on for a moment.
  const isStill = async () => {
    const was = await scrolled();
    await page.waitForTimeout(200);
    return was === (await scrolled());
  };
  await expect.poll(isStill).toBe(true);

  // One that stays has the site in hand: it is pulled, and the page stays where it is.
  await hull(first!.tripId).scrollIntoViewIfNeeded();
  const from = await middle(first!.tripId);
  const to = await middle(second!.tripId);
  await finger.down(from.x, from.y);
  await page.locator('.by-hand-beside').waitFor();
  await finger.move(from, to);
  await expect.poll(() => page.locator('.by-hand-beside').textContent()).toMatch(/after|before|trip/);
  // A line that comes above meanwhile moves the page under itself, not under the finger.
  expect((await middle(first!.tripId)).y).toBeCloseTo(from.y, 0);
  await finger.up();
  await expect.poll(() => panel(page).textContent(), { timeout: 20_000 }).toMatch(/It is done|It cannot be there/);
  expect(await page.getByRole('dialog').count()).toBe(0);
});

journey('on a phone a finger scrolls past sites, and presses move them', async ({ open }) => {
  const { page } = await open({ width: 360, height: 740, isPhone: true, isAtDoor: true });
  const { programmeId } = await designedDemo(page);
  await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
  await page.goto(new URL(`/p/${programmeId}/rollout`, page.url()).href);
  const moves = page.locator('button', { hasText: /^Move (?!this)/ });
  const trip = page.locator('.crew-list details.trip', { has: moves }).first();
  await trip.locator('summary').first().tap();
  const move = trip.locator(moves).first();
  const site = (await move.textContent())!.replace(/^Move /, '');
  await move.tap();
  await panel(page).getByRole('button', { name: 'Take it out of the plan' }).tap();
  await expect.poll(() => panel(page).textContent()).toMatch(/in no trip/);
  await panel(page).getByRole('button', { name: 'Lay it down here' }).tap();
  await expect.poll(() => panel(page).textContent(), { timeout: 20_000 }).toMatch(/It is done/);
  await panel(page).getByRole('button', { name: 'Close' }).tap();

  // It lies among those in no trip now: a finger that stays there and goes on pulls nothing, as no weeks are drawn.
  const put = page.getByRole('button', { name: `Put ${site} into the plan` });
  await put.scrollIntoViewIfNeeded();
  const box = (await put.boundingBox())!;
  const at = { x: box.x + 40, y: box.y + box.height / 2 };
  const finger = await fingerOn(page);
  await finger.down(at.x, at.y);
  await page.waitForTimeout(700);
  await finger.move(at, { x: at.x, y: at.y - 60 });
  expect(await page.locator('.by-hand-beside').count()).toBe(0);
  await finger.up();
  // What the browser makes of a long press is its own: it is a press, or nothing.
  if ((await panel(page).count()) === 0) await put.tap();
  await expect.poll(() => panel(page).textContent()).toMatch(/in hand/);
});

journey('two people change one plan: what the other did stays, and is told', async ({ atDoor: page }) => {
  const { ask, planId, programmeId } = await withPlan(page);
  const sheet = () => ask<SheetTold>(`rollout?plan=${planId}`);
  const planned = (await sheet()).crews.flatMap(({ trips }) => trips).filter(({ state }) => state === 'planned');
  const stops = planned.flatMap(({ tripId, stops: own }) => own.map((stop) => ({ ...stop, tripId })));
  /** Takes a site up and holds it out of the plan; false where that would break something, and it is put back. */
  const canBeOut = async ({ tripId, name }: (typeof stops)[number]): Promise<boolean> => {
    await page.locator(`[data-trip="${tripId}"]`).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: `Move ${name}` }).press('Enter');
    await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toMatch(/by-hand-panel/);
    await page.keyboard.press('Delete');
    await expect.poll(() => panel(page).textContent()).toMatch(/would not drink/);
    if (!/cannot be there/.test((await panel(page).textContent())!)) return true;
    await page.keyboard.press('Escape');
    await expect.poll(() => panel(page).textContent()).toMatch(/is where it was/);
    return false;
  };
  let mine: (typeof stops)[number] | undefined;
  for (const stop of stops) {
    if (!(await canBeOut(stop))) continue;
    mine = stop;
    break;
  }
  const theirs = stops.findLast(({ tripId }) => tripId !== mine!.tripId);

  // The other takes a site out while the news of it is still on its way to this page.
  let letThrough: () => void = () => undefined;
  const news = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route(/\/rollout\?/, async (route) => {
    await news;
    await route.continue();
  });
  const rows = (await ask<{ rows: readonly { key: string; cells: Record<string, string> }[] }>('tables/planStops'))
    .rows;
  const row = rows.find(({ cells }) => cells['planId'] === planId && cells['siteId'] === theirs!.siteId)!;
  const change = { kind: 'removed', table: 'planStops', key: row.key, before: row.cells };
  const changed = await page.request.post(new URL(`/api/programmes/${programmeId}/changes`, page.url()).href, {
    headers: { origin: new URL(page.url()).origin },
    data: { by: 'Tam', changes: [change], sendId: crypto.randomUUID() },
  });
  expect(changed.ok()).toBe(true);
  const isIn = async (siteId: string) => tripsOf(await sheet()).has(siteId);
  expect(await isIn(theirs!.siteId)).toBe(false);
  await panel(page).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => panel(page).textContent(), { timeout: 20_000 }).toMatch(/changed meanwhile/);
  await expect
    .poll(() => panel(page).textContent())
    .toMatch(new RegExp(`${theirs!.name} was taken out of trip .*\\(Tam\\)`));
  expect(await isIn(theirs!.siteId)).toBe(false);
  letThrough();
  // Until the news is there it is refused again, and then it is laid beside what the other did.
  const layDown = panel(page).getByRole('button', { name: 'Lay it down here' });
  const laid = async () => {
    if (await layDown.isEnabled().catch(() => false)) await layDown.click({ timeout: 2_000 }).catch(() => undefined);
    return panel(page).textContent();
  };
  await expect.poll(laid, { timeout: 30_000, interval: 500 }).toMatch(/It is done/);
  await expect.poll(() => isIn(mine!.siteId)).toBe(false);
  expect(await isIn(theirs!.siteId)).toBe(false);
});
