import { mkdir, truncate } from 'node:fs/promises';
import { join } from 'node:path';
import { readProgramme } from '@eavewell/formats';
import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, type Files, good, inFolder, line, listed, type Planted, readFiles } from './folder.ts';

const all = ['S001', 'S002', 'S003'];
const bytes = (text: string, encoding: BufferEncoding) => new Uint8Array(Buffer.from(text, encoding));

function without(...names: readonly string[]): Files {
  return Object.fromEntries(Object.entries(good).filter(([name]) => !names.includes(name)));
}

/** The file of a table with other marks between its cells. */
function separated(file: string, separator: string): string {
  return good[file]!.replaceAll(',', separator);
}

/** Latin-1 bytes of a text: é is one byte that is not UTF-8. */
const latin1 = (file: string, from: string, to: string): Files => ({
  ...good,
  [file]: bytes(good[file]!.replace(from, to), 'latin1'),
});

const files: readonly Planted[] = [
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
    fault: 'UTF-16 with its mark',
    files: () => ({ ...good, 'demand.csv': bytes(`\uFEFF${good['demand.csv']}`, 'utf16le') }),
    problems: ['file.wrong_encoding blocker @ demand.csv - - = "demand.csv"'],
    notUsed: [],
    inDoubt: all,
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
    fault: 'a letter that is not UTF-8 in a name: the name is used',
    files: () => latin1('sites.csv', 'Upper Tarn', 'Upper Tarné'),
    problems: ['cell.letters_lost warning @ sites.csv 2 name = "Upper Tarn\uFFFD"'],
    notUsed: [],
    inDoubt: [],
    differ: ['S001'],
  },
  {
    fault: 'a byte that is not UTF-8 in a number',
    files: () => latin1('sites.csv', ',120,', ',12é0,'),
    problems: ['cell.bytes_unreadable blocker @ sites.csv 2 people = "12\uFFFD0"'],
    notUsed: ['sites.csv 2 people cell.bytes_unreadable'],
    inDoubt: ['S001'],
  },
  {
    fault: 'a byte that is not UTF-8 in an id',
    files: () => latin1('sites.csv', '240,G-west', '240,G-wést'),
    problems: ['cell.bytes_unreadable blocker @ sites.csv 4 gaugeId = "G-w\uFFFDst"'],
    notUsed: ['sites.csv 4 gaugeId cell.bytes_unreadable'],
    inDoubt: ['S003'],
  },
  {
    fault: 'CRLF line ends: no fault',
    files: () => Object.fromEntries(Object.entries(good).map(([name, text]) => [name, text.replaceAll('\n', '\r\n')])),
    problems: [],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'CR line ends: no fault',
    files: () => Object.fromEntries(Object.entries(good).map(([name, text]) => [name, text.replaceAll('\n', '\r')])),
    problems: [],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'line ends of two kinds in one file: no fault',
    files: () => ({ ...good, 'roofs.csv': good['roofs.csv']!.replace('\n', '\r\n') }),
    problems: [],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'semicolons',
    files: () => ({ ...good, 'tanks.csv': separated('tanks.csv', ';') }),
    problems: ['file.separator note @ tanks.csv 1 - = "semicolon"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'tabs',
    files: () => ({ ...good, 'tanks.csv': separated('tanks.csv', '\t') }),
    problems: ['file.separator note @ tanks.csv 1 - = "tab"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'semicolons and decimal commas: read, with one warning a column',
    files: () => ({
      ...good,
      'tanks.csv': separated('tanks.csv', ';').replaceAll('.', ',').replace('tanks,csv', 'tanks.csv'),
    }),
    problems: [
      'file.separator note @ tanks.csv 1 - = "semicolon"',
      'column.decimal_comma warning @ tanks.csv 2 outletHeight_m = "0,1"',
      'column.decimal_comma warning @ tanks.csv 2 overflowHeight_m = "2,2"',
      'column.decimal_comma warning @ tanks.csv 2 diameter_m = "2,5"',
    ],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'semicolons and a comma with three digits behind it',
    files: () => ({
      ...good,
      'tanks.csv': separated('tanks.csv', ';').replace('S002;T1;tank-5;5000', 'S002;T1;tank-5;5,000'),
    }),
    problems: [
      'file.separator note @ tanks.csv 1 - = "semicolon"',
      'cell.comma_ambiguous blocker @ tanks.csv 4 nominal_L = "5,000"',
    ],
    notUsed: ['tanks.csv 4 nominal_L cell.comma_ambiguous'],
    inDoubt: ['S002'],
  },
  {
    fault: 'decimal commas, and a point with three digits behind it that may be a thousand',
    files: () => ({
      ...good,
      'tanks.csv': separated('tanks.csv', ';').replace('2.2;2.5', '2,2;2.5').replace('tank-5;5000', 'tank-5;5.000'),
    }),
    problems: [
      'file.separator note @ tanks.csv 1 - = "semicolon"',
      'cell.comma_ambiguous blocker @ tanks.csv 4 nominal_L = "5.000"',
      'column.decimal_comma warning @ tanks.csv 2 overflowHeight_m = "2,2"',
    ],
    notUsed: ['tanks.csv 4 nominal_L cell.comma_ambiguous'],
    inDoubt: ['S002'],
  },
  {
    fault: 'a file cut off half-way: all sites are in doubt, for rows are gone',
    files: () => changed('roofs.csv', '150,tile,0.8,0.9\nS003,school,30,9,,corrugatedMetal,0.85,1\n', '150,ti'),
    problems: [
      'file.cut_off blocker @ roofs.csv 4 - = "S002,hall,,,150,ti"',
      'link.unknown_roof blocker @ diverters.csv 3 roofId = "school"',
    ],
    notUsed: ['roofs.csv 4 whole file.cut_off', 'diverters.csv 3 whole link.unknown_roof'],
    inDoubt: all,
  },
  {
    fault: 'a file cut off inside quotes',
    files: () => changed('demand.csv', 'S003,drinking,10,yes\n', 'S003,"drin'),
    problems: ['file.cut_off blocker @ demand.csv 4 - = "S003,drin"'],
    notUsed: ['demand.csv 4 whole file.cut_off'],
    inDoubt: all,
  },
  {
    fault: 'a whole last line without its end',
    files: () => changed('demand.csv', 'S003,drinking,10,yes\n', 'S003,drinking,10,yes'),
    problems: ['file.no_last_line_end warning @ demand.csv 4 - = "demand.csv"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'an empty file',
    files: () => ({ ...good, 'demand.csv': '' }),
    problems: ['file.empty blocker @ demand.csv - - = "demand.csv"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a table that may be left out, with a header only',
    files: () => ({ ...good, 'prices.csv': 'partId,priceDate,amount,currency\n' }),
    problems: ['file.no_rows_optional note @ prices.csv - - = "prices.csv"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'tables that may be left out are left out: no fault',
    files: () => without('prices.csv', 'diverters.csv'),
    problems: [],
    notUsed: [],
    inDoubt: [],
    differ: ['S001', 'S003'],
  },
  {
    fault: 'a needed table is not there',
    files: () => without('roofs.csv', 'diverters.csv'),
    problems: ['file.missing blocker @ roofs.csv - - = "roofs.csv"'],
    notUsed: [],
    inDoubt: [],
    differ: all,
  },
  {
    fault: 'files nobody knows',
    files: () => ({ ...good, 'notes.txt': 'to do', '.hidden': '', 'rain/readme.txt': '' }),
    problems: [
      'file.unknown note @ rain/readme.txt - - = "rain/readme.txt"',
      'file.unknown note @ notes.txt - - = "notes.txt"',
    ],
    notUsed: [],
    inDoubt: [],
  },
];

describe('a file at fault', () => {
  it.each(files)('$fault', async (planted) => {
    await assertPlanted(planted);
  });

  it('names the file that was likely meant', async () => {
    const { 'roofs.csv': roofs, ...rest } = good;
    const read = await readFiles({ ...rest, 'Roofs .csv': roofs! });
    expect(read.problems[0]!.facts['likely']).toBe('Roofs .csv');
  });

  it('keeps all the rows above the cut', async () => {
    const read = await readFiles(
      changed('roofs.csv', '150,tile,0.8,0.9\nS003,school,30,9,,corrugatedMetal,0.85,1\n', '150,ti'),
    );
    expect(read.facts.sites[0]!.roofs.map(({ roofId }) => roofId)).toEqual(['school', 'store']);
    expect(read.files[1]).toEqual({ file: 'roofs.csv', rows: 3, used: 2 });
  });

  it('that is a folder is named', async () => {
    await inFolder(without('demand.csv'), async (folder) => {
      await mkdir(join(folder, 'demand.csv'));
      const read = await readProgramme(folder);
      expect(read.problems.map(line)).toEqual(['file.not_a_file blocker @ demand.csv - - = "demand.csv"']);
      expect(read.facts.sites.map(({ doubts }) => doubts)).toEqual(all.map(() => [{ file: 'demand.csv' }]));
    });
  });

  it('that is too large is named and not opened', async () => {
    await inFolder(good, async (folder) => {
      await truncate(join(folder, 'prices.csv'), 500e6 + 1);
      const read = await readProgramme(folder);
      expect(read.problems.map(line)).toEqual(['file.too_large blocker @ prices.csv - - = "prices.csv"']);
      expect(read.facts.prices).toEqual([]);
    });
  });
});

describe('a folder at fault', () => {
  it('that is not there', async () => {
    await inFolder({}, async (folder) => {
      const path = join(folder, 'nowhere');
      const read = await readProgramme(path);
      expect(read.problems.map(line)).toEqual([`folder.missing blocker @ ${path} - - = ${JSON.stringify(path)}`]);
      expect(read.facts.sites).toEqual([]);
    });
  });

  it('that is a file', async () => {
    await inFolder({ file: 'x' }, async (folder) => {
      const read = await readProgramme(join(folder, 'file'));
      expect(read.problems.map(({ code }) => code)).toEqual(['folder.not_a_folder']);
      expect((await readProgramme(join(folder, 'file', 'below'))).problems[0]!.code).toBe('folder.missing');
    });
  });

  it('with nothing in it: every needed table is named', async () => {
    const read = await readFiles({});
    expect(read.problems.map(line)).toEqual(
      ['sites', 'roofs', 'tanks', 'gauges'].map((name) => `file.missing blocker @ ${name}.csv - - = "${name}.csv"`),
    );
  });
});

describe('rows of a good folder with many faults at once', () => {
  it('gives 30 problems for 30 bad cells among 400 sites, and 370 whole sites', async () => {
    const rows = Array.from(
      { length: 400 },
      (_, i) => `V${i},Place ${i},,,${i % 13 === 0 && i < 390 ? 'x' : 50},G-east,,`,
    );
    const [header] = good['sites.csv']!.split('\n');
    const sites = `${header}\n${rows.join('\n')}\n`;
    const demand = 'siteId,purpose,litres_per_person_per_day,judged\n,drinking,7.5,yes\n';
    const roofs = `siteId,roofId\n${rows.map((_, i) => `V${i},r\n`).join('')}`;
    const tanks = `siteId,tankId\n${rows.map((_, i) => `V${i},t\n`).join('')}`;
    const read = await readFiles({
      ...without('diverters.csv'),
      'sites.csv': sites,
      'demand.csv': demand,
      'roofs.csv': roofs,
      'tanks.csv': tanks,
    });
    expect(read.problems).toHaveLength(30);
    expect(listed(read)).toHaveLength(30);
    expect(read.facts.sites.filter(({ people, doubts }) => people === 50 && doubts.length === 0)).toHaveLength(370);
  });
});
