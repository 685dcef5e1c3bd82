import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { workHere } from '@eavewell/work';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { OpenProgramme } from '../openProgramme.ts';
import { Programmes } from '../programmes.ts';
import { RunningTasks } from '../runningTasks.ts';
import { serve } from '../serve.ts';
import { tasks } from '../tasks.ts';
import { Reviews } from './reviews.ts';

const now = { at: () => '2026-03-02T09:00:00.000Z', offset_min: () => 600 };
async function* sites() {
  yield { name: 'sites.csv', bytes: Readable.from([Buffer.from('siteId,name\nS001,Tarn\n')]) };
}
const asked = { absent: 'stay', table: null, gaugeId: null, isWaitedFor: true } as const;

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-reviews-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

async function opened(): Promise<Programmes> {
  const found = await Programmes.open(folder, now);
  if (!found.ok) throw new Error(found.problems[0]!.code);
  return found.value;
}

async function empty(programmes: Programmes, name: string): Promise<OpenProgramme> {
  const made = await programmes.make(name, 'Nadi', null, null);
  if (!made.ok) throw new Error(made.problems[0]!.code);
  return made.value;
}

const waiting = () => readdir(join(folder, 'passing', 'imports'));

it('lets go of a file nobody looks at for an hour, and of the oldest where twenty wait', async () => {
  const programmes = await opened();
  const programme = await empty(programmes, 'Tarn water');
  let time_ms = 0;
  const work = workHere(tasks);
  const running = new RunningTasks(programmes.derivedFolder('tasks'), { others: work, design: work }, now.at);
  const reviews = new Reviews(programmes, running, () => time_ms);
  const begin = async () => {
    const begun = await reviews.begin(programme, sites(), asked);
    if (!begun.ok) throw new Error(begun.problems[0]!.code);
    return begun.value.importId;
  };
  const codeOf = async (importId: string) =>
    (await reviews.review(programme, importId)).problems.map(({ code }) => code);
  const first = await begin();
  time_ms += 3_599_000;
  expect(await codeOf(first)).toEqual([]);
  time_ms += 3_600_001;
  expect(await codeOf(first)).toEqual(['import.gone']);
  expect(await waiting()).toEqual([]);
  const ids: string[] = [];
  for (let i = 0; i < 21; i++) {
    time_ms++;
    ids.push(await begin());
  }
  expect(await waiting()).toHaveLength(20);
  expect(await codeOf(ids[0]!)).toEqual(['import.gone']);
  expect(await codeOf(ids[1]!)).toEqual([]);
  // One programme's file is not another's.
  const other = await empty(programmes, 'Ford water');
  expect((await reviews.review(other, ids[1]!)).ok).toBe(false);
  await programmes.close();
});

it('fills a demo that was cut short', async () => {
  const before = await opened();
  const cutShort = await empty(before, 'Demo');
  await before.close();
  const toServe = { folder, port: 0, version: '0', by: 'Eavewell', work: workHere(tasks), onFault: () => undefined };
  const served = await serve({ ...toServe, demoName: 'Demo' });
  if (!served.ok) throw new Error(served.problems[0]!.code);
  expect(served.value.programmes).toBe(1);
  await served.value.close();
  const after = await opened();
  const filled = await after.programme(cutShort.entry.programmeId);
  expect(filled.ok && [...filled.value.facts.rows('sites')].length).toBeGreaterThan(50);
  await after.close();
});
