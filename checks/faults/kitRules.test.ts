import { kitOfSite, type Problem, programmeKit, readIsoDay } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { expect, it } from 'vitest';
import { type Files, good, readFiles } from './folder.ts';

const rules = ['R-gutter,gutter-4,gutterMetre,1,,', 'R-tap,tap,tap,1,0.1,1', 'R-sheet,sheet,site,1,,'];
const conditions = ['R-sheet,people,atLeast,100'];
const parts = [
  'partId,kind,name,length_m,packSize,supplier,leadTime_days,stock_count',
  'tank-10,tank,Tank of ten,2.6,1,Harbour Yard,40,1',
  'tank-5,tank,Tank of five,1.9,1,Harbour Yard,40,0',
  'gutter-4,gutter,Gutter,4,10,Works store,21,6',
  'tap,tap,Tap,,5,Works store,21,2',
  'sheet,other,Picture sheet,,1,Works store,7,0',
];

const textOf = (lines: readonly string[]) => `${lines.join('\n')}\n`;

/** The good folder with gutters, taps and rules of a kit; a row of one of its tables in place of another. */
function kitted(given: Readonly<Record<string, readonly [from: string, to: string]>> = {}): Files {
  const files: Record<string, string> = {
    'parts.csv': textOf(parts),
    'kitRules.csv': textOf(['ruleId,partId,countedBy,each_count,spare_fraction,leastSpare_count', ...rules]),
    'kitConditions.csv': textOf(['ruleId,field,test,value', ...conditions]),
    'gutters.csv': 'siteId,gutterId,roofId,shape,width_mm,depth_mm,length_m\nS001,G1,school,halfRound,150,75,23.5\n',
    'sites.csv': good['sites.csv']!.replace(/$/m, ',taps').replace(/^(S00\d.*)$/gm, '$1,3'),
  };
  for (const [file, [from, to]] of Object.entries(given)) {
    expect(files[file]!.split(from)).toHaveLength(2);
    files[file] = files[file]!.replace(from, to);
  }
  return { ...good, ...files };
}

async function kitsOf(files: Files) {
  const { facts, problems } = await readFiles(files);
  const market = { ...facts, today: readIsoDay('2026-06-01') };
  const kits = facts.sites.map((site) => kitOfSite(site, market));
  const all = programmeKit(kits, market, () => ({ price: null, reason: 'noPrice' }), readIsoDay('2026-09-01'));
  const first = new Map(kits[0]!.lines.map(({ partId, total_count }) => [partId, total_count]));
  return { kits, all, first, read: problems, told: [...kits.flatMap((kit) => kit.problems), ...all.problems] };
}

const codes = (problems: readonly Problem[]) => [...new Set(problems.map(({ code }) => code))];
const ofKit = (problems: readonly Problem[]) =>
  problems.filter(({ place }) => ['parts.csv', 'kitRules.csv', 'kitConditions.csv'].includes(place.file ?? ''));
const of = (problems: readonly Problem[], code: string) => problems.find((one) => one.code === code);

it('a programme with rules of a kit has one, and says of its roofs without gutters what it assumed', async () => {
  const { first, all, read, told } = await kitsOf(kitted());
  expect(ofKit(read)).toEqual([]);
  // On the school 23.5 m of gutter, five bars of 4 m and 3.5 m; on the store 3 m on each eave, as half of it is guttered: a bar for each of these.
  expect(Object.fromEntries(first)).toEqual({ 'gutter-4': 8, 'tank-10': 2, tap: 4, sheet: 1 });
  expect(all.lines.map(({ partId, total_count }) => [partId, total_count])).toContainEqual(['sheet', 2]);
  expect(codes(told)).toContain('kit.length_assumed');
});

it('a rule of an unknown part is told and left out; the others count', async () => {
  const { first, read } = await kitsOf(kitted({ 'kitRules.csv': ['R-tap,tap,', 'R-tap,tapp,'] }));
  expect(of(read, 'link.unknown_part')).toMatchObject({ place: { file: 'kitRules.csv', row: 3, column: 'partId' } });
  expect(Object.fromEntries(first)).toEqual({ 'gutter-4': 8, 'tank-10': 2, sheet: 1 });
});

it('a rule whose condition nobody can meet is told and left out', async () => {
  const { first, read } = await kitsOf(kitted({ 'kitConditions.csv': ['atLeast,100', 'atLeast,many'] }));
  expect(of(read, 'link.condition_unusable')).toMatchObject({ place: { file: 'kitConditions.csv', row: 2 } });
  expect(first.has('sheet')).toBe(false);
  expect(first.get('tap')).toBe(4);
});

it('a rule that counts nothing anywhere is told, and so is a part no site needs', async () => {
  const { all, first } = await kitsOf(kitted({ 'kitConditions.csv': ['atLeast,100', 'atLeast,5000'] }));
  expect(of(all.problems, 'kit.rules_idle')).toMatchObject({ severity: 'note', facts: { of: ['R-sheet'] } });
  expect(of(all.problems, 'kit.parts_uncounted')).toMatchObject({ facts: { of: ['sheet'] } });
  expect(first.get('tap')).toBe(4);
});

it('a gutter whose bar has no length is in no kit, and not for nothing', async () => {
  const { kits, told } = await kitsOf(kitted({ 'parts.csv': ['gutter,Gutter,4,', 'gutter,Gutter,,'] }));
  expect(kits[0]!.lines[0]).toMatchObject({ partId: 'gutter-4', total_count: null, isAtLeast: true });
  expect(of(told, 'kit.part_without_length')).toMatchObject({
    place: { siteId: 'S001' },
    facts: { partId: 'gutter-4' },
  });
});

it('a stock under zero is told and taken for not counted', async () => {
  const { all, read } = await kitsOf(kitted({ 'parts.csv': ['Works store,21,6', 'Works store,21,-6'] }));
  expect(ofKit(read)).toMatchObject([{ place: { file: 'parts.csv', row: 4, column: 'stock_count' } }]);
  const line = all.lines.find(({ partId }) => partId === 'gutter-4')!;
  expect(line).toMatchObject({ inStock_count: null, short_count: line.total_count });
  expect(of(all.problems, 'kit.stock_unknown')).toMatchObject({ facts: { of: ['gutter-4'] } });
});

it('taps nobody counted leave their part unknown at that site and counted at the others', async () => {
  const { kits, all } = await kitsOf(kitted({ 'sites.csv': ['2027-03-01,3', '2027-03-01,'] }));
  const tap = kits[0]!.lines.find(({ partId }) => partId === 'tap');
  expect(tap).toMatchObject({ total_count: null, isAtLeast: true });
  expect(all.lines.find(({ partId }) => partId === 'tap')).toMatchObject({ total_count: 8, isAtLeast: true });
});

it('everything found of a kit is said in words', async () => {
  const { told } = await kitsOf(kitted({ 'kitConditions.csv': ['atLeast,100', 'atLeast,5000'] }));
  for (const problem of told) {
    const { what, todo } = problemSentence(problem);
    for (const text of [what, todo]) expect(text).not.toMatch(/kit\.[a-z]|undefined|[{}]/);
  }
});
