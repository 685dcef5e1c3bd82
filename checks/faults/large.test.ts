import { describe, expect, it } from 'vitest';
import { changed, good, line, readFiles } from './folder.ts';

/** What a check may take [ms], on a slow computer with other work. Ours: two seconds on an idle one. */
const most_ms = 6000;

async function timed(files: Parameters<typeof readFiles>[0]) {
  const start = performance.now();
  const read = await readFiles(files);
  expect(performance.now() - start).toBeLessThan(most_ms);
  return read;
}

describe('a table of another size', () => {
  it('of 100,000 columns: a short list, and the rows are read', async () => {
    const [header, ...rows] = good['roofs.csv']!.trimEnd().split('\n');
    const names = Array.from({ length: 100_000 }, (_, i) => `extra ${i}`).join(',');
    const commas = ','.repeat(100_000);
    const text = `${header},${names}\n${rows.map((row) => `${row}${commas}\n`).join('')}`;
    const read = await timed({ ...good, 'roofs.csv': text });
    expect(read.problems.length).toBeLessThan(30);
    expect(read.problems.map(line)).toContain('header.columns_more note @ roofs.csv 1 - = ""');
    expect(read.problems.at(-1)!.facts['count']).toBe(99_980);
    expect(read.facts).toEqual((await readFiles(good)).facts);
  });

  it('of 100,000 columns none of which is ours', async () => {
    const names = Array.from({ length: 100_000 }, (_, i) => `len${i}gth_mm`).join(',');
    const read = await timed({ ...good, 'roofs.csv': `${names}\n1,2,3\n` });
    expect(read.problems.length).toBeLessThan(60);
    expect(JSON.stringify(read.problems).length).toBeLessThan(200_000);
  });

  it('of 100,000 columns without a name', async () => {
    const read = await timed({ ...good, 'roofs.csv': `siteId,roofId${','.repeat(100_000)}end\nS001,a\n` });
    expect(read.problems.length).toBeLessThan(60);
  });

  it.each([
    ['a cell of 10 MB', 'x'.repeat(10_000_000)],
    ['a number of 10 MB', '1'.repeat(10_000_000)],
    ['10 MB of spaces', `a${' '.repeat(10_000_000)}b`],
    ['10 MB of characters that cannot be seen', `1${'\u200b'.repeat(3_000_000)}2`],
  ])('with %s: named, shown short, and no other row is lost', async (_, text) => {
    const read = await timed(changed('roofs.csv', 'hall,,,150', `hall,,,${text}`));
    expect(read.problems.map(({ code, place }) => `${code} ${place.row} ${place.column}`)).toEqual([
      'cell.too_long 4 roofPlanArea_m2',
    ]);
    expect(JSON.stringify(read.problems).length).toBeLessThan(1000);
    expect(read.facts.sites.map(({ roofs }) => roofs.length)).toEqual([2, 1, 1]);
  });

  it('with a row of 10 MB of commas', async () => {
    const read = await timed(changed('roofs.csv', '0.8,0.9\n', `0.8,0.9${','.repeat(9_999_990)}x\n`));
    expect(read.problems.map(({ code }) => code)).toEqual(['row.cells_too_many']);
  });
});
