// Does the page of sites stay quick with 10,000 of them? Opens it in Chromium with the CPU slowed four times, loads, scrolls,
// filters and types a search, and prints the rows in the page, the tasks over 50 ms and the size of each chunk.
// node bench/sitesPage.mjs [--slowed] [--first] [--parts] [--runs N] [--only NAME,NAME] [--pages FOLDER]
// With --first it goes before other work of the machine (goesFirst.mjs). With --parts it also tells what the longest task of each consists of; pages of another build are named by their folder. With
// --runs all is done so many times, each in a browser of its own, and the median and the worst of the runs are told.
// The verdicts are those of the demo's 60 sites, told again: what is measured is the page.
import { readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as later } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { demoProgramme } from '@eavewell/demo';
import { serve } from '@eavewell/server';
import { chromium } from 'playwright-core';
import { goesFirst } from './goesFirst.mjs';
import { countRows, taskMeasure } from './pageTasks.mjs';
import { runsTable } from './taskRuns.mjs';

const sites_count = 10_000;
const slower = 4;
const long_ms = 50;
/** On a machine that others use as well, the browser's own slowing counts their time too: then the CPU time of each task is taken and multiplied. */
const isSlowed = process.argv.includes('--slowed');
const isInParts = process.argv.includes('--parts');
/** What stands after a word of the command; null where the word is not there. */
const after = (word) => (process.argv.includes(word) ? process.argv[process.argv.indexOf(word) + 1] : null);
const runs_count = Number(after('--runs') ?? 1);
const only = after('--only')?.split(',') ?? null;
const pages = after('--pages') ?? new URL('../packages/app/dist/', import.meta.url).pathname;
const windowSize = { width: 1280, height: 900 };
const browserPath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const { tasksOf, press, tasksOfLoad } = taskMeasure({ slower, isSlowed, isInParts });

/** Asks the server as its own page does. */
async function asker({ address, port }) {
  const opened = await fetch(address, { redirect: 'manual' });
  const headers = { cookie: opened.headers.get('set-cookie').split(';')[0] };
  return (path) => fetch(`http://127.0.0.1:${port}${path}`, { headers });
}

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

/** All that is done, once: the tasks and the most rows of each step by its name. */
async function oneRun(url) {
  const isAsked = (name) => only === null || only.includes(name);
  const done = new Map();
  if (isAsked('load')) done.set('load', await tasksOfLoad(browserPath, windowSize, url));
  const asked = Object.entries(steps).filter(([name]) => isAsked(name));
  if (asked.length === 0) return done;
  const browser = await chromium.launch({ executablePath: browserPath, args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage({ viewport: windowSize, locale: 'en' });
    await page.addInitScript(countRows);
    await page.goto(url);
    await page.locator('[role=row]').first().waitFor({ timeout: 60_000 });
    await later(1500);
    for (const [name, step] of asked) {
      const tasks = (await step(page)).sort((a, b) => b.cpu_ms - a.cpu_ms);
      done.set(name, { tasks, rows: await page.evaluate(() => window.mostRows) });
    }
  } finally {
    await browser.close();
  }
  return done;
}

/** Prints each run, and what all of them come to. */
async function measure(url) {
  const runs = [];
  for (let i = 0; i < runs_count; i++) {
    console.log(
      `${sites_count} sites, ${isSlowed ? `CPU slowed ${slower} times` : `CPU time × ${slower}`}, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}`,
    );
    const run = await oneRun(url);
    for (const [name, done] of run) console.log(`- ${line(name, done)}`);
    runs.push(run);
  }
  if (runs.length > 1) console.log(runsTable(runs, long_ms));
}

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
  const end = process.argv.includes('--first') ? goesFirst(process.pid) : () => undefined;
  await measure(`http://127.0.0.1:${front.address().port}/p/${programmeId}/sites`);
  end();
} finally {
  front?.closeAllConnections();
  front?.close();
  await served.close();
  await rm(scratch, { recursive: true, force: true });
}
if (only === null)
  for (const name of readdirSync(join(pages, 'assets')).filter((file) => /\.(?:js|css)$/.test(file))) {
    const bytes = readFileSync(join(pages, 'assets', name));
    console.log(`- ${name}: ${(gzipSync(bytes, { level: 9 }).length / 1024).toFixed(1)} KiB gzip`);
  }
