import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { assertPlanted, changed, good, type Planted, readFiles } from './folder.ts';

const planted: readonly Planted[] = [
  {
    fault: 'characters that cannot be seen at the ends of an id: read without them, with a note',
    files: () => changed('roofs.csv', 'S002,hall', '\u200bS002\u00a0,hall'),
    problems: ['column.hidden_ends note @ roofs.csv 4 siteId = "S002"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'one inside the id of a site, of a roof: the row is not used, and the site it looks like is in doubt',
    files: () => changed('roofs.csv', 'S002,hall', 'S0\u200b02,hall'),
    problems: ['cell.hidden_in_id blocker @ roofs.csv 4 siteId = "S0\u200b02"'],
    notUsed: ['roofs.csv 4 whole cell.hidden_in_id'],
    inDoubt: ['S002'],
  },
  {
    fault: 'a second row of a site that differs only by one: never taken for another site',
    files: () => changed('sites.csv', 'S003,Ferry', 'S\u00ad001,Upper Tarn,-8.5,125.25,120,G-east,,\nS003,Ferry'),
    problems: ['cell.hidden_in_id blocker @ sites.csv 4 siteId = "S\u00ad001"'],
    notUsed: ['sites.csv 4 whole cell.hidden_in_id'],
    inDoubt: ['S001'],
  },
  {
    fault: 'one inside the id of a gauge',
    files: () => changed('sites.csv', '240,G-west', '240,G-\u2060west'),
    problems: ['cell.hidden_in_id blocker @ sites.csv 4 gaugeId = "G-\u2060west"'],
    notUsed: ['sites.csv 4 gaugeId cell.hidden_in_id'],
    inDoubt: ['S003'],
  },
  {
    fault: 'one inside a number',
    files: () => changed('tanks.csv', '20000', '200\u200f00'),
    problems: ['cell.hidden_characters blocker @ tanks.csv 5 nominal_L = "200\u200f00"'],
    notUsed: ['tanks.csv 5 nominal_L cell.hidden_characters'],
    inDoubt: ['S003'],
  },
  {
    fault: 'one inside a word of a few',
    files: () => changed('roofs.csv', 'tile', 'ti\u202ele'),
    problems: ['cell.hidden_characters blocker @ roofs.csv 4 material = "ti\u202ele"'],
    notUsed: ['roofs.csv 4 material cell.hidden_characters'],
    inDoubt: ['S002'],
  },
  {
    fault: 'one inside a date',
    files: () => changed('sites.csv', '2027-05-15', '2027-\ufeff05-15'),
    problems: ['cell.hidden_characters blocker @ sites.csv 4 handOverDay = "2027-\ufeff05-15"'],
    notUsed: ['sites.csv 4 handOverDay cell.hidden_characters'],
    inDoubt: ['S003'],
  },
  {
    fault: 'a space that does not break between thousands is still a mark between thousands',
    files: () => changed('tanks.csv', '20000', '20\u00a0000'),
    problems: ['cell.thousands blocker @ tanks.csv 5 nominal_L = "20\u00a0000"'],
    notUsed: ['tanks.csv 5 nominal_L cell.thousands'],
    inDoubt: ['S003'],
  },
  {
    fault: 'one inside a text: kept, with one note for the column',
    files: () => changed('gauges.csv', 'East Landing', 'East\u00a0Landing'),
    problems: ['column.hidden_inside note @ gauges.csv 2 name = "East\u00a0Landing"'],
    notUsed: [],
    inDoubt: [],
    gauges: ['G-east'],
  },
  {
    fault: 'one at the end of a header: read without it, with a note',
    files: () => changed('roofs.csv', 'length_m', 'length_m\u200b'),
    problems: ['header.hidden_ends note @ roofs.csv 1 length_m = "length_m"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'one inside a header: pointed out, never taken',
    files: () => changed('roofs.csv', 'length_m', 'length\u200b_m'),
    problems: ['header.column_misspelt blocker @ roofs.csv 1 length\u200b_m = "length\u200b_m"'],
    notUsed: [],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'one inside a day of rain',
    files: () => ({ ...good, 'rain/G-east.csv': good['rain/G-east.csv']!.replace('2001-02-27', '2001-\u200b02-27') }),
    problems: ['rainFile.day_unreadable warning @ rain/G-east.csv 3 date = "2001-\u200b02-27"'],
    notUsed: ['rain/G-east.csv 3 whole rainFile.day_unreadable'],
    inDoubt: [],
    gauges: ['G-east'],
  },
  {
    fault: 'one behind the rain of a day',
    files: () => ({ ...good, 'rain/G-east.csv': good['rain/G-east.csv']!.replace(',12.5', ',12.5\u200b') }),
    problems: ['column.hidden_ends note @ rain/G-east.csv 3 rain_mm = "12.5"'],
    notUsed: [],
    inDoubt: [],
  },
];

describe('characters that cannot be seen', () => {
  it.each(planted)('$fault', async (one) => {
    await assertPlanted(one);
  });

  it.each([
    ['\u200b', 'U+200B'],
    ['\u200f', 'U+200F'],
    ['\u202a', 'U+202A'],
    ['\u202e', 'U+202E'],
    ['\u2060', 'U+2060'],
    ['\u2066', 'U+2066'],
    ['\ufeff', 'U+FEFF'],
    ['\u00a0', 'U+00A0'],
    ['\u00ad', 'U+00AD'],
  ])('%j is named %s', async (mark, point) => {
    const read = await readFiles(changed('roofs.csv', 'S002,hall', `S0${mark}02,hall`));
    const { what, todo } = problemSentence(read.problems[0]!);
    expect(what).toContain(`(${point}); it looks like S002`);
    expect(todo).toContain('S002');
  });

  it('in a header are named too', async () => {
    const read = await readFiles(changed('roofs.csv', 'length_m', 'length\u200b_m'));
    expect(problemSentence(read.problems[0]!).todo).toContain('U+200B');
    const needed = await readFiles(changed('demand.csv', ',judged\n', ',jud\u00adged\n'));
    expect(problemSentence(needed.problems[0]!).todo).toContain('U+00AD');
  });
});

it('a site whose id begins with a dash, and so is written with an apostrophe, is in doubt like any other', async () => {
  const files = Object.fromEntries(Object.entries(good).map(([name, text]) => [name, text.replaceAll('S002', "'-S2")]));
  const read = await readFiles({ ...files, 'roofs.csv': files['roofs.csv']!.replace(',150,', ',many,') });
  expect(read.problems.map(({ code, place }) => [code, place.siteId])).toEqual([['cell.not_a_number', '-S2']]);
  expect(read.facts.sites.map(({ siteId, doubts }) => [siteId, doubts.length])).toEqual([
    ['S001', 0],
    ['-S2', 1],
    ['S003', 0],
  ]);
});
