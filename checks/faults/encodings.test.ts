import { describe, it } from 'vitest';
import { assertPlanted, type Files, good, type Planted } from './folder.ts';

const all = ['S001', 'S002', 'S003'];
const bytes = (text: string, encoding: BufferEncoding) => new Uint8Array(Buffer.from(text, encoding));
/** The other byte of each pair. */
const swapped = (_: number, i: number, all: Uint8Array) => all[i ^ 1]!;

/** Bytes of a text, one for each letter: \u0081 is a byte that is neither UTF-8 nor Windows-1252. */
const oneByte = (file: string, from: string, to: string): Files => ({
  ...good,
  [file]: bytes(good[file]!.replace(from, to), 'latin1'),
});

const encodings: readonly Planted[] = [
  {
    fault: 'UTF-8 with its mark at the start: no fault',
    files: () => ({
      ...good,
      'sites.csv': `\uFEFF${good['sites.csv']}`,
      'rain/G-east.csv': `\uFEFF${good['rain/G-east.csv']}`,
    }),
    problems: [],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'UTF-16 with its mark: read, and said',
    files: () => ({ ...good, 'demand.csv': bytes(`\uFEFF${good['demand.csv']}`, 'utf16le') }),
    problems: ['file.encoding_taken warning @ demand.csv - - = "demand.csv"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'big-endian UTF-16 with its mark: read, and said',
    files: () => ({ ...good, 'demand.csv': bytes(`\uFEFF${good['demand.csv']}`, 'utf16le').map(swapped) }),
    problems: ['file.encoding_taken warning @ demand.csv - - = "demand.csv"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a rain file in UTF-16: read, and said',
    files: () => ({ ...good, 'rain/G-east.csv': bytes(`\uFEFF${good['rain/G-east.csv']}`, 'utf16le') }),
    problems: ['file.encoding_taken warning @ rain/G-east.csv - - = "rain/G-east.csv"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'settings in UTF-16: read, and said',
    files: () => ({ ...good, 'settings.json': bytes(`\uFEFF${good['settings.json']}`, 'utf16le') }),
    problems: ['file.encoding_taken warning @ settings.json - - = "settings.json"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'UTF-16 with half a letter at its end',
    files: () => ({ ...good, 'demand.csv': bytes(`\uFEFF${good['demand.csv']}`, 'utf16le').slice(0, -1) }),
    problems: ['file.wrong_encoding blocker @ demand.csv - - = "demand.csv"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'Windows-1252 in a name: read, and said',
    files: () => ({ ...good, 'sites.csv': bytes(good['sites.csv']!.replace('Upper Tarn', 'Upper Tarné'), 'latin1') }),
    problems: ['file.encoding_taken warning @ sites.csv - - = "sites.csv"'],
    notUsed: [],
    inDoubt: [],
    differ: ['S001'],
  },
  {
    fault: 'UTF-16 without a mark',
    files: () => ({ ...good, 'demand.csv': bytes(good['demand.csv']!, 'utf16le') }),
    problems: ['file.wrong_encoding blocker @ demand.csv - - = "demand.csv"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a workbook under the name of a table',
    files: () => ({ ...good, 'demand.csv': new Uint8Array([0x50, 0x4b, 3, 4, 20, 0, 6, 0, 8, 0]) }),
    problems: ['file.wrong_encoding blocker @ demand.csv - - = "demand.csv"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a byte that is no letter in a name: the name is used',
    files: () => oneByte('sites.csv', 'Upper Tarn', 'Upper Tarn\u0081'),
    problems: ['cell.letters_lost warning @ sites.csv 2 name = "Upper Tarn\uFFFD"'],
    notUsed: [],
    inDoubt: [],
    differ: ['S001'],
  },
  {
    fault: 'a byte that is no letter in a number',
    files: () => oneByte('sites.csv', ',120,', ',12\u00810,'),
    problems: ['cell.bytes_unreadable blocker @ sites.csv 2 people = "12\uFFFD0"'],
    notUsed: ['sites.csv 2 people cell.bytes_unreadable'],
    inDoubt: ['S001'],
  },
  {
    fault: 'a byte that is no letter in an id',
    files: () => oneByte('sites.csv', '240,G-west', '240,G-w\u0081st'),
    problems: ['cell.bytes_unreadable blocker @ sites.csv 4 gaugeId = "G-w\uFFFDst"'],
    notUsed: ['sites.csv 4 gaugeId cell.bytes_unreadable'],
    inDoubt: ['S003'],
  },
];

describe('the encoding of a file', () => {
  it.each(encodings)('$fault', async (planted) => {
    await assertPlanted(planted);
  });
});
