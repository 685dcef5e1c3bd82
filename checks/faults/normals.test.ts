import { designSites, readyProgramme } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { assertPlanted, type Files, good, line, type Planted, readFiles } from './folder.ts';

const usual = [210, 190, 220, 150, 80, 40, 25, 12, 30, 90, 160, 230];
const wetDays = [16, 14, 16, 13, 9, 6, 4, 2, 4, 8, 12, 17];
const normalsText = [
  'gaugeId,month,rain_mm,wetDays,source,yearFrom,yearTo',
  ...usual.map((rain_mm, i) => `G-west,${i + 1},${rain_mm},${wetDays[i]},Invented weather service,1991,2020`),
  '',
].join('\n');

/** The good folder with normals for G-west, which has a record of a week, and one piece of them changed. */
const withNormals = (from = '', to = ''): Files => {
  const text = from === '' ? normalsText : normalsText.replace(from, () => to);
  if (from !== '') expect(text).not.toBe(normalsText);
  return { ...good, 'normals.csv': text };
};
/** The same without the record. */
function withoutRecord(files: Files): Files {
  const { 'rain/G-west.csv': _, ...others } = files;
  return others;
}

const planted: readonly Planted[] = [
  {
    fault: 'normals of a gauge that is not there',
    files: () => withNormals('G-west,3,', 'G-wset,3,'),
    problems: ['link.unknown_gauge blocker @ normals.csv 4 gaugeId = "G-wset"'],
    notUsed: ['normals.csv 4 whole link.unknown_gauge'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'a month that is none',
    files: () => withNormals('G-west,12,', 'G-west,13,'),
    problems: ['cell.out_of_range blocker @ normals.csv 13 month = "13"'],
    notUsed: ['normals.csv 13 whole cell.out_of_range'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'a month twice',
    files: () => withNormals('G-west,12,', 'G-west,11,'),
    problems: ['row.key_twice blocker @ normals.csv 13 month = "G-west 11"'],
    notUsed: ['normals.csv 13 whole row.key_twice'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'rain below zero',
    files: () => withNormals('G-west,1,210', 'G-west,1,-210'),
    problems: ['cell.out_of_range blocker @ normals.csv 2 rain_mm = "-210"'],
    notUsed: ['normals.csv 2 rain_mm cell.out_of_range'],
    inDoubt: [],
    gauges: ['G-west'],
  },
  {
    fault: 'more wet days than any month has',
    files: () => withNormals('G-west,1,210,16', 'G-west,1,210,32'),
    problems: ['cell.out_of_range blocker @ normals.csv 2 wetDays = "32"'],
    notUsed: ['normals.csv 2 wetDays cell.out_of_range'],
    inDoubt: [],
    gauges: ['G-west'],
  },
];

describe('faults of normals', () => {
  it.each(planted)('$fault', async (one) => {
    const read = await assertPlanted(one);
    expect(read.facts.sites).toHaveLength(3);
  });

  it('normals without a fault are read whole, and change nothing but their gauge', async () => {
    const read = await readFiles(withNormals());
    expect(read.problems).toEqual([]);
    const { normals } = read.facts.gauges[1]!;
    expect(normals).toHaveLength(12);
    expect(normals[0]).toEqual({
      month: 1,
      rain_mm: 210,
      wetDays: 16,
      source: 'Invented weather service',
      yearFrom: 1991,
      yearTo: 2020,
    });
    expect(read.facts.gauges[0]!.normals).toEqual([]);
  });

  it('a month that stands twice is not known, so that nothing is judged on the one that came first', async () => {
    for (const again of ['11', '011']) {
      const read = await readFiles(withNormals('G-west,12,', `G-west,${again},`));
      const november = read.facts.gauges[1]!.normals.filter(({ month }) => month === 11);
      expect(november).toEqual([expect.objectContaining({ rain_mm: null, wetDays: null })]);
    }
  });

  it('a gauge with normals needs no file of readings; one without does', async () => {
    expect((await readFiles(withoutRecord(withNormals()))).problems).toEqual([]);
    expect((await readFiles(withoutRecord(good))).problems.map(line)).toEqual([
      'rainFile.missing blocker @ rain/G-west.csv - - = "rain/G-west.csv"',
    ]);
  });
});

it('normals do not stand in for readings that are there and cannot be used: those are to be mended', async () => {
  const dly = { 'rain/G-west.dly': 'x' };
  for (const files of [
    { ...withNormals(), ...dly },
    { ...withNormals(), 'rain/G-west.csv': 'day,depth\n1,2\n' },
  ]) {
    const read = await readFiles(files);
    expect(read.problems.some(({ severity, place }) => severity === 'blocker' && place.gaugeId === 'G-west')).toBe(
      true,
    );
    const finding = readyProgramme(read.facts).gauges.get('G-west')!;
    expect(finding.rain).toBeNull();
    expect(finding.problems.map(({ code }) => code)).toEqual(['rain.none']);
  }
});

/** What the site on G-west comes to, its gauge without a record. */
async function judged(files: Files) {
  const { facts } = await readFiles(withoutRecord(files));
  const ready = readyProgramme({ ...facts, settings: { ...facts.settings, draws: 100 } });
  const site = facts.sites.find(({ gaugeId }) => gaugeId === 'G-west')!;
  const [design] = [...designSites([site], ready)];
  return { design: design!, gauge: ready.gauges.get('G-west')! };
}

describe('normals that no rain can be made from', () => {
  it.each([
    ['no wet days', 'G-west,5,80,9,', 'G-west,5,80,,', 'rain.normals_incomplete', /No wet days: May\./],
    ['no rain', 'G-west,5,80,9,', 'G-west,5,,9,', 'rain.normals_incomplete', /No rain: May\./],
    [
      'a month left out',
      'G-west,5,80,9,Invented weather service,1991,2020\n',
      '',
      'rain.normals_incomplete',
      /No rain: May\./,
    ],
    [
      'rain and no wet day',
      'G-west,5,80,9,',
      'G-west,5,80,0,',
      'rain.normals_impossible',
      /Rain but no wet day: May\./,
    ],
    ['wet days and no rain', 'G-west,5,80,9,', 'G-west,5,0,9,', 'rain.normals_impossible', /Too little rain.*: May\./],
    [
      '31 wet days in April',
      'G-west,4,150,13,',
      'G-west,4,150,31,',
      'rain.normals_impossible',
      /More wet days than days: April\./,
    ],
  ] as const)('%s: the gauge has no rain, and the problem names the month', async (_, from, to, code, words) => {
    const { design, gauge } = await judged(withNormals(from, to));
    expect(gauge.rain).toBeNull();
    expect(design.verdict).toBe('unknown');
    const problem = gauge.problems.find((one) => one.code === code)!;
    expect(problem.severity).toBe('blocker');
    expect(problemSentence(problem).what).toMatch(words);
  });

  it('the same normals without the fault carry a verdict, tight at best', async () => {
    const { design, gauge } = await judged(withNormals());
    expect(gauge.rain!.madeDays).toBeGreaterThan(36_000);
    expect(['tight', 'short']).toContain(design.verdict);
    expect(design.storages[0]!.cappedBy).toBe('rain.made_up');
  });
});
