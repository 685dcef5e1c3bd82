/// <reference lib="dom" />
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { emptyDraft, noQuestion } from '../../packages/app/src/water/draft.ts';
import type { FromWater } from '../../packages/app/src/water/waterMessages.ts';
import { builtThread } from './builtThread.ts';
import { designedDemo } from './demo.ts';
import { differences } from './differences.ts';
import { journey } from './journey.ts';

// A site judged in the browser from what the program answers: the report is the one the program keeps of it.

let room: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-thread-'));
  await builtThread(room);
});
afterAll(() => rm(room, { recursive: true, force: true }));

/** The thread stands where the pages have their own, so that the same rules hold for it. */
async function serveThread(page: Page): Promise<void> {
  await page.route(/\/(waterWorker\.js|assets\/(app|rest)-[^/]*\.js)$/, async (route) => {
    const body = await readFile(join(room, new URL(route.request().url()).pathname)).catch(() => null);
    if (body === null) await route.continue();
    else await route.fulfill({ contentType: 'text/javascript', body });
  });
}

/** Reads the site, judges it, works out what would mend it, and gives what the program keeps of it. */
function judgedIn(page: Page, programmeId: string, siteId: string, language: string) {
  return page.evaluate(
    async ({ programmeId, siteId, language, draft, question }) => {
      const answers = async (told: object): Promise<FromWater[]> =>
        new Promise((resolve, reject) => {
          const heard: FromWater[] = [];
          worker.onerror = ({ message }) => reject(new Error(message));
          worker.onmessage = ({ data }: MessageEvent<FromWater>) => {
            heard.push(data);
            if (data.kind === 'end' || data.kind === 'loaded' || data.kind === 'notLoaded') resolve(heard);
          };
          worker.postMessage(told);
        });
      const worker = new Worker('/waterWorker.js', { type: 'module' });
      const [loaded] = await answers({ kind: 'load', ask: 1, programmeId, siteId, form: 'test', language });
      const judge = { kind: 'judge', ask: 2, language, draft, question, wanted: ['saved'] };
      const [found] = loaded?.kind === 'loaded' ? await answers(judge) : [];
      const [mended] = loaded?.kind === 'loaded' ? await answers({ kind: 'remedies', ask: 3, language, draft }) : [];
      const again = await answers({ kind: 'load', ask: 4, programmeId, siteId, form: 'test', language });
      worker.terminate();
      const report = found?.kind === 'judged' ? found.judged!.report : null;
      const remedies = mended?.kind === 'remedies' ? mended.remedies : null;
      return {
        problem: loaded?.kind === 'notLoaded' ? loaded.problem : null,
        report: report && { ...report, remedies },
        isSame: again[0]?.kind === 'loaded' && again[0].isSame,
      };
    },
    { programmeId, siteId, language, draft: emptyDraft, question: noQuestion },
  );
}

function keptIn(page: Page, programmeId: string, siteId: string, language: string) {
  return page.evaluate(
    async ({ at, language }) => {
      const answer = await fetch(at, { headers: { 'accept-language': language } });
      return ((await answer.json()) as { design: unknown }).design;
    },
    { at: `/api/programmes/${programmeId}/sites/${siteId}`, language },
  );
}

journey('comes to the report that the program keeps, of every site', { timeout: 300_000 }, async ({ page }) => {
  const { programmeId, sites } = await designedDemo(page);
  await serveThread(page);
  let compared = 0;
  for (const { siteId } of sites.slice(0, 20)) {
    const language = compared % 2 === 0 ? 'en' : 'es';
    const [here, kept] = [
      await judgedIn(page, programmeId, siteId, language),
      await keptIn(page, programmeId, siteId, language),
    ];
    expect(here.problem, siteId).toBe(null);
    expect(differences(kept, here.report), siteId).toEqual([]);
    expect(here.isSame).toBe(true);
    compared++;
  }
  expect(compared).toBe(20);
});

journey('judges without the program what it read before, and says where it read nothing', async ({ open, served }) => {
  const { page, watch } = await open();
  watch.expect(/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED_ENCODING|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE/);
  watch.expect(/status of 403/);
  const { programmeId, sites } = await designedDemo(page);
  await serveThread(page);
  const [known, unknown] = [sites[0]!.siteId, sites[1]!.siteId];
  const before = await judgedIn(page, programmeId, known, 'en');
  await served.stop();
  const after = await judgedIn(page, programmeId, known, 'en');
  expect(after).toEqual(before);
  expect((await judgedIn(page, programmeId, unknown, 'en')).problem).toBe('unreachable');
  await served.start();
});
