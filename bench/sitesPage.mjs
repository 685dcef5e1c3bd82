// Does the page of sites stay quick with 10,000 of them? Opens it in Chromium with the CPU slowed four times, loads, scrolls,
// filters and types a search, and prints the rows in the page, the tasks over 50 ms and the size of each chunk.
// node bench/sitesPage.mjs [--slowed] [--parts] [--pages FOLDER]
// With --parts it also tells what the longest task of each consists of; pages of another build are named by their folder.
// The verdicts are those of the demo's 60 sites, told again: what is measured is the page.
import { readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { demoProgramme } from '@eavewell/demo';
import { serve } from '@eavewell/server';
import { chromium } from 'playwright-core';
import { quietBrowser } from './quietBrowser.mjs';
import { partsOf, tracedForParts } from './taskParts.mjs';

const sites_count = 10_000;
const slower = 4;
const long_ms = 50;
/** On a machine that others use as well, the browser's own slowing counts their time too: then the CPU time of each task is taken and multiplied. */
const isSlowed = process.argv.includes('--slowed');
const isInParts = process.argv.includes('--parts');
const pagesAt = process.argv.indexOf('--pages');
const pages = pagesAt > 0 ? process.argv[pagesAt + 1] : new URL('../packages/app/dist/', import.meta.url).pathname;
const windowSize = { width: 1280, height: 900 };
const browserPath = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** Asks the server as its own page does. */
async function asker({ address, port }) {
  const opened = await fetch(address, { redirect: 'manual' });
  const headers = { cookie: opened.headers.get('set-cookie').split(';')[0] };
  return (path) => fetch(`http://127.0.0.1:${port}${path}`, { headers });
}

const later = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** The list of the demo's 60 judged sites, told again and again under 10,000 names and in the order of a list: worst first. */
async function manySites(ask, at) {
  for (;;) {
    const { done_fraction } = await (await ask(at)).json();
    if (done_fraction === 1) break;
    await later(500);
  }
  const few = await (await ask(`${at}/overview`)).json();
  const { sites: rows } = demoProgramme({ sites: sites_count, clean: true }).tables;
  const judged = few.sites.filter(({ verdict }) => verdict !== null);
  const order = ['short', 'unknown', 'tight', 'holds'];
  const sites = rows
    .map(({ siteId, name }, i) => ({
      ...judged[i % judged.length],
      key: siteId,
      siteId,
      name,
      area: `Valley ${i % 40}`,
    }))
    .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict));
  const tally = Object.fromEntries(
    Object.entries(few.tally).map(([verdict, one]) => [
      verdict,
      { ...one, sites: sites.filter((site) => site.verdict === verdict).length },
    ]),
  );
  return Buffer.from(JSON.stringify({ ...few, tally, sites }));
}

/** Stands before the server: what it answers, but for the list of sites, which is the long one. */
async function before(ask, long) {
  const packed = gzipSync(long);
  const server = createServer(async ({ url }, response) => {
    if (url === '/api/events')
      return response.writeHead(200, { 'content-type': 'text/event-stream' }).write(': here\n\n');
    if (url.endsWith('/overview'))
      return response.writeHead(200, { 'content-type': 'application/json', 'content-encoding': 'gzip' }).end(packed);
    const answer = await ask(url);
    const headers = Object.fromEntries(
      ['content-type', 'content-security-policy', 'cache-control']
        .map((name) => [name, answer.headers.get(name)])
        .filter(([, value]) => value !== null),
    );
    response.writeHead(answer.status, headers).end(Buffer.from(await answer.arrayBuffer()));
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  return server;
}

/** So many tasks of each trace are told in parts, where that is asked for. */
const most_told = 6;

/** A mark the page makes, which tells its process from the browser's own. */
const ofPage = 'eavewell-page';
/** What is traced: tasks, and the page's mark. */
const traced = {
  transferMode: 'ReportEvents',
  traceConfig: {
    includedCategories: [
      'toplevel',
      'blink.user_timing',
      'disabled-by-default-devtools.timeline',
      '__metadata',
      ...(isInParts ? tracedForParts : []),
    ],
  },
};

/** Tasks of the main threads of some processes: wall and CPU time [ms], longest first. */
function tasksIn(events, isOfPage) {
  const main = events.filter(
    ({ name, args, pid }) => name === 'thread_name' && args.name === 'CrRendererMain' && isOfPage(pid),
  );
  const isMain = (one) => main.some(({ pid, tid }) => pid === one.pid && tid === one.tid);
  const tasks = events
    .filter((one) => one.name === 'RunTask' && one.dur > 0 && isMain(one))
    .map((one) => ({
      wall_ms: one.dur / 1000,
      cpu_ms: ((one.tdur ?? one.dur) / 1000) * (isSlowed ? 1 : slower),
      event: one,
    }))
    .sort((a, b) => b.cpu_ms - a.cpu_ms);
  for (const task of tasks.slice(0, isInParts ? most_told : 0)) task.parts = partsOf(events, task.event);
  return tasks;
}

/** Tasks of the page's main thread while something is done; what the bench itself looks up in the page is looked up before. */
async function tasksOf(page, work) {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: isSlowed ? slower : 1 });
  const events = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...value));
  await session.send('Tracing.start', traced);
  await work();
  const done = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.end');
  await done;
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await session.detach();
  return tasksIn(events, () => true);
}

/** Presses where something stands, as a hand does: it comes there, presses, and lets go a little later. */
async function press(page, what) {
  await what.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await what.boundingBox();
  return tasksOf(page, async () => {
    await page.mouse.move(x + width / 2, y + height / 2);
    await later(80);
    await page.mouse.down();
    await later(80);
    await page.mouse.up();
    await later(900);
  });
}

/** Tasks of the page's main thread while it is opened for the first time, in a browser that nobody listens to. */
async function tasksOfLoad(url) {
  const browser = await quietBrowser(browserPath);
  const told = async (expression) => (await browser.toPage('Runtime.evaluate', { expression })).result.value;
  try {
    await browser.toPage('Page.enable');
    await browser.toPage('Page.addScriptToEvaluateOnNewDocument', { source: `(${countRows})()` });
    await browser.toPage('Emulation.setDeviceMetricsOverride', { ...windowSize, deviceScaleFactor: 1, mobile: false });
    await browser.toPage('Emulation.setCPUThrottlingRate', { rate: isSlowed ? slower : 1 });
    const events = [];
    browser.on('Tracing.dataCollected', ({ value }) => events.push(...value));
    await browser.send('Tracing.start', traced);
    await browser.toPage('Page.navigate', { url });
    for (let i = 0; !(await told('window.mostRows > 0')); i++) {
      if (i === 300) throw new Error('the list of sites did not come up within a minute');
      await later(100);
    }
    await later(2000);
    const rows = await told('window.mostRows');
    await told(`performance.mark('${ofPage}')`);
    const done = new Promise((resolve) => browser.on('Tracing.tracingComplete', resolve));
    await browser.send('Tracing.end');
    await done;
    const page = events.find(({ name }) => name === ofPage);
    if (page === undefined) throw new Error('the trace does not tell which process shows the page');
    return { tasks: tasksIn(events, (pid) => pid === page.pid), rows };
  } finally {
    await browser.close();
  }
}

/** Keeps the most rows that are in the page at once; it runs in the page. */
function countRows() {
  window.mostRows = 0;
  const look = () => {
    window.mostRows = Math.max(window.mostRows, document.querySelectorAll('[role=row]').length);
    requestAnimationFrame(look);
  };
  look();
}

/** The most rows in the page while something goes on. */
function rowsSeen(page) {
  return page.evaluate(() => window.mostRows);
}

function line(name, { tasks, rows }) {
  const over = tasks.filter(({ cpu_ms }) => cpu_ms > long_ms);
  const wall = tasks.filter(({ wall_ms }) => wall_ms > long_ms);
  const figure = (value) => (value ?? 0).toFixed(0);
  return (
    `${name}: longest task ${figure(tasks[0]?.cpu_ms)} ms of CPU (${figure(Math.max(0, ...tasks.map(({ wall_ms }) => wall_ms)))} ms by the clock); ` +
    `over ${long_ms} ms: ${over.length} by CPU [${over
      .slice(0, 6)
      .map(({ cpu_ms }) => figure(cpu_ms))
      .join(' ')}], ${wall.length} by the clock; at most ${rows} rows in the page` +
    tasks
      .filter(({ parts }) => parts)
      .slice(0, most_told)
      .map(({ cpu_ms, parts }) => [`\n  ${figure(cpu_ms)} ms:`, ...parts].join('\n'))
      .join('')
  );
}

/** What is done, by name: each gives the tasks it took. */
const steps = {
  scroll: (page) =>
    tasksOf(page, async () => {
      for (let i = 0; i < 40; i++) {
        await page.mouse.wheel(0, i < 30 ? 300 : 20_000);
        await later(60);
      }
      await later(500);
    }),
  'show another verdict': async (page) => {
    const tasks = await tasksOf(page, async () => {
      await page.keyboard.press('Control+Home');
      await later(900);
    });
    for (const name of [/ tight$/, / tight$/, / hold$/])
      tasks.push(
        ...(await press(page, page.getByRole('list', { name: 'Show by verdict' }).getByRole('link', { name }))),
      );
    return tasks;
  },
  'other orders': async (page) => {
    const tasks = [];
    for (const name of ['cheapest mend first', 'by name', 'worst first'])
      tasks.push(...(await press(page, page.getByRole('link', { name }))));
    return tasks;
  },
  'type a search': async (page) => {
    const tasks = await press(page, page.getByRole('searchbox'));
    const typed = await tasksOf(page, async () => {
      for (const letter of 'brezolu') {
        await page.keyboard.press(letter);
        await later(180);
      }
      await later(900);
      for (let i = 0; i < 7; i++) await page.keyboard.press('Backspace');
      await later(900);
    });
    return [...tasks, ...typed];
  },
  'go down by keys': async (page) => {
    await page.locator('[role=row]').first().focus();
    return tasksOf(page, async () => {
      for (let i = 0; i < 25; i++) {
        await page.keyboard.press(i === 24 ? 'End' : 'ArrowDown');
        await later(60);
      }
      await later(500);
    });
  },
  'choose all': (page) =>
    tasksOf(page, async () => {
      await page.keyboard.press('Control+a');
      await later(1200);
    }),
};

const scratch = await mkdtemp(join(tmpdir(), 'eavewell-sites-'));
const started = await serve({
  folder: join(scratch, 'data'),
  port: 0,
  version: 'bench',
  demoName: 'Ten thousand',
  by: 'bench',
  pages,
  onFault: (error) => console.error(error),
});
if (!started.ok) throw new Error(JSON.stringify(started.problems));
const served = started.value;
let front;
try {
  const ask = await asker(served);
  const [{ programmeId }] = (await (await ask('/api/programmes')).json()).programmes;
  const long = await manySites(ask, `/api/programmes/${programmeId}`);
  front = await before(ask, long);
  const browser = await chromium.launch({ executablePath: browserPath, args: ['--no-sandbox'] });
  const page = await browser.newPage({ viewport: windowSize, locale: 'en' });
  await page.addInitScript(countRows);
  const url = `http://127.0.0.1:${front.address().port}/p/${programmeId}/sites`;
  console.log(
    `${sites_count} sites, ${isSlowed ? `CPU slowed ${slower} times` : `CPU time × ${slower}`}, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}`,
  );
  console.log(`- ${line('load', await tasksOfLoad(url))}`);
  await page.goto(url);
  await page.locator('[role=row]').first().waitFor({ timeout: 60_000 });
  await later(1500);
  for (const [name, step] of Object.entries(steps)) {
    const tasks = (await step(page)).sort((a, b) => b.cpu_ms - a.cpu_ms);
    console.log(`- ${line(name, { tasks, rows: await rowsSeen(page) })}`);
  }
  await browser.close();
} finally {
  front?.closeAllConnections();
  front?.close();
  await served.close();
  await rm(scratch, { recursive: true, force: true });
}
for (const name of readdirSync(join(pages, 'assets')).filter((file) => /\.(?:js|css)$/.test(file))) {
  const bytes = readFileSync(join(pages, 'assets', name));
  console.log(`- ${name}: ${(gzipSync(bytes, { level: 9 }).length / 1024).toFixed(1)} KiB gzip`);
}
