/// <reference lib="dom" />
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';
import type { Watch } from './watch.ts';

/** What a journey reads of the rollout's sheet. */
interface Sheet {
  readonly planId: string | null;
  readonly candidates: readonly {
    readonly siteId: string;
    readonly name: string;
    readonly tripId: string | null;
    readonly reason: string | null;
    readonly agreedOn: string | null;
  }[];
  readonly crews: readonly {
    readonly crewId: string;
    readonly name: string;
    readonly trips: readonly {
      readonly state: string;
      readonly stops: readonly {
        readonly siteId: string;
        readonly name: string;
        readonly served: string | null;
        readonly futures: { readonly p50: string | null; readonly p90: string | null } | null;
        readonly isWayUp: boolean;
        readonly isHandedOver: boolean;
      }[];
    }[];
  }[];
}

async function sheetOf(page: Page, programmeId: string): Promise<Sheet> {
  const address = new URL(`/api/programmes/${programmeId}/rollout`, page.url());
  return (await (await page.request.get(address.href, { timeout: 90_000 })).json()) as Sheet;
}

/** The sheet with a plan in it: where none is kept, one of a trip to the first sites that may be planned. */
async function plannedSheet(page: Page, programmeId: string): Promise<Sheet> {
  const sheet = await sheetOf(page, programmeId);
  if (sheet.planId !== null) return sheet;
  const at = new URL(`/api/programmes/${programmeId}/changes`, page.url());
  const siteIds = sheet.candidates.filter(({ reason }) => reason === null).map(({ siteId }) => siteId);
  const added = (table: string, key: string, after: Record<string, string>) => ({ kind: 'added', table, key, after });
  const trip = { planId: 'J1', tripId: 'T1' };
  const rows = [
    added('plans', 'J1', { planId: 'J1', name: 'as drawn by hand', isInForce: 'yes' }),
    added('planTrips', 'J1/T1', { ...trip, crewId: sheet.crews[0]!.crewId, order: '1' }),
    added('planStops', `J1/${siteIds[0]}`, { ...trip, siteId: siteIds[0]!, order: '1' }),
  ];
  const data = { by: 'Nadi', changes: rows, sendId: crypto.randomUUID() };
  const sent = await page.request.post(at.href, { headers: { origin: at.origin }, data });
  expect(sent.status(), await sent.text()).toBeLessThan(300);
  return sheetOf(page, programmeId);
}

/** A stop nobody has come to yet. */
const comingStop = ({ crews }: Sheet) => {
  for (const { name: crew, trips } of crews)
    for (const { state, stops } of trips) {
      const stop = stops.find(({ isWayUp, isHandedOver }) => isWayUp && !isHandedOver);
      if (state === 'planned' && stop) return { crew, stop };
    }
  throw new Error('The demo has no trip that is planned.');
};

const inEnglish = (day: string) =>
  new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
    new Date(day),
  );

/** No search for a plan has been asked for yet. */
const expectNoSearch = (watch: Watch) => watch.expect(/status of 404/);

const nameField = (page: Page) => page.getByRole('combobox', { name: /When does a village drink/ });

/** Types a name as a hand does, and takes the first village that is offered. */
async function find(page: Page, name: string): Promise<void> {
  await nameField(page).click();
  await nameField(page).fill(name);
  await page
    .getByRole('option', { name: new RegExp(name) })
    .first()
    .waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
}

journey(
  'when a village drinks and how sure that is: by its name alone, at a desk and on a phone, and without a network',
  async ({ open, served }) => {
    for (const width of [1280, 360]) {
      const { page, watch } = await open({ width, isPhone: width < 500 });
      expectNoSearch(watch);
      const { programmeId } = await designedDemo(page);
      const { crew, stop } = comingStop(await plannedSheet(page, programmeId));
      await page.evaluate(async () => void (await navigator.serviceWorker.ready));
      await page.goto(new URL(`/p/${programmeId}/rollout`, page.url()).href);
      // The page scrolls under what was typed, and the list closes: the name stays.
      await nameField(page).fill(stop.name.slice(0, -1));
      await page.evaluate(() => scrollBy(0, 30));
      await page.waitForTimeout(300);
      expect(await nameField(page).inputValue()).toBe(stop.name.slice(0, -1));
      await find(page, stop.name);
      const answer = page.getByRole('region', { name: `When ${stop.name} drinks` });
      await answer.getByText(`comes, on the trip`).waitFor();
      await answer.locator('.why-then').waitFor();
      const told = await answer.textContent();
      const { p50 = null, p90 = null } = stop.futures ?? {};
      for (const day of [p50, p90]) if (day !== null) expect(told).toContain(inEnglish(day));
      if (stop.served !== null) expect(told).toContain(inEnglish(stop.served));
      expect(told).toContain(crew);
      expect(told).toMatch(/nine times in ten|How sure that is/);
      // Why it is then, and what going there first would do to others; both open to how they are reckoned.
      const why = answer.locator('.why-then');
      await expect
        .poll(() => why.textContent())
        .toMatch(/no sooner if a crew went there first|went there first, .* would/);
      await why.getByRole('button', { name: /How this is reckoned/ }).click();
      await answer.getByText('Why water runs from then').waitFor();
      await answer.getByRole('button', { name: 'Close', exact: true }).click();
      const asked = new URL(page.url()).searchParams;
      expect(asked.get('site')).toBe(stop.siteId);
      // The week on the map is the one in which the crew comes, told in sentences too.
      await page.locator('.week-words [aria-current]', { hasText: stop.name }).first().waitFor();
      await page.locator('.week-layer .week-trip path.of-week').first().waitFor({ state: 'attached' });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      if (width > 500) {
        await page.close();
        continue;
      }
      await page.waitForTimeout(1900);
      watch.expect(/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED_ENCODING|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE/);
      watch.expect(/status of 403/);
      await served.stop();
      await page.reload();
      await answer.getByText(`comes, on the trip`).waitFor();
      await expect.poll(() => answer.textContent()).toBe(told);
      await served.start();
    }
  },
);

journey(
  'weeks are gone through with keys; the map and its sentences follow, and the address keeps the week',
  async ({ open }) => {
    const { page, watch } = await open({ isAtDoor: true });
    expectNoSearch(watch);
    const { programmeId } = await designedDemo(page);
    const { stop } = comingStop(await plannedSheet(page, programmeId));
    await page.goto(new URL(`/p/${programmeId}/rollout?site=${stop.siteId}`, page.url()).href);
    const head = page.locator('#week-map-head');
    const before = await head.textContent();
    await page.getByRole('slider', { name: 'Any week' }).focus();
    await page.keyboard.press('ArrowRight');
    await page.waitForURL(({ searchParams }) => searchParams.has('week'));
    await expect.poll(() => head.textContent()).not.toBe(before);
    const week = new URL(page.url()).searchParams.get('week')!;
    expect(await head.textContent()).toBe(`Week of ${inEnglish(week)}`);
    await page.getByRole('button', { name: 'A week earlier' }).click();
    await expect.poll(() => head.textContent()).toBe(before);
    await page.reload();
    await expect.poll(() => head.textContent()).toBe(before);
    // The keys of the map tell village by village whether people drink.
    await page.locator('.week-map .map-frame').focus();
    await page.keyboard.press('PageDown');
    await page.getByText(/(water runs there|not yet)\. 1 of \d+\./).waitFor({ state: 'attached' });
  },
);

journey(
  'a village that has not agreed is told first; its agreement is entered, and undo takes it back',
  async ({ open }) => {
    const { page, watch } = await open({ isAtDoor: true });
    expectNoSearch(watch);
    const { programmeId } = await designedDemo(page);
    const { candidates } = await sheetOf(page, programmeId);
    const left = candidates.find(({ reason }) => reason === 'notAgreed')!;
    await page.goto(new URL(`/p/${programmeId}/rollout/sites`, page.url()).href);
    await page.getByRole('heading', { level: 1, name: /has not agreed|have not agreed/ }).waitFor();
    await page.getByRole('searchbox', { name: 'Find a village' }).fill(left.name);
    const row = page.getByRole('listitem').filter({ has: page.getByRole('link', { name: left.name, exact: true }) });
    await row.getByRole('button', { name: 'Enter when its people agreed' }).click();
    await page.getByRole('heading', { level: 2, name: new RegExp(left.name) }).waitFor();
    // A priority wants its reason; nothing is saved before it has one.
    await page.getByLabel('Counts times').fill('2');
    await page.getByText(/Say why it comes before others/).waitFor();
    await page.getByLabel('Why first').fill('cholera in the dry months');
    await page.getByText(/Say why it comes before others/).waitFor({ state: 'detached' });
    await page.getByLabel('Agreed on').fill('2026-11-20');
    await page.getByLabel('Your name').fill('Nadi');
    await page.getByLabel('Your name').press('Enter');
    await page.getByRole('button', { name: 'Set for 1 site' }).click();
    await page.getByText('Set for 1 site. Undo takes it back.').waitFor();
    await row
      .getByText(/agreed on 20 November 2026.*counts 2 times: cholera in the dry months/)
      .waitFor({ timeout: 90_000 });
    const stands = async () =>
      (await sheetOf(page, programmeId)).candidates.find(({ siteId }) => siteId === left.siteId);
    expect(await stands()).toMatchObject({ agreedOn: '2026-11-20' });
    expect((await stands())?.reason).not.toBe('notAgreed');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await page.getByRole('heading', { level: 1, name: /has not agreed|have not agreed/ }).waitFor();
    expect(await stands()).toMatchObject({ agreedOn: null, reason: 'notAgreed' });
  },
);
