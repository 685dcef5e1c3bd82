import { describe, expect, it } from 'vitest';
import {
  type InspectionFacts,
  noSafety,
  readIsoDay,
  type SamplePoint,
  type SiteFacts,
  type TestPortion,
  unmeasuredSite,
  type WaterTest,
} from '../../kernel/index.ts';
import { waterTestsFinding } from './waterTestsFinding.ts';

const day = (text: string) => readIsoDay(text)!;
const tubes = (volume_mL: number, portions_count: number, positive_count: number | null): TestPortion => ({
  ...{ kind: 'tubes', volume_mL, portions_count, positive_count },
  ...{ colonies_count: null, uncountable_count: 0, uncountableFrom_count: null },
});
const plates = (
  volume_mL: number,
  portions_count: number,
  colonies_count: number | null,
  uncountable_count = 0,
  uncountableFrom_count: number | null = null,
): TestPortion => ({
  ...{ kind: 'plates', volume_mL, portions_count, positive_count: null },
  ...{ colonies_count, uncountable_count, uncountableFrom_count },
});
const sample = (
  testId: string,
  on: string,
  portions: readonly TestPortion[],
  point: SamplePoint = 'tap',
): WaterTest => ({
  ...{ testId, takenOn: day(on), point, portions },
  ...{ turbidity_NTU: null, freeChlorine_mg_per_L: null, pH: null, waterTemperature_C: null, laboratory: null },
});
const clean = [tubes(100, 1, 0)];
const walk = (risks_count: number, questions_count = 10): InspectionFacts => ({
  ...{ inspectedOn: day('2026-05-01'), risks_count, questions_count, by: null },
});

const site = (
  tests: readonly WaterTest[],
  inspections: readonly InspectionFacts[] = [walk(1)],
  handOver: string | null = '2026-01-10',
): SiteFacts =>
  ({
    ...unmeasuredSite,
    siteId: 'S1',
    handOverDay: handOver === null ? null : day(handOver),
    safety: { ...noSafety, tests, inspections },
  }) as unknown as SiteFacts;
const found = (...args: Parameters<typeof site>) => waterTestsFinding(site(...args)).finding!;
const codes = (...args: Parameters<typeof site>) => waterTestsFinding(site(...args)).problems.map(({ code }) => code);

describe('waterTestsFinding', () => {
  it('is null where there is neither sample nor walk, and says that nobody has shown anything', () => {
    expect(waterTestsFinding(site([], [])).finding).toBeNull();
    expect(codes([], [])).toEqual(['waterTests.none', 'waterTests.inspection_none']);
  });

  it('tells none in 100 mL as fewer than 3, low, and clean', () => {
    const one = found([sample('A', '2026-03-01', clean)]);
    expect(one.last).toMatchObject({ sign: 'less', low_per_100mL: 0, band: 'low', rarity: null });
    expect(one.last!.count_per_100mL).toBeCloseTo(-Math.log(0.05), 9);
    expect(one).toMatchObject({ clean_count: 1, cleanWanted_count: 38, priority: 'low' });
    expect(codes([sample('A', '2026-03-01', clean)])).toEqual(['waterTests.few_clean']);
  });

  it('does not call none in a little water low, or clean', () => {
    const of = (volume_mL: number) => found([sample('A', '2026-03-01', [tubes(volume_mL, 1, 0)])]);
    expect([100, 99, 10, 9, 1, 0.9].map((volume) => of(volume).last!.band)).toEqual([
      ...['low', 'intermediate', 'intermediate', 'high', 'high', 'veryHigh'],
    ]);
    expect(of(99).clean_count).toBe(0);
    expect(of(99).cleanBelow_per_100mL).toBeNull();
  });

  it('tells a count with its limits, and adds up plates of one volume', () => {
    const { last } = found([sample('A', '2026-03-01', [plates(100, 2, 30)])]);
    expect(last).toMatchObject({ sign: 'equal', band: 'high', rarity: null });
    expect(last!.count_per_100mL).toBeCloseTo(15, 9);
    expect(last!.low_per_100mL! < 15 && last!.high_per_100mL! > 15).toBe(true);
    const mixed = found([sample('A', '2026-03-01', [plates(1, 2, 130), plates(10, 0, null, 2, 200)])]).last!;
    expect(mixed.count_per_100mL! > 5000 && mixed.count_per_100mL! < 8000).toBe(true);
    const wells = found([sample('A', '2026-03-01', [tubes(10, 3, 3), tubes(1, 3, 0), tubes(0.1, 3, 2)])]);
    expect(wells.last!.rarity).toBeLessThan(0.05);
  });

  it('tells all positive as more, with the band of one germ at least', () => {
    const presence = [sample('A', '2026-03-01', [tubes(100, 1, 1)])];
    expect(found(presence).last).toMatchObject({ sign: 'more', high_per_100mL: null, band: 'intermediate' });
    expect(codes(presence)).toEqual(['waterTests.all_positive']);
    const tray = [sample('A', '2026-03-01', [tubes(0.1, 40, 40)])];
    expect(found(tray).last).toMatchObject({ sign: 'more', band: 'veryHigh' });
  });

  it('counts samples of tap and container since hand-over alone, the day of hand-over among them', () => {
    const dirty = [tubes(100, 1, 1)];
    const tests = [
      sample('before', '2026-01-09', dirty),
      sample('day', '2026-01-10', clean),
      sample('tank', '2026-02-01', dirty, 'tank'),
      sample('river', '2026-02-01', dirty, 'secondSource'),
      sample('no coli', '2026-04-01', []),
    ];
    const got = found(tests);
    expect(got.last).toMatchObject({ testId: 'day', sign: 'less' });
    expect(got.tests.map(({ isBeforeHandOver }) => isBeforeHandOver)).toEqual([true, false, false, false, false]);
    expect(got.tests.at(-1)).toMatchObject({ sign: null, count_per_100mL: null, band: null });
    expect(codes(tests)).toEqual(['waterTests.before_handover', 'waterTests.few_clean']);
    expect(codes([sample('before', '2026-01-09', clean)])).toEqual(['waterTests.before_handover', 'waterTests.none']);
    expect(codes([sample('A', '2026-01-09', clean)], [walk(1)], null)).toEqual([
      ...['waterTests.handover_unknown', 'waterTests.few_clean'],
    ]);
  });

  it('takes the worst of the last day, and no clean one of that day', () => {
    const tests = [
      sample('old', '2026-02-01', clean),
      sample('home', '2026-03-01', [plates(100, 1, 4)], 'container'),
      sample('tap', '2026-03-01', clean),
    ];
    expect(found(tests)).toMatchObject({ last: { testId: 'home' }, clean_count: 0 });
    expect(codes(tests)).toEqual(['waterTests.found']);
  });

  it('does not let a clean tap hide a container that was not and was not looked at again', () => {
    const home = sample('home', '2026-02-01', [plates(100, 1, 4)], 'container');
    const tap = (on: string) => sample(on, on, clean);
    expect(found([home, tap('2026-03-01'), tap('2026-04-01')])).toMatchObject({
      last: { testId: 'home' },
      clean_count: 0,
    });
    const again = sample('again', '2026-03-15', clean, 'container');
    expect(found([home, tap('2026-03-01'), again, tap('2026-04-01')])).toMatchObject({
      last: { testId: '2026-04-01', sign: 'less' },
      clean_count: 3,
    });
  });

  it('takes too little clean water at a tap that held some as no proof, whatever a container held', () => {
    const tap = sample('W1', '2026-02-01', [plates(100, 1, 5)]);
    const container = sample('W2', '2026-02-05', clean, 'container');
    const little = sample('W3', '2026-03-01', [tubes(10, 1, 0)]);
    expect(found([tap, container, little])).toMatchObject({ last: { testId: 'W3' }, clean_count: 0 });
    expect(found([tap, container, little, sample('W4', '2026-03-02', clean)]).clean_count).toBe(2);
  });

  it('counts clean ones in a row since the last that was not', () => {
    const row = ['02', '03', '04', '05'].map((month) => sample(month, `2026-${month}-01`, clean));
    expect(found(row).clean_count).toBe(4);
    expect(found(row).cleanBelow_per_100mL).toBeCloseTo(-Math.log(0.05) / 4, 9);
    const broken = row.map((one, i) => (i === 1 ? { ...one, portions: [plates(100, 1, 1)] } : one));
    expect(found(broken)).toMatchObject({ clean_count: 2, last: { testId: '05' } });
    const many = Array.from({ length: 38 }, (_, i) => ({ ...row[0]!, testId: `${i}`, takenOn: day('2026-02-01') + i }));
    expect(codes(many)).toEqual([]);
  });

  it('drops a portion that cannot be used: what it leaves proves nothing clean, and hides nothing found', () => {
    const halves = (rest: TestPortion, faulty: TestPortion) => [sample('A', '2026-03-01', [rest, faulty])];
    const unread = tubes(10, 5, null);
    expect(found(halves(tubes(100, 1, 0), unread)).tests[0]).toMatchObject({ sign: null, band: null });
    expect(codes(halves(tubes(100, 1, 0), unread))).toEqual(['waterTests.portions_contradict', 'waterTests.none']);
    expect(found(halves(plates(100, 1, 7), unread)).last).toMatchObject({ sign: 'equal', band: 'intermediate' });
    const uncounted = plates(100, 0, null, 1);
    expect(found(halves(tubes(100, 1, 0), uncounted)).last).toMatchObject({
      ...{ sign: 'more', count_per_100mL: 0.5, low_per_100mL: 0.5, high_per_100mL: null, band: 'intermediate' },
    });
    expect(codes([sample('A', '2026-03-01', [uncounted])])).toEqual([
      ...['waterTests.portions_contradict', 'waterTests.found_uncounted'],
    ]);
    for (const faulty of [
      tubes(0, 1, 0),
      plates(100, 1, null),
      plates(100, 0, 3),
      plates(100, 0, null),
      plates(10, 0, null, 1),
      plates(10, 1, -1),
    ])
      expect(codes([sample('A', '2026-03-01', [faulty])])).toContain('waterTests.portions_contradict');
  });

  it('cannot read a sample of which more turned than there were, and says so', () => {
    const slip = sample('A', '2026-03-01', [tubes(100, 1, 7)]);
    const got = found([slip]);
    expect(got).toMatchObject({ last: null, isUnusableOpen: true });
    expect(got.unusable).toEqual([
      { testId: 'A', because: 'portions', at: { file: 'testPortions.csv', siteId: 'S1' }, hasGerms: true },
    ]);
    expect(codes([slip])).toContain('waterTests.portions_contradict');
    const before = found([sample('0', '2026-02-01', clean), slip]);
    expect(before).toMatchObject({ last: { testId: '0' }, isUnusableOpen: true });
    expect(found([slip, sample('B', '2026-04-01', clean)]).isUnusableOpen).toBe(false);
    expect(found([slip, sample('B', '2026-04-01', clean, 'container')]).isUnusableOpen).toBe(true);
    expect(found([{ ...slip, point: 'tank' }]).isUnusableOpen).toBe(false);
  });

  it('keeps samples whose day or place could not be read, and lets one that held E. coli stand open', () => {
    const at = { file: 'waterTests.csv', row: 5, siteId: 'S1' };
    const unread = (positive: number, point: SamplePoint | null = null): SiteFacts => {
      const one = { testId: 'W5', because: 'unread', at, point, portions: [tubes(100, 1, positive)] } as const;
      const facts = site([sample('A', '2026-03-01', clean)]);
      return { ...facts, safety: { ...facts.safety, unusableTests: [one] } };
    };
    expect(waterTestsFinding(unread(1)).finding).toMatchObject({
      unusable: [{ testId: 'W5', because: 'unread', at, hasGerms: true }],
      isUnusableOpen: true,
    });
    expect(waterTestsFinding(unread(0)).finding).toMatchObject({
      unusable: [{ hasGerms: false }],
      isUnusableOpen: false,
    });
    expect(waterTestsFinding(unread(1, 'tank')).finding!.isUnusableOpen).toBe(false);
    const alone = { ...unread(1), safety: { ...unread(1).safety, tests: [], inspections: [] } };
    expect(waterTestsFinding(alone).finding).toMatchObject({ last: null, isUnusableOpen: true });
  });

  it('lets a tap that held E. coli up to thirty days before hand-over stand until one after it is clean', () => {
    const dirty = (on: string, point: SamplePoint = 'tap') => sample(on, on, [plates(100, 1, 3)], point);
    expect(found([dirty('2025-12-11')]).last).toMatchObject({ testId: '2025-12-11', isBeforeHandOver: true });
    expect(codes([dirty('2025-12-11')])).toEqual(['waterTests.found']);
    expect(found([dirty('2025-12-10')]).last).toBeNull();
    expect(found([dirty('2025-12-20', 'tank')]).last).toBeNull();
    expect(found([dirty('2025-12-20'), sample('B', '2026-01-05', clean)]).last).toBeNull();
    expect(found([dirty('2025-12-20'), sample('B', '2026-02-05', clean)])).toMatchObject({
      ...{ last: { testId: 'B', sign: 'less' }, clean_count: 1, lastCleanOn: day('2026-02-05') },
    });
    expect(found([dirty('2025-12-20'), sample('B', '2026-02-05', clean, 'container')]).last).toMatchObject({
      testId: '2025-12-20',
    });
  });

  it('where some were found never tells of none: one at least in the water looked at, and no low band', () => {
    const of = (portions: readonly TestPortion[]) => found([sample('A', '2026-03-01', portions)]).last!;
    expect(of([tubes(100, 1, 1)])).toMatchObject({ sign: 'more', count_per_100mL: 1, low_per_100mL: 1 });
    expect(of([plates(100, 1, 1)])).toMatchObject({ sign: 'equal', low_per_100mL: 1, band: 'intermediate' });
    expect(of([plates(100, 4, 1)])).toMatchObject({ low_per_100mL: 0.25, band: 'intermediate' });
    expect(of([plates(100, 2, 30)]).low_per_100mL).toBeGreaterThan(5);
  });

  it('brings a walk to ten, and leaves out one with more risks than questions', () => {
    expect(found([], [walk(3, 12)])).toMatchObject({
      inspection: { score: 3, band: 'intermediate' },
      priority: 'intermediate',
    });
    const odd = [walk(1), { ...walk(12), inspectedOn: day('2026-06-01') }];
    expect(found([], odd).inspection).toMatchObject({ score: 1, band: 'low' });
    expect(codes([], odd)).toEqual(['waterTests.inspection_contradicts', 'waterTests.none']);
  });

  it('has a working for every count it tells, with no figure of its own', () => {
    const { finding, working } = waterTestsFinding(
      site([sample('A', '2026-03-01', [plates(100, 1, 7)]), sample('B', '2026-04-01', clean)]),
    );
    expect(working.filter(({ code }) => code === 'waterTests.count').map(({ value }) => value)).toEqual(
      finding!.tests.map(({ count_per_100mL }) => count_per_100mL),
    );
    expect(working.map(({ code }) => code)).toContain('waterTests.priority');
  });
});
