import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { writeProgramme } from '@eavewell/formats';
import { type KitReport, kitReport } from '@eavewell/tables';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);
const { planted: _, gauges_count: _g, rawFiles: _r, ...made } = demoProgramme({ sites: 3, clean: true });

/** What three sites take, by hand: gutter of 10 m from bars of 4 m; a tap a site and one to have over. */
const parts = [
  {
    partId: 'bar',
    kind: 'gutter',
    name: 'Gutter bar',
    length_m: 4,
    mass_kg: 6,
    stock_count: 2,
    stockCountedOn: '2026-01-01',
  },
  { partId: 'tap', kind: 'tap', name: '=1+1', mass_kg: 0.5, packSize: 5, leadTime_days: 30 },
].map((part) => ({ ...part, supplier: 'Made-up store' }));
const rule = (ruleId: string, partId: string, countedBy: string, leastSpare: number) => ({
  ...{ ruleId, partId, countedBy, each_count: 1, rounding: 'up', spare_fraction: 0, leastSpare_count: leastSpare },
});
const boat = { carrierId: 'boat', name: 'Made-up boat', mode: 'boat', limit_kg: 100, longest_m: 6, carriers_count: 1 };

let room: string;
let folder: string;
let bare: string;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-kit-'));
  folder = join(room, 'islands');
  bare = join(room, 'bare');
  const sites = made.tables.sites!.map((row) => ({ ...row, siteId: String(row['siteId']), handOverDay: null }));
  const roofs = sites.map(({ siteId }) => ({ siteId, roofId: 'R1', material: 'corrugatedMetal', planArea_m2: 80 }));
  const gutters = sites.map(({ siteId }) => ({ siteId, roofId: 'R1', gutterId: 'G1', length_m: 10 }));
  const tables = { sites, roofs, gutters, parts, gauges: made.tables.gauges! };
  const kitRules = [rule('K1', 'bar', 'gutterMetre', 0), rule('K2', 'tap', 'site', 1)];
  const prices = [
    { partId: 'bar', priceDate: '2026-01-01', amount: 10, currency: 'USD' },
    { partId: 'tap', priceDate: '2026-01-01', amount: 4, currency: 'USD' },
  ];
  const programme = { settings: made.settings, rain: made.rain };
  await writeProgramme(folder, { ...programme, tables: { ...tables, kitRules, prices, carriers: [boat] } });
  await writeProgramme(bare, { ...programme, tables });
});
afterAll(() => rm(room, { recursive: true, force: true }));

async function reported(...args: readonly string[]): Promise<KitReport> {
  const { out } = await eavewell('kit', folder, '--json', ...args);
  return kitReport.parse(JSON.parse(out));
}

describe('kit of a programme', () => {
  it('says what is short of the sum of all sites and what to buy of whom', async () => {
    const { lines, suppliers, sites } = await reported();
    const line = (partId: string) => lines.find((one) => one.partId === partId)!;
    // Three bars at each of three sites, two in the store; two taps at each, in packs of five.
    expect([line('bar').total_count, line('bar').short_count, line('bar').amount]).toEqual([9, 7, 70]);
    expect([line('tap').total_count, line('tap').packs_count, line('tap').bought_count]).toEqual([6, 2, 10]);
    expect(suppliers.map(({ supplier, sums }) => [supplier, sums])).toEqual([
      ['Made-up store', [{ currency: 'USD', amount: 70 + 40 }]],
    ]);
    expect(sites.map(({ loads, working }) => [loads, working])).toEqual([
      [null, null],
      [null, null],
      [null, null],
    ]);
  });

  it('tells by when to order, and what is late already', async () => {
    const late = await reported('--needed-on', '2026-01-10');
    expect(late.lines.find(({ partId }) => partId === 'tap')).toMatchObject({ orderBy: '2025-12-11', isLate: true });
    const { out } = await eavewell('kit', folder, '--needed-on', '2026-01-10');
    expect(out).toMatch(/To be ordered at once: tap\./);
  });

  it('keeps within 80 columns, exceptions before purchases, in both languages', async () => {
    for (const args of [[], ['--language', 'es'], ['--site', 'S001'], ['--site', 'S001', '--site', 'S002']]) {
      const { out } = await eavewell('kit', folder, ...args);
      for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
    }
    const { out } = await eavewell('kit', folder);
    expect(out.indexOf('Exceptions')).toBeGreaterThan(0);
    expect(out.indexOf('Exceptions')).toBeLessThan(out.indexOf('What is short'));
    expect(out.indexOf('What is short')).toBeLessThan(out.indexOf('What to buy'));
  });

  it('is the document of docs/kit.schema.json', async () => {
    const schema = JSON.parse(await readFile(new URL('../../../docs/kit.schema.json', import.meta.url), 'utf8'));
    const isValid = new Ajv2020({ strict: false }).compile(schema);
    for (const args of [[], ['--site', 'S001'], ['--site', 'S001', '--site', 'S002', '--by', 'boat']]) {
      const { out } = await eavewell('kit', folder, '--json', ...args);
      expect(isValid(JSON.parse(out)), JSON.stringify(isValid.errors)).toBe(true);
    }
  });
});

describe('kit of a site', () => {
  it('shows parts with cuts, loads and the working', async () => {
    const { out } = await eavewell('kit', folder, '--site', 'S001');
    expect(out).toMatch(/Gutter bar: 3 bars, 2 joints\n {4}2 bars: 4 m for G1; nothing left\n {4}1 bar: 2 m for G1/);
    expect(out).toMatch(/Loads: Made-up boat\n {2}1 load, no way has fewer; 19 kg\./);
    expect(out).toMatch(/The local skipper decides/);
    expect(out).toMatch(/How the figures were reached/);
  });

  it('of several sites it is a trip, what goes off last put in first', async () => {
    const { trip, lines } = await reported('--site', 'S002', '--site', 'S001', '--by', 'boat');
    expect(lines.find(({ partId }) => partId === 'bar')?.total_count).toBe(6);
    expect(trip?.stops).toEqual(['S002', 'S001']);
    expect(trip?.carriers[0]?.stowed.map(({ siteId }) => siteId)).toEqual(['S001', 'S001', 'S002', 'S002']);
    expect(trip?.carriers[0]?.loads.loads.map(({ mass_kg }) => mass_kg)).toEqual([2 * (18 + 1)]);
  });
});

describe('the workbook', () => {
  it('has numbers as numbers, and no text that a spreadsheet takes for a formula', async () => {
    const path = join(room, 'kit.xlsx');
    const { code, out } = await eavewell('kit', folder, '--workbook', path, '--needed-on', '2027-06-01');
    expect([code, out.includes(`Written: ${path}`)]).toEqual([0, true]);
    const files = unzipSync(new Uint8Array(await readFile(path)));
    const text = (name: string) => new TextDecoder().decode(files[name]);
    const strings = text('xl/sharedStrings.xml');
    expect(strings).toContain("<t>'=1+1</t>");
    expect(strings).not.toMatch(/<t[^>]*>=/);
    for (const name of Object.keys(files).filter((one) => one.startsWith('xl/worksheets/sheet')))
      expect(text(name)).not.toContain('<f>');
    // Two taps at each of three sites, as a number; 2 May 2027, thirty days before, as a day.
    expect(text('xl/worksheets/sheet1.xml')).toMatch(/<v>6<\/v>/);
    expect(text('xl/worksheets/sheet1.xml')).toMatch(/<v>46509<\/v>/);
    expect(text('xl/workbook.xml')).toMatch(/name="Purchase list"/);
    const spanish = join(room, 'juego.xlsx');
    await eavewell('kit', folder, '--workbook', spanish, '--language', 'es');
    const there = unzipSync(new Uint8Array(await readFile(spanish)));
    expect(new TextDecoder().decode(there['xl/workbook.xml'])).toMatch(/name="Lista de compra"/);
  });

  it('replaces nothing unless it is asked to', async () => {
    const path = join(room, 'mine.xlsx');
    await writeFile(path, 'mine');
    const kept = await eavewell('kit', folder, '--workbook', path);
    expect([kept.code, kept.out, await readFile(path, 'utf8')]).toEqual([2, '', 'mine']);
    expect((await eavewell('kit', folder, '--workbook', path, '--overwrite')).code).toBe(0);
    expect((await stat(path)).size).toBeGreaterThan(1000);
    expect((await eavewell('kit', folder, '--workbook', join(room, 'kit.csv'))).code).toBe(2);
  });
});

describe('asked wrongly, or with tables missing', () => {
  it('names what there is near a site or a carrier that is not there', async () => {
    const site = await eavewell('kit', folder, '--site', 'S00x');
    expect([site.code, site.out]).toEqual([2, '']);
    expect(site.err).toMatch(/There is no site S00x\. Near it: S001/);
    const by = await eavewell('kit', folder, '--by', 'boot');
    expect([by.code, by.out]).toEqual([2, '']);
    expect(by.err).toMatch(/There is no carrier boot\. Near it: boat\./);
    expect((await eavewell('kit', folder, '--site', 'S001', '--site', 'S001')).err).toMatch(/named twice/);
    expect((await eavewell('kit', folder, '--needed-on', 'soon')).err).toMatch(/--needed-on needs a day/);
  });

  it('without rules and carriers it says so, and goes on', async () => {
    const { out, code } = await eavewell('kit', bare);
    expect(out).toMatch(/^There are no rules of the kit/);
    expect(out).toMatch(/There are no carriers \(carriers\.csv\)/);
    expect(out).toMatch(/Nothing is known of what it costs/);
    expect(code).toBe(0);
    const by = await eavewell('kit', bare, '--by', 'boat');
    expect([by.code, by.out]).toEqual([2, '']);
    expect(by.err).toMatch(/The programme has no carriers/);
  });
});
