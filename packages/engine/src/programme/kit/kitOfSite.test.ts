import { expect, it } from 'vitest';
import { type KitFigures, type KitRule, noKitFigures, unmeasuredSite, unmeasuredTank } from '../../kernel/index.ts';
import type { CountedDesign, CountedOne, KitPart } from './kitFacts.ts';
import { kitOfDesign, kitOfSite } from './kitOfSite.ts';
import { readyRules } from './readyRules.ts';

const part = (
  partId: string,
  kind: string,
  length_m: number | null = null,
  given: Partial<KitFigures> = {},
): KitPart => ({
  ...{ partId, kind, name: partId, length_m, kit: { ...noKitFigures, ...given } },
});
const parts = [
  part('tank-2', 'tank'),
  part('tank-5', 'tank'),
  part('gutter', 'gutter', 4),
  part('bracket', 'other', 0.2),
  part('roll', 'pipe', null, { countedIn: 'm' }),
  part('joint', 'other'),
  part('paint', 'other', null, { countedIn: 'kg' }),
  part('tap', 'tap'),
  part('bare', 'gutter'),
];
const rule = (
  ruleId: string,
  partId: string,
  countedBy: KitRule['countedBy'],
  given: Partial<KitRule> = {},
): KitRule => ({
  ...{ ruleId, partId, countedBy, each_count: 1, rounding: 'up', spare_fraction: 0, leastSpare_count: 0 },
  conditions: [],
  ...given,
});
const one = (countedBy: CountedOne['countedBy'], ofId: string | null, given: Partial<CountedOne> = {}): CountedOne => ({
  ...{ countedBy, ofId, things_count: 1, run: null, partId: null, isAssumed: false, choices: {} },
  ...given,
});
const metres = (ofId: string, length_m: number | null, given: Partial<CountedOne> = {}): CountedOne =>
  one('gutterMetre', ofId, { run: length_m === null ? null : { length_m, from: 'measured' }, ...given });
const kit = (counted: readonly CountedOne[], rules: readonly KitRule[], choices: CountedDesign['choices'] = {}) =>
  kitOfDesign({ siteId: 'S1', counted, choices }, readyRules(rules, parts), { cut_mm: 0, squareOff_mm: 0 });
const totals = (found: ReturnType<typeof kit>) => found.lines.map(({ partId, total_count }) => [partId, total_count]);
const codes = (found: ReturnType<typeof kit>) => found.problems.map(({ code }) => code);

it('counts so many for each thing, rounded as the rule says, and whole ones in the end', () => {
  const three = [one('tap', null, { things_count: 3 })];
  const of = (each_count: number, rounding: KitRule['rounding']) =>
    totals(kit(three, [rule('R', 'tap', 'tap', { each_count, rounding })]))[0]![1];
  expect(of(1, 'up')).toBe(3);
  expect(of(0.4, 'up')).toBe(2);
  expect(of(0.4, 'nearest')).toBe(1);
  expect(of(0.5, 'nearest')).toBe(2);
  expect(of(0.4, 'none')).toBe(2);
  expect(of(0.1 + 0.2, 'up')).toBe(1);
});

it('leaves kilograms as they are where the rule rounds nothing', () => {
  const found = kit([metres('G1', 7)], [rule('R', 'paint', 'gutterMetre', { each_count: 0.15, rounding: 'none' })]);
  expect(found.lines[0]!.total_count).toBeCloseTo(1.05, 12);
});

it('counts parts that the design names without a rule, and never twice', () => {
  const tanks = [one('tank', 'T1', { partId: 'tank-2' }), one('tank', 'T2', { partId: 'tank-2' }), one('tank', 'T3')];
  expect(totals(kit(tanks.slice(0, 2), []))).toEqual([['tank-2', 2]]);
  const found = kit(tanks, [rule('R', 'tank-5', 'tank')]);
  expect(totals(found)).toEqual([
    ['tank-2', 2],
    ['tank-5', 1],
  ]);
  expect(found.problems).toMatchObject([{ code: 'kit.counted_twice', facts: { ruleId: 'R', of: ['T1', 'T2'] } }]);
});

it('takes a set of cartridges that is named for its cartridges too', () => {
  const set = [one('cartridgeSet', 'U1', { partId: 'set' }), one('cartridge', 'U1', { things_count: 3 })];
  const ready = readyRules([rule('R', 'single', 'cartridge')], [part('set', 'cartridge'), part('single', 'cartridge')]);
  const found = kitOfDesign({ siteId: 'S1', counted: set, choices: {} }, ready, { cut_mm: 0, squareOff_mm: 0 });
  expect(totals(found)).toEqual([['set', 1]]);
  expect(codes(found)).toEqual(['kit.counted_twice']);
});

it('cuts all gutters of a part together, and says how', () => {
  const found = kit(
    [metres('G1', 7), metres('G2', 5), one('gutter', 'G1'), one('gutter', 'G2')],
    [rule('R', 'gutter', 'gutterMetre')],
  );
  expect(found.lines[0]).toMatchObject({
    needed_count: 3,
    rounded_count: 3,
    total_count: 3,
    cuts: { joints_count: 2 },
  });
  expect(found.problems).toEqual([]);
});

it('counts what is no bar by the metre, and a bar twice over where two lie side by side', () => {
  const runs = [metres('G1', 7), metres('G2', 5)];
  expect(totals(kit(runs, [rule('R', 'bracket', 'gutterMetre', { each_count: 2 })]))).toEqual([['bracket', 24]]);
  expect(totals(kit([metres('G1', 3)], [rule('R', 'gutter', 'gutterMetre', { each_count: 2 })]))).toEqual([
    ['gutter', 2],
  ]);
  // A tenth more of 3.8 m is more than a bar.
  expect(totals(kit([metres('G1', 3.8)], [rule('R', 'gutter', 'gutterMetre', { each_count: 1.1 })]))).toEqual([
    ['gutter', 2],
  ]);
});

it('has spares over at the site, rounded up, and no fewer than the least', () => {
  const taps = [one('tap', null, { things_count: 4 })];
  const of = (given: Partial<KitRule>) => kit(taps, [rule('R', 'tap', 'tap', given)]).lines[0]!.spare_count;
  expect(of({ spare_fraction: 0.05 })).toBe(1);
  expect(of({ spare_fraction: 0.5 })).toBe(2);
  expect(of({ spare_fraction: 0.05, leastSpare_count: 3 })).toBe(3);
  expect(of({ each_count: 0, leastSpare_count: 2 })).toBe(2);
  // 7 m of bars of 4 m are 1.75 bars; a tenth of them is less than one.
  expect(kit([metres('G1', 7)], [rule('R', 'gutter', 'gutterMetre', { spare_fraction: 0.1 })]).lines[0]).toMatchObject({
    rounded_count: 2,
    spare_count: 1,
  });
});

it('looks at what each thing was decided to be before its site', () => {
  const wide = { gutterWidth_mm: 200 };
  const counted = [
    metres('G1', 3, { choices: wide }),
    metres('G2', 3, { choices: { gutterWidth_mm: 150 } }),
    metres('G3', 3),
  ];
  const narrow = rule('R', 'gutter', 'gutterMetre', {
    conditions: [{ field: 'gutterWidth_mm', test: 'atMost', value: '150' }],
  });
  const found = kit(counted, [narrow]);
  expect(found.lines[0]).toMatchObject({ total_count: 1, isAtLeast: true, counts: [{ ofIds: ['G2'] }] });
  expect(found.problems).toMatchObject([
    { code: 'kit.condition_unknown', facts: { of: ['G3'], fields: ['gutterWidth_mm'] } },
  ]);
  expect(totals(kit(counted, [narrow], { gutterWidth_mm: 120 }))).toEqual([['gutter', 2]]);
});

it('never takes what is not known for nothing', () => {
  const rules = [rule('A', 'tap', 'tap'), rule('B', 'gutter', 'gutterMetre')];
  const found = kit([one('tap', null, { things_count: null }), metres('G1', 3), metres('G2', null)], rules);
  expect(found.lines).toMatchObject([
    { partId: 'gutter', total_count: 1, isAtLeast: true },
    { partId: 'tap', total_count: null, isAtLeast: true },
  ]);
  expect(codes(found)).toEqual(['kit.length_unknown', 'kit.count_unknown']);
  expect(kit([metres('G1', 3)], [rule('B', 'bare', 'gutterMetre')])).toMatchObject({
    lines: [{ total_count: null, isAtLeast: true }],
    problems: [{ code: 'kit.part_without_length' }],
  });
});

it('tells what is assumed, what is counted both ways, what has no part and what is not in the catalogue', () => {
  const assumed = metres('G1', null, { run: { length_m: 3, from: 'assumed' }, isAssumed: true });
  expect(codes(kit([assumed], [rule('R', 'gutter', 'gutterMetre')]))).toEqual(['kit.length_assumed']);
  const gutter = [one('gutter', 'G1'), metres('G1', 3)];
  expect(codes(kit(gutter, [rule('A', 'gutter', 'gutterMetre'), rule('B', 'gutter', 'gutter')]))).toEqual([
    'kit.counted_both_ways',
  ]);
  expect(
    kit([...gutter, one('gutter', 'G2', { isAssumed: true })], [rule('R', 'bracket', 'gutter')]).problems,
  ).toMatchObject([
    { code: 'kit.thing_assumed', facts: { of: ['G2'] } },
    { code: 'kit.thing_without_part', facts: { countedBy: 'gutter', of: ['G1', 'G2'] } },
  ]);
  expect(kit([one('tank', 'T1', { partId: 'none' })], [])).toMatchObject({
    lines: [],
    problems: [{ code: 'kit.part_unknown', facts: { by: 'design' } }, { code: 'kit.thing_without_part' }],
  });
});

it('leaves out rules that cannot be used, and says which', () => {
  const at = (given: Partial<KitRule>, partId = 'tap') =>
    readyRules([rule('R', partId, 'tap', given)], parts).problems.map(({ code }) => code);
  const when = (field: 'people' | 'roofMaterial', test: 'is' | 'atLeast', value: string) =>
    at({ conditions: [{ field, test, value }] });
  expect(at({})).toEqual([]);
  expect(at({}, 'none')).toEqual(['kit.part_unknown']);
  for (const wrong of [Number.NaN, -1, Number.POSITIVE_INFINITY]) {
    expect(at({ each_count: wrong })).toEqual(['kit.rule_unusable']);
    expect(at({ spare_fraction: wrong })).toEqual(['kit.rule_unusable']);
  }
  expect(when('people', 'atLeast', 'many')).toEqual(['kit.condition_unusable']);
  expect(when('roofMaterial', 'atLeast', '3')).toEqual(['kit.condition_unusable']);
  expect(when('roofMaterial', 'is', 'tile')).toEqual([]);
});

it('counts joints where runs are longer than a bar, of the parts they are cut from', () => {
  const pipe = one('pipeMetre', 'P1', { run: { length_m: 30, from: 'measured' } });
  const rules = [
    rule('A', 'gutter', 'gutterMetre'),
    rule('B', 'joint', 'gutterJoint'),
    rule('C', 'roll', 'pipeMetre', { rounding: 'none' }),
    rule('D', 'joint', 'pipeJoint', { each_count: 2 }),
  ];
  const found = kit([metres('G1', 11), metres('G2', 3), pipe], rules);
  expect(totals(found)).toEqual([
    ['gutter', 4],
    ['joint', 2],
    ['roll', 30],
  ]);
  expect(found.problems).toEqual([]);
  // Of a gutter that nothing is counted for, nobody knows the joints.
  expect(kit([metres('G1', 11)], [rule('B', 'joint', 'gutterJoint')])).toMatchObject({
    lines: [{ partId: 'joint', total_count: null }],
    problems: [{ code: 'kit.count_unknown', facts: { countedBy: 'gutterJoint' } }],
  });
});

it('wants nothing where a site is handed over, and nothing that is built', () => {
  const site = {
    ...unmeasuredSite,
    ...{ siteId: 'S1', name: 'S1', latitude_deg: null, longitude_deg: null, siteClass: null, target: null },
    ...{ people: 40, peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
    ...{ gaugeId: null, rainFactor: 1, handOverDay: 100, roofs: [], demand: [], ration: null, doubts: [] },
    ...{ presence: null, secondSource: null, nearSecondSource: null },
    tanks: [
      { ...unmeasuredTank, tankId: 'T1', partId: 'tank-2', isBuilt: true },
      { ...unmeasuredTank, tankId: 'T2', partId: 'tank-5' },
    ],
  };
  const on = (today: number | null) =>
    kitOfSite(site, { parts, kit: { rules: [] }, settings: { cutWaste_mm: 3 }, today });
  expect(on(100)).toMatchObject({ isBuilt: true, lines: [], problems: [] });
  const doubtful = {
    ...site,
    doubts: [{ file: 'tanks.csv', row: 3 }],
    doubtsBeside: { ...site.doubtsBeside, head: [{ file: 'pipes.csv', row: 9 }] },
  };
  const found = kitOfSite(doubtful, { parts, kit: { rules: [] }, settings: { cutWaste_mm: 3 }, today: 99 });
  expect(found.problems.slice(0, 2)).toMatchObject([
    { code: 'kit.site_in_doubt', facts: { of: ['pipes.csv', 'tanks.csv'] } },
    { code: 'kit.no_pipes' },
  ]);
  for (const today of [99, null])
    expect(on(today)).toMatchObject({ isBuilt: false, lines: [{ partId: 'tank-5', total_count: 1, from: 'named' }] });
});

it('shows every step', () => {
  const [line] = kit([metres('G1', 7)], [rule('R', 'gutter', 'gutterMetre')]).lines;
  expect(line!.working.map(({ code, value }) => [code, value])).toEqual([
    ['kit.needed', 1.75],
    ['kit.bars', 2],
    ['kit.rounded', 2],
    ['kit.spare', 0],
    ['kit.total', 2],
  ]);
});

it('counts a joint once for each run that is cut, whatever else is counted by that run or has its name', () => {
  const joint = rule('RJ', 'joint', 'gutterJoint');
  const jointsFor = (rules: readonly KitRule[]) =>
    kit([metres('G1', 7)], rules).lines.find(({ partId }) => partId === 'joint')?.total_count;
  // Seven metres are two pieces of a bar of 4 m; two gutters of it are joined twice.
  expect(jointsFor([rule('R1', 'gutter', 'gutterMetre'), joint])).toBe(1);
  expect(jointsFor([rule('R1', 'gutter', 'gutterMetre'), rule('R2', 'gutter', 'gutterMetre'), joint])).toBe(2);
  // Spares alone say nothing of the gutter.
  expect(jointsFor([rule('R1', 'gutter', 'gutterMetre', { each_count: 0 }), joint])).toBeNull();
  const pipes = [part('pipe', 'pipe', 6), part('joint', 'other')];
  const run = (countedBy: CountedOne['countedBy'], length_m: number) =>
    one(countedBy, 'P1', { run: { length_m, from: 'measured' } });
  const rules = [rule('R1', 'pipe', 'pipeMetre'), rule('R2', 'pipe', 'downpipeMetre')];
  const found = kitOfDesign(
    { siteId: 'S1', counted: [run('pipeMetre', 7), run('downpipeMetre', 13)], choices: {} },
    readyRules([...rules, rule('RJ', 'joint', 'pipeJoint')], pipes),
    { cut_mm: 0, squareOff_mm: 0 },
  );
  expect(totals(found)).toEqual([
    ['joint', 1],
    ['pipe', 4],
  ]);
});

it('tells that a set that is named and counted by its unit is in the kit twice', () => {
  const unit = one('unit', 'U1');
  const set = one('cartridgeSet', 'U1', { partId: 'tap' });
  const found = kit([unit, set], [rule('R', 'tap', 'unit')]);
  expect(totals(found)).toEqual([['tap', 2]]);
  expect(found.problems).toContainEqual(
    expect.objectContaining({ code: 'kit.set_by_unit', facts: { partId: 'tap', ruleId: 'R', of: ['U1'] } }),
  );
  // So too where the set is counted by a rule of its own.
  const byRules = kit([unit, one('cartridgeSet', 'U1')], [rule('Q', 'tap', 'cartridgeSet'), rule('R', 'tap', 'unit')]);
  expect(codes(byRules)).toContain('kit.set_by_unit');
  // A rule of spares alone is meant so; and the set of another unit is another's.
  expect(codes(kit([unit, set], [rule('R', 'tap', 'unit', { each_count: 0, leastSpare_count: 1 })]))).not.toContain(
    'kit.set_by_unit',
  );
  expect(codes(kit([one('unit', 'U2'), set], [rule('R', 'tap', 'unit')]))).not.toContain('kit.set_by_unit');
});
