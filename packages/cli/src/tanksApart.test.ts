import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { designReport } from '@eavewell/tables';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);

/** Text without its line breaks. */
const flat = (text: string) => text.replace(/\s+/g, ' ');

let room: string;
let folder: string;

/** A small programme whose first site has a second, smaller tank of its own roof, and whose second rations. */
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-apart-'));
  folder = join(room, 'islands');
  await eavewell('demo', folder, '--sites', '3', '--clean', '--seed', '4');
  const change = async (file: string, lines: (line: string) => readonly string[]) => {
    const path = join(folder, file);
    const text = await readFile(path, 'utf8');
    await writeFile(path, text.split('\n').flatMap(lines).join('\n'));
  };
  const tanks = join(folder, 'tanks.csv');
  const [tankHead, ...tankRows] = (await readFile(tanks, 'utf8')).split('\n');
  const own = { tankId: 'T2', partId: '', nominal_L: '7000', outletHeight_m: '0.1', overflowHeight_m: '2.89' };
  const apart = tankRows.flatMap((row) => {
    if (!row.startsWith('S001,T1,')) return [row];
    const first = Object.fromEntries(tankHead!.split(',').map((column, i) => [column, row.split(',')[i] ?? '']));
    const second = { ...own, siteId: 'S001', diameter_m: '1.4', peopleFraction: '0.4' };
    return [{ ...first, peopleFraction: '0.6' }, second].map((cells: Record<string, string>) =>
      tankHead!
        .split(',')
        .map((column) => cells[column] ?? '')
        .join(','),
    );
  });
  await writeFile(tanks, [tankHead, ...apart].join('\n'));
  await change('roofs.csv', (line) => [line.replace(/^(S001,R(\d),(?:[^,]*,){6}),/, '$1T$2,')]);
  const sites = join(folder, 'sites.csv');
  const [head, ...rows] = (await readFile(sites, 'utf8')).split('\n');
  const columns = head!.split(',');
  const rationed = rows.map((row) => {
    if (!row.startsWith('S002,')) return row;
    const cells = row.split(',');
    cells[columns.indexOf('rationBelow_fraction')] = '0.3';
    cells[columns.indexOf('rationedOther_fraction')] = '0';
    return cells.join(',');
  });
  await writeFile(sites, [head, ...rationed].join('\n'));
});
afterAll(() => rm(room, { recursive: true, force: true }));

const reportOf = async (...args: readonly string[]) =>
  designReport.parse(JSON.parse((await eavewell('design', folder, '--json', ...args)).out));

describe('a site with tanks apart', () => {
  it('has a finding and figures for each, the worst first, in columns of 80', async () => {
    const { out } = await eavewell('design', folder, '--site', 'S001');
    expect(out).toMatch(/Tank T2: [\s\S]* Tank T1\s+holds\./);
    expect(out.indexOf('Figures of tank T2, 18 people')).toBeGreaterThan(0);
    expect(out.indexOf('Figures of tank T1, 26 people')).toBeGreaterThan(out.indexOf('Figures of tank T2'));
    expect(out).toMatch(/Tanks judged on their own: T1[\s\S]*Tanks judged on their own: T2/);
    expect(out).toMatch(/join a tank of [\d,]+ L to T2 +holds/);
    expect(out).toMatch(/at tank\s+T2\./);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('writes a file of daily series for each, and one line of verdicts.csv for the site', async () => {
    const out = join(room, 'out');
    await eavewell('design', folder, '--out', out, '--series');
    expect((await readdir(join(out, 'series'))).sort()).toEqual(['S001.T1.csv', 'S001.T2.csv', 'S002.csv', 'S003.csv']);
    const [head, first] = (await readFile(join(out, 'verdicts.csv'), 'utf8')).split('\n');
    const at = head!.split(',').indexOf('worstTanks');
    expect(first!.split(',').slice(at, at + 2)).toEqual(['T2', '2']);
    const report = designReport.parse(JSON.parse(await readFile(join(out, 'design.json'), 'utf8')));
    expect(report.sites[0]!.storages.map(({ tankIds, people }) => [tankIds, people])).toEqual([
      [['T2'], 44 * 0.4],
      [['T1'], 44 * 0.6],
    ]);
    expect(report.sites[0]!.series!.map(({ tankIds }) => tankIds)).toEqual([['T1'], ['T2']]);
    for (const { dry } of report.sites[0]!.series!) expect(dry).toHaveLength(report.sites[0]!.series![0]!.dry.length);
  });
});

describe('another order of the day', () => {
  it('is named on the screen, and not the usual one', async () => {
    expect((await eavewell('design', folder)).out).not.toContain('Order of each day');
    expect(flat((await eavewell('design', folder, '--order', 'yas')).out)).toContain('(yield after spill)');
    const { out } = await eavewell('design', folder, '--order', 'ybs', '--site', 'S003');
    expect(flat(out)).toContain('(yield before spill), the generous order');
    expect(out).toMatch(/Order of each day: rain, draw, spill/);
  });

  it('gives no exact size under yield after spill, and the smallest of the catalogue', async () => {
    const { settings, sites } = await reportOf('--order', 'yas');
    expect(settings.dayOrder).toBe('yas');
    for (const storage of sites.flatMap(({ storages }) => storages)) {
      const { tankForTarget_L, tankToHold_L, noExactSize, catalogueForTarget_L, sizes } = storage;
      expect([tankForTarget_L, tankToHold_L]).toEqual([null, null]);
      expect(noExactSize).toBe(storage.ration === null ? 'order' : 'ration');
      expect(catalogueForTarget_L).toBe(sizes.find(({ meetsTarget }) => meetsTarget)!.tankVolume_L);
    }
    const { out } = await eavewell('design', folder, '--order', 'yas', '--site', 'S003');
    expect(out).toMatch(/Each size of tank was run on its own/);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('that nobody knows is wrong use', async () => {
    const { code, err } = await eavewell('design', folder, '--order', 'sometimes');
    expect([code, err.includes('--order is drawFirst, yas or ybs')]).toEqual([2, true]);
  });
});

describe('a site that rations', () => {
  it('says on how many days, and what would be without it', async () => {
    const { out } = await eavewell('design', folder, '--site', 'S002');
    expect(flat(out)).toMatch(/Rationed on [\d.]+ days? a year\./);
    expect(flat(out)).toMatch(/Rationed under [\d,]+ L: 100 % of the judged litres are given then, 0 % of the others/);
    expect(out).toMatch(/Not rationed, dry +[\d.]+ days? a year/);
    const [storage] = (await reportOf()).sites[1]!.storages;
    expect(storage!.ration).toEqual({ below_fraction: 0.3, judged_fraction: 1, other_fraction: 0 });
    expect(storage!.dryDays_per_year).toBeLessThanOrEqual(storage!.unrationed!.dryDays_per_year);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });
});
