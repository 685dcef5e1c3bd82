import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { repository } from '../rules/repository.ts';
import { type Demo, designedDemo } from './demo.ts';
import type { Opened } from './journey.ts';

/** Where a page of the app is reached: its address, or null where the address only leads on to another. */
type Reach = (demo: Demo, page: Page) => string | null | Promise<string>;

const worst = ({ sites }: Demo) => sites.find(({ verdict }) => verdict === 'short')!.siteId;

/**
 * Every address of the router, and how a page that stands there is reached. A new page without a line here fails
 * everyPage.test.ts, so that each is looked at in every size, light and language.
 */
export const everyPage: Readonly<Record<string, Reach>> = {
  '/': () => null,
  '/programmes': () => '/programmes',
  '/programmes/take-in': () => '/programmes/take-in',
  '/p/$programmeId': () => null,
  '/kept': () => '/kept',
  '/p/$programmeId/map': ({ programmeId }) => `/p/${programmeId}/map`,
  '/p/$programmeId/sites': ({ programmeId }) => `/p/${programmeId}/sites`,
  '/p/$programmeId/water': ({ programmeId }) => `/p/${programmeId}/water`,
  '/p/$programmeId/safety': ({ programmeId }) => `/p/${programmeId}/safety`,
  '/p/$programmeId/kit': async ({ programmeId }, page) =>
    `/p/${programmeId}/kit?sites=${(await toFit(programmeId, page)).join(',')}`,
  '/p/$programmeId/rollout': ({ programmeId }) => `/p/${programmeId}/rollout`,
  '/p/$programmeId/rollout/happened': ({ programmeId }) => `/p/${programmeId}/rollout/happened`,
  '/p/$programmeId/rollout/plans': ({ programmeId }) => `/p/${programmeId}/rollout/plans`,
  '/p/$programmeId/rollout/trips/$tripId': async ({ programmeId }, page) => {
    const { planId, crews } = await rolloutOf(programmeId, page);
    const trip = crews.flatMap(({ trips }) => trips)[0];
    return `/p/${programmeId}/rollout/trips/${trip?.tripId}?plan=${planId}`;
  },
  '/p/$programmeId/rollout/crews/$crewId': async ({ programmeId }, page) => {
    const { planId, crews } = await rolloutOf(programmeId, page);
    const crew = crews.find(({ trips }) => trips.length > 0) ?? crews[0];
    return `/p/${programmeId}/rollout/crews/${crew?.crewId}?plan=${planId}`;
  },
  '/p/$programmeId/rollout/sites': ({ programmeId }) => `/p/${programmeId}/rollout/sites`,
  '/p/$programmeId/new-site': ({ programmeId }) => `/p/${programmeId}/new-site`,
  '/p/$programmeId/take-in': ({ programmeId }, page) => reviewAddress(programmeId, page),
  '/p/$programmeId/changes': ({ programmeId }) => `/p/${programmeId}/changes`,
  '/p/$programmeId/settings': ({ programmeId }) => `/p/${programmeId}/settings`,
  '/p/$programmeId/settings/$table': ({ programmeId }) => `/p/${programmeId}/settings/secondSources`,
  '/p/$programmeId/sites/$siteId': (demo) => `/p/${demo.programmeId}/sites/${worst(demo)}`,
  '/p/$programmeId/sites/$siteId/kit': async ({ programmeId }, page) =>
    `/p/${programmeId}/sites/${(await toFit(programmeId, page))[0]}/kit`,
  '/p/$programmeId/sites/$siteId/safety': (demo) => `/p/${demo.programmeId}/sites/${worst(demo)}/safety`,
  '/p/$programmeId/sites/$siteId/water-safety': (demo) => `/p/${demo.programmeId}/sites/${worst(demo)}/water-safety`,
  '/p/$programmeId/sites/$siteId/installation': (demo) => `/p/${demo.programmeId}/sites/${worst(demo)}/installation`,
};

/** The plan of the demo that is shown, with its crews and their trips. */
async function rolloutOf(programmeId: string, page: Page) {
  const answer = await page.request.get(new URL(`/api/programmes/${programmeId}/rollout`, page.url()).href);
  return (await answer.json()) as {
    readonly planId: string | null;
    readonly crews: readonly { readonly crewId: string; readonly trips: readonly { readonly tripId: string }[] }[];
  };
}

/** Sites that are not handed over, so that a kit is wanted. */
export async function toFit(programmeId: string, page: Page): Promise<readonly string[]> {
  const answer = await page.request.get(new URL(`/api/programmes/${programmeId}/kit`, page.url()).href);
  const { sites } = (await answer.json()) as { sites: readonly { siteId: string; isBuilt: boolean }[] };
  return sites.filter(({ isBuilt }) => !isBuilt).map(({ siteId }) => siteId);
}

/** A table with faults that waits to be looked at: a header and a class nobody knows, a number that is none. */
const faulty = `siteId,name,people,Gauge ID\nS901,Osk landing,"1,5",G99\nS902,Tullen ford,many,G3\n`;

/** The address of files that wait for a person's word. */
async function reviewAddress(programmeId: string, page: Page): Promise<string> {
  const at = new URL(`/api/programmes/${programmeId}/imports?name=sites.csv`, page.url());
  const headers = { 'content-type': 'application/octet-stream', origin: at.origin };
  const sent = await page.request.post(at.href, { headers, data: Buffer.from(faulty) });
  const { importId } = (await sent.json()) as { importId: string };
  return `/p/${programmeId}/take-in?importId=${importId}`;
}

/** What people meet beside the pages: an address at which nothing stands. */
export const besidePages: Readonly<Record<string, Reach>> = {
  'a page there is not': ({ programmeId }) => `/p/${programmeId}/nothing/here`,
  'a site there is not': ({ programmeId }) => `/p/${programmeId}/sites/NONE`,
  'a programme there is not': () => '/p/none/sites',
};

/** The addresses the router of the app knows. */
export async function routerPaths(): Promise<readonly string[]> {
  const from = (file: string) => import(/* @vite-ignore */ join(repository, file));
  const { makeRouter } = (await from('packages/app/src/routes.tsx')) as {
    makeRouter(client: unknown): { readonly routesByPath: Readonly<Record<string, unknown>> };
  };
  return Object.keys(makeRouter({}).routesByPath).sort();
}

/** What the console tells where a page could not be shown, which belongs to it. */
const toldBeside = [/status of 404/, /console error: \S*(?:NotDone|Error|\w+): .*/];

/** Opens the program and goes to every page in turn, then to what stands beside them, each settled before `look` is called. */
export async function atEveryPage(
  { page, watch }: Pick<Opened, 'page' | 'watch'>,
  look: (name: string) => Promise<void>,
): Promise<void> {
  const demo = await designedDemo(page);
  const goTo = async (reaches: Readonly<Record<string, Reach>>) => {
    for (const [name, reach] of Object.entries(reaches)) {
      const address = await reach(demo, page);
      if (address === null) continue;
      await page.goto(new URL(address, page.url()).href);
      await settled(page);
      await look(name);
    }
  };
  await goTo(everyPage);
  expect(watch.unexpected).toEqual([]);
  for (const told of toldBeside) watch.expect(told);
  await goTo(besidePages);
}

/** Waits until a page stands: its heading is there, its typeface too, and nothing more is asked for. */
export async function settled(page: Page): Promise<void> {
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  if (/\/sites\/(?!NONE)[^/]+(?:\/installation)?$/.test(page.url()))
    await page.locator('.drawn-frame svg').first().waitFor();
  await page.evaluate(() => document.fonts.ready);
  let before = '';
  for (let round = 0; round < 20; round++) {
    const now = await page.evaluate(() => `${document.body.innerHTML.length} ${document.body.scrollHeight}`);
    if (now === before) return;
    before = now;
    await page.waitForTimeout(150);
  }
}

/** Waits until a page is laid out for the size, the light and the colours it was just given. */
export const laidOut = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((done) => {
        // What a drawing does about its new size comes a frame after the size, and is drawn one later.
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)));
      }),
  );
