// How soon does a site's page answer a change? Judges changes of demo sites in a thread of Chromium and prints the time from asking to the
// answer on the page, the time the thread worked, and both against one plain run in the same page.
// node bench/siteWater.mjs
// The browser's own slowing leaves threads alone, so the times are told as they are and times four. Without remedies, which come afterwards.
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { rainOfSite, readyProgramme } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { leanDryDays, madeBalance, median } from './plainRun.mjs';

const slower = 4;
const changes_count = 25;
const origin = 'http://water.test';
const room = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
const sourceOf = (path) => new URL(`../packages/app/src/${path}`, import.meta.url).pathname;

await writeProgramme(join(room, 'demo'), demoProgramme({ sites: 60 }));
const { facts } = await readProgramme(join(room, 'demo'));
await build({
  configFile: false,
  logLevel: 'error',
  root: new URL('../packages/app/', import.meta.url).pathname,
  resolve: { conditions: ['eavewell-source', 'module', 'browser', 'development|production'] },
  build: {
    target: 'es2022',
    outDir: join(room, 'built'),
    modulePreload: false,
    rolldownOptions: { input: sourceOf('water/waterWorker.ts'), output: { entryFileNames: '[name].js' } },
  },
});

const factsOf = (site) => ({
  ...facts,
  sites: [site],
  gauges: facts.gauges.filter(({ gaugeId }) => site.gaugeId === null || gaugeId === site.gaugeId),
});
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-dev-shm-usage'],
});
const page = await browser.newPage();
await page.route(`${origin}/**`, async (route) => {
  const { pathname } = new URL(route.request().url());
  if (pathname === '/') return route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>Water</title>' });
  if (pathname.startsWith('/facts/'))
    return route.fulfill({ json: factsOf(facts.sites.find(({ siteId }) => pathname.endsWith(siteId))) });
  return route.fulfill({ contentType: 'text/javascript', body: await readFile(join(room, 'built', pathname)) });
});
await page.goto(origin);

/** One plain run, two passes over 10,957 days, in the page [ms]. */
async function plainRun_ms() {
  return page.evaluate(
    ({ lean, made }) => {
      const [run, balanceOf] = [lean, made].map((text) => new Function(`return (${text})`)());
      const balance = balanceOf(1);
      const times = [];
      let dry = 0;
      for (let i = 0; i < 60; i++) {
        const from = performance.now();
        for (let size = 0; size < 20; size++) dry += run(balance, 2000 + size * 900, 2);
        times.push((performance.now() - from) / 20);
      }
      return dry > 0 ? times.sort((a, b) => a - b)[30] : NaN;
    },
    { lean: String(leanDryDays), made: String(madeBalance) },
  );
}

/** Changes of one site, one after the other: from asking to the answer, and the thread's own time [ms]. */
function changesOf(siteId, tankId) {
  return page.evaluate(
    async ({ siteId, tankId, count, question }) => {
      const facts = await (await fetch(`/facts/${siteId}`)).json();
      const worker = new Worker('/waterWorker.js', { type: 'module' });
      const told = (message, is) =>
        new Promise((resolve) => {
          worker.onmessage = ({ data }) => {
            if (is(data)) resolve(data);
          };
          worker.postMessage(message);
        });
      await told({ kind: 'facts', ask: 0, facts, siteId }, ({ kind }) => kind === 'loaded');
      const [answered, worked] = [[], []];
      for (let ask = 1; ask <= count + 5; ask++) {
        const steps = [{ kind: 'tank', tankId, volume_L: 3000 + 700 * ask }];
        const message = {
          kind: 'judge',
          ask,
          language: 'en',
          draft: { steps, undone: [] },
          question,
          wanted: ['drafted'],
        };
        const from = performance.now();
        const { judged } = await told(message, (data) => data.kind === 'judged' && data.ask === ask);
        // The first few are those of code that was never run before.
        if (ask <= 5) continue;
        answered.push(performance.now() - from);
        worked.push(judged.took_ms);
      }
      worker.terminate();
      return { answered, worked };
    },
    {
      siteId,
      tankId,
      count: changes_count,
      question: { scenario: { wetDays_fraction: 1, wetDayRain_fraction: 1, lastYears: null }, order: null },
    },
  );
}

const ready = readyProgramme(facts);
const kinds = {
  'drawn first, 32 years': ({ ration, tanks, secondSource }) => !ration && tanks.length === 1 && !secondSource,
  'second source': ({ secondSource }) => secondSource !== null,
  'several tanks': ({ tanks }) => tanks.length > 1,
  rationed: ({ ration }) => ration !== null,
};
console.log(
  `${cpus()[0].model}, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}; Chromium ${browser.version()}`,
);
const isMade = (site) => (rainOfSite(site, ready)?.rain?.madeDays ?? 0) > 0;
const judgedSites = facts.sites.filter(
  (site) => site.doubts.length === 0 && site.tanks.length > 0 && rainOfSite(site, ready)?.rain,
);
const groups = [
  ...Object.entries(kinds).map(([name, is]) => [
    name,
    judgedSites.filter((site) => is(site) && !isMade(site)).slice(0, 6),
  ]),
  ['made-up rain, 100 years', judgedSites.filter(isMade).slice(0, 3)],
];
for (const [name, sites] of groups) {
  const plain_ms = await plainRun_ms();
  const [answered, worked] = [[], []];
  for (const { siteId, tanks } of sites) {
    const found = await changesOf(siteId, tanks[0].tankId);
    answered.push(...found.answered);
    worked.push(...found.worked);
  }
  if (answered.length === 0) continue;
  const at95 = [...answered].sort((a, b) => a - b)[Math.floor(answered.length * 0.95)];
  const [wall, own] = [median(answered), median(worked)];
  console.log(
    `- ${name} (${sites.length} sites × ${changes_count} changes): answered in ${wall.toFixed(1)} ms (95 of 100 within ${at95.toFixed(1)}), × ${slower}: ${(slower * wall).toFixed(0)} ms; ` +
      `thread ${own.toFixed(1)} ms; ${(wall / plain_ms).toFixed(0)} plain runs of ${plain_ms.toFixed(3)} ms`,
  );
}
await browser.close();
await rm(room, { recursive: true, force: true });
