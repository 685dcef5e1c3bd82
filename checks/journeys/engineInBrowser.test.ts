/// <reference lib="dom" />
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { type ProgrammeFacts, readyProgramme, type SiteFacts, wearOf } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { siteReport } from '@eavewell/report';
import { loadLanguage } from '@eavewell/words';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { type Draft, emptyDraft, noQuestion, type Question } from '../../packages/app/src/water/draft.ts';
import { type JudgedOf, SiteJudge } from '../../packages/app/src/water/siteJudge.ts';
import type { FromWater, ToWater } from '../../packages/app/src/water/waterMessages.ts';
import { builtThread } from './builtThread.ts';
import { differences } from './differences.ts';

// The engine in a thread of a browser against the engine here: Math.exp, log and pow differ between the two.

const origin = 'http://water.test';
let browser: Browser;
let page: Page;
let room: string;
let facts: ProgrammeFacts;

/** Of one site, the programme as its page needs it: here the gauges it names, or all that are near enough to be asked. */
function factsOf(site: SiteFacts): ProgrammeFacts {
  const gauges = facts.gauges.filter(({ gaugeId }) => (site.gaugeId === null ? true : gaugeId === site.gaugeId));
  return { ...facts, sites: [site], gauges };
}

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-in-browser-'));
  await writeProgramme(join(room, 'demo'), demoProgramme({ sites: 60 }));
  facts = (await readProgramme(join(room, 'demo'))).facts;
  await builtThread(join(room, 'built'));
  browser = await chromium.connect(inject('browserAddress'));
  page = await browser.newPage();
  await page.route(`${origin}/**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    const siteId = /^\/facts\/(.+)$/.exec(pathname)?.[1];
    if (siteId !== undefined)
      return route.fulfill({ json: factsOf(facts.sites.find((one) => one.siteId === siteId)!) });
    if (pathname === '/')
      return route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>Water</title>' });
    const body = await readFile(join(room, 'built', pathname)).catch(() => null);
    if (body === null) return route.fulfill({ status: 404 });
    return route.fulfill({ contentType: 'text/javascript', body });
  });
  await page.goto(origin);
});
afterAll(async () => {
  await browser?.close();
  await rm(room, { recursive: true, force: true });
});

/** Facts are fetched by the page: they are long. */
type Unasked =
  | Omit<Extract<ToWater, { kind: 'judge' }>, 'ask'>
  | Omit<Extract<ToWater, { kind: 'remedies' }>, 'ask'>
  | { readonly kind: 'facts'; readonly siteId: string };

/** Asks one thread of the browser question after question, and gives what it told until each was answered. Typed arrays come back as plain ones. */
function askThread(questions: readonly Unasked[]): Promise<FromWater[][]> {
  return page.evaluate(async (all) => {
    const worker = new Worker('/waterWorker.js', { type: 'module' });
    // Days by the thousand travel as their bytes.
    const packed = (array: ArrayBufferView): unknown => {
      const bytes = new Uint8Array(array.buffer, array.byteOffset, array.byteLength);
      let text = '';
      for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
      return { isFloat: array instanceof Float64Array, base64: btoa(text) };
    };
    const plain = (value: unknown): unknown => {
      if (ArrayBuffer.isView(value)) return packed(value);
      if (Array.isArray(value)) return value.map(plain);
      if (value === null || typeof value !== 'object' || value instanceof Map) return value;
      return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, plain(one)]));
    };
    const answers: unknown[][] = [];
    for (const [ask, question] of all.entries())
      answers.push(
        await new Promise<unknown[]>((resolve, reject) => {
          const told: unknown[] = [];
          worker.onerror = ({ message }) => reject(new Error(message));
          worker.onmessage = ({ data }) => {
            told.push(plain(data));
            if (data.kind === 'end' || data.kind === 'loaded' || data.kind === 'notLoaded') resolve(told);
          };
          if (question.kind !== 'facts') worker.postMessage({ ...question, ask });
          else
            void fetch(`/facts/${question.siteId}`)
              .then((answer) => answer.json())
              .then((facts) => worker.postMessage({ kind: 'facts', siteId: question.siteId, facts, ask }))
              .catch(reject);
        }),
      );
    worker.terminate();
    return answers as FromWater[][];
  }, questions);
}

const firstTank = (site: SiteFacts): Draft => ({
  steps: [{ kind: 'tank', tankId: site.tanks[0]!.tankId, volume_L: 6000 }],
  undone: [],
});
const drier: Question = { scenario: { wetDays_fraction: 0.9, wetDayRain_fraction: 0.8, lastYears: 20 }, order: 'ybs' };

/** Some twenty sites: those that ration, with made-up rain, a second source, several tanks, rain by distance, and others. */
function chosenSites(): readonly SiteFacts[] {
  const known = facts.sites.filter(({ doubts, tanks }) => doubts.length === 0 && tanks.length > 0);
  const made = new Set(facts.gauges.filter(({ readings }) => readings.length === 0).map(({ gaugeId }) => gaugeId));
  const odd = [
    known.filter(({ ration }) => ration !== null),
    known.filter(({ gaugeId }) => made.has(gaugeId ?? '')),
    known.filter(({ secondSource }) => secondSource !== null),
    known.filter(({ tanks }) => tanks.length > 1),
    known.filter(({ gaugeId }) => gaugeId === null),
  ];
  expect(odd.slice(0, 4).every((some) => some.length > 0)).toBe(true);
  return [...new Set([...odd.flatMap((some) => some.slice(0, 3)), ...known])].slice(0, 20);
}

it('comes to the same in a thread of a browser', { timeout: 240_000 }, async () => {
  const english = await loadLanguage('en');
  const wanted: readonly JudgedOf[] = ['saved', 'drafted', 'asked'];
  const verdicts = new Set<string>();
  for (const site of chosenSites()) {
    const own = factsOf(site);
    const draft = firstTank(site);
    const judge = { kind: 'judge', language: 'en', draft, question: drier, wanted } as const;
    const [, told, mended] = await askThread([
      { kind: 'facts', siteId: site.siteId },
      judge,
      { kind: 'remedies', language: 'en', draft: emptyDraft },
    ]);
    const here = new SiteJudge(own, site.siteId);
    for (const of of wanted) {
      const by =
        of === 'saved' ? ([emptyDraft, noQuestion] as const) : ([draft, of === 'asked' ? drier : noQuestion] as const);
      const { judged, waters } = here.judge(...by, english);
      const there = told!.find((one) => one.kind === 'judged' && one.of === of);
      expect(there?.kind === 'judged' && differences(judged, there.judged), `${site.siteId} ${of}`).toEqual([]);
      verdicts.add(judged.report.verdict);
      const bands = told!.find((one) => one.kind === 'bands' && one.of === of);
      const at = waters.map((water) =>
        (bands?.kind === 'bands' ? bands.bands : [])
          .flat()
          .flatMap(({ tankVolume_L }) => water.bandAt(tankVolume_L) ?? []),
      );
      if (waters.length === 1)
        expect(differences(at[0], bands?.kind === 'bands' && bands.bands[0]), site.siteId).toEqual([]);
    }
    const remedies = mended!.find((one) => one.kind === 'remedies');
    expect(remedies?.kind === 'remedies' && differences(here.remedies(emptyDraft, english), remedies.remedies)).toEqual(
      [],
    );
  }
  expect([...verdicts].sort()).toEqual(expect.arrayContaining(['holds', 'short', 'tight']));
});

it('judges without a draft what the program judges, in the language that was asked for', async () => {
  const spanish = await loadLanguage('es');
  const site = chosenSites().at(-1)!;
  const own = factsOf(site);
  const judge = { kind: 'judge', draft: emptyDraft, question: noQuestion, wanted: ['saved'] as JudgedOf[] } as const;
  const [, told] = await askThread([
    { kind: 'facts', siteId: site.siteId },
    { ...judge, language: 'es' },
  ]);
  // The page looks at its own clock, which is that of this computer.
  const now = new Date();
  const today = Math.floor(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000);
  const ready = readyProgramme(own, { today });
  const design = await import('@eavewell/engine').then(({ designSites }) => designSites([site], ready).next().value!);
  const report = siteReport(design, null, spanish, wearOf(site, ready, design));
  expect(report.finding).not.toBe(siteReport(design, null, await loadLanguage('en'), null).finding);
  const saved = told!.find((one) => one.kind === 'judged');
  expect(saved?.kind === 'judged' && differences(report, saved.judged!.report)).toEqual([]);
});

it('lets the newest question overtake the others', async () => {
  const site = chosenSites()[0]!;
  const told = await page.evaluate(
    async ({ siteId, draft, question }) => {
      const facts: unknown = await (await fetch(`/facts/${siteId}`)).json();
      return new Promise<string[]>((resolve, reject) => {
        const worker = new Worker('/waterWorker.js', { type: 'module' });
        const heard: string[] = [];
        worker.onerror = ({ message }) => reject(new Error(message));
        worker.onmessage = ({ data }) => {
          heard.push(`${data.ask} ${data.kind}${data.kind === 'end' ? ` ${data.isOvertaken}` : ''}`);
          if (data.ask === 9 && data.kind === 'end') resolve(heard);
        };
        worker.postMessage({ kind: 'facts', ask: 0, facts, siteId });
        for (let ask = 1; ask < 10; ask++)
          worker.postMessage({ kind: 'judge', ask, language: 'en', draft, question, wanted: ['drafted'] });
      });
    },
    { siteId: site.siteId, draft: firstTank(site), question: noQuestion },
  );
  // Those that waited are read first, so that only the last of them is worked out.
  expect(told.filter((one) => one.includes('judged'))).toEqual(['9 judged']);
  expect(told.filter((one) => one.endsWith('end true'))).toHaveLength(8);
  expect(told.at(-1)).toBe('9 end false');
});
