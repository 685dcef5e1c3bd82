import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { isoDay, type Problem, readIsoDay } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import picocolors from 'picocolors';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { problemList } from './print/problemList.ts';
import { Sheet } from './print/sheet.ts';

async function check(folder: string): Promise<string> {
  const { out, err } = await keptRun(['check', folder]);
  expect(err).toBe('');
  return out;
}

const first = readIsoDay('1995-01-01')!;
const days = readIsoDay('2006-12-31')! - first + 1;

/** Twelve years of one rain a day, but for what is said of some days. */
function rain(depth: (day: number) => string): string {
  return `date,rain_mm\n${Array.from({ length: days }, (_, i) => `${isoDay(first + i)},${depth(i)}\n`).join('')}`;
}

const files: Readonly<Record<string, string>> = {
  'sites.csv':
    'siteId,name,people,gaugeId\nS1,Upper Tarn,50,G-wet\nS2,Lower Tarn,50,G-wet\nS3,Ferry Stones,50,G-in\nS4,Far Stones,50,G-in\n',
  'roofs.csv':
    'siteId,roofId,length_m,width_m,material,gutteredFraction\nS1,a,20,10,tile,1\nS2,a,20,10,tile,1\nS3,a,20,10,tile,1\nS4,a,20,10,tile,1\n',
  'tanks.csv': 'siteId,tankId,nominal_L\nS1,T,20000\nS2,T,20000\nS3,T,20000\nS4,T,20000\n',
  'gauges.csv': 'gaugeId,name\nG-in,West\nG-wet,East\nG-none,North\n',
  // 4 mm every other day; 183 mm on one day; 44 of 4,383 days not read: 1 %.
  'rain/G-wet.csv': rain((i) => (i === 800 ? '183' : i >= 1000 && i < 1044 ? '' : i % 2 === 0 ? '4' : '0')),
  // Hundredths, and far too little rain for mm.
  'rain/G-in.csv': rain((i) => (i % 3 === 0 ? `0.${10 + (i % 83)}` : '0')),
};

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-check-'));
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
});

afterAll(() => rm(folder, { recursive: true, force: true }));

describe('check', () => {
  it('has a line for each gauge: sites, years, mean rain, wettest day, share not read', async () => {
    const out = await check(folder);
    const lines = out.split('\n').filter((line) => /^ {2}G-/.test(line));
    expect(lines.map((line) => line.trim().split(/\s{2,}/)[0])).toEqual(['G-in', 'G-wet', 'G-none']);
    const wet = lines
      .find((line) => line.includes('G-wet'))!
      .trim()
      .split(/\s{2,}/);
    // Day 800 from 1 January 1995 is 11 March 1997: 365 + 366 = 731 days, and 69 of 1997.
    expect([wet[1], wet[2], wet[5], wet[6], wet[7]]).toEqual(['2', 'measured', '183', '11 March 1997', '1 %']);
    expect(Number(wet[4]!.replace(',', ''))).toBeGreaterThan(725);
    expect(Number(wet[4]!.replace(',', ''))).toBeLessThan(755);
    expect(lines.find((line) => line.includes('G-none'))).toMatch(/G-none +0 +none +- +- +- +- +-$/);
  });

  it('names causes before what follows from them, and worse before better', () => {
    const problem = (code: string, severity: Problem['severity']): Problem => ({
      code,
      severity,
      place: {},
      facts: {},
    });
    const problems = [
      problem('site.facts_in_doubt', 'blocker'),
      problem('site.facts_in_doubt', 'blocker'),
      problem('rain.in_inches', 'blocker'),
      problem('cell.missing', 'blocker'),
      problem('cell.missing', 'blocker'),
      problem('rain.large', 'note'),
      problem('header.column_missing', 'blocker'),
    ];
    const sheet = new Sheet({ width: 400, drawn: true, paint: picocolors.createColors(false) });
    problemList(sheet, problems, true);
    const text = sheet.text();
    const said = [problems[6]!, problems[3]!, problems[2]!, problems[0]!, problems[5]!].map((one) =>
      text.indexOf(problemSentence(one).what),
    );
    expect(said.every((at) => at >= 0)).toBe(true);
    expect(said).toEqual(said.toSorted((a, b) => a - b));
  });

  it('names rain in inches', async () => {
    expect(await check(folder)).toMatch(/inches/);
  });
});
