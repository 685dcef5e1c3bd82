// Does a drag of one site answer at once in a plan of 1,500? The evaluator on the legs a page has, timed in Node (CPU) and, with
// --browser, in Chromium slowed four times; beside it the whole plan timed on all legs (`evaluatePlan`) in the same run.
// node bench/rollout/drag.mjs [--sites 1500] [--crews 20] [--kind bound|free] [--tries 3000] [--seed 1] [--browser], after `npm run build`.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { cpus, loadavg } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import * as engine from '../../packages/engine/dist/programme/rollout/index.js';
import { quietBrowser } from '../quietBrowser.mjs';
import { dragRun } from './dragRun.mjs';
import { madeProgramme } from './made.mjs';

const slower = 4;
const asked_ms = 100;
const { values } = parseArgs({
  options: {
    ...{ sites: { type: 'string', default: '1500' }, crews: { type: 'string', default: '20' } },
    ...{ kind: { type: 'string', default: 'bound' }, tries: { type: 'string', default: '3000' } },
    ...{ seed: { type: 'string', default: '1' }, browser: { type: 'boolean', default: false } },
  },
});
const page = `<!doctype html><title>drag</title>
<script type="importmap">{"imports":{"pure-rand/":"/node_modules/pure-rand/lib/esm/"}}</script>
<script type="module">
globalThis.whenDone = (async () => {
  const engine = await import('/packages/engine/dist/programme/rollout/index.js');
  const { dragRun } = await import('/bench/rollout/dragRun.mjs');
  return dragRun(engine, await (await fetch('/given.json')).json(), () => performance.now());
})();
</script>`;
const seed = Number(values.seed);
const problem = madeProgramme({ sites: Number(values.sites), crews: Number(values.crews), kind: values.kind, seed });
const { plan, outcome } = engine.planRollout(problem, { budget: engine.budgetOfTries(Number(values.tries)), seed });
const trips_count = plan.trips.flat().length;
console.log(`${values.kind}, ${values.sites} sites, ${values.crews} crews, ${trips_count} trips, seed ${seed}`);
console.log(`${outcome.broken.length} broken before; ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}`);

const given = whatAPageHas();
const { times, found } = dragRun(engine, given, cpu_ms);
console.log(`whole plan on all legs: ${figures(wholePlan())} ms of CPU`);
for (const [name, list] of Object.entries(times)) console.log(`${name}: ${figures(list)} ms of CPU`);
tell(found);
const ratio = middle(times.drag) / middle(wholePlan());
console.log(`a drag is ${ratio.toFixed(2)} of the whole plan on all legs`);
judge('Node, CPU', middle(times.drag) * slower);
if (values.browser) await inBrowser();

/** The legs of the plan, and for some sites those that come when they are taken up, with places all over the plan to drag them to. */
function whatAPageHas() {
  const numbers = JSON.stringify(engine.packNumbers(problem, engine.pairsOfPlan(problem, plan)));
  const step = Math.max(1, Math.floor(problem.jobs.length / 12));
  const taken = Array.from({ length: 12 }, (_, at) => {
    const job = (at * step + 5) % problem.jobs.length;
    const legs = JSON.stringify(engine.packLegs(problem, engine.pairsOfSite(problem, job, plan)));
    const aims = plan.trips.flatMap((own, crew) => {
      const trip = (at * 3 + crew) % Math.max(1, own.length);
      return own.length === 0 ? [] : [at % 2 === 0 ? { crew, trip, at: 0 } : { crew, newTripAt: trip }];
    });
    return { job, legs, aims };
  });
  const size = (text) => `${Math.round(text.length / 1024)} kB, packed ${Math.round(gzipSync(text).length / 1024)} kB`;
  console.log(`the rollout with the legs of the plan: ${size(numbers)}; legs of one site: ${size(taken[0].legs)}`);
  return { numbers, plan, taken };
}

function wholePlan() {
  const ready = engine.retiming(problem);
  return Array.from({ length: 30 }, () => {
    const from = cpu_ms();
    engine.evaluatePlan(ready, plan);
    return cpu_ms() - from;
  });
}

/** The same in a browser that nobody listens to, its CPU slowed. Its clock counts the time of others too: the machine should be at rest. */
async function inBrowser() {
  const server = createServer((request, response) => {
    const [type, body] = answer(new URL(request.url, 'http://localhost').pathname);
    response.writeHead(body === null ? 404 : 200, { 'content-type': type }).end(body ?? '');
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  const browser = await quietBrowser(process.env.CHROMIUM ?? '/usr/bin/chromium');
  await browser.toPage('Page.enable');
  await browser.toPage('Emulation.setCPUThrottlingRate', { rate: slower });
  const loaded = new Promise((resolve) => browser.on('Page.loadEventFired', resolve));
  await browser.toPage('Page.navigate', { url: `http://127.0.0.1:${server.address().port}/` });
  await loaded;
  const { result, exceptionDetails } = await browser.toPage('Runtime.evaluate', {
    ...{ expression: 'whenDone', awaitPromise: true, returnByValue: true },
  });
  await browser.close();
  server.close();
  if (exceptionDetails) throw new Error(JSON.stringify(exceptionDetails));
  const { times: own, found: met } = result.value;
  for (const [name, list] of Object.entries(own))
    console.log(`Chromium slowed ${slower} times, ${name}: ${figures(list)} ms by its clock`);
  tell(met);
  judge('Chromium', middle(own.drag));
}

/** The page: the engine as it was built, and what a page has. */
function answer(path) {
  const root = new URL('../../', import.meta.url).pathname;
  if (path === '/') return ['text/html', page];
  if (path === '/given.json') return ['application/json', JSON.stringify(given)];
  const file = normalize(join(root, path));
  try {
    const named = extname(file) === '' ? `${file}.js` : file;
    return ['text/javascript', file.startsWith(root) ? readFileSync(named) : null];
  } catch {
    return ['text/plain', null];
  }
}

function tell({ drags_count, moved_count, missing_count, places_count, timed_count }) {
  const moved = (moved_count / drags_count).toFixed(0);
  console.log(`  ${drags_count} drags, ${moved} sites moved by each in the mean, ${missing_count} legs not known`);
  console.log(`  a place found for ${places_count} of 12 sites, ${Math.round(timed_count / 12)} places timed for each`);
}

function judge(where, ms) {
  console.log(`${where}: a drag takes ${ms.toFixed(0)} ms slowed ${slower} times; asked are ${asked_ms} or less`);
  if (!(ms <= asked_ms)) process.exitCode = 1;
}

function middle(list) {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];
}

function figures(list) {
  const sorted = [...list].sort((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))].toFixed(1);
  return `median ${at(0.5)}, nine in ten within ${at(0.9)}, most ${at(1)} (${list.length} times)`;
}

function cpu_ms() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
