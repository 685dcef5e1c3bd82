import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

/** A page of somebody else on this same computer, as a browser would meet one. */
async function foreignServer(host: string): Promise<{ readonly origin: string; close(): void }> {
  const server = createServer((_, reply) => {
    reply.setHeader('content-type', 'text/html');
    reply.end('<!doctype html><title>Other</title><h1>Another page</h1>');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { origin: `http://${host}:${port}`, close: () => server.close() };
}

/** What the program answers a page, as the network tells it: a page is not told what it may not read. */
async function statusesOf(context: BrowserContext, page: Page, origin: string): Promise<readonly number[]> {
  const statuses: number[] = [];
  const ours = new Set<string>();
  const network = await context.newCDPSession(page);
  await network.send('Network.enable');
  network.on('Network.requestWillBeSent', ({ requestId, request }) => {
    // The browser itself asks for an icon wherever it shows a page.
    if (request.url.startsWith(origin) && !request.url.endsWith('/favicon.ico')) ours.add(requestId);
  });
  network.on('Network.responseReceivedExtraInfo', ({ requestId, statusCode }) => {
    if (ours.has(requestId)) statuses.push(statusCode);
  });
  return statuses;
}

/** What a foreign page can try on a programme, and what it got. */
const triesOf = (page: Page, one: string) =>
  page.evaluate(async (one) => {
    const attempt = async (address: string, how: RequestInit) => {
      try {
        const answer = await fetch(address, { credentials: 'include', ...how });
        return `${answer.type} ${(await answer.text()).length}`;
      } catch {
        return 'refused';
      }
    };
    const loaded = (tag: 'img' | 'script', address: string) =>
      new Promise<string>((resolve) => {
        const element = document.createElement(tag);
        element.onload = () => resolve('loaded');
        element.onerror = () => resolve('refused');
        element.src = address;
        document.body.append(element);
      });
    const body = JSON.stringify({
      by: 'Nobody',
      changes: [{ table: 'sites', key: 'S001', column: 'people', to: '1' }],
    });
    const post = (type: string, mode: RequestMode) => ({
      method: 'POST',
      body,
      mode,
      headers: { 'content-type': type },
    });
    return {
      reading: await attempt(one, {}),
      readingBlind: await attempt(one, { mode: 'no-cors' }),
      writing: await attempt(`${one}/changes`, post('application/json', 'cors')),
      writingBlind: await attempt(`${one}/changes`, post('text/plain', 'no-cors')),
      undoing: await attempt(`${one}/undo`, post('text/plain', 'no-cors')),
      picture: await loaded('img', new URL('/emblem.svg', one).href),
      script: await loaded('script', one),
    };
  }, one);

const elsewhere = [
  ['another site', 'localhost'],
  ['another port of this same address', '127.0.0.1'],
] as const;

for (const [where, host] of elsewhere)
  journey(
    `a page at ${where} can neither read, nor write, nor frame, though the person is let in`,
    async ({ open, served }) => {
      const { page, context, watch } = await open();
      const { programmeId } = await designedDemo(page);
      const one = `${served.origin}/api/programmes/${programmeId}`;
      const before = await (await page.request.get(one)).json();
      const foreign = await foreignServer(host);
      try {
        const other = await context.newPage();
        watch.expect(/./);
        const statuses = await statusesOf(context, other, served.origin);
        await other.goto(foreign.origin);
        const blind = expect.stringMatching(/^(?:opaque 0|refused)$/);
        const refused = { reading: 'refused', writing: 'refused', picture: 'refused', script: 'refused' };
        expect(await triesOf(other, one)).toEqual({
          ...refused,
          readingBlind: blind,
          writingBlind: blind,
          undoing: blind,
        });
        expect(statuses.length).toBeGreaterThanOrEqual(5);
        expect(statuses.filter((status) => status !== 403)).toEqual([]);

        await other.evaluate((address) => {
          const form = document.createElement('form');
          Object.assign(form, { method: 'POST', action: `${address}/undo`, enctype: 'text/plain' });
          document.body.append(form);
          form.submit();
        }, one);
        await other.waitForURL(`${one}/undo`);
        await other.goto(foreign.origin);
        await other.evaluate((address) => {
          const frame = document.createElement('iframe');
          frame.src = address;
          document.body.append(frame);
        }, served.origin);
        await other.waitForTimeout(500);
        const framed = other.frames().find((frame) => frame !== other.mainFrame());
        expect(await framed?.getByRole('heading', { level: 1 }).count()).toBe(0);
        expect(statuses.filter((status) => status !== 403)).toEqual([]);
        expect(await (await page.request.get(one)).json()).toEqual(before);
      } finally {
        foreign.close();
      }
    },
  );

journey(
  'without the key, and under a name that was bound to this computer, there is a sentence and no data',
  async ({ page, served, browser }) => {
    await designedDemo(page);
    const stranger = await browser.newContext();
    try {
      const other = await stranger.newPage();
      const answer = await other.goto(`${served.origin}/programmes`);
      expect(answer?.status()).toBe(403);
      expect(await other.getByRole('main').textContent()).toMatch(/address/);
      const api = await stranger.request.get(`${served.origin}/api/programmes`);
      expect(api.status()).toBe(403);
      const rebound = await page.request.get(`${served.origin}/api/programmes`, {
        headers: { host: 'rebound.example' },
      });
      expect(rebound.status()).toBe(403);
    } finally {
      await stranger.close();
    }
  },
);
