import { createWriteStream } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { finished } from 'node:stream/promises';
import { isoDay, readIsoDay } from '@eavewell/engine';
import { readProgramme } from '@eavewell/formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { good, inFolder, line } from './folder.ts';
import { fuzzRuns } from './fuzzRuns.ts';

/** How many files are made up. */
const files_count = fuzzRuns(150);

const depth = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 2000 }).map((tenths) => String(tenths / 10)) },
  {
    weight: 3,
    arbitrary: fc.constantFrom(
      '',
      '-9999',
      'T',
      '1,5',
      '"3"',
      '"3,5"',
      ' 2',
      'x',
      '1000',
      '5\u200b',
      'ä',
      '\uFFFD',
      '"open',
      '7"',
    ),
  },
);
const days = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 11_000, max: 11_020 }).map(isoDay) },
  { weight: 1, arbitrary: fc.constantFrom('', '2001-02-30', '1/2/2001', '"2001-01-01"', 'Tärn') },
);
const file = fc.record({
  header: fc.constantFrom(
    'date,rain_mm',
    'date,rain_mm',
    'date,rain_mm,observer',
    'Date,rain_mm',
    'rain_mm,date',
    '',
    'ID,DATE,ELEMENT,VALUE',
  ),
  separator: fc.constantFrom(',', ',', ',', ';', '\t'),
  end: fc.constantFrom('\n', '\n', '\r\n', '\r'),
  lastEnd: fc.boolean(),
  encoding: fc.constantFrom('utf8', 'utf8', 'mark', 'latin1', 'utf16le', 'cut'),
  rows: fc.array(fc.tuple(days, depth, fc.constantFrom('', '', '', ',', ',x', 'blank')), { maxLength: 25 }),
});

type MadeFile = typeof file extends fc.Arbitrary<infer T> ? T : never;

function bytesOf({ header, separator, end, lastEnd, encoding, rows }: MadeFile): Uint8Array {
  const lines = rows.map(([day, rain_mm, more]) => (more === 'blank' ? '' : `${day},${rain_mm}${more}`));
  const joined = [header, ...lines].join(end) + (lastEnd ? end : '');
  const text = separator === ',' ? joined : joined.replaceAll(',', separator);
  if (encoding === 'utf16le' || encoding === 'cut') {
    const bytes = Buffer.from(`\uFEFF${text}`, 'utf16le');
    return encoding === 'cut' ? bytes.subarray(0, -1) : bytes;
  }
  return Buffer.from(encoding === 'mark' ? `\uFEFF${text}` : text, encoding === 'latin1' ? 'latin1' : 'utf8');
}

/**
 * A quoted cell over the end of its line is whole where a file is read whole, and two broken lines where it is streamed; a
 * CR between two stray quotes is likewise part of a cell only where the file is read whole.
 */
function isOverLines({ rows, end }: MadeFile): boolean {
  const strays = rows.filter(([, rain_mm]) => /^"open$|^7"$/.test(rain_mm)).length;
  return strays > 1 || (strays === 1 && end !== '\n');
}

describe('a rain file that is streamed', () => {
  it('gives what reading it whole gives: readings, problems, rows not used', async () => {
    let [withReadings, withProblems] = [0, 0];
    await fc.assert(
      fc.asyncProperty(
        file.filter((made) => !isOverLines(made)),
        fc.constantFrom(5, 16, 33, 100, 1 << 20),
        async (made, piece_bytes) => {
          const files = { ...good, 'rain/G-east.csv': bytesOf(made) };
          await inFolder(files, async (folder) => {
            const whole = await readProgramme(folder);
            const streamed = await readProgramme(folder, { streamedFrom_bytes: -1, piece_bytes });
            expect(streamed.problems).toEqual(whole.problems);
            expect(streamed).toEqual(whole);
            if (whole.facts.gauges[0]!.readings.length > 0) withReadings++;
            if (whole.problems.length > 0) withProblems++;
          });
        },
      ),
      { numRuns: files_count, seed: 20261128 },
    );
    expect(withReadings).toBeGreaterThan(files_count / 4);
    expect(withProblems).toBeGreaterThan(files_count / 4);
  }, 3_600_000);

  it('breaks a quoted cell at the end of its line, and says so', async () => {
    const files = { ...good, 'rain/G-east.csv': 'date,rain_mm\n2001-01-01,"1\n"\n2001-01-02,3\n' };
    const read = await inFolder(files, (folder) => readProgramme(folder, { streamedFrom_bytes: -1 }));
    expect(read.problems.map(line)).toEqual([
      'rainFile.day_unreadable warning @ rain/G-east.csv 2 date = "2001-01-01,1"',
      'rainFile.day_unreadable warning @ rain/G-east.csv 3 date = ""',
    ]);
    expect(read.facts.gauges[0]!.readings.map(({ rain_mm }) => rain_mm)).toEqual([3]);
  });

  it('that cannot be read is named', async () => {
    await inFolder(good, async (folder) => {
      await mkdir(join(folder, 'rain', 'G-far.csv'));
      await writeFile(join(folder, 'gauges.csv'), `${good['gauges.csv']}G-far,Far,,,\n`);
      const read = await readProgramme(folder, { streamedFrom_bytes: -1 });
      expect(read.problems.map(line)).toEqual(['file.not_a_file blocker @ rain/G-far.csv - - = "rain/G-far.csv"']);
    });
  });
});

/** Writes a rain file line by line. */
async function written(path: string, lines: number, lineOf: (i: number) => string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const stream = createWriteStream(path);
  stream.write('date,rain_mm\n');
  for (let i = 0; i < lines; i += 1000) {
    let text = '';
    for (let j = i; j < Math.min(i + 1000, lines); j++) text += `${lineOf(j)}\n`;
    if (!stream.write(text)) await new Promise<void>((drained) => stream.once('drain', () => drained()));
  }
  stream.end();
  await finished(stream);
}

const first = readIsoDay('1901-01-01')!;

describe('a rain file with more lines than there are days', () => {
  it('keeps what says something new of a day, and counts the rest, streamed or whole', async () => {
    await inFolder(good, async (folder) => {
      // 500,000 lines over 40,000 days: the first 400,000 are kept; of the rest those of every 7th day differ.
      const rainOf = (i: number) => (i >= 400_000 && (i % 40_000) % 7 === 0 ? 9 : 2);
      await written(join(folder, 'rain/G-east.csv'), 500_000, (i) => `${isoDay(first + (i % 40_000))},${rainOf(i)}`);
      const whole = await readProgramme(folder);
      const streamed = await readProgramme(folder, { streamedFrom_bytes: 1 });
      expect(streamed.facts.gauges[0]!.readings).toEqual(whole.facts.gauges[0]!.readings);
      expect(streamed.problems).toEqual(whole.problems);
      const differing = Math.ceil(40_000 / 7);
      expect(whole.facts.gauges[0]!.readings).toHaveLength(400_000 + differing);
      expect(whole.problems.map(({ code, facts }) => [code, facts['count']])).toEqual([
        ['rainFile.days_again', 100_000 - differing],
      ]);
    });
  });

  it('lists 100,000 rows that were not used, and counts the others', async () => {
    await inFolder(good, async (folder) => {
      await written(join(folder, 'rain/G-east.csv'), 130_000, (i) => (i % 13 === 0 ? '2001-01-01,1' : `no day ${i},1`));
      const read = await readProgramme(folder, { streamedFrom_bytes: 1 });
      expect(read.notUsed).toHaveLength(100_000);
      expect(read.problems.find(({ code }) => code === 'rainFile.not_listed')!.facts['count']).toBe(20_000);
      expect(read.files.find((one) => one.file === 'rain/G-east.csv')).toMatchObject({ rows: 130_000, used: 10_000 });
      expect(read.problems.length).toBeLessThan(30);
    });
  });
});
