import { designSites, isoDay, type Problem, readIsoDay, readyProgramme } from '@eavewell/engine';
import { english, loadLanguage, problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { changed, type Files, good, readFiles } from './folder.ts';
import { bookBytes, goodSheets, readBytes } from './workbook.ts';

const gutters = 'siteId,gutterId,roofId,shape,width_mm,depth_mm,length_m,fall_mm_per_m,outlet_mm\n';
const gutter = 'S001,G1,school,halfRound,150,75,24,5,90\n';
const downpipes = 'siteId,downpipeId,roofId,bore_mm,length_m\n';
const downpipe = 'S001,D1,school,90,2.6\n';
const pipes = 'siteId,pipeId,leg,tankId,bore_mm,length_m,material,elbows\n';
const pipe = 'S001,P1,tankToUnit,T1,26.2,4.5,plastic,3\n';
const storms = 'gaugeId,returnPeriod_years,intensity_mm_per_h,low_mm_per_h,high_mm_per_h,source\n';

const rain = [
  'date,rain_mm',
  ...Array.from({ length: 12 * 366 }, (_, i) => `${isoDay(readIsoDay('2005-01-01')! + i)},${i % 3 === 0 ? 12 : 0}`),
  '',
].join('\n');

/** The verdicts of the first site: its tank, and the stations that have rows of their own. */
async function verdictsOf(files: Files) {
  const { facts, problems } = await readFiles({ ...good, 'rain/G-east.csv': rain, 'rain/G-west.csv': rain, ...files });
  const [site] = [...designSites(facts.sites, readyProgramme(facts))];
  const { storage, gutter: ofGutter, tap } = site!.stations;
  return { storage, gutter: ofGutter, tap, problems };
}

/** What is to be done about the only problem of a code, in English and in Spanish. */
async function todoOf(problems: readonly Problem[], code: Problem['code']): Promise<readonly string[]> {
  const found = problems.filter((one) => one.code === code);
  expect(found).toHaveLength(1);
  return [english, await loadLanguage('es')].map((language) => problemSentence(found[0]!, language).todo);
}

describe('a key that stands twice', () => {
  it.each([
    [
      'gutters.csv',
      gutters + gutter + gutter.replace('150', '200'),
      'gutter',
      'gutters and pipes',
      'canaletas y bajantes',
    ],
    ['downpipes.csv', downpipes + downpipe + downpipe.replace('90', '75'), 'gutter', 'gutters and pipes', 'canaletas'],
    ['pipes.csv', pipes + pipe + pipe.replace('26.2', '40'), 'tap', 'pipes to the taps', 'grifos'],
  ] as const)(
    'in %s is told as one station not known, and the tank keeps its verdict',
    async (file, text, at, en, es) => {
      const [whole, twice] = [await verdictsOf({}), await verdictsOf({ [file]: text })];
      expect(whole.storage).toMatch(/^(?:holds|tight|short)$/);
      expect([twice.storage, twice[at]]).toEqual([whole.storage, 'unknown']);
      const [english, spanish] = await todoOf(twice.problems, 'row.key_twice');
      expect(english).toContain(`not known: ${en}. The rest of the site is judged.`);
      expect(english).not.toContain('verdict');
      expect(spanish).toContain(es);
      expect(spanish).not.toContain('veredicto');
    },
  );

  it('of a tank, of a part and of the demand of a programme is told as no verdict', async () => {
    const twice = async (file: string, line: string) => {
      const { problems, storage } = await verdictsOf({ [file]: `${good[file]!}${line}\n` });
      return [storage, (await todoOf(problems, 'row.key_twice'))[0]];
    };
    expect(await twice('tanks.csv', 'S001,T1,,9000,,,,')).toEqual([
      'unknown',
      'Keep the right one. Until then the site has no verdict.',
    ]);
    const ofSites = ['unknown', 'Keep the right one. Until then the sites it is for have no verdict.'];
    expect(await twice('parts.csv', 'tank-10,tank,Tank of ten,9000,210,2.6,2.6,2.4,1,,')).toEqual(ofSites);
    expect(await twice('demand.csv', ',drinking,5,yes')).toEqual(ofSites);
  });

  it('of what bears on no verdict is told so, and of a storm as its gutters', async () => {
    const { storage } = await verdictsOf({});
    const priced = await verdictsOf({ 'prices.csv': `${good['prices.csv']!}tank-5,2026-02-01,900,USD\n` });
    expect([priced.storage, ...(await todoOf(priced.problems, 'row.key_twice'))]).toEqual([
      storage,
      'Keep the right one. Until then the first is used.',
      'Deje la correcta. Hasta entonces se usa la primera.',
    ]);
    const table = { 'gutters.csv': gutters + gutter, 'storms.csv': `${storms}G-east,20,150,,,A\nG-east,20,100,,,B\n` };
    const stormy = await verdictsOf(table);
    expect([stormy.storage, stormy.gutter]).toEqual([storage, 'unknown']);
    expect((await todoOf(stormy.problems, 'row.key_twice'))[0]).toContain('the gutters of its sites are not known');
  });
});

it('ids merged over gutters in a workbook are told as one station not known', async () => {
  const rows = (gutters + gutter + gutter.replace('S001,G1', ',G2'))
    .trim()
    .split('\n')
    .map((line) => line.split(','));
  const merged = '<mergeCells count="1"><mergeCell ref="A2:A3"/></mergeCells>';
  const sheets = [...goodSheets(), { name: 'gutters', rows, after: merged }];
  const { facts, problems } = await readBytes(bookBytes({ sheets }));
  expect(facts.sites.map(({ doubts }) => doubts.length)).toEqual([0, 0, 0]);
  expect(facts.sites[0]!.doubtsBeside.drainage).not.toEqual([]);
  expect((await todoOf(problems, 'sheet.merged_ids'))[0]).toBe(
    'Write the id into every row. Until then not known: gutters and pipes. The rest of the site is judged.',
  );
});

describe('the only row of a station, where it cannot be used', () => {
  it.each([
    ['gutter', 'gutters.csv', gutters + gutter.replace('school', 'shool')],
    ['gutter', 'gutters.csv', gutters + gutter.replace('G1', '')],
    ['gutter', 'gutters.csv', gutters + gutter.replace('school', '"school')],
    ['gutter', 'gutters.csv', `${gutters}${gutter.trim()},7,8\n`],
    ['gutter', 'gutters.csv', gutters + gutter.replace('S001', 'S0O1')],
    ['gutter', 'gutters.csv', gutters + gutter.replace('S001', 'S0 01')],
    ['gutter', 'downpipes.csv', downpipes + downpipe.replace('school', 'shool')],
    ['tap', 'pipes.csv', pipes + pipe.replace('tankToUnit', 'nowhere')],
    ['tap', 'pipes.csv', pipes + pipe.replace('P1', 'P 1')],
    ['tap', 'pipes.csv', pipes + pipe.replace('S001', 'S 001')],
  ] as const)('leaves the %s unknown and the tank as it is (%#)', async (at, file, text) => {
    const [whole, lost] = [await verdictsOf({}), await verdictsOf({ [file]: text })];
    expect(whole[at]).toBe('notJudged');
    expect([lost.storage, lost[at]]).toEqual([whole.storage, 'unknown']);
  });

  it('is not looked for where nobody measured anything', async () => {
    expect(await verdictsOf({ 'gutters.csv': gutters })).toMatchObject({ gutter: 'notJudged' });
  });
});

it('a roof whose site is written with a space leaves that site without a verdict', async () => {
  const { facts } = await readFiles(changed('roofs.csv', 'S002,hall', 'S0 02,hall'));
  expect(facts.sites.map(({ doubts }) => doubts.length > 0)).toEqual([false, true, false]);
});

it('a storm that was left out puts gutters in doubt where rain is taken by distance too', async () => {
  const byDistance = changed('sites.csv', '120,G-east,1.1', '120,,1.1');
  const read = async (intensity: string) => {
    const { facts } = await readFiles({
      ...byDistance,
      'gutters.csv': gutters + gutter,
      'storms.csv': `${storms}G-east,20,${intensity},,,A\n`,
    });
    return facts.sites.map(({ doubtsBeside }) => doubtsBeside.drainage.length);
  };
  expect(await read('150')).toEqual([0, 0, 0]);
  expect(await read('-150')).toEqual([1, 0, 0]);
});
