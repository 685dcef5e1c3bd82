import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, good, type Planted, readFiles } from './folder.ts';

const links: readonly Planted[] = [
  {
    fault: 'a roof of a site that is not there',
    files: () => changed('roofs.csv', 'S003,school,30', 'S999,school,30'),
    problems: [
      'link.unknown_site blocker @ roofs.csv 5 siteId = "S999"',
      'link.unknown_roof blocker @ diverters.csv 3 roofId = "school"',
    ],
    notUsed: ['roofs.csv 5 whole link.unknown_site', 'diverters.csv 3 whole link.unknown_roof'],
    inDoubt: ['S003'],
  },
  {
    fault: 'a tank of a site that is not there',
    files: () => changed('tanks.csv', 'S002,T1,tank-5', 'S0O2,T1,tank-5'),
    problems: ['link.unknown_site blocker @ tanks.csv 4 siteId = "S0O2"'],
    notUsed: ['tanks.csv 4 whole link.unknown_site'],
    // The id is nearly that of S002, so S002 is not judged without the row.
    inDoubt: ['S002'],
    differ: ['S002'],
  },
  {
    fault: 'a site whose gauge is not there',
    files: () => changed('sites.csv', '240,G-west', '240,G-wset'),
    problems: ['link.unknown_gauge blocker @ sites.csv 4 gaugeId = "G-wset"'],
    notUsed: ['sites.csv 4 gaugeId link.unknown_gauge'],
    inDoubt: ['S003'],
  },
  {
    fault: 'a diverter of a roof that is not there',
    files: () => changed('diverters.csv', 'S001,school', 'S001,shool'),
    problems: ['link.unknown_roof blocker @ diverters.csv 2 roofId = "shool"'],
    notUsed: ['diverters.csv 2 whole link.unknown_roof'],
    inDoubt: ['S001'],
  },
  {
    fault: 'a tank joined to one that is not there',
    files: () => changed('tanks.csv', ',,,,T1', ',,,,T9'),
    problems: ['link.unknown_tank blocker @ tanks.csv 3 joinedTo = "T9"'],
    notUsed: ['tanks.csv 3 joinedTo link.unknown_tank'],
    inDoubt: ['S001'],
  },
  {
    fault: 'a tank joined to itself',
    files: () => changed('tanks.csv', ',,,,T1', ',,,,T2'),
    problems: ['link.joined_to_itself blocker @ tanks.csv 3 joinedTo = "T2"'],
    notUsed: ['tanks.csv 3 joinedTo link.joined_to_itself'],
    inDoubt: ['S001'],
  },
  {
    fault: 'a tank that is a part nobody knows',
    files: () => changed('tanks.csv', 'S002,T1,tank-5,', 'S002,T1,tnak-5,'),
    problems: ['link.unknown_part blocker @ tanks.csv 4 partId = "tnak-5"'],
    notUsed: ['tanks.csv 4 partId link.unknown_part'],
    inDoubt: ['S002'],
  },
  {
    fault: 'a tank that is a gutter',
    files: () => changed('tanks.csv', 'S002,T1,tank-5,', 'S002,T1,gutter-4,'),
    problems: ['link.part_not_tank blocker @ tanks.csv 4 partId = "gutter-4"'],
    notUsed: ['tanks.csv 4 partId link.part_not_tank'],
    inDoubt: ['S002'],
  },
  {
    fault: 'a price of a part nobody knows',
    files: () => changed('prices.csv', 'tank-5,', 'tank-50,'),
    problems: ['link.unknown_part blocker @ prices.csv 3 partId = "tank-50"'],
    notUsed: ['prices.csv 3 whole link.unknown_part'],
    inDoubt: [],
  },
  {
    fault: 'an id that would be a path, in a row of its own',
    files: () => changed('roofs.csv', 'S002,hall', '../x,hall'),
    problems: ['cell.unsafe_id blocker @ roofs.csv 4 siteId = "../x"'],
    notUsed: ['roofs.csv 4 whole cell.unsafe_id'],
    inDoubt: [],
    differ: ['S002'],
  },
  {
    fault: 'no parts table for the tanks that name parts',
    files: () => {
      const { 'parts.csv': _parts, 'prices.csv': _prices, ...rest } = good;
      return rest;
    },
    problems: ['link.not_checked warning @ tanks.csv 2 partId = "tanks.csv"'],
    notUsed: [],
    inDoubt: [],
    differ: ['S001', 'S002'],
  },
  {
    fault: 'a roof that leads to a tank that is not there',
    files: () => ({
      ...good,
      'roofs.csv':
        'siteId,roofId,roofPlanArea_m2,gutteredFraction,tankId\nS001,school,204,1,T2\nS002,hall,150,0.9,T2\nS003,school,270,1,\n',
    }),
    problems: ['link.unknown_tank blocker @ roofs.csv 3 tankId = "T2"'],
    notUsed: ['roofs.csv 3 tankId link.unknown_tank'],
    inDoubt: ['S002'],
    differ: ['S001', 'S003'],
  },
];

describe('a link that leads nowhere', () => {
  it.each(links)('$fault', async (planted) => {
    await assertPlanted(planted);
  });

  it('names the nearest id there is', async () => {
    const likely = async (planted: Planted) => (await readFiles(planted.files())).problems[0]!.facts['likely'];
    expect(await likely(links[1]!)).toBe('S002');
    expect(await likely(links[2]!)).toBe('G-west');
    expect(await likely(links[3]!)).toBe('school');
    expect(await likely(links[6]!)).toBe('tank-5');
  });

  it('leaves the fact unknown', async () => {
    const read = await readFiles(changed('sites.csv', '240,G-west', '240,G-wset'));
    expect(read.facts.sites[2]!.gaugeId).toBeNull();
  });
});

describe('a gauge whose id would be a path', () => {
  it('is a problem, and no file is opened for it', async () => {
    const files = {
      ...changed('gauges.csv', 'G-west,West', '../secret,West'),
      'secret.csv': 'date,rain_mm\n2001-01-01,99\n',
    };
    const read = await readFiles(files);
    expect(read.facts.gauges.map(({ gaugeId }) => gaugeId)).toEqual(['G-east']);
    expect(read.files.map(({ file }) => file)).not.toContain('rain/../secret.csv');
    expect(read.problems.map(({ code, place }) => `${code} ${place.file}`)).toEqual([
      'cell.unsafe_id gauges.csv',
      'link.unknown_gauge sites.csv',
      'rainFile.without_gauge rain/G-west.csv',
      'file.unknown secret.csv',
    ]);
  });
});

describe('two gauges whose ids differ by capitals only', () => {
  it('warns, and keeps both', async () => {
    const files = {
      ...changed('gauges.csv', 'G-west,', 'G-East,Other,,,\nG-west,'),
      'rain/G-East.csv': good['rain/G-west.csv']!,
    };
    const read = await readFiles(files);
    expect(read.problems.map(({ code, facts }) => [code, facts['value'], facts['other']])).toEqual([
      ['link.ids_differ_by_case', 'G-East', 'G-east'],
    ]);
    expect(read.facts.gauges).toHaveLength(3);
  });
});
