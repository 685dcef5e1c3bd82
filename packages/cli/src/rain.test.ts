import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = keptRun;

let room: string;
let folder: string;
let clean: string;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-rain-'));
  folder = join(room, 'islands');
  clean = join(room, 'tidy');
  expect((await eavewell(['demo', folder])).code).toBe(0);
  expect((await eavewell(['demo', clean, '--clean', '--sites', '20'])).code).toBe(0);
});

afterAll(() => rm(room, { recursive: true, force: true }));

/** The part of a page under a heading. */
function under(out: string, heading: string): string {
  return out.split(`\n${heading}\n`)[1]?.split('\n\n')[0] ?? '';
}

describe('rain', () => {
  it('shows every part of a gauge within 80 columns, and ASCII alone where the terminal shows no more', async () => {
    for (const gaugeId of ['G1', 'G2', 'G3']) {
      const { code, out } = await eavewell(['rain', folder, gaugeId]);
      expect(code).toBe(0);
      expect(out).toContain(`(${gaugeId})\n`);
      for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
      expect(out).not.toMatch(/undefined|NaN|\[object|Infinity/);
      expect(under(out, 'What a month usually brings').split('\n')).toHaveLength(14);
      expect(under(out, 'Driest months')).toMatch(/1 month .* mm {2}-\d\.\d\d {2}extremely dry/);
      expect(out).toMatch(/Every verdict on this gauge rests on [\d,]+ days/);
      expect((await eavewell(['rain', folder, gaugeId], { LANG: 'C' })).out).toMatch(/^[\n -~]*$/);
    }
  });

  it('agrees with its rain file: the wettest day, the days not measured and the rain of whole Januaries', async () => {
    const rows = (await readFile(join(clean, 'rain', 'G2.csv'), 'utf8')).trim().split('\n').slice(1);
    const days = rows.map((row) => row.split(',') as [string, string]);
    const read = days.map(([day, rain]) => {
      const before = new Date(Date.parse(`${day}T00:00:00Z`) - 86_400_000).toISOString();
      return { day: before.slice(0, 10), rain_mm: Number(rain) };
    });
    const wettest = read.reduce((most, one) => (one.rain_mm > most.rain_mm ? one : most));
    const januaries = new Map<string, number[]>();
    for (const { day, rain_mm } of read)
      if (day.slice(5, 7) === '01')
        januaries.set(day.slice(0, 4), [...(januaries.get(day.slice(0, 4)) ?? []), rain_mm]);
    const whole = [...januaries.values()].filter((rain) => rain.length === 31);
    const mean_mm = whole.flat().reduce((sum, rain) => sum + rain, 0) / whole.length;
    const { out, code } = await eavewell(['rain', clean, 'G2']);
    expect(code).toBe(0);
    expect(out).toContain(`${rows.length.toLocaleString('en')} days; all measured`);
    expect(out).toMatch(
      new RegExp(`Wettest day: ${Math.round(wettest.rain_mm)} mm on .* ${wettest.day.slice(0, 4)}\n`),
    );
    expect(under(out, 'What a month usually brings')).toMatch(new RegExp(`January +${Math.round(mean_mm)} `));
    for (const span of ['1 month', '3 months', '12 months'])
      expect(
        under(out, 'Driest months').match(new RegExp(`^ +${span} .* mm +-\\d\\.\\d\\d {2}\\w+ dry$`, 'gm')),
      ).toHaveLength(3);
    expect(out).toContain('No day was filled.');
    expect(out).toContain('No dry day of theirs falls on a filled day.');
  });

  it('counts what was filled by what, and says it of neighbours only where the settings ask them', async () => {
    const before = (await eavewell(['rain', folder, 'G1'])).out;
    expect(before).toMatch(/from the same days of other years, 0\s+from gauges near by/);
    const settings = JSON.parse(await readFile(join(folder, 'settings.json'), 'utf8')) as object;
    const near = join(room, 'near');
    await eavewell(['demo', near]);
    await writeFile(join(near, 'settings.json'), JSON.stringify({ ...settings, gapFilling: 'normalRatio' }));
    const { out } = await eavewell(['rain', near, 'G1']);
    expect(out).toMatch(/[1-9]\d* from gauges near by/);
    expect(out).toMatch(/days were filled from gauges near by, and marked/);
    await writeFile(join(near, 'settings.json'), JSON.stringify({ ...settings, gapFilling: 'neighbours' }));
    const wrong = await eavewell(['check', near]);
    expect(wrong.code).toBe(1);
    expect(wrong.out).toMatch(/gapFilling.*"neighbours"/);
  });

  it('says what a gauge without rain lacks, ends with 1, and never hides its sites', async () => {
    const dry = join(room, 'dry');
    await eavewell(['demo', dry, '--clean', '--sites', '20']);
    await writeFile(join(dry, 'rain', 'G1.csv'), 'date,rain_mm\n2001-01-01,\n');
    const { code, out } = await eavewell(['rain', dry, 'G1']);
    expect(code).toBe(1);
    expect(out).toContain('No year of it can be judged');
    expect(out).toMatch(/sites? unknown/);
    expect(out).toMatch(/no day of rain that can be used/);
    const short = 'date,rain_mm\n2001-01-01,4\n2001-01-02,0\n';
    await writeFile(join(dry, 'rain', 'G1.csv'), short);
    expect((await eavewell(['rain', dry, 'G1'])).out).toMatch(/12 months {2}- +- +- {2}too few years/);
  });

  it('names the gauge that changed beside the others', async () => {
    const bent = join(room, 'bent');
    await eavewell(['demo', bent, '--clean', '--sites', '20']);
    const path = join(bent, 'rain', 'G1.csv');
    const text = await readFile(path, 'utf8');
    const halved = text.replace(
      /^(20[1-9]\d-\d\d-\d\d),([\d.]+)$/gm,
      (_, day: string, rain: string) => `${day},${(Number(rain) / 2).toFixed(1)}`,
    );
    expect(halved).not.toBe(text);
    expect((await eavewell(['rain', bent, 'G1'])).out).not.toMatch(/Beside/);
    await writeFile(path, halved);
    expect((await eavewell(['rain', bent, 'G1'])).out).toMatch(/Beside G\d.* it measures\s+5\d/);
  });

  it('names the nearest ids where there is no such gauge', async () => {
    const { code, out, err } = await eavewell(['rain', folder, 'g1']);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(/There is no gauge g1\. Near it: G1/);
  });

  it('teaches by example', async () => {
    const { code, out } = await eavewell(['rain', '--help']);
    expect(code).toBe(0);
    expect(out).toContain('$ eavewell rain islands G1');
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });
});
