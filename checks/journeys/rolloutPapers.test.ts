/// <reference lib="dom" />
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { settled } from './everyPage.ts';
import { journey } from './journey.ts';
import { paperPages } from './pdfText.ts';

interface Sheet {
  readonly planId: string | null;
  readonly crews: readonly {
    readonly crewId: string;
    readonly name: string;
    readonly trips: readonly { readonly tripId: string; readonly state: string }[];
  }[];
}

/** What boats must not go without, as the pages say it. */
const ofBoats = [
  'A life vest for everyone aboard',
  'The local skipper decides',
  'mark of the freeboard is under water',
  'Nobody sits or stands on the load',
];

/** The demo's plan in force; a crew of it that goes by boat, and its trip that leaves first of those to come. */
async function planned(page: Page) {
  const { programmeId } = await designedDemo(page);
  const of = new URL(`/api/programmes/${programmeId}/rollout`, page.url());
  const json = async <T>(path: string): Promise<T> => {
    const answer = await page.request.get(`${of.href}${path}`);
    if (!answer.ok()) throw new Error(`${path} answered ${answer.status()}: ${await answer.text()}`);
    return (await answer.json()) as T;
  };
  const sheet = await json<Sheet>('');
  for (const crew of sheet.crews)
    for (const { tripId } of crew.trips.filter(({ state }) => state === 'planned')) {
      const trip = await json<{ legs: readonly { stretches: readonly { mode: string }[] }[] }>(
        `/trips/${tripId}?plan=${sheet.planId}`,
      );
      if (trip.legs.some(({ stretches }) => stretches.some(({ mode }) => mode === 'river')))
        return { programmeId, planId: sheet.planId!, crew, tripId, of };
    }
  throw new Error('No trip of the demo goes on a river.');
}

/** A word may be drawn in several pieces: spaces between letters do not count. */
const squeezed = (one: string) => one.replaceAll(/\s/g, '');

journey(
  'the manifest of a boat: ticks stay on the device, and no printed page lacks its caution',
  async ({ atDoor: page }) => {
    const { programmeId, planId, tripId, of } = await planned(page);
    await page.goto(new URL(`/p/${programmeId}/rollout/trips/${tripId}?plan=${planId}`, page.url()).href);
    await settled(page);
    const box = page.getByRole('checkbox', { name: /, loaded$/ });
    expect(await box.count()).toBeGreaterThan(0);
    await box.first().check();
    await page
      .getByRole('status')
      .filter({ hasText: /1 of \d+ loaded/ })
      .waitFor();
    await page.reload();
    await settled(page);
    expect(await box.first().isChecked()).toBe(true);
    expect(await page.getByRole('img', { name: 'The boat from the side, with its load' }).isVisible()).toBe(true);

    const pages = paperPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    expect(pages.length).toBeGreaterThan(1);
    for (const [nth, { text }] of pages.entries())
      for (const caution of ofBoats)
        expect(squeezed(text).includes(squeezed(caution)), `page ${nth + 1} of ${pages.length}: ${caution}`).toBe(true);

    for (const [nth, { text }] of pages.entries())
      expect(squeezed(text)).toContain(`Manifestof${tripId},sheet${nth + 1}of${pages.length}`);

    for (const [path, language] of [
      [`/trips/${tripId}/manifest.pdf`, 'en'],
      [`/trips/${tripId}/manifest.pdf`, 'ar'],
      [`/trips/${tripId}/notices.pdf`, 'hi'],
    ] as const) {
      const answer = await page.request.get(`${of.href}${path}?language=${language}&plan=${planId}`);
      expect([answer.status(), answer.headers()['content-type']]).toEqual([200, 'application/pdf']);
      const bytes = (await answer.body()).toString('latin1');
      expect(bytes.startsWith('%PDF-')).toBe(true);
      expect(bytes).toContain(`/Lang (${language})`);
    }
    const none = await page.request.get(`${of.href}/trips/NONE/manifest.pdf?plan=${planId}`);
    expect(none.status()).toBe(404);
  },
);

journey(
  'a crew reads its days on a phone without the program, once the rollout was opened there',
  async ({ open, served }) => {
    const { page, watch } = await open({ width: 360, isPhone: true });
    const { programmeId, planId, crew, of } = await planned(page);
    const itinerary = await page.request.get(
      `${of.href}/crews/${crew.crewId}/itinerary.pdf?plan=${planId}&language=es`,
    );
    expect([itinerary.status(), itinerary.headers()['content-type']]).toEqual([200, 'application/pdf']);
    await page.evaluate(async () => void (await navigator.serviceWorker.ready));
    await page.goto(new URL(`/p/${programmeId}/rollout`, page.url()).href);
    await settled(page);
    // The trips that come next are read ahead, one after the other, and kept.
    await page.waitForFunction(
      async ([id, first]) => {
        const asked = indexedDB.open('eavewell-answers');
        const base = await new Promise<IDBDatabase>((done) =>
          asked.addEventListener('success', () => done(asked.result)),
        );
        const keys = base.transaction('answers').objectStore('answers').getAllKeys();
        const all = await new Promise<IDBValidKey[]>((done) =>
          keys.addEventListener('success', () => done(keys.result)),
        );
        base.close();
        return all.some(
          (key) =>
            String(key).includes('rolloutTrip') &&
            String(key).includes(`"${id}"`) &&
            String(key).includes(`"${first}"`),
        );
      },
      [planId, crew.trips[0]!.tripId],
      { timeout: 60_000 },
    );
    await page.waitForTimeout(2500);
    watch.expect(/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED_ENCODING|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE/);
    watch.expect(/status of 403/);
    await served.stop();
    await page.goto(`${of.origin}/p/${programmeId}/rollout/crews/${crew.crewId}?plan=${planId}`);
    await page.getByRole('heading', { level: 1, name: new RegExp(crew.name) }).waitFor();
    await page.getByText(/^As read on /).waitFor();
    const cards = page.locator('.day-card');
    await cards.first().waitFor();
    expect(await cards.count()).toBeGreaterThan(2);
    const frame = page.getByRole('region', { name: 'Caution' });
    for (const caution of ofBoats) expect(await frame.textContent()).toContain(caution);
    expect(await page.getByText('On the river today: life vests on').count()).toBeGreaterThan(0);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    await served.start();
  },
);

journey('from right to left no printed page of a boat is cut at its edge', async ({ open }) => {
  const { page } = await open({ chosen: 'ar-XB', isAtDoor: true });
  const { programmeId, planId, tripId } = await planned(page);
  await page.goto(new URL(`/p/${programmeId}/rollout/trips/${tripId}?plan=${planId}`, page.url()).href);
  await settled(page);
  await page.emulateMedia({ media: 'print' });
  // As wide as A4 between its edges of 16 mm: what is wider than that is cut on paper.
  await page.setViewportSize({ width: Math.floor(((210 - 2 * 16) * 96) / 25.4), height: 900 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
});
