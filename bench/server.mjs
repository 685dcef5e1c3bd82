import { openSync, readSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { gzipSync } from 'node:zlib';
import { demoProgramme } from '@eavewell/demo';
import { filesOfProgramme } from '@eavewell/formats';
import { serve } from '@eavewell/server';
import { zipSync } from 'fflate';

/** A large programme: so many sites, and every gauge of the demo so often that there are 50. */
const [sites, gauges] = [1500, 50];

function largeProgramme(count = sites) {
  const { planted: _, ...programme } = demoProgramme({ sites: count, seed: 1, clean: true });
  const own = programme.rain.length;
  const rows = programme.tables.gauges;
  const rain = Array.from({ length: Math.max(own, gauges) }, (_, i) => {
    const { gaugeId, rows: days } = programme.rain[i % own];
    return i < own ? programme.rain[i] : { gaugeId: `${gaugeId}x${i}`, rows: days.map((day) => ({ ...day })) };
  });
  const named = rain.slice(own).map(({ gaugeId }, i) => ({ ...rows[i % rows.length], gaugeId, name: gaugeId }));
  return { ...programme, rain, tables: { ...programme.tables, gauges: [...rows, ...named] } };
}

const zipOf = (programme) =>
  zipSync(
    Object.fromEntries(
      [...filesOfProgramme(programme)].map(([path, text]) => [
        path,
        typeof text === 'string' ? Buffer.from(text) : text,
      ]),
    ),
  );

/** CPU time of this thread so far [ms], where the system tells it. */
const thread = (() => {
  try {
    const file = openSync(`/proc/self/task/${process.pid}/schedstat`, 'r');
    const bytes = new Uint8Array(64);
    const read = () =>
      Number(new TextDecoder().decode(bytes.subarray(0, readSync(file, bytes, 0, 64, 0))).split(' ')[0]) / 1e6;
    read();
    return read;
  } catch {
    return null;
  }
})();

/** The longest time in which nothing else was answered while the work ran [ms]; by the clock, and in CPU of the answering thread alone. */
async function watched(name, work) {
  const delay = monitorEventLoopDelay({ resolution: 1 });
  let [last, most_ms] = [thread?.() ?? 0, 0];
  const timer = setInterval(() => {
    const now = thread?.() ?? 0;
    most_ms = Math.max(most_ms, now - last);
    last = now;
  }, 1);
  delay.enable();
  const start = performance.now();
  const result = await work();
  const seconds = (performance.now() - start) / 1000;
  await new Promise((later) => setTimeout(later, 20));
  delay.disable();
  clearInterval(timer);
  const cpu = thread === null ? '' : ` (${most_ms.toFixed(0)} ms of its own CPU)`;
  return [
    `${name}: ${seconds.toFixed(2)} s, longest block of the answering thread ${(delay.max / 1e6).toFixed(0)} ms${cpu}`,
    result,
  ];
}

/** Asks the server as a page does. */
async function pageOf(served) {
  const opened = await fetch(served.address, { redirect: 'manual' });
  const cookie = opened.headers.get('set-cookie').split(';')[0];
  const origin = `http://127.0.0.1:${served.port}`;
  return async (method, path, body, headers = {}) => {
    const isBytes = body instanceof Uint8Array;
    const type =
      body === undefined ? {} : { 'content-type': isBytes ? 'application/octet-stream' : 'application/json' };
    const answer = await fetch(`${origin}${path}`, {
      method,
      headers: { cookie, origin, ...type, ...headers },
      ...(body === undefined ? {} : { body: isBytes ? body : JSON.stringify(body) }),
    });
    const bytes = new Uint8Array(await answer.arrayBuffer());
    if (!answer.ok)
      throw new Error(`${method} ${path}: ${answer.status} ${new TextDecoder().decode(bytes).slice(0, 300)}`);
    return { bytes, headers: answer.headers, json: () => JSON.parse(new TextDecoder().decode(bytes)) };
  };
}

const fresh = async (ask, at) => {
  for (;;) {
    const state = (await ask('GET', at)).json();
    if (state.isFailed) throw new Error('the design failed');
    if (state.done_fraction === 1) return state;
    await new Promise((later) => setTimeout(later, 50));
  }
};

/** What the server keeps others waiting for, and what the page of sites weighs. */
export async function serverBench({ large = sites, list = 10_000, withDesign = true } = {}) {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-server-bench-'));
  const lines = [];
  const say = async (name, work) => {
    const [line, result] = await watched(name, work);
    lines.push(line);
    return result;
  };
  const onFault = (error) => {
    throw error;
  };
  const done = [];
  const asked = {
    folder: join(room, 'data'),
    port: 0,
    version: '0',
    demoName: null,
    by: 'Bench',
    onFault,
    onDesign: (one) => done.push(one),
  };
  try {
    const started = await serve(asked);
    const ask = await pageOf(started.value);
    const at = await make(ask, 'Large');
    await imports(ask, at, zipOf(largeProgramme(large)), `${large} sites, ${gauges} gauges of 30 years`, say);
    if (withDesign) await designs(ask, at, say, lines, done);
    await manySites(ask, await make(ask, 'Wide'), list, say, lines);
    await started.value.close();
    return lines;
  } finally {
    await rm(room, { recursive: true, force: true });
  }
}

async function make(ask, name) {
  const { programmeId } = (await ask('POST', '/api/programmes', { name, by: 'Bench' })).json();
  return `/api/programmes/${programmeId}`;
}

async function imports(ask, at, zip, what, say) {
  const look = async (name, bytes) => (await ask('POST', `${at}/imports?name=${name}`, bytes)).json();
  const review = await say(`import looked at: ${what}, ${(zip.length / 1e6).toFixed(1)} MB`, () => look('a.zip', zip));
  await say('import taken in', () => ask('POST', `${at}/imports/${review.importId}/accept`, { by: 'Bench' }));
  const again = await say('the same again looked at', () => look('a.zip', zip));
  if (again.changes.length > 0) throw new Error('a second import changes something');
  await ask('DELETE', `${at}/imports/${again.importId}`);
  await say('export', () => ask('GET', `${at}/export.zip`));
  const rows = Array.from({ length: 5000 }, (_, i) => `N${i},Site ${i},${i === 7 ? 'many' : 50}`);
  const table = Buffer.from(`siteId,name,people\n${rows.join('\n')}\n`);
  const five = await say('a table of 5,000 rows looked at', () => look('sites.csv', table));
  const cell = { file: 'sites.csv', row: 9, column: 'people', value: '50' };
  await say('a cell of it mended, and all read again', () => ask('PATCH', `${at}/imports/${five.importId}`, cell));
  await ask('DELETE', `${at}/imports/${five.importId}`);
}

async function designs(ask, at, say, lines, done) {
  await say(`design of ${sites} sites, none carried over`, () => fresh(ask, at));
  const { rows } = (await ask('GET', `${at}/tables/sites`)).json();
  const { key, cells } = rows[3];
  const people = { kind: 'edited', table: 'sites', key, before: { people: cells.people }, after: { people: '333' } };
  await ask('POST', `${at}/changes`, { by: 'Bench', changes: [people] });
  await say('design after an edit of one site', () => fresh(ask, at));
  const { carried } = done.at(-1);
  lines.push(`  of ${done.at(-1).sites} sites ${carried} were carried over`);
  await weighed(ask, at, `${sites} sites, judged`, say, lines);
}

/** What the page of sites weighs, plain and packed. */
async function weighed(ask, at, what, say, lines) {
  const list = await say(`list of ${what}`, () =>
    ask('GET', `${at}/overview`, undefined, { 'accept-encoding': 'identity' }),
  );
  const packed = gzipSync(list.bytes).length;
  lines.push(`  ${(list.bytes.length / 1e6).toFixed(2)} MB, packed ${(packed / 1e6).toFixed(2)} MB`);
  return list;
}

async function manySites(ask, at, count, say, lines) {
  const { planted: _, ...programme } = demoProgramme({ sites: count, seed: 2, clean: true });
  const review = (await ask('POST', `${at}/imports?name=a.zip`, zipOf(programme))).json();
  await ask('POST', `${at}/imports/${review.importId}/accept`, { by: 'Bench' });
  const list = await weighed(ask, at, `${count} sites, not judged yet`, say, lines);
  await say('the same again (304)', async () => {
    const same = await ask('GET', `${at}/overview`, undefined, { 'if-none-match': list.headers.get('etag') }).catch(
      String,
    );
    if (!/ 304 /.test(`${same}`)) lines.push('  it was sent again: the design had got on meanwhile');
  });
  await ask('DELETE', `${at}/design`);
}

if (process.argv[1]?.endsWith('server.mjs')) for (const line of await serverBench()) console.log(line);
