import { describe, expect, it } from 'vitest';
import {
  type DesignSettings,
  defaultSettings,
  type SiteFacts,
  type TankFacts,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from '../../kernel/index.ts';
import { type SettlingGiven, settlingFindings } from './settlingFindings.ts';

const settler: TankFacts = {
  ...unmeasuredTank,
  tankId: 'T1',
  role: 'settling',
  diameter_m: 1.2,
  outletHeight_m: 0.4,
  overflowHeight_m: 1.4,
  inletHeight_m: 1.5,
};
const store: TankFacts = { ...unmeasuredTank, tankId: 'T2', nominal_L: 10_000, joinedTo: 'T1' };
const site = (change: Partial<TankFacts> = {}, more: Partial<SiteFacts> = {}): SiteFacts =>
  ({
    ...unmeasuredSite,
    siteId: 'S1',
    tanks: [{ ...settler, ...change }, store],
    roofs: [{ ...unmeasuredRoof, roofId: 'R1', roofPlanArea_m2: 100, gutteredFraction: 0.8 }],
    ...more,
  }) as SiteFacts;
const given = (
  of: SiteFacts,
  change: Partial<Omit<SettlingGiven, 'settings'>> = {},
  set: Partial<DesignSettings> = {},
) =>
  settlingFindings({
    site: of,
    stormFlow_L_per_s: new Map([['T1', 1]]),
    demandHighest_L_per_day: new Map([['T1', 600]]),
    gutteredArea_m2: new Map([['R1', 80]]),
    settings: { ...defaultSettings, roofSolids_g_per_m2_per_year: 50, ...set },
    ...change,
  });
const one = (...args: Parameters<typeof given>) => given(...args).finding![0]!;
const codes = (...args: Parameters<typeof given>) => given(...args).problems.map(({ code }) => code);

describe('settlingFindings', () => {
  it('is not judged where there is no settling tank, nor where it is switched off', () => {
    const none = site({ role: 'storage' });
    expect(given(none)).toEqual({ finding: null, problems: [], working: [] });
    expect(given(site(), {}, { judgeSettling: 'never' }).finding).toBeNull();
    expect(given(none, {}, { judgeSettling: 'always' }).finding).toMatchObject([{ verdict: 'unknown', tankId: null }]);
    expect(codes(none, {}, { judgeSettling: 'always' })).toEqual(['settling.none']);
  });

  it('reckons by hand: 600 L in 8 hours over 1.131 m², quartz of 20 µm at 20 °C', () => {
    const f = one(site());
    const area_m2 = Math.PI * 0.36;
    expect(f.planArea_m2).toBeCloseTo(area_m2, 12);
    expect(f.flowByDay_L_per_s).toBeCloseTo(600 / 28_800, 12);
    expect(f.overflowRateByDay_m_per_h).toBeCloseTo(0.6 / 8 / area_m2, 12);
    // 0.3533 mm/s, from the published equation worked out elsewhere.
    expect(f.sinks_m_per_h! / 3.6).toBeCloseTo(0.3533, 3);
    const ratio = (0.3533 * 3.6) / (0.6 / 8 / area_m2);
    expect(f.settledByDay_fraction).toBeCloseTo(ratio / (1 + ratio), 3);
    const inStorm = 0.3533e-3 / (0.001 / area_m2);
    expect(f.settledInStorm_fraction).toBeCloseTo(inStorm / (1 + inStorm), 3);
    expect(f.firstTenth_min).toBeCloseTo((-Math.log(0.9) * 60) / f.overflowRateByDay_m_per_h!, 9);
    expect(f.sludge_L_per_year).toBeCloseTo((80 * 0.05 * 1000) / 250, 9);
    expect(f.cleanAfter_months).toBeCloseTo((12 * 0.3 * area_m2) / 0.016, 6);
  });

  it('is tight where only the day meets the target, and holds where a wider tank meets it in the storm', () => {
    expect(one(site()).verdict).toBe('tight');
    expect(one(site({ diameter_m: 2.5 })).verdict).toBe('holds');
    expect(one(site(), {}, { settledTarget_fraction: 0.99 }).verdict).toBe('short');
    expect(codes(site())).toEqual([]);
  });

  it('is tight at best where the storm is not known', () => {
    const unstormed = [site({ diameter_m: 2.5 }), { stormFlow_L_per_s: new Map() }] as const;
    expect(one(...unstormed)).toMatchObject({ verdict: 'tight', cappedBy: 'settling.storm_unknown' });
    expect(codes(...unstormed)).toEqual(['settling.storm_unknown']);
  });

  it('is tight at best where no roof leads to it', () => {
    const apart = site({ diameter_m: 2.5 }, { roofs: [{ ...unmeasuredRoof, roofId: 'R1', tankId: 'T2' }] });
    expect(one(apart, { stormFlow_L_per_s: new Map([['T1', 0]]) })).toMatchObject({
      verdict: 'tight',
      cappedBy: 'settling.no_roof',
    });
    expect(codes(apart)).toEqual(['settling.no_roof']);
    // No dirt comes, so that no month is told, high draw-off or low.
    for (const outletHeight_m of [0.4, 0.05]) {
      const fed = site({ outletHeight_m }, { roofs: [{ ...unmeasuredRoof, roofId: 'R1', tankId: 'T2' }] });
      expect(one(fed).cleanAfter_months).toBeNull();
    }
  });

  it('lets clay through, whatever its verdict', () => {
    const { verdict, grains } = one(site({ diameter_m: 2.5 }));
    expect(verdict).toBe('holds');
    expect(grains[0]).toMatchObject({ grain_um: 2 });
    expect(grains[0]!.leavesInStorm_fraction).toBeGreaterThan(0.97);
    expect(grains.map(({ leavesByDay_fraction }) => leavesByDay_fraction!)).toEqual(
      grains.map(({ leavesByDay_fraction }) => leavesByDay_fraction!).sort((a, b) => b - a),
    );
  });

  it('keeps more with walls in it, and says one cell where nothing is said', () => {
    expect(one(site()).cells_count).toBe(1);
    expect(one(site({ cells_count: 4 })).settledByDay_fraction).toBeGreaterThan(one(site()).settledByDay_fraction!);
  });

  it('is unknown without a diameter, a draw-off or what is asked', () => {
    expect(one(site({ diameter_m: null })).verdict).toBe('unknown');
    expect(codes(site({ diameter_m: null }))).toEqual(['settling.diameter_unknown']);
    expect(one(site({ outletHeight_m: null })).verdict).toBe('unknown');
    expect(codes(site({ outletHeight_m: null }))).toEqual(['settling.draw_off_unknown']);
    expect(one(site(), { demandHighest_L_per_day: new Map() })).toMatchObject({
      verdict: 'unknown',
      settledByDay_fraction: null,
    });
  });

  it('is short where it is drawn from the floor, and no better than tight where the inlet is not above the draw-off', () => {
    const wide = { diameter_m: 2.5 };
    expect(one(site({ ...wide, outletHeight_m: 0.02 })).verdict).toBe('short');
    expect(codes(site({ ...wide, outletHeight_m: 0.02 }))).toEqual(['settling.draw_off_low']);
    expect(one(site({ ...wide, inletHeight_m: 0.3 }))).toMatchObject({
      verdict: 'tight',
      cappedBy: 'settling.inlet_low',
    });
    expect(one(site({ ...wide, inletHeight_m: null }))).toMatchObject({
      verdict: 'tight',
      cappedBy: 'settling.inlet_unknown',
    });
  });

  it('says when it is not known what roofs shed, and counts a tank nobody draws from as still', () => {
    const unknown = [site(), {}, { roofSolids_g_per_m2_per_year: null }] as const;
    expect(one(...unknown)).toMatchObject({ sludge_L_per_year: null, cleanAfter_months: null });
    expect(codes(...unknown)).toEqual(['settling.solids_unknown']);
    expect(one(site(), {}, { roofSolids_g_per_m2_per_year: 0 })).toMatchObject({
      sludge_L_per_year: 0,
      cleanAfter_months: null,
    });
    const reserve = site({ peopleFraction: 0 });
    expect(one(reserve, { demandHighest_L_per_day: new Map() }).settledByDay_fraction).toBe(1);
  });

  it('is unknown at a temperature no water has', () => {
    const boiling = [site(), {}, { waterTemperature_C: 90 }] as const;
    expect(one(...boiling).verdict).toBe('unknown');
    expect(codes(...boiling)).toEqual(['settling.temperature']);
  });

  it('writes down every figure it found', () => {
    const { working, finding } = given(site());
    const values = working.map(({ value }) => value);
    const { grains: _, cappedBy: __, tankId: ___, cells_count, grain_um, ...figures } = finding![0]!;
    for (const value of Object.values(figures)) expect(values).toContain(value);
    const inputs = working.flatMap((line) => line.inputs.map(({ value }) => value));
    expect(inputs).toEqual(expect.arrayContaining([cells_count, grain_um]));
  });
});
