// Serves a data folder, changes its programmes as a person would, and notes each answer in a file once it is there: for a check that
// records every write to the disk and then cuts the power.
import { appendFileSync, openSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { seededDice } from '@eavewell/engine';
import { serve } from '@eavewell/server';

const [room, seed, steps, kind] = /** @type {[string, string, string, string]} */ (process.argv.slice(2));
const folder = join(room, 'data');
const answers = openSync(join(room, 'answers.txt'), 'w');
const below = seededDice(Number(seed)).next;

const started = await serve({
  ...{ folder, port: 0, version: '0.1.0', demoName: null, by: 'Eavewell' },
  onFault: (error) => {
    throw error;
  },
});
if (!started.ok) throw new Error(started.problems[0]?.code);
const { address, port, close } = started.value;
const opened = await fetch(address, { redirect: 'manual' });
const cookie = /** @type {string} */ (opened.headers.get('set-cookie')).split(';')[0];

/**
 * @param {string} method
 * @param {string} path
 * @param {unknown} [body]
 * @returns {Promise<{ programmeId: string, importId: string, version: number }>}
 */
async function ask(method, path, body) {
  const isText = typeof body === 'string';
  const type = isText ? 'text/csv' : 'application/json';
  const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
    method,
    headers: { cookie: cookie ?? '', ...(body === undefined ? {} : { 'content-type': type }) },
    ...(body === undefined ? {} : { body: isText ? body : JSON.stringify(body) }),
  });
  if (answer.status >= 300) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
  return /** @type {{ programmeId: string, importId: string, version: number }} */ (await answer.json());
}

const made = await ask('POST', '/api/programmes', { name: 'Tarn water', from: 'empty', by: 'Nadi' });
const programme = `/api/programmes/${made.programmeId}`;
writeSync(answers, `made ${made.programmeId}\n`);
let version = 0;

/** Sites with long names, so that a change takes many pages. @param {number} many */
const csv = (many) =>
  `siteId,name,people\n${Array.from({ length: many }, (_, i) => `S${1000 + i},${'x'.repeat(below(900))},${10 + below(90)}\n`).join('')}`;

/** @param {string} text */
async function takenIn(text) {
  const review = await ask('POST', `${programme}/imports?name=sites.csv`, text);
  return ask('POST', `${programme}/imports/${review.importId}/accept`, { by: 'Nadi' });
}

/** @param {{ version: number }} answer */
function answered(answer) {
  version = answer.version;
  writeSync(answers, `version ${version}\n`);
}

answered(await takenIn(csv(40)));
let [undone, done] = [0, 1];
for (let i = 0; i < Number(steps); i++) {
  const step = below(10);
  if (step === 0) answered(await takenIn(csv(1 + below(60))));
  else if (step === 1 && done > 1) {
    answered(await ask('POST', `${programme}/undo`, { by: 'Nadi' }));
    [undone, done] = [undone + 1, done - 1];
    continue;
  } else if (step === 2 && undone > 0) {
    answered(await ask('POST', `${programme}/redo`, { by: 'Nadi' }));
    [undone, done] = [undone - 1, done + 1];
    continue;
  } else if (step === 3) {
    await ask('GET', `${programme}/design`);
    continue;
  } else {
    const key = `S${1000 + below(40)}`;
    const after = { people: String(100 + i), notes: 'y'.repeat(1 + below(3000)) };
    const change = { kind: 'edited', table: 'sites', key, before: { people: '0', notes: null }, after };
    answered(await ask('POST', `${programme}/changes`, { by: 'Nadi', changes: [change] }));
  }
  [undone, done] = [0, done + 1];
}
if (kind === 'ended') await close();
appendFileSync(join(room, 'ended.txt'), 'ended\n');
process.exit(0);
