import { designSites, isoDay, type Problem, readIsoDay, readyProgramme, type SiteFacts } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { chlorineFinding } from '../../packages/engine/src/water/chlorine/index.ts';
import { waterTestsFinding } from '../../packages/engine/src/water/waterTests/index.ts';
import { type Files, good, readFiles } from './folder.ts';

const testsHeader = 'siteId,testId,takenOn,point,turbidity_NTU,pH,waterTemperature_C';
const portionsHeader = 'siteId,testId,kind,volume_mL,portions,positive,colonies,uncountable,uncountableFrom';
const chlorineHeader =
  'siteId,product,stock_g_per_L,dose_mg_per_L,residual_mg_per_L,contact_min,baffling_fraction,pH,waterTemperature_C';
const inspectionsHeader = 'siteId,inspectedOn,risks,questions,by';
const table = (header: string, rows: readonly string[]) => [header, ...rows, ''].join('\n');

/** S001 was handed over on 2027-03-01. */
const sample = 'S001,W1,2027-04-02,tap,0.4,7.1,24';
const portion = 'S001,W1,tubes,100,1,0,,,';
const walk = 'S001,2027-04-02,1,10,A. Torvane';
const chlorine = 'S001,bleach,10,2,0.6,60,0.5,7.1,24';

interface Rows {
  readonly tests?: readonly string[];
  readonly portions?: readonly string[];
  readonly walks?: readonly string[];
  readonly chlorine?: readonly string[];
}

function folder({ tests = [sample], portions = [portion], walks = [walk], chlorine: own = [chlorine] }: Rows): Files {
  return {
    ...good,
    'waterTests.csv': table(testsHeader, tests),
    'testPortions.csv': table(portionsHeader, portions),
    'inspections.csv': table(inspectionsHeader, walks),
    'chlorination.csv': table(chlorineHeader, own),
  };
}

/** What the tables and then the rooms say of S001, as `code @ file column`. */
async function found(rows: Rows) {
  const read = await readFiles(folder(rows));
  const site = read.facts.sites.find(({ siteId }) => siteId === 'S001')!;
  const tests = waterTestsFinding(site);
  const ofChlorine = chlorineFinding(site, read.facts.settings);
  const problems: readonly Problem[] = [...tests.problems, ...ofChlorine.problems];
  for (const problem of [...read.problems, ...problems]) {
    const { what, todo } = problemSentence(problem);
    expect(what.length > 20 && todo.length > 5, problem.code).toBe(true);
  }
  const own = ['waterTests.csv', 'testPortions.csv', 'inspections.csv', 'chlorination.csv'];
  return {
    site: site as SiteFacts,
    tests: tests.finding!,
    chlorine: ofChlorine.finding,
    read: read.problems
      .filter(({ place }) => own.includes(place.file ?? ''))
      .map(({ code, place }) => `${code} @ ${place.file} ${place.row} ${place.column}`),
    said: problems.map(({ code }) => code),
  };
}

const usual = ['waterTests.few_clean', 'chlorine.stock_recipe'];

it('samples, walks and chlorine without a fault', async () => {
  const { site, tests, chlorine: own, read, said } = await found({});
  expect(read).toEqual([]);
  expect(said).toEqual(usual);
  expect(site.doubtsBeside.safety).toEqual([]);
  expect(tests.last).toMatchObject({ testId: 'W1', takenOn: readIsoDay('2027-04-02')!, sign: 'less', band: 'low' });
  expect(own).toMatchObject({ residualBand: 'good', viruses_log10: 4 });
});

describe('portions', () => {
  it.each([
    ['a count under 0', 'S001,W1,tubes,100,1,-1,,,', 'positive'],
    ['a volume of 0', 'S001,W1,tubes,0,1,0,,,', 'volume_mL'],
    ['half a colony', 'S001,W1,plates,100,1,,0.5,,', 'colonies'],
    ['a count in words', 'S001,W1,plates,100,1,,many,,', 'colonies'],
  ])('%s is named by its cell, and proves nothing clean', async (_, row, column) => {
    const { site, tests, read } = await found({ portions: [row] });
    expect(read.length).toBe(1);
    expect(read[0]).toContain(`@ testPortions.csv 2 ${column}`);
    expect(tests.last).toBeNull();
    expect(tests.clean_count).toBe(0);
    expect(site.doubtsBeside.safety.length).toBeGreaterThan(0);
  });

  it('more positive than there were are named by their row, and the sample could not be read', async () => {
    const { site, tests, read, said } = await found({ portions: ['S001,W1,tubes,100,1,7,,,'] });
    expect(read).toEqual(['row.positive_over_portions @ testPortions.csv 2 positive']);
    expect(said).toContain('waterTests.portions_contradict');
    expect(tests).toMatchObject({ last: null, unusable: [{ testId: 'W1', because: 'portions', at: { row: 2 } }] });
    expect(site.doubtsBeside.safety).toEqual([
      { file: 'testPortions.csv', row: 2, column: 'positive', siteId: 'S001' },
    ]);
  });

  it('all positive are a bound from below, and ask for smaller portions', async () => {
    const { tests, said } = await found({ portions: ['S001,W1,tubes,10,10,10,,,'] });
    expect(said).toContain('waterTests.all_positive');
    expect(tests.last).toMatchObject({ sign: 'more', high_per_100mL: null, band: 'high' });
    expect(tests.clean_count).toBe(0);
  });

  it('plates that could not be counted want to know from how many on', async () => {
    const { said } = await found({ portions: ['S001,W1,plates,100,0,,,1,'] });
    expect(said).toContain('waterTests.portions_contradict');
    const known = await found({ portions: ['S001,W1,plates,100,0,,,1,200'] });
    expect(known.tests.last).toMatchObject({ sign: 'more', band: 'veryHigh' });
  });

  it('of a sample that is not there are named', async () => {
    const { tests, read } = await found({ portions: [portion, 'S001,W9,tubes,100,1,0,,,'] });
    expect(read.length).toBe(1);
    expect(read[0]).toContain('@ testPortions.csv 3 testId');
    expect(tests.tests.length).toBe(1);
  });
});

describe('samples', () => {
  it('of before hand-over are kept, told, and count for nothing', async () => {
    const { tests, said } = await found({ tests: ['S001,W1,2027-02-28,tap,,7.1,24'] });
    expect(said).toEqual([
      'waterTests.before_handover',
      'waterTests.none',
      'chlorine.turbidity_unknown',
      'chlorine.stock_recipe',
    ]);
    expect(tests).toMatchObject({ last: null, clean_count: 0 });
    expect(tests.tests[0]).toMatchObject({ isBeforeHandOver: true, sign: 'less' });
  });

  it('of a day that is none, or of a place nobody knows, are named', async () => {
    const { tests, read } = await found({
      tests: [sample, 'S001,W2,2027-13-01,tap,,,', 'S001,W3,2027-05-01,river,,,'],
    });
    expect(read.map((one) => one.split(' @ ')[1])).toEqual(['waterTests.csv 3 takenOn', 'waterTests.csv 4 point']);
    expect(tests.tests.map(({ testId }) => testId)).toEqual(['W1']);
  });

  it('of a day that is none, or without a place, are listed with their row and with what they held', async () => {
    const rows = [sample, 'S001,W2,2027-13-01,tap,,,', 'S001,W3,2027-05-01,,,,'];
    const held = ['S001,W2,plates,100,1,,40,,', 'S001,W3,tubes,100,1,0,,,', 'S001,W4,tubes,0,1,0,,,'];
    const { tests } = await found({
      tests: [...rows, 'S001,W4,2027-05-02,tap,,,'],
      portions: [portion, ...held],
    });
    const at = (file: string, row: number) => ({ file, row, siteId: 'S001' });
    expect(tests.unusable).toEqual([
      { testId: 'W2', because: 'unread', at: at('waterTests.csv', 3), hasGerms: true },
      { testId: 'W3', because: 'unread', at: at('waterTests.csv', 4), hasGerms: false },
      { testId: 'W4', because: 'portions', at: at('testPortions.csv', 5), hasGerms: false },
    ]);
    expect(tests.isUnusableOpen).toBe(true);
    expect(tests.last).toMatchObject({ testId: 'W1', sign: 'less' });
  });
});

describe('walks', () => {
  it('with more risks than questions are told and left out', async () => {
    const { tests, said } = await found({ walks: ['S001,2027-04-02,12,10,'] });
    expect(said).toContain('waterTests.inspection_contradicts');
    expect(tests.inspection).toBeNull();
  });
});

describe('chlorine', () => {
  it.each([
    ['9.3', 'chlorine.outside_table'],
    ['4.2', 'chlorine.outside_table'],
  ])('at a pH of %s is outside the table: nothing is read beyond it', async (pH, code) => {
    const { chlorine: own, said } = await found({ chlorine: [`S001,bleach,10,2,0.6,60,0.5,${pH},24`] });
    expect(said).toContain(code);
    expect(own).toMatchObject({ ctForGiardia_mg_min_per_L: null, giardia_log10: null });
  });

  it('with a pH that cannot be is named by its cell', async () => {
    const { site, read } = await found({ chlorine: ['S001,bleach,10,2,0.6,60,0.5,15,24'] });
    expect(read.length).toBe(1);
    expect(read[0]).toContain('@ chlorination.csv 2 pH');
    expect(site.safety.chlorination?.pH ?? null).toBeNull();
    expect(site.doubtsBeside.safety.length).toBeGreaterThan(0);
  });

  it('that is left though more than was given is told', async () => {
    const { said } = await found({ chlorine: ['S001,bleach,10,0.4,0.6,60,0.5,7,24'] });
    expect(said).toContain('chlorine.residual_over_dose');
  });
});

/** Twelve years in which it rains every third day, so that the site can be judged. */
const longRain = [
  'date,rain_mm',
  ...Array.from({ length: 12 * 366 }, (_, i) => `${isoDay(readIsoDay('2005-01-01')! + i)},${i % 3 === 0 ? 12 : 0}`),
  '',
].join('\n');

describe('the cup of a site', () => {
  async function cupOf(rows: Rows) {
    const read = await readFiles({ ...folder(rows), 'rain/G-east.csv': longRain });
    const [design] = [...designSites(read.facts.sites, readyProgramme(read.facts))];
    const { cup } = design!.stations;
    return { cup, safety: design!.safety!, codes: design!.problems.map(({ code }) => code) };
  }

  it('is not fit to drink from where the last sample held E. coli, and says so with the count', async () => {
    const { cup, safety, codes } = await cupOf({ portions: ['S001,W1,plates,100,1,,23,,'] });
    expect(cup).toBe('short');
    expect(safety.mayDrink).toBe('no');
    expect(safety.waterTests.last).toMatchObject({ sign: 'equal', band: 'high' });
    expect(codes).toContain('waterTests.found');
  });

  it('is told not to be drunk of where the last sample held E. coli, though rows of other tables are in doubt', async () => {
    const rows = { portions: ['S001,W1,plates,100,1,,40,,'] };
    const files: Readonly<Record<string, string>> = { ...folder(rows), 'rain/G-east.csv': longRain };
    const presence = 'calendarId,from,to,presentFraction,reason\nterms,05-01,05-20,0.5,\nterms,05-15,06-10,0.5,\n';
    const [head, ...sites] = String(files['sites.csv']).trim().split('\n');
    expect(head).not.toContain('presenceCalendar');
    const named = [`${head},presenceCalendar`, ...sites.map((line) => `${line},terms`), ''].join('\n');
    const read = await readFiles({ ...files, 'presence.csv': presence, 'sites.csv': named });
    const [design] = [...designSites(read.facts.sites, readyProgramme(read.facts))];
    expect(design!.stations).toMatchObject({ cup: 'short', storage: 'unknown' });
    expect(design!.safety).toMatchObject({
      ...{ mayDrink: 'no', reasons: ['found', 'withheld'], isReckoned: false },
      withheldBy: [{ file: 'presence.csv', row: 3 }],
    });
  });

  it('never holds on a sample that could not be read, nor on one of before hand-over', async () => {
    for (const rows of [{ portions: ['S001,W1,tubes,100,1,-1,,,'] }, { tests: ['S001,W1,2027-02-28,tap,,7.1,24'] }]) {
      const { cup, safety } = await cupOf(rows);
      expect(['unknown', 'short', 'tight']).toContain(cup);
      expect(safety.mayDrink).not.toBe('yes');
    }
  });
});
