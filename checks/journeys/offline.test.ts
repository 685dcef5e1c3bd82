/// <reference lib="dom" />
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { journey } from './journey.ts';
import type { Served } from './served.ts';
import type { Watch } from './watch.ts';

/** What a browser tells of a program that does not answer, or does not know the page. */
function expectAway(watch: Watch): void {
  watch.expect(/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED_ENCODING|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE/);
  watch.expect(/status of 403/);
}

/** The programme whose page is open. */
const programmeOf = (page: Page) => /\/p\/([^/]+)/.exec(page.url())![1]!;

const status = (page: Page) => page.getByRole('banner').getByRole('status').first();
const says = (page: Page, text: string) => status(page).filter({ hasText: text }).waitFor({ timeout: 15_000 });

/** Asks the program as a page of another browser. */
async function elsewhere(served: Served) {
  const opened = await fetch(served.address, { redirect: 'manual' });
  const headers = { cookie: opened.headers.get('set-cookie')!.split(';')[0]!, origin: served.origin };
  return async (path: string, body?: unknown) => {
    const sent = { method: 'POST', headers: { ...headers, 'content-type': 'application/json' } };
    const answer = await fetch(
      `${served.origin}${path}`,
      body === undefined ? { headers } : { ...sent, body: JSON.stringify(body) },
    );
    expect(answer.status).toBeLessThan(300);
    // biome-ignore lint/suspicious/noExplicitAny: each journey knows what it asked for
    return (await answer.json()) as any;
  };
}

const field = (page: Page) => page.getByRole('textbox', { name: /^Reach of a gauge/ });

/** Changes how far a gauge may be, in the form of the settings. */
async function changeReach(page: Page, km: string): Promise<void> {
  await field(page).fill(km);
  const name = page.getByLabel('Your name');
  if (await name.isVisible()) {
    await name.fill('Nadi');
    await name.press('Enter');
  }
  await page.getByRole('button', { name: /^Save/ }).click();
}

/** Looks at sites and settings and waits until the browser has kept them. */
async function lookAround(page: Page, programmeId: string): Promise<string> {
  const origin = new URL(page.url()).origin;
  const settings = `${origin}/p/${programmeId}/settings`;
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  for (const address of [`${origin}/p/${programmeId}/sites`, settings]) {
    await page.goto(address);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.waitForTimeout(1900);
  }
  return settings;
}

journey('with the program gone the pages open, show what was read and say so', async ({ open, served }) => {
  const { page, watch } = await open();
  const programmeId = programmeOf(page);
  await lookAround(page, programmeId);
  await says(page, 'All saved on this computer');
  expectAway(watch);
  await served.stop();
  await says(page, 'does not answer. You see what was read on');
  await page.goto(`${served.origin}/`);
  await page.getByRole('heading', { level: 1, name: /61/ }).waitFor();
  await says(page, 'does not answer. You see what was read on');
  expect(new URL(page.url()).pathname).toBe(`/p/${programmeId}/sites`);
  await served.start();
  await says(page, 'was started again since this page was opened');
  await page.getByRole('heading', { level: 1, name: /61/ }).waitFor();
  await page.goto(served.address);
  await says(page, 'All saved on this computer');
});

journey(
  'a change made with the program gone is kept, outlives a restart, and is made once, whatever pages are open',
  async ({ open, served }) => {
    const { page, watch, context } = await open();
    const programmeId = programmeOf(page);
    const settings = await lookAround(page, programmeId);
    expectAway(watch);
    await served.stop();
    await says(page, 'does not answer');
    await changeReach(page, '41');
    await page.getByText('Kept in this browser, not yet saved in the programme. It is saved').waitFor();
    await says(page, '1 change kept in this browser, not yet saved in the programme.');
    await page.goto(`${served.origin}/p/${programmeId}/sites`);
    await says(page, '1 change kept in this browser');
    await served.start();
    await says(page, 'was started again since this page was opened');
    await says(page, '1 change kept in this browser');
    const others = await Promise.all([context.newPage(), context.newPage()]);
    await Promise.all(others.map((other) => other.goto(served.address)));
    for (const one of [page, ...others]) await says(one, 'All saved on this computer');
    await page.goto(settings);
    await field(page).waitFor();
    expect(await field(page).inputValue()).toBe('41');
    const ask = await elsewhere(served);
    const { records } = await ask(`/api/programmes/${programmeId}/changes`);
    expect(records.filter(({ source }: { source: { kind: string } }) => source.kind === 'form')).toHaveLength(1);
    expect(records[0].by).toBe('Nadi');
  },
);

journey('what somebody else changed meanwhile waits for her word', async ({ open, served }) => {
  const { page, watch } = await open();
  const programmeId = programmeOf(page);
  await lookAround(page, programmeId);
  expectAway(watch);
  await served.stop();
  await says(page, 'does not answer');
  await changeReach(page, '52');
  await says(page, '1 change kept');
  await served.start();
  const ask = await elsewhere(served);
  const one = `/api/programmes/${programmeId}`;
  const { rows } = await ask(`${one}/tables/settings`);
  const row = rows.find(({ key }: { key: string }) => key === 'gaugeReach_km');
  const [column, stands] = Object.entries(row?.cells ?? {})[0] ?? ['value', null];
  const change = row
    ? {
        kind: 'edited',
        table: 'settings',
        key: 'gaugeReach_km',
        before: { [column]: stands },
        after: { [column]: '33' },
      }
    : { kind: 'added', table: 'settings', key: 'gaugeReach_km', after: { [column]: '33' } };
  await ask(`${one}/changes`, { by: 'Sefa', changes: [change] });
  await page.goto(served.address);
  await page.getByRole('link', { name: 'Some wait for your word' }).click();
  await page.getByText(/is 33 now, and would become 52/).waitFor();
  const reach = async () =>
    (await ask(`${one}/tables/settings`)).rows.find(({ key }: { key: string }) => key === 'gaugeReach_km').cells;
  expect(Object.values(await reach())).toEqual(['33']);
  await page.getByRole('button', { name: 'Send mine all the same' }).click();
  await page.getByRole('heading', { level: 2, name: 'No change waits' }).waitFor();
  expect(Object.values(await reach())).toEqual(['52']);
});
