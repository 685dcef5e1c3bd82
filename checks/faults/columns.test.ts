import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readColumnsFile, readProgramme, saveColumns, tablesAsRead, writeProgramme } from '@eavewell/formats';
import { columnsToSave, readColumns } from '@eavewell/tables';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, type Files, good, inFolder, line, type Planted, readFiles } from './folder.ts';

const all = ['S001', 'S002', 'S003'];

function withColumns(files: Files, columns: unknown): Files {
  return { ...files, 'columns.json': typeof columns === 'string' ? columns : JSON.stringify(columns) };
}

const used = (file: string, value: readonly string[]) => `columns.used note @ ${file} 1 - = ${JSON.stringify(value)}`;

const planted: readonly Planted[] = [
  {
    fault: 'a header that was matched is read as its column',
    files: () =>
      withColumns(changed('demand.csv', ',judged\n', ',Asked of all\n'), {
        'demand.csv': { 'Asked of all': 'judged' },
      }),
    problems: [used('demand.csv', ['Asked of all → judged'])],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a header that was left alone on purpose is not named again',
    files: () =>
      withColumns(changed('gauges.csv', 'readingTime\n', 'readingTime,observer\n'), {
        'gauges.csv': { observer: null },
      }),
    problems: [used('gauges.csv', ['observer → -'])],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'two headers for one column: neither is used',
    files: () =>
      withColumns(changed('tanks.csv', 'overflowHeight_m', 'Rim'), {
        'tanks.csv': { Rim: 'outletHeight_m' },
      }),
    problems: [
      'columns.two_for_one blocker @ tanks.csv 1 outletHeight_m = "outletHeight_m"',
      used('tanks.csv', ['Rim → outletHeight_m']),
    ],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a header that is no longer there',
    files: () => withColumns(good, { 'roofs.csv': { 'Roof length': 'length_m' } }),
    problems: ['columns.header_absent warning @ roofs.csv 1 Roof length = "Roof length"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a column there is not',
    files: () => withColumns(good, { 'roofs.csv': { length_m: 'lenght_m' } }),
    problems: ['columns.unknown_column blocker @ columns.json - - = "lenght_m"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a unit there is no conversion from',
    files: () => withColumns(good, { 'roofs.csv': { length_m: { column: 'length_m', unit: 'cubit' } } }),
    problems: [String.raw`columns.unknown_unit blocker @ columns.json - - = "\"cubit\""`],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a gallon without its country',
    files: () => withColumns(good, { 'tanks.csv': { nominal_L: { column: 'nominal_L', unit: 'gal' } } }),
    problems: [String.raw`columns.unknown_unit blocker @ columns.json - - = "\"gal\""`],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a header that names feet, matched without a unit',
    files: () =>
      withColumns(changed('roofs.csv', 'length_m', 'Length (ft)'), { 'roofs.csv': { 'Length (ft)': 'length_m' } }),
    problems: [
      'columns.unit_in_header blocker @ columns.json - - = "length_m"',
      'header.column_misspelt blocker @ roofs.csv 1 Length (ft) = "Length (ft)"',
    ],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a share among percents: 0.5 may be 0.5 % or 50 %',
    files: () => {
      const text = good['roofs.csv']!.replace('gutteredFraction', 'Guttered (%)').replaceAll(/,1$/gm, ',100');
      return withColumns(
        { ...good, 'roofs.csv': text.replace('0.8,0.9', '0.8,90') },
        { 'roofs.csv': { 'Guttered (%)': { column: 'gutteredFraction', unit: 'percent' } } },
      );
    },
    problems: [
      used('roofs.csv', ['Guttered (%) → gutteredFraction (percent)']),
      'cell.percent_or_share blocker @ roofs.csv 3 gutteredFraction = "0.5"',
    ],
    notUsed: ['roofs.csv 3 gutteredFraction cell.percent_or_share'],
    inDoubt: ['S001'],
  },
  {
    fault: 'an entry that is none',
    files: () => withColumns(good, { 'roofs.csv': { length_m: 7 } }),
    problems: ['columns.wrong_entry blocker @ columns.json - - = "7"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'an order of days for a column that is no date',
    files: () => withColumns(good, { 'roofs.csv': { length_m: { column: 'length_m', dateOrder: 'dmy' } } }),
    problems: [
      String.raw`columns.wrong_entry blocker @ columns.json - - = "{\"column\":\"length_m\",\"dateOrder\":\"dmy\"}"`,
    ],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a file that is none of the tables',
    files: () => withColumns(good, { 'rofs.csv': { a: 'length_m' } }),
    problems: ['columns.unknown_file warning @ columns.json - - = "rofs.csv"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a list instead of an object',
    files: () => withColumns(good, []),
    problems: ['columns.wrong_entry blocker @ columns.json - - = "[]"'],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'a header that stands twice in it',
    files: () => withColumns(good, '{ "roofs.csv": { "x": null, "x": "length_m" } }'),
    problems: [
      'columns.wrong_entry blocker @ columns.json - - = "x"',
      'columns.header_absent warning @ roofs.csv 1 x = "x"',
    ],
    notUsed: [],
    inDoubt: all,
  },
  {
    fault: 'not JSON',
    files: () => withColumns(good, '{ "roofs.csv": { } '),
    problems: ['columns.not_json blocker @ columns.json - - = "columns.json"'],
    notUsed: [],
    inDoubt: all,
  },
];

describe('columns.json', () => {
  it.each(planted)('$fault', async (one) => {
    await assertPlanted(one);
  });

  // The figures are those of NIST SP 811, appendix B.8 (from memory), times the number written: exact by definition.
  it.each([
    ['roofs.csv', 'S001,school,24,', 'length_m', 'ft', '80', 24.384],
    ['roofs.csv', 'S001,school,24,', 'length_m', 'in', '900', 22.86],
    ['roofs.csv', 'S001,school,24,', 'length_m', 'cm', '2450', 24.5],
    ['roofs.csv', 'S001,school,24,', 'length_m', 'mm', '24510', 24.51],
    ['roofs.csv', ',150,tile', 'roofPlanArea_m2', 'ft2', '1500', 139.35456],
    ['roofs.csv', '0.8,0.9', 'gutteredFraction', 'percent', '85', 0.85],
    ['tanks.csv', 'tank-5,5000', 'nominal_L', 'usgal', '1000', 3785.411784],
    ['tanks.csv', 'tank-5,5000', 'nominal_L', 'impgal', '1000', 4546.09],
    ['tanks.csv', 'tank-5,5000', 'nominal_L', 'm3', '5.5', 5500],
  ])('%s, "%s": %s in %s, written %s, is %d', async (file, cells, column, unit, written, wanted) => {
    const number = column === 'roofPlanArea_m2' ? '150' : cells.split(',').findLast((cell) => /^[\d.]+$/.test(cell))!;
    const at = cells.lastIndexOf(number);
    const put = cells.slice(0, at) + written + cells.slice(at + number.length);
    const read = await readFiles(withColumns(changed(file, cells, put), { [file]: { [column]: { column, unit } } }));
    const things = read.facts.sites.flatMap(({ roofs, tanks }) => [...roofs, ...tanks]);
    const values = things.map((thing) => (thing as unknown as Record<string, unknown>)[column]);
    const near = values.filter((value) => Math.abs((value as number) / wanted - 1) < 1e-12);
    expect(near, JSON.stringify(values)).toHaveLength(1);
  });

  // 1 in is 25.4 mm, 1 ft 0.3048 m and 1 lb 0.45359237 kg, all exact: NIST SP 811, appendix B.8 (from memory).
  it('storms, falls and masses are read in inches an hour, inches a foot and pounds, and never without their unit', async () => {
    const tables: Files = {
      ...good,
      'storms.csv': 'gaugeId,Return period,Rain intensity in/h\nG-east,20,6\n',
      'gutters.csv': 'siteId,gutterId,roofId,Fall (in/ft)\nS001,G1,school,0.06\n',
      'tanks.csv': 'siteId,tankId,nominal_L,Tank weight (lb)\nS001,T1,10000,400\n',
    };
    const matched = (units: readonly (string | null)[]) => {
      const [intensity, fall, mass] = units.map((unit) => (unit === null ? {} : { unit }));
      return withColumns(tables, {
        'storms.csv': {
          'Return period': 'returnPeriod_years',
          'Rain intensity in/h': { column: 'intensity_mm_per_h', ...intensity },
        },
        'gutters.csv': { 'Fall (in/ft)': { column: 'fall_mm_per_m', ...fall } },
        'tanks.csv': { 'Tank weight (lb)': { column: 'emptyMass_kg', ...mass } },
      });
    };
    const { facts } = await readFiles(matched(['in/h', 'in/ft', 'lb']));
    expect(facts.gauges[0]!.storms[0]!.intensity_mm_per_h).toBeCloseTo(152.4, 9);
    expect(facts.sites[0]!.gutters[0]!.fall_mm_per_m).toBeCloseTo(5, 9);
    expect(facts.sites[0]!.tanks[0]!.emptyMass_kg).toBeCloseTo(181.436948, 9);
    const unsaid = await readFiles(matched([null, null, null]));
    expect(unsaid.problems.filter(({ code }) => code === 'columns.unit_in_header')).toHaveLength(3);
    expect(unsaid.facts.sites.every(({ doubts }) => doubts.length > 0)).toBe(true);
  });

  it('a value that is out of range in its own unit is shown in both', async () => {
    const files = changed('roofs.csv', 'S001,school,24,', 'S001,school,24000,');
    const read = await readFiles(withColumns(files, { 'roofs.csv': { length_m: { column: 'length_m', unit: 'ft' } } }));
    const far = read.problems.filter(({ code }) => code === 'cell.out_of_range');
    expect(far.map(line)).toEqual(['cell.out_of_range blocker @ roofs.csv 2 length_m = "24000 ft, 7315.2 m"']);
  });

  it('rain in inches and in tenths, and the days of another order, are read as they were said to be', async () => {
    const inches = (unit: string, order: 'dmy' | 'mdy') =>
      withColumns(
        { ...good, 'rain/G-east.csv': 'Day,Rain\n03/04/2001,2\n05/04/2001,13\n' },
        { 'rain/*.csv': { Day: { column: 'date', dateOrder: order }, Rain: { column: 'rain_mm', unit } } },
      );
    const days = async (files: Files) =>
      (await readFiles(files)).facts.gauges[0]!.readings.map(({ day, rain_mm }) => [day, rain_mm]);
    // 2001-04-03 is day 11415 since 1970-01-01: 31 years of 365 days, 8 leap days, and 92 days of 2001.
    expect(await days(inches('in', 'dmy'))).toEqual([
      [11_415, 50.8],
      [11_417, 330.2],
    ]);
    expect(await days(inches('tenths', 'mdy'))).toEqual([
      [11_385, 0.2],
      [11_446, 1.3],
    ]);
    const read = await readFiles(inches('in', 'dmy'));
    expect(read.problems.map(line)).toEqual([used('rain/G-east.csv', ['Day → date (dmy)', 'Rain → rain_mm (in)'])]);
  });

  it('a day that does not exist in the order that was said stays unread', async () => {
    const files = withColumns(
      { ...good, 'rain/G-east.csv': 'date,rain_mm\n25/12/2001,2\n' },
      { 'rain/G-east.csv': { date: { column: 'date', dateOrder: 'mdy' } } },
    );
    const read = await readFiles(files);
    expect(read.problems.map(({ code }) => code)).toContain('rainFile.day_unreadable');
    expect(read.facts.gauges[0]!.readings).toEqual([]);
  });

  it('comes back as it was saved', async () => {
    const given = {
      'roofs.csv': { 'Roof length': { column: 'length_m', unit: 'ft' }, Note: null, 'Roof "x", y': 'width_m' },
      'rain/*.csv': { Day: { column: 'date', dateOrder: 'dmy' } },
    };
    const read = readColumns(given);
    expect(read.problems).toEqual([]);
    expect(columnsToSave(read.matchings)).toEqual(given);
    await inFolder(good, async (folder) => {
      await saveColumns(folder, read);
      expect((await readColumnsFile(folder)).matchings).toEqual(read.matchings);
      expect(JSON.parse(await readFile(join(folder, 'columns.json'), 'utf8'))).toEqual(given);
    });
  });

  it('never tells to write our name over a header that names another unit', async () => {
    const { problems } = await readFiles(changed('roofs.csv', 'length_m', 'Length (ft)'));
    const [problem] = problems.filter(({ code }) => code === 'header.column_misspelt');
    const { todo } = problemSentence(problem!);
    expect(todo).toContain('It names another unit (ft) than length_m');
    expect(todo).not.toContain('Write length_m');
  });

  it('keeps a share among percents in doubt where the folder is written anew', async () => {
    const text = good['roofs.csv']!.replaceAll(/,1$/gm, ',100').replace('0.8,0.9', '0.8,90');
    const matching = { 'roofs.csv': { gutteredFraction: { column: 'gutteredFraction', unit: 'percent' } } };
    await inFolder(withColumns({ ...good, 'roofs.csv': text }, matching), async (folder) => {
      const to = join(folder, 'written');
      await writeProgramme(to, (await tablesAsRead(folder)).programme, { overwrite: false });
      const { facts, problems } = await readProgramme(to);
      const roofs = facts.sites.flatMap((site) => site.roofs);
      expect(roofs.map(({ gutteredFraction }) => gutteredFraction)).toEqual([1, null, 0.9, 1]);
      expect(problems.map(({ code }) => code)).toContain('cell.percent_or_share');
    });
  });

  it('has a sentence for each fault that names the file and what to do', async () => {
    for (const { files } of planted)
      for (const problem of (await readFiles(files())).problems) {
        const { what, todo } = problemSentence(problem);
        expect(`${what} ${todo}`).not.toMatch(/not said|undefined|\(empty\)/);
      }
  });
});
