// How long does whoever opens the rollout of a large programme wait, and after which changes again? The program itself, asked as a page asks it: the first sheet once
// the design is there, the sheet after a change of a plan, after a change beside it that bears on no site, and after one that bears on one site. Times in CPU of the
// whole process and by the clock; ratios are to the first sheet of the same run, for which all is made from nothing.
// node bench/rollout/server.mjs [--sites 1500] [--seconds 5], after `npm run build`.
import { mkdtemp, rm } from 'node:fs/promises';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as later } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { demoProgramme } from '@eavewell/demo';
import { filesOfProgramme } from '@eavewell/formats';
import { serve } from '@eavewell/server';
import { zipSync } from 'fflate';

const { values } = parseArgs({
  options: { sites: { type: 'string', default: '1500' }, seconds: { type: 'string', default: '5' } },
});
const { planted: _, ...programme } = demoProgramme({ sites: Number(values.sites), seed: 1, clean: true });
const room = await mkdtemp(join(tmpdir(), 'eavewell-rollout-server-'));
const onFault = (error) => console.error(error);
const asked = { folder: join(room, 'data'), port: 0, version: '0', demoName: null, by: 'Bench', onFault };
const started = await serve(asked);
if (!started.ok) throw new Error(started.problems.map(({ code }) => code).join(', '));
let most_bytes = 0;
const watch = setInterval(() => {
  most_bytes = Math.max(most_bytes, process.memoryUsage.rss());
}, 50);
try {
  console.log(
    `${values.sites} sites, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}, Node ${process.version}`,
  );
  await measure(await pageOf(started.value));
} finally {
  clearInterval(watch);
  await started.value.close();
  await rm(room, { recursive: true, force: true });
}

async function measure(ask) {
  const { programmeId } = await ask('POST', '/api/programmes', { name: 'Large', by: 'Bench' });
  const at = `/api/programmes/${programmeId}`;
  const designed = async () => {
    while ((await ask('GET', at)).done_fraction < 1) await later(50);
  };
  const zip = zipSync(
    Object.fromEntries([...filesOfProgramme(programme)].map(([path, text]) => [path, Buffer.from(text)])),
  );
  const { importId } = await ask('POST', `${at}/imports?name=a.zip`, zip);
  await ask('POST', `${at}/imports/${importId}/accept`, { by: 'Bench' });
  await timed('design of all sites', designed);
  const first = await timed('first sheet, no plan yet', () => ask('GET', `${at}/rollout`));
  const search = { from: null, into: null, name: 'Bench', seconds: Number(values.seconds), seed: 1, onlyCrews: null };
  await timed(`a plan, searched ${values.seconds} s by the clock`, async () => {
    await ask('POST', `${at}/rollout/search`, { by: 'Bench', ...search });
    while ((await ask('GET', `${at}/rollout/search`)).taskId !== null) await later(50);
  });
  const [{ key: planId }] = (await ask('GET', `${at}/tables/plans`)).rows;
  const sheet = () => ask('GET', `${at}/rollout?plan=${planId}`);
  const settled = async () => {
    await designed();
    while ((await sheet()).futuresState === 'beingDrawn') await later(100);
  };
  await timed('sheet of the plan', sheet, first);
  await timed('its futures', settled, first);
  const change = (table, row, after) => {
    const before = Object.fromEntries(Object.keys(after).map((column) => [column, row.cells[column] ?? null]));
    return ask('POST', `${at}/changes`, {
      by: 'Bench',
      changes: [{ kind: 'edited', table, key: row.key, before, after }],
    });
  };
  const row = async (table, at_nth = 0) => (await ask('GET', `${at}/tables/${table}`)).rows[at_nth];
  const afterChange = async (what, table, cells) => {
    await change(table, await row(table), cells);
    await timed(`design after a change of ${what}`, designed, first);
    await timed(`sheet after a change of ${what}`, sheet, first);
    await settled();
  };
  await change('planTrips', await row('planTrips'), { locked: 'yes' });
  await timed('sheet after a change of a plan', sheet, first);
  await settled();
  await afterChange('goods that come', 'arrivals', { note: 'by truck' });
  await afterChange('what a crew costs', 'crews', { cost_per_day: '77' });
  await afterChange('the people of one site', 'sites', { people: '333' });
  console.log(`at most ${(most_bytes / 1e6).toFixed(0)} MB of the whole process, measure and server`);
}

async function timed(name, work, first = null) {
  const [cpu, clock] = [process.cpuUsage(), performance.now()];
  await work();
  const { user, system } = process.cpuUsage(cpu);
  const cpu_s = (user + system) / 1e6;
  const ratio = first === null ? '' : `, ${(cpu_s / first).toFixed(2)} of the first sheet`;
  const clock_s = (performance.now() - clock) / 1000;
  console.log(`${name}: ${cpu_s.toFixed(2)} s of CPU, ${clock_s.toFixed(2)} s by the clock${ratio}`);
  return cpu_s;
}

/** Asks the server as a page does. */
async function pageOf({ address, port }) {
  const opened = await fetch(address, { redirect: 'manual' });
  const cookie = opened.headers.get('set-cookie').split(';')[0];
  const origin = `http://127.0.0.1:${port}`;
  return async (method, path, body) => {
    const isBytes = body instanceof Uint8Array;
    const type = isBytes ? 'application/octet-stream' : 'application/json';
    const answer = await fetch(`${origin}${path}`, {
      method,
      headers: { cookie, origin, ...(body === undefined ? {} : { 'content-type': type }) },
      ...(body === undefined ? {} : { body: isBytes ? body : JSON.stringify(body) }),
    });
    if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${(await answer.text()).slice(0, 300)}`);
    return answer.json();
  };
}
