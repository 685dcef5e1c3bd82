import { isoDay } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainRain } from './plainRain.ts';
import { fullRain } from './readRainFile.ts';

const bytesOf = (text: string) => new Uint8Array(Buffer.from(text));
const plain = (text: string) => plainRain(bytesOf(text));
const full = (text: string) => fullRain(bytesOf(text), 'G', 'rain/G.csv');

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

describe('plainRain', () => {
  it('reads plain files as the full reader does, bit for bit, and is never shy of one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(day, depth), { minLength: 1, maxLength: 60 }),
        fc.constantFrom('\n', '\r\n'),
        (lines, end) => {
          const text = rainText(lines, end);
          const fast = plain(text);
          expect(fast).not.toBeNull();
          const slow = full(text);
          expect(fast).toStrictEqual(slow.readings);
          expect([slow.problems, slow.notUsed]).toEqual([[], []]);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });

  it('gives up, or agrees, where anything unusual stands among the lines', () => {
    const line = fc.oneof(
      { weight: 8, arbitrary: fc.tuple(day, depth) },
      { weight: 1, arbitrary: fc.tuple(day, unusual) },
      { weight: 1, arbitrary: fc.tuple(oddDay, depth) },
    );
    let gaveUp = 0;
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 12 }), fc.string({ maxLength: 3 }), (lines, tail) => {
        const text = rainText(lines, '\n') + tail;
        const fast = plain(text);
        if (fast === null) gaveUp++;
        else {
          const slow = full(text);
          expect(fast).toStrictEqual(slow.readings);
          expect([slow.problems, slow.notUsed]).toEqual([[], []]);
        }
      }),
      { seed: 8, numRuns: 1000 },
    );
    expect(gaveUp).toBeGreaterThan(300);
    expect(gaveUp).toBeLessThan(1000);
  });

  it.each([
    ['another header', 'date,rain\n2001-01-01,1\n'],
    ['no line end at the end', 'date,rain_mm\n2001-01-01,1'],
    ['an empty line', 'date,rain_mm\n\n2001-01-01,1\n'],
    ['no rows', 'date,rain_mm\n'],
    ['nothing', ''],
    ['a third cell', 'date,rain_mm\n2001-01-01,1,2\n'],
    ['a code for not read', 'date,rain_mm\n2001-01-01,9999\n'],
    ['more digits than a double holds', 'date,rain_mm\n2001-01-01,1.234567890123456\n'],
  ])('gives up at %s', (_, text) => {
    expect(plain(text)).toBeNull();
  });

  it('takes no notice of a byte order mark', () => {
    expect(plain('\uFEFFdate,rain_mm\n1970-01-02,1.5\n')).toEqual([{ day: 1, rain_mm: 1.5, row: 2 }]);
  });
});
