// Does the page of the rollout keep its memory over many plans made anew? Opens it in Chromium with the demo, has the plan in force searched again in place many
// times, waits each time until the page has the plan's new days, and prints what the page holds after its own tidying (used heap, nodes, listeners). Of the tenth
// plan and of the last a picture of the heap is taken: what the program holds (objects, lists, texts, functions) apart from what the browser made of its code.
// node bench/rollout/pageMemory.mjs [--times 100] [--seconds 0.2]
import { mkdtemp, rm } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as later } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { serve } from '@eavewell/server';
import { chromium } from 'playwright-core';

const { values } = parseArgs({
  options: { times: { type: 'string', default: '100' }, seconds: { type: 'string', default: '0.2' } },
});
const kindOf = { native: 'browser', hidden: 'code', code: 'code', 'object shape': 'code', synthetic: 'browser' };
const times = Number(values.times);
const folder = await mkdtemp(join(tmpdir(), 'eavewell-replans-'));
const started = await serve({
  ...{ folder: join(folder, 'data'), port: 0, version: 'bench', demoName: 'Demo', by: 'Bench' },
  pages: new URL('../../packages/app/dist/', import.meta.url).pathname,
  onFault: (error) => console.error(error),
});
if (!started.ok) throw new Error(started.problems.map(({ code }) => code).join(', '));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox'],
});
try {
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  await page.goto(started.value.address);
  const { origin } = new URL(started.value.address);
  const ask = async (path) => (await page.request.get(`${origin}${path}`)).json();
  const [{ programmeId }] = (await ask('/api/programmes')).programmes;
  const at = `/api/programmes/${programmeId}`;
  while ((await ask(at)).done_fraction < 1) await later(500);
  const { planId } = await ask(`${at}/rollout`);
  await page.goto(`${origin}/p/${programmeId}/rollout?plan=${planId}`);
  await page.locator('[data-trip]').first().waitFor({ timeout: 120_000 });
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable');
  const held = async () => {
    await cdp.send('HeapProfiler.collectGarbage');
    await later(300);
    await cdp.send('HeapProfiler.collectGarbage');
    const { metrics } = await cdp.send('Performance.getMetrics');
    const of = (name) => metrics.find((one) => one.name === name)?.value ?? 0;
    return { heap_MB: of('JSHeapUsedSize') / 1e6, nodes: of('Nodes'), listeners: of('JSEventListeners') };
  };
  const pictured = async () => {
    const parts = [];
    const hear = ({ chunk }) => parts.push(chunk);
    cdp.on('HeapProfiler.addHeapSnapshotChunk', hear);
    await cdp.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
    cdp.off('HeapProfiler.addHeapSnapshotChunk', hear);
    return heldByKind(JSON.parse(parts.join('')));
  };
  const tell = (nth, { heap_MB, nodes, listeners }) =>
    console.log(`after ${nth} plans: ${heap_MB.toFixed(1)} MB, ${nodes} nodes, ${listeners} listeners`);
  console.log(`load ${loadavg()[0].toFixed(1)}`);
  tell(0, await held());
  let [tenth, last, tenthKinds] = [null, null, null];
  for (let nth = 1; nth <= times; nth++) {
    const asked = page.waitForResponse((answer) => /\/rollout\?plan=/.test(answer.url()) && answer.ok(), {
      timeout: 120_000,
    });
    const data = {
      ...{ by: 'Bench', from: planId, into: planId, name: null, seconds: Number(values.seconds), seed: nth },
      onlyCrews: null,
    };
    const begun = await page.request.post(`${origin}${at}/rollout/search`, { headers: { origin }, data });
    if (!begun.ok()) throw new Error(await begun.text());
    while ((await ask(`${at}/rollout/search`)).taskId !== null) await later(50);
    await Promise.race([asked, later(5000)]);
    if (nth % 10 === 0) {
      last = await held();
      tenth ??= last;
      tell(nth, last);
      tenthKinds ??= await pictured();
    }
  }
  const lastKinds = await pictured();
  const more = last.heap_MB / tenth.heap_MB - 1;
  console.log(`from the tenth plan to the last the page holds ${(100 * more).toFixed(1)} % more; of that:`);
  for (const kind of Object.keys(lastKinds)) {
    const [before, after] = [tenthKinds[kind], lastKinds[kind]];
    const [counts, sizes] = [before, after].reduce(
      ([a, b], one) => [
        [...a, one.count],
        [...b, one.bytes],
      ],
      [[], []],
    );
    const ratio = (sizes[1] / sizes[0]).toFixed(3);
    console.log(
      `${kind}: ${counts.join(' to ')}, ${sizes.map((one) => (one / 1e6).toFixed(2)).join(' to ')} MB (${ratio})`,
    );
  }
} finally {
  await browser.close();
  await started.value.close();
  await rm(folder, { recursive: true, force: true });
}

/** What a picture of a heap holds, by kind: `program` is what our own code keeps, `code` what was compiled of it, `browser` its own things beside. */
function heldByKind({ snapshot, nodes }) {
  const { node_fields, node_types } = snapshot.meta;
  const [typeAt, sizeAt] = ['type', 'self_size'].map((name) => node_fields.indexOf(name));
  const kinds = { program: { count: 0, bytes: 0 }, code: { count: 0, bytes: 0 }, browser: { count: 0, bytes: 0 } };
  for (let at = 0; at < nodes.length; at += node_fields.length) {
    const type = node_types[typeAt][nodes[at + typeAt]];
    const kind = kinds[kindOf[type] ?? 'program'];
    kind.count += 1;
    kind.bytes += nodes[at + sizeAt];
  }
  return kinds;
}
