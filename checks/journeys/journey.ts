/// <reference lib="dom" />
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { repository } from '../rules/repository.ts';
import { Served } from './served.ts';
import { Watch } from './watch.ts';

/** How a page is looked at. What is not said is a laptop in daylight, in English. */
export interface Looks {
  readonly width?: number;
  readonly height?: number;
  readonly language?: string;
  readonly isDark?: boolean;
  readonly isForced?: boolean;
  readonly isStill?: boolean;
  /** The language a person chose before, whatever the browser's. */
  readonly chosen?: string;
  /** A finger rather than a mouse. */
  readonly isPhone?: boolean;
  /** Let in by the key, and nothing of the program is loaded yet: for a journey that goes to a page of its own at once. */
  readonly isAtDoor?: boolean;
}

/** A page of the program with what watches over it. */
export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly watch: Watch;
}

interface OfFile {
  readonly browser: Browser;
  /** The program on a data folder of this file's own, with the demo programme in it. */
  readonly served: Served;
}

interface OfTest {
  /** Opens the program in a browser that never saw it. At the end of the test it is closed, and faults nobody expected fail it. */
  readonly open: (looks?: Looks) => Promise<Opened>;
  /** The program as opened on a laptop. */
  readonly page: Page;
  /** A laptop that is let in and has loaded no page yet. */
  readonly atDoor: Page;
}

/** What the pages keep in a browser, as they find it there. */
const keptOf = (origin: string, kept: Readonly<Record<string, string>>) => ({
  cookies: [],
  origins: [
    { origin, localStorage: Object.entries(kept).map(([name, value]) => ({ name: `eavewell.${name}`, value })) },
  ],
});

/** A context with the looks asked for, watched. */
async function contextOf(browser: Browser, origin: string, looks: Looks): Promise<Omit<Opened, 'page'>> {
  const context = await browser.newContext({
    viewport: { width: looks.width ?? 1280, height: looks.height ?? (looks.width && looks.width < 500 ? 740 : 800) },
    locale: looks.language ?? 'en-GB',
    colorScheme: looks.isDark ? 'dark' : 'light',
    forcedColors: looks.isForced ? 'active' : 'none',
    reducedMotion: looks.isStill ? 'reduce' : 'no-preference',
    hasTouch: looks.isPhone ?? false,
    timezoneId: 'UTC',
    ...(looks.chosen === undefined ? {} : { storageState: keptOf(origin, { language: looks.chosen }) }),
  });
  context.setDefaultTimeout(30_000);
  return { context, watch: new Watch(context, origin) };
}

/** A page with nothing on it, and an icon of its own: the browser asks for one wherever it shows a page. */
const emptyPage = '<!doctype html><title>-</title><link rel="icon" href="data:,">';

/**
 * Opens the address that the program prints; or takes its key alone and stands on an empty page of its origin, so that what a
 * browser keeps of it can be set, and the first page it loads is the one the journey is about.
 */
async function comeIn({ page, context }: Pick<Opened, 'page' | 'context'>, served: Served, looks: Looks) {
  if (looks.isAtDoor) {
    const answer = await context.request.get(served.address, { maxRedirects: 0 });
    expect(answer.headers()['set-cookie'], 'the key lets a browser in').toBeDefined();
    const door = `${served.origin}/door`;
    await page.route(door, (route) => route.fulfill({ contentType: 'text/html', body: emptyPage }));
    await page.goto(door);
    await page.unroute(door);
    return;
  }
  await page.goto(served.address);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

/** Keeps what a page looked like when its journey failed. */
async function keepPicture(page: Page, name: string): Promise<void> {
  const folder = join(repository, 'out/journeys');
  await mkdir(folder, { recursive: true });
  const file = `${name.replace(/[^A-Za-z0-9]+/g, '-').slice(0, 100)}.png`;
  await page.screenshot({ path: join(folder, file), fullPage: true, timeout: 5_000 }).catch(() => undefined);
  console.log(`What the page looked like: out/journeys/${file}`);
}

/**
 * A test that walks through the program in a real browser. `page` is open at its first address, `atDoor` before it; `open` opens
 * it otherwise; `served` is the program behind it, one for each file.
 */
export const journey = test.extend<{ $test: OfTest; $file: OfFile }>({
  browser: [
    // biome-ignore lint/correctness/noEmptyPattern: a fixture names what it needs, and this needs nothing
    async ({}, use) => {
      const browser = await chromium.connect(inject('browserAddress'));
      await use(browser);
      await browser.close();
    },
    { scope: 'file' },
  ],
  served: [
    // biome-ignore lint/correctness/noEmptyPattern: a fixture names what it needs, and this needs nothing
    async ({}, use) => {
      const served = await Served.begin(inject('demoFolder'));
      await use(served);
      await served.end();
    },
    { scope: 'file' },
  ],
  open: async ({ browser, served, task }, use) => {
    const all: Opened[] = [];
    await use(async (looks = {}) => {
      const { context, watch } = await contextOf(browser, served.origin, looks);
      const page = await context.newPage();
      const opened = { page, context, watch };
      all.push(opened);
      await comeIn(opened, served, looks);
      return opened;
    });
    const faults = all.flatMap(({ watch }) => watch.unexpected);
    if (task.result?.state === 'fail' || faults.length > 0)
      for (const [index, { page }] of all.entries()) await keepPicture(page, `${index + 1} ${task.name}`);
    for (const { context } of all) {
      // What a journey held back or answered itself may still be on its way. Nothing of the page is wanted any more: while a page
      // loads, routes are never taken off, for one request in some thousands of those under way then stays without an answer.
      for (const page of context.pages()) await page.unrouteAll({ behavior: 'ignoreErrors' });
      await context.close();
    }
    if (faults.length > 0) throw new Error(`The pages had faults:\n${faults.join('\n')}`);
  },
  page: async ({ open }, use) => {
    const { page } = await open();
    await use(page);
  },
  atDoor: async ({ open }, use) => {
    const { page } = await open({ isAtDoor: true });
    await use(page);
  },
});

/**
 * The same for journeys that change nothing: all files of them ask one program, which reads its plan and its kits once. That the
 * demo is what it was is tried when all of them have ended.
 */
export const readingJourney = journey.extend<{ $file: Pick<OfFile, 'served'> }>({
  served: [
    // biome-ignore lint/correctness/noEmptyPattern: a fixture names what it needs, and this needs nothing
    async ({}, use) => {
      await use(Served.at(inject('readAddress')!));
    },
    { scope: 'file' },
  ],
});

/** The same where the program never ran before: its data folder is not there. */
export const firstJourney = journey.extend<{ $file: Pick<OfFile, 'served'> }>({
  served: [
    // biome-ignore lint/correctness/noEmptyPattern: a fixture names what it needs, and this needs nothing
    async ({}, use) => {
      const served = await Served.begin(null);
      await use(served);
      await served.end();
    },
    { scope: 'file' },
  ],
});
