import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dayOnClock, isoDay } from '@eavewell/engine';
import { writeProgramme } from '@eavewell/formats';
import { keepPlan } from '@eavewell/server';
import { type RolloutReport, type RolloutSheet, rolloutReport, rolloutSheet } from '@eavewell/tables';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from '../../packages/cli/src/keptRun.ts';
import { made, settings, sites, tables } from '../../packages/cli/src/rolloutForTests.ts';
import type { Files } from '../faults/folder.ts';
import { type Page, withServer, zipOf } from '../faults/served.ts';

const quick = ['--tries', '100', '--futures', '0'] as const;
const dayIn = (days: number) => isoDay(dayOnClock(new Date()) + days);
const plain = (text: string) => text.replace(/\s+/g, ' ');

let room: string;
let folder: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-plans-'));
  folder = await programme('tarn');
});
afterAll(() => rm(room, { recursive: true, force: true }));

/** Three sites by a river that are planned from a week from now on, whatever the day. */
async function programme(name: string, changed: object = {}): Promise<string> {
  const path = join(room, name);
  const arrivals = tables.arrivals.map((one) => ({ ...one, dueOn: dayIn(40) }));
  await writeProgramme(path, {
    settings: { ...settings, rolloutStart: dayIn(7) },
    rain: made.rain,
    tables: { ...tables, arrivals, ...changed },
  });
  return path;
}

async function filesOf(path: string, within = ''): Promise<Files> {
  const found: Record<string, string> = {};
  for (const entry of await readdir(join(path, within), { withFileTypes: true })) {
    const own = within === '' ? entry.name : `${within}/${entry.name}`;
    if (entry.isDirectory()) Object.assign(found, await filesOf(path, own));
    else found[own] = await readFile(join(path, own), 'utf8');
  }
  return found;
}

const rollout = (...args: readonly string[]) => keptRun(['rollout', ...args]);

async function reported(...args: readonly string[]): Promise<RolloutReport> {
  const { out, err, code } = await rollout(...args, '--json');
  expect([code, err.replace(/^(?:reading|judging|\d+ %).*\n?/gm, '')]).toEqual([0, '']);
  return rolloutReport.parse(JSON.parse(out));
}

/** Who goes where on which day, trip by trip. */
const daysOf = ({ crews }: Pick<RolloutReport, 'crews'> | Pick<RolloutSheet, 'crews'>) =>
  crews.flatMap(({ crewId, trips }) =>
    trips.map(({ tripId, leaves, back, stops }) => ({
      ...{ crewId, tripId, leaves, back },
      stops: stops.map(({ siteId, starts, handOver }) => [siteId, starts, handOver]),
    })),
  );

async function sheetOf(page: Page, path: string): Promise<RolloutSheet> {
  const { status, body } = await page.ask('GET', `${path}/rollout`);
  expect(status).toBe(200);
  return rolloutSheet.parse(body);
}

describe('a plan that the command found', () => {
  it('taken in on the page from its tables, is a plan with the days the command told', async () => {
    const out = join(room, 'results');
    const report = await reported(folder, ...quick, '--out', out, '--plan-id', 'dry');
    expect(daysOf(report).length).toBeGreaterThan(1);
    const kept = await filesOf(join(out, 'kept'));
    expect(Object.keys(kept).sort()).toEqual(['planStops.csv', 'planTrips.csv', 'plans.csv']);
    const zip = zipOf(await filesOf(folder));
    await withServer(async (page) => {
      const path = await page.empty();
      expect((await page.takeIn(path, 'tarn.zip', zip)).status).toBe(200);
      expect((await sheetOf(page, path)).planId).toBeNull();
      const review = await page.send(path, 'kept.zip', zipOf(kept));
      expect([review.status, review.body.problems ?? []]).toEqual([201, []]);
      expect((await page.ask('POST', `${path}/imports/${review.body.importId}/accept`, { by: 'Nadi' })).status).toBe(
        200,
      );
      const sheet = await sheetOf(page, path);
      expect(sheet.planId).toBe('dry');
      expect(daysOf(sheet)).toEqual(daysOf(report));
      for (const { kept: day, handOver } of sheet.crews.flatMap(({ trips }) => trips.flatMap(({ stops }) => stops)))
        expect(day).toBe(handOver);
    });
  });

  it('is kept in a data folder as one change of whoever is named, in force, and can be undone', async () => {
    const data = join(room, 'data');
    const out = join(room, 'results-of-data');
    const keep = ['--data', data, ...quick, '--keep', 'Dry season', '--by', 'Nadi', '--in-force'];
    const zip = zipOf(await filesOf(folder));
    const path = await withServer(
      async (page) => {
        const own = await page.empty();
        expect((await page.takeIn(own, 'tarn.zip', zip)).status).toBe(200);
        const refused = await rollout(...keep);
        expect([refused.code, plain(refused.err)]).toEqual([
          1,
          expect.stringContaining('Another program has the data'),
        ]);
        return own;
      },
      { folder: data, keep: true },
    );
    const report = await reported(...keep, '--out', out);
    await withServer(
      async (page) => {
        const sheet = await sheetOf(page, path);
        expect(sheet.plans.map(({ planId, name, isInForce }) => [planId, name, isInForce])).toEqual([
          ['P1', 'Dry season', true],
        ]);
        expect(daysOf(sheet)).toEqual(daysOf(report));
        const { body } = await page.ask('GET', `${path}/history?table=plans&key=P1&column=name`);
        expect(JSON.stringify(body)).toContain('Nadi');
        expect((await page.ask('POST', `${path}/undo`, { by: 'Nadi' })).status).toBe(200);
        expect((await sheetOf(page, path)).plans).toEqual([]);
        expect((await page.ask('POST', `${path}/redo`, { by: 'Nadi' })).status).toBe(200);
      },
      { folder: data, keep: true },
    );
    // A second one is followed in place of the first, and goes on from it.
    const next = await reported('--data', data, ...quick, '--keep', 'Next', '--by', 'Oren', '--in-force');
    expect(next.replanned).toMatchObject({ planId: 'P1', name: 'Dry season' });
    await withServer(
      async (page) => {
        const sheet = await sheetOf(page, path);
        expect(sheet.plans.map(({ planId, isInForce }) => [planId, isInForce])).toEqual([
          ['P1', false],
          ['P2', true],
        ]);
        expect(daysOf(sheet)).toEqual(daysOf(next));
      },
      { folder: data, keep: true },
    );
  });
});

describe('a plan kept in its folder', () => {
  it('is gone on from by the command, which tells what changed, and stands beside the plans there were', async () => {
    const own = await programme('own');
    const first = await reported(own, ...quick, '--keep', '=First', '--in-force');
    const again = await reported(own, ...quick);
    expect(again.replanned).toMatchObject({ planId: 'P1', name: '=First', moved_count: 0, sites: [] });
    expect(daysOf(again)).toEqual(daysOf(first));
    // Goods come two months later: what moves is told against the plan that is kept.
    const file = join(own, 'arrivals.csv');
    await writeFile(file, (await readFile(file, 'utf8')).replace(dayIn(40), dayIn(100)));
    const before = await filesOf(own);
    const later = await reported(own, ...quick, '--keep', 'Second', '--in-force');
    expect(later.replanned!.moved_count).toBeGreaterThan(0);
    const after = await filesOf(own);
    for (const name of ['planTrips.csv', 'planStops.csv'])
      expect(String(after[name]).startsWith(String(before[name]))).toBe(true);
    const third = await reported(own, ...quick);
    expect(third.replanned).toMatchObject({ planId: 'P2', name: 'Second', moved_count: 0 });
    const check = await keptRun(['check', own]);
    const [read = '', problems = ''] = plain(check.out).split(' Problems ');
    expect(read).toContain('plans.csv 2 of 2 rows used');
    expect(problems).not.toMatch(/plan(?:s|Trips|Stops)\.csv/);
  });

  it('keeps tables of other separators and columns as they stand', async () => {
    const own = await programme('semicolons', { plans: [], planTrips: [], planStops: [] });
    const text = 'planId;name;colour\r\nP1;Beside;red\r\n';
    await writeFile(join(own, 'plans.csv'), text);
    await reported(own, ...quick, '--keep', 'New');
    const [head, beside, added] = (await readFile(join(own, 'plans.csv'), 'utf8')).split('\r\n');
    expect([head, beside]).toEqual(['planId;name;colour;from;timedAt', 'P1;Beside;red;;']);
    expect(added).toMatch(/^P2;New;;\d{4}-/);
  });
});

describe('keeping that was asked wrongly', () => {
  const kept = { plans: [{ planId: 'P1', name: 'There' }], planTrips: [], planStops: [] };
  it.each([
    [['--keep', ' '], '--keep "Dry season"'],
    [['--plan-id', 'x'], 'need --keep NAME or --out DIR'],
    [['--keep', 'A', '--plan-id', '../x'], '"../x" cannot be an id'],
    [['--keep', 'A', '--plan-id', 'P1'], 'There is a plan P1 already; nothing was searched. P2 is free.'],
  ])('%s: says so, and nothing is written', async (args, said) => {
    const own = join(room, 'wrong');
    await programme('wrong', kept);
    const before = await filesOf(own);
    const { code, err } = await rollout(own, ...quick, ...args);
    expect([code, plain(err)]).toEqual([2, expect.stringContaining(said)]);
    expect(await filesOf(own)).toEqual(before);
    await rm(own, { recursive: true });
  });

  it('with --data it needs a person', async () => {
    const { code, err } = await rollout('--data', join(room, 'data'), ...quick, '--keep', 'A');
    expect([code, plain(err)]).toEqual([2, expect.stringContaining('--keep with --data needs --by NAME')]);
  });

  it('a folder that holds a programme takes no results', async () => {
    const other = await programme('other', kept);
    const before = await filesOf(other);
    const { code, err } = await rollout(folder, ...quick, '--out', other, '--overwrite');
    expect([code, plain(err)]).toEqual([
      2,
      expect.stringContaining('holds a programme (sites.csv); nothing was written'),
    ]);
    expect(await filesOf(other)).toEqual(before);
  });

  it('a workbook keeps no plan, and a table that is not in UTF-8 stays as it is', async () => {
    const book = join(room, 'tarn.xlsx');
    await keptRun(['convert', folder, book]);
    const workbook = await rollout(book, ...quick, '--keep', 'A');
    expect([workbook.code, plain(workbook.err)]).toEqual([2, expect.stringContaining('cannot be kept in a workbook')]);
    const own = await programme('latin', kept);
    const plans = join(own, 'plans.csv');
    await writeFile(plans, Buffer.from('planId,name\nP1,Estaci\u00f3n\n', 'latin1'));
    const before = await readdir(own);
    const latin = await rollout(own, ...quick, '--keep', 'A');
    expect([latin.code, plain(latin.err)]).toEqual([1, expect.stringContaining('"plans.csv" is not in UTF-8')]);
    expect(await readdir(own)).toEqual(before);
  });

  it('a plan that names what left the programme meanwhile is not kept, nor one whose id was taken', async () => {
    const [data, zip] = [join(room, 'meanwhile'), zipOf(await filesOf(folder))];
    const path = await withServer(
      async (page) => {
        const own = await page.empty();
        await page.takeIn(own, 'tarn.zip', zip);
        return own;
      },
      { folder: data, keep: true },
    );
    const found = {
      ...{ programmeId: null, planId: 'P1', by: 'Nadi', name: 'A', from: dayIn(7), isInForce: false },
      ...{ timedAt: new Date().toISOString(), planTrips: [{ tripId: 'T1', crewId: 'east', order: '1' }] },
      planStops: [{ tripId: 'T1', siteId: sites[0]!.siteId, order: '1' }],
    };
    const codesOf = async (more: Partial<typeof found>) => {
      const kept = await keepPlan(data, { ...found, ...more });
      return kept.ok ? kept.value : kept.problems.map(({ code, facts }) => `${code} ${facts['value']}`).join();
    };
    const gone = { planStops: [...found.planStops, { tripId: 'T1', siteId: 'S404', order: '2' }] };
    expect(await codesOf(gone)).toBe('change.plan_outlived S404');
    expect(await codesOf({})).toBe('P1');
    expect(await codesOf({})).toBe('change.row_there P1');
    await withServer(async (page) => expect((await sheetOf(page, path)).plans).toHaveLength(1), {
      ...{ folder: data, keep: true },
    });
  });

  it('rows of a plan whose sites left the programme are named where they are taken in', async () => {
    const out = join(room, 'outlived');
    await reported(folder, ...quick, '--out', out);
    const fewer = join(room, 'fewer');
    await cp(folder, fewer, { recursive: true });
    for (const name of Object.keys(await filesOf(join(out, 'kept'))))
      await cp(join(out, 'kept', name), join(fewer, name));
    const file = join(fewer, 'sites.csv');
    const gone = sites[1]!.siteId;
    const lines = (await readFile(file, 'utf8')).split('\n').filter((line) => !line.startsWith(`${gone},`));
    await writeFile(file, lines.join('\n'));
    const run = await rollout(fewer, ...quick, '--plan', 'P1');
    expect(plain(run.out)).toContain('planStops.csv');
    expect(plain(run.out)).toContain(`There is no site "${gone}"`);
  });
});
