import { describe, expect, it } from 'vitest';
import {
  type DesignSettings,
  defaultSettings,
  noKitFigures,
  type PartFacts,
  type PipeFacts,
  type SiteFacts,
  type TankFacts,
  unmeasuredSite,
  unmeasuredTank,
} from '../../kernel/index.ts';
import { headFindings, headVerdicts } from './headFindings.ts';

const tank: TankFacts = {
  ...unmeasuredTank,
  tankId: 'T1',
  nominal_L: 10_000,
  outletHeight_m: 0.1,
  overflowHeight_m: 2.1,
  standHeight_m: 2,
};
const pipe = (pipeId: string, change: Partial<PipeFacts> = {}): PipeFacts => ({
  pipeId,
  tankId: null,
  leg: 'tankToUnit',
  bore_mm: 32,
  length_m: 6,
  material: 'plastic',
  elbows_count: 2,
  tees_count: 0,
  valves_count: 1,
  meters_count: 0,
  otherLoss_k: null,
  ...change,
});
const pipes = [pipe('P1'), pipe('P2', { leg: 'unitToTap', length_m: 3 })];
const site = (change: Partial<SiteFacts> = {}): SiteFacts =>
  ({
    ...unmeasuredSite,
    siteId: 'S1',
    tanks: [tank],
    pipes,
    taps_count: 2,
    tapHeight_m: 0.6,
    unitHeight_m: 0.8,
    hasHandPump: true,
    ...change,
  }) as SiteFacts;
const given = (of: SiteFacts, set: Partial<DesignSettings> = {}, parts: readonly PartFacts[] = []) =>
  headFindings({ site: of, parts, settings: { ...defaultSettings, unitHead_m: 0.2, ...set } });
const one = (...args: Parameters<typeof given>) => given(...args).finding![0]!;
const codes = (...args: Parameters<typeof given>) => given(...args).problems.map(({ code }) => code);
const without = { hasHandPump: false };

describe('headFindings', () => {
  it('is not judged where no pipe was measured, nor where it is switched off', () => {
    expect(given(site({ pipes: [] }))).toEqual({ finding: null, problems: [], working: [] });
    expect(given(site(), { judgeHead: 'never' }).finding).toBeNull();
    expect(one(site({ pipes: [] }), { judgeHead: 'always' })).toMatchObject({ verdict: 'unknown', tankIds: [] });
    expect(codes(site({ pipes: [] }), { judgeHead: 'always' })).toEqual(['head.none']);
  });

  it('reckons heights over the ground, and losses pipe by pipe', () => {
    const f = one(site(without));
    expect(f).toMatchObject({ flowWanted_L_per_min: 15, lowLevel_m: 2.1, fullLevel_m: 4.1 });
    expect(f.fallToTap_m).toBeCloseTo(1.5, 12);
    expect(f.fallToUnit_m).toBeCloseTo(1.3, 12);
    // 0.25 L/s in 32 mm: 0.3108 m/s, Re 9,913, smooth-wall f 0.0310 by hand from Colebrook; ΣK 1 + 1 + 2 × 0.9 + 0.3.
    const velocityHead_m = 0.31085 ** 2 / (2 * 9.80665);
    expect(f.segments[0]!.minor_m).toBeCloseTo(4.1 * velocityHead_m, 5);
    expect(f.segments[0]!.friction_m).toBeCloseTo((0.031 * 6 * velocityHead_m) / 0.032, 3);
    const parts_m = f.segments.reduce((sum, each) => sum + each.friction_m + each.minor_m, 0);
    expect(f.headLeft_m).toBeCloseTo(1.5 - parts_m, 12);
    expect(f.headLeftFull_m! - f.headLeft_m!).toBeCloseTo(2, 12);
  });

  it('by itself is short, tight or holds as the stand grows', () => {
    const at = (standHeight_m: number) => one(site({ ...without, tanks: [{ ...tank, standHeight_m }] })).verdict;
    expect(at(1)).toBe('short');
    expect(at(2)).toBe('tight');
    expect(at(3)).toBe('holds');
  });

  it('brings by itself the flow wanted where just the head wanted is left', () => {
    const f = one(site(without));
    const settings = { residualHead_m: f.headLeft_m! };
    expect(one(site(without), settings).flowLow_L_per_min).toBeCloseTo(15, 6);
    expect(f.flowFull_L_per_min).toBeGreaterThan(f.flowLow_L_per_min!);
  });

  it('with a hand pump asks what one person can give', () => {
    const f = one(site());
    expect(f.verdict).toBe('holds');
    const low = one(site({ tanks: [{ ...tank, standHeight_m: 0 }] }));
    expect(low.pumpAdds_m).toBeCloseTo(1 - low.headLeft_m!, 12);
    expect(low.pumpPower_W).toBeCloseTo((998.2 * 9.80665 * low.pumpAdds_m! * 0.00025) / 0.5, 2);
    expect(low.verdict).toBe('holds');
    const heavy = (unitHead_m: number) => one(site({ taps_count: 4 }), { unitHead_m });
    expect(heavy(2).verdict).toBe('holds');
    expect(heavy(3.6).verdict).toBe('tight');
    expect(heavy(6).verdict).toBe('short');
    expect(heavy(6).onePerson_L_per_min).toBeLessThan(30);
  });

  it('is short where the pump would draw water up too far', () => {
    const deep = site({ unitHeight_m: 8.2, tapHeight_m: 8 });
    expect(one(deep).verdict).toBe('short');
    expect(one(deep).suction_m).toBeGreaterThan(6);
    expect(codes(deep)).toEqual(['head.suction']);
    expect(one(site({ unitHeight_m: 7.8, tapHeight_m: 1 })).verdict).toBe('tight');
  });

  it('without a pump is short where taps or unit lie above the water, and says so', () => {
    expect(codes(site({ ...without, tapHeight_m: 3 }))).toEqual(['head.tap_above']);
    expect(codes(site({ ...without, unitHeight_m: 3 }))).toEqual(['head.unit_above']);
    const high = one(site({ ...without, unitHeight_m: 3 }));
    expect(high).toMatchObject({ verdict: 'short', flowLow_L_per_min: 0, pumpAdds_m: null, suction_m: null });
  });

  it('takes it that there is a hand pump where nobody said, and tells', () => {
    const assumed = one(site({ hasHandPump: null }));
    expect(assumed).toMatchObject({ hasHandPump: true, verdict: 'tight', cappedBy: 'head.hand_pump_assumed' });
    expect(one(site({ hasHandPump: true }))).toMatchObject({ verdict: 'holds', cappedBy: null });
    expect(codes(site({ hasHandPump: null }))).toEqual(['head.hand_pump_assumed']);
  });

  it.each([
    ['head.unit_head_unknown', site(), { unitHead_m: null }],
    ['head.taps_unknown', site({ taps_count: null }), {}],
    ['head.tap_height_unknown', site({ tapHeight_m: null }), {}],
    ['head.unit_height_unknown', site({ unitHeight_m: null }), {}],
    ['head.temperature', site(), { waterTemperature_C: 41 }],
    ['head.outlet_unknown', site({ tanks: [{ ...tank, outletHeight_m: null }] }), {}],
    ['head.stand_unknown', site({ tanks: [{ ...tank, standHeight_m: null }] }), {}],
    ['head.leg_missing', site({ pipes: [pipe('P1')] }), {}],
    ['head.pipe_not_measured', site({ pipes: [pipe('P1', { bore_mm: null }), pipes[1]!] }), {}],
    ['head.pipe_not_measured', site({ pipes: [pipes[0]!, pipe('P2', { leg: 'unitToTap', length_m: null })] }), {}],
  ] as const)('is unknown and says %s', (code, of, set) => {
    expect(one(of, set)).toMatchObject({ verdict: 'unknown', headLeft_m: null, segments: [] });
    expect(codes(of, set)).toEqual([code]);
    expect(given(of, set).problems.map(({ severity }) => severity)).toEqual(['warning']);
  });

  it('says nothing of the full tank where its overflow is not known', () => {
    const open = site({ tanks: [{ ...tank, overflowHeight_m: null }] });
    expect(one(open)).toMatchObject({ fullLevel_m: null, flowFull_L_per_min: null, headLeftFull_m: null });
    expect(one(open).verdict).toBe('holds');
    expect(codes(open)).toEqual(['head.overflow_unknown']);
  });

  it('judges each body of water that pipes come from, and asks whose a pipe is', () => {
    const tanks = [
      { ...tank, peopleFraction: 0.5 },
      { ...tank, tankId: 'T2', standHeight_m: 0, peopleFraction: 0.5 },
    ];
    const shared = pipes[1]!;
    const both = site({
      tanks,
      pipes: [pipe('P1', { tankId: 'T1' }), pipe('P3', { tankId: 'T2' }), shared],
      ...without,
    });
    expect(given(both).finding!.map(({ verdict }) => verdict)).toEqual(['tight', 'short']);
    const first = site({ tanks, pipes: [pipe('P1', { tankId: 'T1' }), shared] });
    expect(given(first).finding!.map(({ tankIds }) => tankIds)).toEqual([['T1']]);
    expect(given(site({ tanks })).finding!.map(({ verdict }) => verdict)).toEqual(['unknown', 'unknown']);
    expect(codes(site({ tanks }))).toEqual(['head.pipe_tank_unknown']);
  });

  it('names the narrowest bore and pipe with which it holds: with it, and not with a hair less', () => {
    const way = { ...without, tanks: [{ ...tank, standHeight_m: 2.6 }] };
    const part = (partId: string, bore_mm: number | null, kind = 'pipe') =>
      ({ ...noPart, partId, kind, bore_mm }) satisfies PartFacts;
    const parts = [part('A', 63), part('B', 25), part('C', 40), part('D', null), part('E', 25, 'downpipe')];
    const { leastBore_mm, leastPartId, leastPart_mm } = one(site(way), {}, parts);
    const all = (bore_mm: number) => one(site({ ...way, pipes: pipes.map((each) => ({ ...each, bore_mm })) })).verdict;
    expect(all(leastBore_mm!)).toBe('holds');
    expect(all(leastBore_mm! * 0.999)).not.toBe('holds');
    expect(leastPart_mm).toBeGreaterThanOrEqual(leastBore_mm!);
    expect(leastPartId).toBe(leastBore_mm! > 25 ? 'C' : 'B');
    expect(one(site({ ...without, tapHeight_m: 3 }), {}, parts)).toMatchObject({
      leastBore_mm: null,
      leastPartId: null,
    });
  });

  it('draws a line that falls by the losses and rises at the pump', () => {
    const f = one(site({ tanks: [{ ...tank, standHeight_m: 0 }] }));
    expect(f.grade.map(({ place }) => place)).toEqual(['tank', 'unitInlet', 'unitOutlet', 'tap']);
    expect(f.grade[0]).toMatchObject({ elevation_m: 0.1, grade_m: 0.1, along_m: 0 });
    expect(f.grade.at(-1)!.grade_m - f.grade.at(-1)!.elevation_m!).toBeCloseTo(1, 12);
    expect(f.grade.at(-1)!.along_m).toBe(9);
  });

  it('writes down every figure it found', () => {
    const { working, finding } = given(site({ tanks: [{ ...tank, standHeight_m: 0 }] }));
    const values = working.map(({ value }) => value);
    for (const value of Object.values(finding![0]!)) if (typeof value === 'number') expect(values).toContain(value);
  });
});

const noPart = {
  unit: null,
  kit: noKitFigures,
  name: 'Made up',
  volume_L: null,
  length_m: null,
  mass_kg: null,
  shape: null,
  topWidth_mm: null,
  baseWidth_mm: null,
  depth_mm: null,
};

it.each([
  site(),
  site({ ...without, tanks: [{ ...tank, standHeight_m: 1 }] }),
  site({ pipes: [] }),
  site({ tanks: [tank, { ...tank, tankId: 'T2' }] }),
  site({ tanks: [tank, { ...tank, tankId: 'T2' }], pipes: [pipe('P1', { tankId: 'T2' }), pipes[1]!] }),
  site({ tapHeight_m: null }),
  site({ hasHandPump: null }),
  site({ tanks: [] }),
])('has the same verdicts without the figures', (of) => {
  for (const judgeHead of ['whereMeasured', 'always', 'never'] as const) {
    const settings = { ...defaultSettings, unitHead_m: 0.2, judgeHead };
    const found = headFindings({ site: of, parts: [], settings }).finding;
    const verdicts =
      found?.map(({ tankIds, verdict, cappedBy, headLeft_m, lossInUnit_m }) => ({
        ...{ tankIds, verdict, cappedBy, headLeft_m, lossInUnit_m },
      })) ?? null;
    expect(headVerdicts({ site: of, parts: [], settings })).toEqual(verdicts);
  }
});
