import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { tablesAsRead, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookBytes, type Cell } from './workbook.ts';

let room: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-units-'));
});
afterAll(() => rm(room, { recursive: true, force: true }));

async function convert(from: string, to: string): Promise<void> {
  await writeProgramme(to, (await tablesAsRead(from)).programme, { overwrite: false });
}

describe('a workbook in other units, written as a folder', () => {
  it('keeps a share among percents one that cannot be read', async () => {
    const roofs: Cell[][] = [['siteId', 'roofId', 'Guttered (%)']];
    for (const [i, percent] of [90, 0.8, 1, 0].entries()) roofs.push(['S1', `r${i}`, percent]);
    const book = join(room, 'percent.xlsx');
    await writeFile(book, bookBytes({ sheets: [{ name: 'roofs', rows: roofs }] }));
    const saved = { roofs: { 'Guttered (%)': { column: 'gutteredFraction', unit: 'percent' } } };
    await writeFile(join(room, 'percent.columns.json'), JSON.stringify(saved));
    await convert(book, join(room, 'percented'));
    const text = await readFile(join(room, 'percented', 'roofs.csv'), 'utf8');
    const [header = [], ...rows] = text
      .trimEnd()
      .split('\n')
      .map((row) => row.split(','));
    const at = header.indexOf('gutteredFraction');
    expect(rows.map((row) => row[at])).toEqual(['0.9', '0.8 percent', '0.01', '0']);
  });

  it('keeps a trace as it stands, and marks only numbers that could not be read with their unit', async () => {
    const rain: Cell[][] = [
      ['Date', 'Rain (in)'],
      ['2001-03-01', 'T'],
      ['2001-03-02', 1],
      ['2001-03-03', 'no reading'],
      ['2001-03-04', '1,500'],
    ];
    const book = join(room, 'trace.xlsx');
    const gauges: Cell[][] = [
      ['gaugeId', 'name'],
      ['G1', 'At the school'],
    ];
    await writeFile(
      book,
      bookBytes({
        sheets: [
          { name: 'gauges', rows: gauges },
          { name: 'rain G1', rows: rain },
        ],
      }),
    );
    const saved = { 'rain G1': { Date: 'date', 'Rain (in)': { column: 'rain_mm', unit: 'in' } } };
    await writeFile(join(room, 'trace.columns.json'), JSON.stringify(saved));
    await convert(book, join(room, 'traced'));
    // One inch is 25.4 mm.
    const text = await readFile(join(room, 'traced', 'rain', 'G1.csv'), 'utf8');
    expect(text.trimEnd().split('\n').slice(1)).toEqual([
      '2001-03-01,T',
      '2001-03-02,25.4',
      '2001-03-03,no reading',
      '2001-03-04,"1,500 in"',
    ]);
  });
});
