import { type DesignSettings, readyProgramme } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { assertPlanted, type Files, good, line, type Planted, readFiles } from './folder.ts';

const service = 'Invented weather service, storms, p. 12';
const storms = (...rows: readonly string[]): string =>
  ['gaugeId,returnPeriod_years,intensity_mm_per_h,low_mm_per_h,high_mm_per_h,source', ...rows, ''].join('\n');
const set = (row: string): string =>
  `gaugeId,lambda,kappa,theta_h,eta,leastPeriod_years,mostPeriod_years,source\n${row}\n`;
const stated = storms(`G-west,10,180,170,190,"${service}"`, `G-west,20,210,195,230,"${service}"`);
/** Fifteen years of five-minute rows: light rain every month, one hard shower a year. */
const shortRows = Array.from({ length: 15 }, (_, i) => [
  ...Array.from({ length: 12 }, (_, month) => `G-west,${2001 + i}-${String(month + 1).padStart(2, '0')}-15,15:00,5,1`),
  `G-west,${2001 + i}-07-20,16:05,5,${9 + ((i * 7) % 5)}`,
]).flat();
const short = (rows: readonly string[] = shortRows): string =>
  ['gaugeId,date,time,interval_min,rain_mm', ...rows, ''].join('\n');

/** The good folder with a text put into one of its storm tables. */
const withTable = (file: string, text: string): Files => ({ ...good, [file]: text });

const planted: readonly Planted[] = [
  {
    fault: 'a storm of a gauge that is not there',
    files: () => withTable('storms.csv', storms('G-wset,20,210,,,')),
    problems: ['link.unknown_gauge blocker @ storms.csv 2 gaugeId = "G-wset"'],
    notUsed: ['storms.csv 2 whole link.unknown_gauge'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'a storm without its intensity',
    files: () => withTable('storms.csv', storms(`G-west,20,,,,"${service}"`)),
    problems: ['cell.missing blocker @ storms.csv 2 intensity_mm_per_h = ""'],
    notUsed: ['storms.csv 2 whole cell.missing'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'an intensity below zero',
    files: () => withTable('storms.csv', storms(`G-west,20,-210,,,"${service}"`)),
    problems: ['cell.out_of_range blocker @ storms.csv 2 intensity_mm_per_h = "-210"'],
    notUsed: ['storms.csv 2 whole cell.out_of_range'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'a return period twice',
    files: () => withTable('storms.csv', stated.replace('G-west,10,', 'G-west,20,')),
    problems: ['row.key_twice blocker @ storms.csv 3 returnPeriod_years = "G-west 20"'],
    notUsed: ['storms.csv 3 whole row.key_twice'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'coefficients with words for a number',
    files: () => withTable('stormCoefficients.csv', set('G-west,sixty,0.15,0.2,0.8,2,100,Invented manual')),
    problems: ['cell.not_a_number blocker @ stormCoefficients.csv 2 lambda = "sixty"'],
    notUsed: ['stormCoefficients.csv 2 whole cell.not_a_number'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'short rain with a time that is none',
    files: () => withTable('shortRain.csv', short(['G-west,2001-01-15,25:00,5,1'])),
    problems: ['cell.not_a_time blocker @ shortRain.csv 2 time = "25:00"'],
    notUsed: ['shortRain.csv 2 whole cell.not_a_time'],
    inDoubt: [],
    gauges: ['G-west'],
  },
];

describe('faults of storms in files', () => {
  it.each(planted)('$fault', async (one) => {
    await assertPlanted(one);
  });

  it('storms without a fault are read whole', async () => {
    const files = {
      ...good,
      'storms.csv': stated,
      'stormCoefficients.csv': set('G-west,63.5,0.15,0.2,0.8,2,100,Invented manual'),
      'shortRain.csv': short(),
    };
    const read = await readFiles(files);
    expect(read.problems).toEqual([]);
    const [east, west] = read.facts.gauges;
    expect(east).toMatchObject({ storms: [], stormCoefficients: null, shortRain: [] });
    expect(
      west!.storms.map(({ returnPeriod_years: period, intensity_mm_per_h }) => [period, intensity_mm_per_h]),
    ).toEqual([
      [10, 180],
      [20, 210],
    ]);
    expect(west!.storms[1]).toMatchObject({ low_mm_per_h: 195, high_mm_per_h: 230, source: service });
    expect(west!.stormCoefficients).toMatchObject({ lambda: 63.5, theta_h: 0.2 });
    expect(west!.shortRain).toHaveLength(shortRows.length);
  });
});

/** What G-west's storm comes to: where it is from, and what is told, in words. */
async function stormOf(files: Files, settings: Partial<DesignSettings> = {}) {
  const { facts } = await readFiles(files);
  const found = readyProgramme({ ...facts, settings: { ...facts.settings, ...settings } }).gauges.get('G-west')!;
  const problems = [...found.problems, ...found.stormTold.problems].filter(({ code }) => code.startsWith('storm.'));
  return {
    storm: found.storm,
    told: problems.map(({ code }) => code),
    words: problems.map((problem) => Object.values(problemSentence(problem)).join(' ')),
  };
}

const faults: readonly (readonly [string, Files, string | null, readonly string[], RegExp])[] = [
  [
    'nothing said of storms',
    good,
    null,
    ['storm.no_intensity'],
    /Nobody says how hard it rains here .* once in 20 years/,
  ],
  [
    'another return period alone',
    withTable('storms.csv', storms(`G-west,10,180,,,"${service}"`, `G-west,50,260,,,"${service}"`)),
    null,
    ['storm.period_not_stated', 'storm.no_intensity'],
    /once in 10, 50 years, and not for once in 20 years\..*gives 215 mm an hour/,
  ],
  [
    'mm in five minutes for mm an hour',
    withTable('storms.csv', storms(`G-west,20,17.5,,,"${service}"`)),
    null,
    ['storm.intensity_unlikely'],
    /The storm that is stated: 17\.5 mm an hour .* can hardly be; such storms lie between 20 and 600 mm an hour/,
  ],
  [
    'tenths of mm an hour',
    withTable('storms.csv', storms(`G-west,20,1750,,,"${service}"`)),
    null,
    ['storm.intensity_unlikely'],
    /Check the unit/,
  ],
  [
    'the ends of a range the wrong way round',
    withTable('storms.csv', storms(`G-west,20,210,230,195,"${service}"`)),
    null,
    ['storm.range_reversed'],
    /210 mm an hour, does not lie in its own range, 230 to 195 mm an hour/,
  ],
  [
    'nobody who says so',
    withTable('storms.csv', storms('G-west,20,210,,,')),
    'stated',
    ['storm.source_missing'],
    /nobody is named who says so/,
  ],
  [
    'coefficients for other years',
    withTable('stormCoefficients.csv', set('G-west,63.5,0.15,0.2,0.8,2,10,Invented manual')),
    null,
    ['storm.coefficients_out_of_range', 'storm.no_intensity'],
    /made for once in 2 to 10 years, not for once in 20 years/,
  ],
  [
    'coefficients for minutes',
    withTable('stormCoefficients.csv', set('G-west,1500,0.15,0,0.8,2,100,Invented manual')),
    null,
    ['storm.intensity_unlikely'],
    /The storm by coefficients/,
  ],
  [
    'short rain of a quarter of an hour',
    withTable('shortRain.csv', short(shortRows.map((row) => row.replace(',5,', ',15,')))),
    null,
    ['storm.record_too_coarse', 'storm.no_intensity'],
    /195 rows of short rain have intervals .* hide the peak/,
  ],
  [
    'too few years of short rain',
    withTable('shortRain.csv', short(shortRows.slice(0, 13 * 9))),
    null,
    ['storm.too_few_years', 'storm.no_intensity'],
    /9 years of maxima; a storm is read off 10 years or more/,
  ],
  [
    'a short record that stood still',
    withTable('shortRain.csv', short(shortRows.filter((row) => !/2007-(0[4-9]|1)/.test(row)))),
    'shortRecord',
    ['storm.years_left_out'],
    /left out: 2007 \(far fewer days of rain than the others\)/,
  ],
  [
    'intervals that overlap, and rain of an hour in five minutes',
    withTable('shortRain.csv', short([...shortRows, 'G-west,2005-07-20,16:07,5,3', 'G-west,2005-08-01,10:00,5,63'])),
    'shortRecord',
    ['storm.record_overlaps', 'storm.record_unlikely'],
    /1 August 2005/,
  ],
];

describe('storms that cannot be used', () => {
  it.each(faults)('%s', async (_, files, from, told, words) => {
    const found = await stormOf(files);
    expect(found.storm?.from ?? null).toBe(from);
    expect(found.told).toEqual(told);
    expect(found.words.join(' ')).toMatch(words);
  });

  it('a day of rain alone is never a storm, with a share that nobody stated', async () => {
    const found = await stormOf(good, { leastYears: 1 });
    expect(found).toMatchObject({ storm: null, told: ['storm.no_intensity'] });
  });

  it('a return period in the settings that no distribution has is refused', async () => {
    const read = await readFiles({
      ...good,
      'settings.json': '{ "programme": "Tarn water", "stormReturnPeriod_years": 1 }',
    });
    expect(read.problems.map(line)).toEqual([
      'settings.wrong_value blocker @ settings.json - stormReturnPeriod_years = "1"',
    ]);
    expect(read.facts.settings.stormReturnPeriod_years).toBe(20);
  });
});

describe('short rain out of the order of time', () => {
  // One shower in six rows of five minutes, on top of the others: 4, 9, 14, 8, 3 and 1 mm.
  const shower = [4, 9, 14, 8, 3, 1].map(
    (mm, i) => `G-west,2009-07-21,17:${String(5 + 5 * i).padStart(2, '0')},5,${mm}`,
  );
  const inOrder = [...shortRows, ...shower].sort();
  const orders: readonly (readonly [string, readonly string[]])[] = [
    ['backwards', inOrder.toReversed()],
    [
      'every seventh row in turn',
      Array.from({ length: 7 }, (_, of) => inOrder.filter((_row, i) => i % 7 === of)).flat(),
    ],
    ['its years one over the other', inOrder.toSorted((a, b) => (a.slice(12) < b.slice(12) ? -1 : 1))],
  ];

  it.each(orders)('%s comes to the same storm, and nothing is said', async (_, rows) => {
    expect(rows.toSorted()).toEqual(inOrder);
    expect(rows).not.toEqual(inOrder);
    const [sorted, mixed] = [
      await stormOf(withTable('shortRain.csv', short(inOrder))),
      await stormOf(withTable('shortRain.csv', short(rows))),
    ];
    expect(sorted.storm?.from).toBe('shortRecord');
    expect(mixed).toEqual(sorted);
    expect(mixed.told).toEqual([]);
    const { problems, notUsed } = await readFiles(withTable('shortRain.csv', short(rows)));
    expect([problems, notUsed]).toEqual([[], []]);
  });

  it('keeps the shower whole: its fullest five minutes are those of the year', async () => {
    const without = await stormOf(withTable('shortRain.csv', short(shortRows)));
    const mixed = await stormOf(withTable('shortRain.csv', short(inOrder.toReversed())));
    expect(mixed.storm!.intensity_mm_per_h).not.toBe(without.storm!.intensity_mm_per_h);
  });
});

describe('a storm that was left out for its faults', () => {
  const gutters = 'siteId,gutterId,roofId,shape,width_mm,depth_mm,length_m,fall_mm_per_m,outlet_mm\n';
  const files = (rows: Files): Files => ({
    ...good,
    'gutters.csv': `${gutters}S003,north,school,halfRound,125,63,15,4,75\nS001,north,school,halfRound,125,63,15,4,75\n`,
    ...rows,
  });
  const doubtsOf = async (rows: Files) =>
    (await readFiles(files(rows))).facts.sites.map(({ doubtsBeside }) => doubtsBeside.drainage.map(({ file }) => file));

  it('puts the gutters of the sites on its gauge in doubt, so that no milder one makes room for it', async () => {
    expect(await doubtsOf({ 'storms.csv': stated.replace(',210,', ',-210,') })).toEqual([[], [], ['storms.csv']]);
    const wrong = set('G-west,sixty,0.15,0.2,0.8,2,100,Invented manual');
    expect(await doubtsOf({ 'stormCoefficients.csv': wrong })).toEqual([[], [], ['stormCoefficients.csv']]);
    expect(await doubtsOf({ 'storms.csv': stated })).toEqual([[], [], []]);
  });

  it('with a whole table that cannot be read puts all gutters in doubt, and no site without any', async () => {
    const found = await doubtsOf({ 'storms.csv': stated.replace('intensity_mm_per_h', 'intensity') });
    expect(found.map((files) => files[0])).toEqual(['storms.csv', undefined, 'storms.csv']);
  });
});
