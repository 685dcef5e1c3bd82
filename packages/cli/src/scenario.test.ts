import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { designReport } from '@eavewell/tables';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = keptRun;

let room: string;
/** A programme without faults; G1 has normals and no record, and every fifth site names no gauge. */
let folder: string;
const drier = ['--wet-days', '0.7', '--wet-day-rain', '0.8'];

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-scenario-'));
  folder = join(room, 'tidy');
  expect((await eavewell(['demo', folder, '--clean', '--sites', '20'])).code).toBe(0);
  await rm(join(folder, 'rain', 'G1.csv'));
  const months = Array.from(
    { length: 12 },
    (_, i) => `G1,${i + 1},${i > 3 && i < 9 ? 40 : 180},${i > 3 && i < 9 ? 5 : 14}`,
  );
  await writeFile(join(folder, 'normals.csv'), `gaugeId,month,rain_mm,wetDays\n${months.join('\n')}\n`);
  const text = await readFile(join(folder, 'sites.csv'), 'utf8');
  const sites = text.split('\n').map((row, i) => (i % 5 === 1 ? row.replace(/,G\d,/, ',,') : row));
  await writeFile(join(folder, 'sites.csv'), sites.join('\n'));
  const settings = JSON.parse(await readFile(join(folder, 'settings.json'), 'utf8')) as object;
  await writeFile(
    join(folder, 'settings.json'),
    JSON.stringify({ ...settings, draws: 200, madeYears: 30, gaugeReach_km: 80 }),
  );
});

afterAll(() => rm(room, { recursive: true, force: true }));

function under(out: string, heading: string): string {
  return out.split(`\n${heading}\n`)[1]?.split('\n\n')[0] ?? '';
}

async function report(args: readonly string[]) {
  const { out, code } = await eavewell(['design', folder, '--json', ...args]);
  expect(code).toBe(0);
  return designReport.parse(JSON.parse(out));
}

describe('design, put to a question', () => {
  it('says of which tank it speaks where a site has a second source', async () => {
    const source = 'secondSourceId,name,kind,months\nR1,Quiet Brook,river,1 2 3 4 5 6 7 8 9 10 11 12\n';
    const text = await readFile(join(folder, 'sites.csv'), 'utf8');
    const [head, first, ...others] = text.split('\n');
    const at = head!.split(',').indexOf('secondSourceId');
    expect(at).toBeGreaterThan(0);
    const cells = first!.split(',');
    const siteId = cells[0]!;
    cells[at] = 'R1';
    const own = join(room, 'with source');
    await cp(folder, own, { recursive: true });
    await writeFile(join(own, 'secondSources.csv'), source);
    await writeFile(join(own, 'sites.csv'), [head, cells.join(','), ...others].join('\n'));
    const before = (await eavewell(['design', folder, '--site', siteId, ...drier])).out;
    const { out } = await eavewell(['design', own, '--site', siteId, ...drier]);
    expect(under(before, 'If it had rained otherwise')).toMatch(/Tank for the target +\d/);
    const flat = under(out, 'If it had rained otherwise').replace(/\s+/g, ' ');
    expect(flat).toContain('(without the second');
    const row = (page: string) => /Tank for the target.*?([\d,]+ L)/.exec(page.replace(/\s+/g, ' '))?.[1];
    expect(row(under(out, 'If it had rained otherwise'))).toBe(row(under(before, 'If it had rained otherwise')));
  });

  it('shows the verdicts then beside those now, within 80 columns, and in ASCII where the terminal shows no more', async () => {
    const plain = (await eavewell(['design', folder])).out;
    const { out, code } = await eavewell(['design', folder, ...drier, '--last-years', '60']);
    expect(code).toBe(0);
    expect(out).toContain('If it had rained otherwise');
    expect(out).toMatch(
      /wet days at 70 % of what they were, rain of a wet day at 80 %, the last\s+60 water years alone/,
    );
    expect(out).toMatch(/fewer than 60 years; all of\s+them are used/);
    expect(out).toMatch(/not a forecast/);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
    expect(out).not.toMatch(/undefined|NaN|\[object|Infinity/);
    // All else stays as it was.
    const told = /\nA question was asked of the rain; its answer stands under "If it had rained\n {2}otherwise"\./;
    expect(out.slice(0, 1500)).toMatch(told);
    expect(out).toMatch(/Made-up rain has no last years: at G1 all its years are used\./);
    const head = out.replace(told, '').split('\nIf it had rained otherwise\n')[0]!;
    expect(plain.startsWith(head)).toBe(true);
    expect((await eavewell(['design', folder, ...drier], { LANG: 'C' })).out).toMatch(/^[\n -~]*$/);
  });

  it('counts what JSON and verdicts.csv hold, site by site', async () => {
    const json = await report(drier);
    const scenario = json.scenario!;
    expect(scenario.asked).toEqual({ wetDays_fraction: 0.7, wetDayRain_fraction: 0.8, lastYears: null });
    const count = (verdicts: readonly string[]) => ({
      short: verdicts.filter((one) => one === 'short').length,
      unknown: verdicts.filter((one) => one === 'unknown').length,
      tight: verdicts.filter((one) => one === 'tight').length,
      holds: verdicts.filter((one) => one === 'holds').length,
    });
    expect(scenario.present).toEqual(count(json.sites.map((site) => site.verdict)));
    expect(scenario.under).toEqual(count(json.sites.map((site) => site.scenario!.verdict)));
    expect(scenario.changed).toEqual(
      json.sites.flatMap(({ siteId, verdict, scenario: then }) =>
        verdict === then!.verdict ? [] : [{ siteId, verdict, under: then!.verdict }],
      ),
    );
    expect(scenario.changed.length).toBeGreaterThan(0);
    const out = join(room, 'out');
    await eavewell(['design', folder, ...drier, '--out', out]);
    const [head, ...rows] = (await readFile(join(out, 'verdicts.csv'), 'utf8')).trimEnd().split('\n');
    expect(head).toMatch(/,scenarioVerdict,scenarioGoodYears,scenarioJudgedYears,scenarioDryDays_per_year$/);
    expect(rows).toHaveLength(json.sites.length);
    for (const [i, site] of json.sites.entries()) {
      const cells = rows[i]!.split(',').slice(-4);
      expect(cells[0]).toBe(site.scenario!.verdict);
      expect(Number(cells[3])).toBeCloseTo(site.scenario!.dryDays_per_year!, 1);
    }
    const { out: text } = await eavewell(['design', folder, ...drier]);
    for (const verdict of ['short', 'tight', 'holds'] as const)
      expect(under(text, 'If it had rained otherwise')).toMatch(
        new RegExp(`${verdict} +${scenario.present[verdict]} +${scenario.under[verdict]}`),
      );
  });

  it('leaves no trace where nothing is asked', async () => {
    const json = await report([]);
    expect(json.scenario).toBeUndefined();
    expect(json.sites.every((site) => site.scenario === undefined)).toBe(true);
    const out = join(room, 'plain');
    await eavewell(['design', folder, '--out', out]);
    expect(await readFile(join(out, 'verdicts.csv'), 'utf8')).not.toContain('scenario');
  });

  it('shows one site as it is and as it would be', async () => {
    const { out } = await eavewell(['design', folder, '--site', 'S003', ...drier]);
    expect(under(out, 'If it had rained otherwise')).toMatch(
      /as it is +then\n +Verdict .*\n +Good years .*\n +Dry days a year /,
    );
  });

  it.each([
    [['--wet-days', '90%'], /--wet-days cannot be "90%": write a share from 0\.1 to 3, as 0\.9/],
    [['--wet-days', '-1'], /--wet-days cannot be "-1"/],
    [['--wet-days', 'NaN'], /--wet-days cannot be "NaN"/],
    [['--wet-days', '0'], /--wet-days cannot be "0"/],
    [['--wet-day-rain', '1e2'], /--wet-day-rain cannot be "1e2"/],
    [['--wet-day-rain', '90'], /--wet-day-rain cannot be "90"/],
    [['--last-years', '2.5'], /--last-years cannot be "2\.5": write a whole number of years/],
    [['--last-years', '0'], /--last-years cannot be "0"/],
  ])('refuses %j with a sentence, and judges nothing', async (args, words) => {
    const { code, out, err } = await eavewell(['design', folder, ...args]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(words);
  });
});

describe('sites on made-up rain and on gauges within reach', () => {
  it('are tight at best and say so, on the screen and in the JSON', async () => {
    const json = await report([]);
    const made = json.sites.filter((site) => site.gaugeId === 'G1');
    expect(made.length).toBeGreaterThan(0);
    for (const site of made) {
      expect(site.verdict).not.toBe('holds');
      expect(site.storages[0]!.cappedBy).toBe('rain.made_up');
      expect(site.finding).toMatch(/made-up/);
      expect(site.problems.map(({ code }) => code)).toContain('rain.made_up');
    }
    expect(json.gauges.find(({ gaugeId }) => gaugeId === 'G1')!.rain!.madeDays).toBeGreaterThan(10_000);
    const { out } = await eavewell(['design', folder]);
    expect(out).toMatch(/Made-up rain: 1 gauge has normals and no record; 30 years made up/);
  });

  it('have days known as made in the series', async () => {
    const json = await report(['--series', '--site', 'S012']);
    const [site] = json.sites;
    expect(site!.gaugeId).toBe('G1');
    expect(new Set(site!.series![0]!.known)).toEqual(new Set(['made']));
    expect(site!.series![0]!.firstDay).toMatch(/^0001-/);
  });

  it('name the gauges within reach, how far and how much of each', async () => {
    const json = await report([]);
    const sites = json.sites.filter((site) => site.gaugeId === null);
    expect(sites.length).toBeGreaterThan(2);
    for (const site of sites) {
      const note = site.problems.find(({ code }) => code === 'site.gauge_by_distance')!;
      expect(note.what).toMatch(/G\d \([\d.]+ km, weight \d+(\.\d+)? %\)/);
      expect(site.storages).toHaveLength(1);
      expect(site.working.some(({ code }) => code === 'rain.byDistance')).toBe(true);
    }
    // One site alone comes to the same as among all.
    const one = (await report(['--site', sites[0]!.siteId])).sites[0]!;
    expect(one).toEqual(sites[0]);
    const { out, code } = await eavewell(['check', folder]);
    expect(code).toBe(0);
    expect(out).toMatch(/No gauge is given/);
    expect(under(out, 'Gauges')).toMatch(
      /G2 +\d+ +measured +31 of 31 +[\d,]+ +\d+ +\d+ \w+ \d{4} +0 %\n +G1 +\d+ +made up +30 of 30 +[\d,]+ +- +- +-/,
    );
  });

  it('rest on a gauge whose page shows its normals beside the rain made from them, and that nobody measured', async () => {
    const { out, code } = await eavewell(['rain', folder, 'G1']);
    expect(code).toBe(0);
    expect(out).toMatch(/Nobody measured here/);
    expect(under(out, 'Where the judged days come from')).toMatch(/made up +[\d,]+ +100 %/);
    expect(under(out, 'Normals as given')).toMatch(/May +40 +5\.0 +\d+ +\d\.\d/);
    expect(out).not.toContain('Year by year');
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
    expect((await eavewell(['rain', folder, 'G2'])).out).toMatch(
      /\d sites? without a gauge of their own ha(s|ve) it within\s+reach/,
    );
  });

  it('see made-up rain beside a record on the page of a measured gauge, by either distribution', async () => {
    const path = join(folder, 'settings.json');
    const before = await readFile(path, 'utf8');
    const page = async (wetDayAmounts: string) => {
      await writeFile(path, JSON.stringify({ ...(JSON.parse(before) as object), wetDayAmounts }));
      return (await eavewell(['rain', folder, 'G2'])).out;
    };
    const [gamma, mixed] = [await page('gamma'), await page('mixedExponential')];
    await writeFile(path, before);
    const heading = 'What made-up rain would make of this record';
    expect(under(gamma, heading)).toMatch(/amounts gamma/);
    expect(under(mixed, heading)).toMatch(/amounts mixed\s+exponential/);
    for (const text of [gamma, mixed]) expect(under(text, heading)).toMatch(/rain of a year +[\d,]+ mm +[\d,]+ mm/);
    expect(under(gamma, 'Year by year').split('\n').length).toBeGreaterThan(30);
  });
});
