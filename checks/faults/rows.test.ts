import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, good, type Planted, readFiles } from './folder.ts';

const rows: readonly Planted[] = [
  {
    fault: 'two rows with one site id that differ: the first is used',
    files: () => changed('sites.csv', 'S003,Ferry', 'S001,Another,,,60,G-west,,\nS003,Ferry'),
    problems: ['row.key_twice blocker @ sites.csv 4 siteId = "S001"'],
    notUsed: ['sites.csv 4 whole row.key_twice'],
    inDoubt: ['S001'],
  },
  {
    fault: 'two roofs of one site with one id that differ',
    files: () => changed('roofs.csv', 'S001,store,6,4', 'S001,school,6,4'),
    problems: ['row.key_twice blocker @ roofs.csv 3 roofId = "S001 school"'],
    notUsed: ['roofs.csv 3 whole row.key_twice'],
    inDoubt: ['S001'],
  },
  {
    fault: 'the same row twice: dropped',
    files: () => changed('tanks.csv', 'S003,T1', 'S002,T1,tank-5,5000,,,,\nS003,T1'),
    problems: ['row.twice_same warning @ tanks.csv 5 tankId = "S002 T1"'],
    notUsed: ['tanks.csv 5 whole row.twice_same'],
    inDoubt: [],
  },
  {
    fault: 'the programme’s own purpose twice, with other litres',
    files: () => changed('demand.csv', ',washing,5,no', ',drinking,5,no'),
    problems: ['row.key_twice blocker @ demand.csv 3 purpose = "drinking"'],
    notUsed: ['demand.csv 3 whole row.key_twice'],
    inDoubt: ['S001', 'S002'],
  },
  {
    fault: 'a row with fewer cells than the header',
    files: () => changed('tanks.csv', 'S002,T1,tank-5,5000,,,,', 'S002,T1,tank-5,5000'),
    problems: ['row.cells_missing warning @ tanks.csv 4 - = "S002,T1,tank-5,5000"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a row with fewer cells, one of them needed',
    files: () => changed('demand.csv', 'S003,drinking,10,yes', 'S003,drinking,10'),
    problems: ['cell.missing blocker @ demand.csv 4 judged = ""'],
    notUsed: ['demand.csv 4 whole cell.missing'],
    inDoubt: ['S003'],
  },
  {
    fault: 'a row with more cells than the header: a comma in a name without quotes',
    files: () => changed('sites.csv', 'S003,Ferry Stones,', 'S003,Ferry, Stones,'),
    problems: ['row.cells_too_many blocker @ sites.csv 4 - = "S003,Ferry, Stones,-8.75,125.5,240,G-west,,2027-05-15"'],
    notUsed: ['sites.csv 4 whole row.cells_too_many'],
    inDoubt: ['S003'],
  },
  {
    fault: 'more commas than the header, with nothing between them: no fault',
    files: () => changed('sites.csv', '2027-05-15', '2027-05-15,, ,'),
    problems: [],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'empty rows among the others',
    files: () => changed('roofs.csv', 'S002,hall', '\n,,,,,,,\n  \nS002,hall'),
    problems: ['row.empty note @ roofs.csv 4 - = ""'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'empty rows at the end: no fault',
    files: () => ({ ...good, 'roofs.csv': `${good['roofs.csv']}\n,,,,,,,\n` }),
    problems: [],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a quote that is never closed costs its own row only',
    files: () => changed('sites.csv', 'S001,Upper', 'S001,"Upper'),
    problems: ['row.quote_broken blocker @ sites.csv 2 - = "S001,Upper Tarn,-8.5,125.25,120,G-east,1.1,2027-03-01"'],
    notUsed: ['sites.csv 2 whole row.quote_broken'],
    inDoubt: ['S001'],
  },
  {
    fault: 'a quote that meets the next row’s quotes costs its own row only',
    files: () => ({
      ...good,
      'sites.csv': good['sites.csv']!.replace('Upper Tarn', '"Upper Tarn').replace('Lower Tarn', '"Lower Tarn"'),
    }),
    problems: ['row.quote_broken blocker @ sites.csv 2 - = "S001,Upper Tarn,-8.5,125.25,120,G-east,1.1,2027-03-01"'],
    notUsed: ['sites.csv 2 whole row.quote_broken'],
    inDoubt: ['S001'],
  },
];

describe('a row at fault', () => {
  it.each(rows)('$fault', async (planted) => {
    await assertPlanted(planted);
  });

  it('keeps the first of two that differ, and names its row', async () => {
    const read = await readFiles(changed('roofs.csv', 'S001,store,6,4', 'S001,school,6,4'));
    expect(read.facts.sites[0]!.roofs.map(({ length_m }) => length_m)).toEqual([24]);
    expect(read.problems[0]!.facts['firstRow']).toBe(2);
  });

  it('counts empty rows and names them', async () => {
    const read = await readFiles(changed('roofs.csv', 'S002,hall', '\n,,,,,,,\n  \nS002,hall'));
    expect([read.problems[0]!.facts['count'], read.problems[0]!.facts['rows']]).toEqual([3, ['4', '5', '6']]);
  });

  it('leaves a site whose row is lost in the programme, with nothing known and in doubt', async () => {
    const read = await readFiles(changed('sites.csv', 'S003,Ferry Stones,', 'S003,Ferry, Stones,'));
    const site = read.facts.sites[2]!;
    expect([site.siteId, site.name, site.people, site.gaugeId]).toEqual(['S003', 'S003', null, null]);
    expect(site.roofs.map(({ roofId }) => roofId)).toEqual(['school']);
    expect(site.doubts).toEqual([{ file: 'sites.csv', row: 4, siteId: 'S003' }]);
  });

  it('still reads a quoted name with a comma, a quote and a line end', async () => {
    const read = await assertPlanted({
      fault: '',
      files: () => changed('sites.csv', 'Upper Tarn', '"Upper, ""old""\nTarn"'),
      problems: [],
      notUsed: [],
      inDoubt: [],
      differ: ['S001'],
    });
    expect(read.facts.sites[0]!.name).toBe('Upper, "old"\nTarn');
  });

  it('counts rows by lines of the table, as a spreadsheet does', async () => {
    const read = await readFiles(changed('roofs.csv', 'S001,store,6,', 'S001,store,six,'));
    expect(read.problems[0]!.place.row).toBe(3);
  });
});
