import { isoDay } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainRain } from './plainRain.ts';
import { fullRain, plainRainRead } from './readRainFile.ts';

const bytesOf = (text: string) => new Uint8Array(Buffer.from(text));

const depth = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 9999 }).map((tenths) => String(tenths / 10)) },
  // Three digits before the point and twelve behind: the most a plain number may have.
  { weight: 2, arbitrary: fc.double({ min: 0, max: 999, noNaN: true }).map((mm) => mm.toFixed(12)) },
  { weight: 1, arbitrary: fc.constantFrom('', '0', '007.50', '99', '99.9', '999', '0.0') },
);
const unusual = fc.constantFrom(
  '-9999',
  '9999',
  '-1',
  'T',
  '1e2',
  '.5',
  '5.',
  ' 3',
  '"3"',
  '1,5',
  'x',
  '1000',
  '1.2.3',
);
const day = fc.integer({ min: -43800, max: 47000 }).map(isoDay);
const oddDay = fc.constantFrom('2001-02-30', '2001-1-1', '0200-01-01', '2200-01-01', '', '2001/01/01', '2001-00-10');

function rainText(lines: readonly (readonly [string, string])[], end: string): string {
  return `date,rain_mm${end}${lines.map((cells) => cells.join(',') + end).join('')}`;
}

const file = 'rain/G.csv';
const fast = (bytes: Uint8Array) => plainRainRead(bytes, 'G', file);
const full = (bytes: Uint8Array) => fullRain(bytes, 'G', file);

describe('plainRain', () => {
  it('reads plain files as the full reader does, bit for bit, and leaves it no line', () => {
    const lines = fc.array(fc.tuple(day, depth), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(lines, fc.constantFrom('\n', '\r\n'), (rows, end) => {
        const bytes = bytesOf(rainText(rows, end));
        expect(plainRain(bytes)!.odd).toEqual([]);
        expect(fast(bytes)).toStrictEqual(full(bytes));
        expect(fast(bytes)!.problems).toEqual([]);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('with its odd lines read, finds what the full reader finds, faults and all', () => {
    const line = fc.oneof(
      { weight: 8, arbitrary: fc.tuple(day, depth) },
      { weight: 1, arbitrary: fc.tuple(day, unusual) },
      { weight: 1, arbitrary: fc.tuple(oddDay, depth) },
    );
    const tail = fc.oneof(
      { weight: 5, arbitrary: fc.constant('') },
      { weight: 1, arbitrary: fc.string({ maxLength: 3 }) },
    );
    let [withFaults, gaveUp] = [0, 0];
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 12 }), tail, (lines, after) => {
        const bytes = bytesOf(rainText(lines, '\n') + after);
        const read = fast(bytes);
        if (read === null) gaveUp++;
        else {
          if (read.problems.length > 0) withFaults++;
          expect(read).toStrictEqual(full(bytes));
        }
      }),
      { seed: 8, numRuns: 1000 },
    );
    expect(withFaults).toBeGreaterThan(300);
    expect(gaveUp).toBeLessThan(400);
  });

  it('agrees with the full reader on any damage to the bytes', () => {
    const good = bytesOf(
      rainText(
        [
          ['2001-01-01', '1.5'],
          ['2001-01-02', ''],
          ['2001-01-03', '0'],
          ['2001-01-04', '12'],
        ],
        '\r\n',
      ),
    );
    const damage = fc.tuple(fc.nat({ max: good.length - 1 }), fc.nat({ max: 6 }), fc.uint8Array({ maxLength: 6 }));
    let read = 0;
    fc.assert(
      fc.property(damage, ([from, length, put]) => {
        const bytes = new Uint8Array([...good.slice(0, from), ...put, ...good.slice(from + length)]);
        const found = fast(bytes);
        if (found === null) return;
        read++;
        expect(found).toStrictEqual(full(bytes));
      }),
      { seed: 9, numRuns: 3000 },
    );
    expect(read).toBeGreaterThan(500);
  });

  it.each([
    ['another header', 'date,rain\n2001-01-01,1\n'],
    ['no line end at the end', 'date,rain_mm\n2001-01-01,1'],
    ['no rows', 'date,rain_mm\n'],
    ['nothing', ''],
    ['quotes', 'date,rain_mm\n2001-01-01,"1"\n'],
    ['no plain line at all', 'date,rain_mm\n2001-01-01,x\n'],
  ])('leaves a file with %s to the full reader', (_, text) => {
    expect(plainRain(bytesOf(text))).toBeNull();
  });

  it.each([
    ['an empty line', ''],
    ['a third cell', '2001-01-02,1,2'],
    ['a code for not read', '2001-01-02,9999'],
    ['more digits than a double holds', '2001-01-02,1.234567890123456'],
    ['a day that is not', '2001-02-29,1'],
  ])('hands on %s as an odd line', (_, line) => {
    const lines = plainRain(bytesOf(`date,rain_mm\n2001-01-01,1\n${line}\n`))!;
    expect(lines.odd).toEqual([{ row: 3, cells: line.split(',') }]);
    expect(lines.readings).toHaveLength(1);
  });

  it('takes no notice of a byte order mark', () => {
    const { readings } = plainRain(bytesOf('\uFEFFdate,rain_mm\n1970-01-02,1.5\n'))!;
    expect(readings).toEqual([{ day: 1, rain_mm: 1.5, row: 2 }]);
  });
});
