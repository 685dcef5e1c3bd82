import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dayByDay, designSites, isoDay, readyProgramme, type StorageFinding } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { greer1963 } from '../records/greer1963.ts';

/** Public domain; the package's exports do not name its data, so it is read from where it is installed. */
const seattle = new URL('../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url);

/** One site on one gauge, in plain numbers: 120 m² of roof, nine tenths of the rain, 0.5 mm of first flush. */
const site = { people: 24, area_m2: 120, guttered: 1, runoff: 0.9, firstFlush_mm: 0.5, tank_L: 9000 };
const litres = { judged: 7.5, other: 6 };

async function designOf(folder: string, rows: readonly { date: string; rain_mm: number }[]) {
  await writeProgramme(folder, {
    settings: { programme: 'One roof' },
    tables: {
      sites: [{ siteId: 'S1', name: 'Hall', people: site.people, gaugeId: 'G1' }],
      roofs: [
        {
          siteId: 'S1',
          roofId: 'R1',
          length_m: 12,
          width_m: 10,
          material: 'corrugatedMetal',
          runoffFraction: site.runoff,
          gutteredFraction: site.guttered,
        },
      ],
      diverters: [{ siteId: 'S1', roofId: 'R1', firstFlush_mm: site.firstFlush_mm, drainHole: 'open' }],
      tanks: [{ siteId: 'S1', tankId: 'T1', nominal_L: site.tank_L }],
      demand: [
        { siteId: '', purpose: 'drinking', litres_per_person_per_day: litres.judged, judged: 'yes' },
        { siteId: '', purpose: 'washing', litres_per_person_per_day: litres.other, judged: 'no' },
      ],
      gauges: [{ gaugeId: 'G1', name: 'Gauge' }],
    },
    rain: [{ gaugeId: 'G1', rows }],
  });
  const { facts, problems } = await readProgramme(folder);
  expect(problems.filter((problem) => problem.severity === 'blocker')).toEqual([]);
  const ready = readyProgramme(facts);
  const [design] = [...designSites(facts.sites, ready)];
  return { storage: design!.storages[0]!, verdict: design!.verdict, rain: ready.gauges.get('G1')!.rain! };
}

/** The same site worked out apart, straight from the readings: the rain of whole water years, twice over, counted the second time. */
function workedOutApart(rain_mm: readonly number[]) {
  const judged = site.people * litres.judged;
  const other = site.people * litres.other;
  let [content, left, dryDays, short] = [0, site.firstFlush_mm, 0, 0];
  let quiet = 0;
  const days = [...rain_mm, ...rain_mm];
  // A first flush that was used in the first pass is as the first pass left it in the second; so is the tank.
  const nets = days.map((rain) => {
    if (quiet >= 3) left = site.firstFlush_mm;
    const runoff = site.runoff * rain;
    const lost = Math.min(left, runoff);
    left -= lost;
    quiet = rain < 1 ? quiet + 1 : 0;
    return runoff - lost;
  });
  const second = nets.slice(rain_mm.length);
  const dry: boolean[] = [];
  let inflow = 0;
  for (const net of [...second, ...second]) {
    if (dry.length === rain_mm.length) [dryDays, short, inflow] = [0, 0, 0];
    dry.push(content < judged);
    if (content < judged) {
      dryDays++;
      short += judged - content;
    }
    content = Math.max(0, content - judged - other);
    inflow += net * site.area_m2;
    content = Math.min(site.tank_L, content + net * site.area_m2);
  }
  return { dryDays, short, inflow, dry: dry.slice(rain_mm.length) };
}

function compare(storage: StorageFinding, apart: ReturnType<typeof workedOutApart>, years: number) {
  expect(storage.years.map((year) => year.dryDays).reduce((a, b) => a + b, 0)).toBe(apart.dryDays);
  expect(storage.shortfall_L_per_year * years).toBeCloseTo(apart.short, 6);
  expect(storage.inflow_L_per_year * years).toBeCloseTo(apart.inflow, 6);
  let longest = 0;
  let run = 0;
  for (const dry of [...apart.dry, ...apart.dry]) {
    run = dry ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  expect(storage.longestRun?.days ?? 0).toBe(longest);
}

describe('real daily records, from a folder to a verdict', () => {
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'eavewell-real-'));
  });
  afterAll(() => rm(folder, { recursive: true }));

  it('Seattle 2012–2015 (NOAA, through vega-datasets): the record is the published one and the dry days are those worked out apart', async () => {
    const rows = (await readFile(seattle, 'utf8'))
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => ({ date: line.split(',')[0]!, rain_mm: Number(line.split(',')[1]) }));
    expect(rows.length).toBe(1461);
    expect(rows.reduce((sum, row) => sum + row.rain_mm, 0)).toBeCloseTo(4426, 6);
    const { storage, verdict, rain } = await designOf(join(folder, 'seattle'), rows);
    // Four years of rain can never hold; a dry summer makes this one short.
    expect(['tight', 'short']).toContain(verdict);
    const from = isoDay(rain.record.firstDay);
    const begin = rows.findIndex((row) => row.date === from);
    const used = rows.slice(begin, begin + rain.record.rain_mm.length).map((row) => row.rain_mm);
    expect(used.length).toBeGreaterThanOrEqual(3 * 365);
    const apart = workedOutApart(used);
    expect(apart.dryDays).toBeGreaterThan(0);
    compare(storage, apart, rain.years.length);
  });

  it('1963 at Greer (NOAA): one year is judged, starting in January, and agrees with the working apart', async () => {
    const rows = greer1963.readings.map((reading) => ({ date: isoDay(reading.day), rain_mm: reading.rain_mm! }));
    const { storage, verdict, rain } = await designOf(join(folder, 'greer'), rows);
    expect(rain.startMonth).toBe(1);
    expect(storage.judgedYears).toBe(1);
    expect(['tight', 'short']).toContain(verdict);
    compare(storage, workedOutApart(rows.map((row) => row.rain_mm)), 1);
  });
});

describe('the year of 1963, run apart', () => {
  // Inflow max(0, 0.85 × rain − 0.5 mm) × 100 m² each day, 200 L asked a day, empty start, one pass: run apart from this
  // program by the rules of Jenkins 1978, with the figures below.
  const inflow_L = Float64Array.from(greer1963.readings, (day) => Math.max(0, 0.85 * day.rain_mm! - 0.5) * 100);
  const balance = { inflow_L, judged_L: new Float64Array(365).fill(200), other_L: new Float64Array(365) };
  const cases = [
    ['yas', 500, 22381.0, 74024.0, 500.0, 88],
    ['ybs', 500, 30987.0, 65418.0, 500, 134],
    ['yas', 2000, 47199.0, 48235.5, 1470.5, 225],
    ['ybs', 2000, 49819.0, 45415.5, 1670.5, 239],
    ['yas', 5000, 59984.5, 32450.0, 4470.5, 295],
    ['ybs', 5000, 61184.5, 31050.0, 4670.5, 302],
    ['yas', 20000, 70800.0, 9680.5, 16424.5, 354],
    ['ybs', 20000, 71000, 9280.5, 16624.5, 355],
  ] as const;
  for (const [order, volume, taken, spill, end, daysMet] of cases)
    it(`${order} in ${volume} L gives the litres and days of the run apart`, () => {
      const run = dayByDay(balance, volume, { order, passes: 1, start: 'empty' });
      expect(run.judgedTaken_L).toBeCloseTo(taken, 2);
      expect(run.spill_L).toBeCloseTo(spill, 2);
      expect(run.endContent_L).toBeCloseTo(end, 2);
      expect(365 - run.dry.reduce((sum, day) => sum + day, 0)).toBe(daysMet);
    });
});
