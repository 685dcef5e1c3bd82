import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, good, type Planted, readFiles } from './folder.ts';

const all = ['S001', 'S002', 'S003'];

const headers: readonly Planted[] = [
  {
    fault: 'a needed column is not there: no row of the file can be used',
    files: () => changed('demand.csv', ',judged\n', ',asked\n'),
    problems: [
      'header.column_missing blocker @ demand.csv 1 judged = ""',
      'header.column_unknown note @ demand.csv 1 asked = "asked"',
    ],
    notUsed: [2, 3, 4].map((row) => `demand.csv ${row} whole header.column_missing`),
    inDoubt: all,
  },
  {
    fault: 'a needed column in other letters is pointed out, never taken',
    files: () => changed('demand.csv', ',judged\n', ',Judged \n'),
    problems: ['header.column_missing blocker @ demand.csv 1 judged = ""'],
    notUsed: [2, 3, 4].map((row) => `demand.csv ${row} whole header.column_missing`),
    inDoubt: all,
  },
  {
    fault: 'a column that may be left out is there under nearly its name',
    files: () => changed('roofs.csv', 'gutteredFraction', 'Guttered fraction'),
    problems: ['header.column_misspelt blocker @ roofs.csv 1 Guttered fraction = "Guttered fraction"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a column without its unit',
    files: () => changed('roofs.csv', 'length_m', 'length'),
    problems: ['header.column_misspelt blocker @ roofs.csv 1 length = "length"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a column twice is not used',
    files: () => changed('tanks.csv', 'diameter_m', 'nominal_L'),
    problems: ['header.column_twice blocker @ tanks.csv 1 nominal_L = "nominal_L"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a column nobody knows is left alone',
    files: () => changed('gauges.csv', 'readingTime\n', 'readingTime,observer\n'),
    problems: ['header.column_unknown note @ gauges.csv 1 observer = "observer"'],
    notUsed: [],
    inDoubt: [],
  },
];

describe('a header at fault', () => {
  it.each(headers)('$fault', async (planted) => {
    await assertPlanted(planted);
  });

  it('names the likely column', async () => {
    const missing = await readFiles(changed('demand.csv', ',judged\n', ',Judged \n'));
    expect([missing.problems[0]!.facts['expected'], missing.problems[0]!.facts['likely']]).toEqual([
      'judged',
      'Judged',
    ]);
    const misspelt = await readFiles(changed('roofs.csv', 'length_m', 'length'));
    expect(misspelt.problems[0]!.facts['expected']).toBe('length_m');
  });

  it('without a name warns, and keeps the rows', async () => {
    const text = good['prices.csv']!.replaceAll(/^([^,]*),([^,]*),/gm, '$1,$2,,');
    const read = await assertPlanted({
      fault: '',
      files: () => ({ ...good, 'prices.csv': text }),
      problems: ['header.column_unnamed warning @ prices.csv 1 - = ""'],
      notUsed: [],
      inDoubt: [],
    });
    expect(read.facts.prices).toHaveLength(2);
    expect(read.problems[0]!.facts['number']).toBe(3);
  });

  it('may have its columns in any order', async () => {
    const text = good['demand.csv']!.replaceAll(/^([^,\n]*),([^,\n]*),([^,\n]*),([^,\n]*)$/gm, '$4,$2,$3,$1');
    expect(text).toContain('judged,purpose,litres_per_person_per_day,siteId\nyes,drinking,7.5,\n');
    await assertPlanted({
      fault: '',
      files: () => ({ ...good, 'demand.csv': text }),
      problems: [],
      notUsed: [],
      inDoubt: [],
    });
  });

  it('of the sites leaves no site, and does not blame the tables that name them', async () => {
    const read = await readFiles(changed('sites.csv', 'siteId,name', 'Site,name'));
    expect(read.facts.sites).toEqual([]);
    const codes = read.problems.map(({ code, place }) => `${code} ${place.file}`);
    expect(codes).toEqual([
      'header.column_missing sites.csv',
      'link.not_checked roofs.csv',
      'link.not_checked tanks.csv',
      'link.not_checked demand.csv',
      'link.not_checked diverters.csv',
    ]);
  });
});
