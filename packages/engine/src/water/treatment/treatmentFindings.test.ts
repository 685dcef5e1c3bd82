// long: one unit, judged with every change that has a say in what it passes
import { describe, expect, it } from 'vitest';
import {
  type DesignSettings,
  defaultSettings,
  type FlowReading,
  type PressureTest,
  readIsoDay,
  type SiteFacts,
  type TreatmentUnitFacts,
  type UnitFigures,
  unmeasuredSite,
  unmeasuredUnit,
} from '../../kernel/index.ts';
import { treatmentFindings } from './treatmentFindings.ts';
import { unitHead_m } from './unitHead.ts';

const day = (iso: string) => readIsoDay(iso)!;

/** A set of three cartridges that passes 360 L/h at 100 kPa and 20 °C, and is changed at 90 L/h. */
const figures: UnitFigures = {
  ...unmeasuredUnit,
  cartridges_count: 3,
  ratedFlow_L_per_h: 360,
  ratedPressure_kPa: 100,
  highestPressure_kPa: 200,
  lowestFlow_L_per_h: 90,
  backwash_fraction: 0.1,
  backwash_min_per_day: 15,
  pistonBore_mm: 50,
  pistonStroke_mm: 150,
  lever_ratio: 4,
};
const unit: TreatmentUnitFacts = {
  serial: 'U1',
  partId: 'unit-3',
  figures,
  installedOn: day('2025-03-01'),
  removedOn: null,
};
const reading: FlowReading = {
  unitSerial: null,
  readOn: day('2026-01-10'),
  flow_L_per_h: 180,
  pressure_kPa: 100,
  waterTemperature_C: 20,
  passed_L: null,
};
const pressureTest: PressureTest = {
  unitSerial: 'U1',
  testedOn: day('2026-01-10'),
  pressure_kPa: 100,
  fall_kPa_per_min: 1,
  airVolume_L: 2,
};

interface Change {
  readonly site?: Partial<SiteFacts>;
  readonly units?: readonly TreatmentUnitFacts[];
  readonly treatment?: Partial<SiteFacts['treatment']>;
  readonly settings?: Partial<DesignSettings>;
  readonly demand?: number | null;
  readonly head_m?: number | null;
}
const siteOf = ({ site, units = [unit], treatment }: Change): SiteFacts =>
  ({
    ...unmeasuredSite,
    siteId: 'S1',
    taps_count: 2,
    hasHandPump: true,
    ...site,
    treatment: { ...unmeasuredSite.treatment, units, ...treatment },
  }) as SiteFacts;
const settingsOf = ({ settings }: Change): DesignSettings => ({ ...defaultSettings, ...settings });
const given = (change: Change = {}) =>
  treatmentFindings({
    site: siteOf(change),
    demandHighest_L_per_day: change.demand === undefined ? 900 : change.demand,
    gravityHead_m: change.head_m ?? null,
    settings: settingsOf(change),
  });
const one = (change: Change = {}) => given(change).finding![0]!;
const codes = (change: Change = {}) => given(change).problems.map(({ code }) => code);
const withFigures = (own: Partial<UnitFigures>) => ({ units: [{ ...unit, figures: { ...figures, ...own } }] });

describe('treatmentFindings', () => {
  it('is not judged where no unit is in use, nor where it is switched off', () => {
    expect(given({ units: [] })).toEqual({ finding: null, problems: [], working: [] });
    expect(given({ units: [{ ...unit, removedOn: day('2026-01-01') }] }).finding).toBeNull();
    expect(given({ settings: { judgeTreatment: 'never' } }).finding).toBeNull();
    const everywhere = { units: [], settings: { judgeTreatment: 'always' } } as const;
    expect(one(everywhere)).toMatchObject({ verdict: 'unknown', serial: null });
    expect(codes(everywhere)).toEqual(['treatment.none']);
  });

  it('lets no problem be told of a unit of which all is known', () => {
    expect(codes()).toEqual([]);
  });

  it('passes at the pump what power, pressure and strokes give, the least of them', () => {
    // R: 360 L/h at 100 kPa. 20 W of water: Q = √(20 W × 6 L/min ÷ 100 kPa × 60,000 ÷ 1,000) = 8.485 L/min; 40 strokes give 10.60.
    const f = one();
    expect(f).toMatchObject({ drive: 'handPump', serial: 'U1', partId: 'unit-3' });
    expect(f.flowClean_L_per_h).toBeCloseTo(Math.sqrt(72) * 60, 6);
    expect(f.pumpPower_W).toBeCloseTo(40, 9);
    expect(f.pressure_kPa).toBeCloseTo((Math.sqrt(72) / 6) * 100, 9);
    expect(f.strokes_per_min).toBeCloseTo(Math.sqrt(72) / 0.265072, 3);
    // The piston of 50 mm at that pressure, over a lever of 4 and an efficiency of a half.
    expect(f.handForce_N).toBeCloseTo((f.pressure_kPa! * 1000 * Math.PI * 0.025 ** 2) / 4 / 0.5, 6);
    expect(one(withFigures({ highestPressure_kPa: 100 })).flowClean_L_per_h).toBeCloseTo(360, 6);
    expect(one(withFigures({ pistonStroke_mm: 75 })).flowClean_L_per_h).toBeCloseTo(40 * 0.132536 * 60, 2);
  });

  it('passes by the fall of the water what unit and taps leave of it', () => {
    const f = one({ site: { hasHandPump: false }, head_m: 5 });
    expect(f.drive).toBe('gravity');
    expect(f).toMatchObject({ pumpPower_W: null, strokes_per_min: null, handForce_N: null });
    // At that flow: head in the unit, and in taps that take 1 m at 15 L/min, make 5 m.
    const flow = f.flowClean_L_per_h! / 60;
    const unit_m = (flow / 6) * (100_000 / (998.2 * 9.80665));
    expect(unit_m + (flow / 15) ** 2).toBeCloseTo(5, 3);
    expect(one({ site: { hasHandPump: false }, head_m: 0 })).toMatchObject({
      flowNow_L_per_h: 0,
      hoursNeeded_h: null,
      verdict: 'short',
    });
  });

  it('is no better than tight at the rated pressure, where nobody says what drives the water', () => {
    const lost = { site: { hasHandPump: null }, demand: 150 };
    expect(one(lost)).toMatchObject({ drive: 'rated', verdict: 'tight', cappedBy: 'treatment.pressure_unknown' });
    expect(one(lost).flowClean_L_per_h).toBeCloseTo(360, 6);
    expect(codes(lost)).toEqual(['treatment.pressure_unknown']);
    const byArea = {
      ratedFlow_L_per_h: null,
      ratedPressure_kPa: null,
      membraneArea_m2: 3.6,
      permeability_L_per_m2_h_bar: 100,
    };
    expect(one({ ...lost, ...withFigures(byArea) })).toMatchObject({ verdict: 'unknown', flowClean_L_per_h: null });
    expect(codes({ ...lost, ...withFigures(byArea) })).toContain('treatment.pressure_unknown');
  });

  it('reckons litres, hours and lines of a day', () => {
    const f = one({ ...withFigures({ highestPressure_kPa: 100 }), demand: 1800 });
    expect(f.asked_L_per_day).toBe(1800);
    expect(f.treated_L_per_day).toBeCloseTo(1980, 9);
    // 1,980 L at 360 L/h and a quarter of an hour for backwash.
    expect(f.hoursNeeded_h).toBeCloseTo(1980 / 360 + 0.25, 6);
    // 720 L in an hour, 360 given: 360 L wait, an hour at 6 L/min.
    expect(f.peaks[0]).toMatchObject({ peak: 'morning' });
    expect(f.peaks[0]!.asked_L).toBeCloseTo(720, 9);
    expect(f.peaks[0]!.possible_L).toBeCloseTo(360, 6);
    expect(f.peaks[0]!.lastWait_min).toBeCloseTo(60, 6);
    expect(f.verdict).toBe('short');
    expect(f.meanWait_min).toBeNull();
  });

  it('is short, tight or holds as less is asked', () => {
    expect(one({ demand: 3000 }).verdict).toBe('short');
    expect(one({ demand: 900 }).verdict).toBe('tight');
    expect(one({ demand: 150 }).verdict).toBe('holds');
    expect(one({ demand: 150 }).hoursNeededWorn_h).toBeGreaterThan(one({ demand: 150 }).hoursNeeded_h!);
  });

  it('judges the worn set with the flow at which it is to be changed, more asked, and somebody nobody chose at the pump', () => {
    const f = one(withFigures({ highestPressure_kPa: 400 }));
    // The membranes may have 200 kPa: then it is twice the lowest flow.
    expect(one().flowWorn_L_per_h).toBeCloseTo(180, 6);
    // Worn, the resistance is 360 ÷ 90 = 4 times; 15 W of water: Q = √(15 × 6 ÷ 4 × 60,000 ÷ 100,000).
    expect(f.flowWorn_L_per_h).toBeCloseTo(Math.sqrt(13.5) * 60, 6);
    expect(f.hoursNeededWorn_h).toBeCloseTo((900 * 1.2 * 1.1) / (Math.sqrt(13.5) * 60) + 0.25, 6);
  });

  it('takes what was read last of this set for its wear now', () => {
    const read = { treatment: { flowReadings: [{ ...reading, flow_L_per_h: 90 }, reading] } };
    expect(one(read).resistanceNow_ratio).toBeCloseTo(2, 9);
    expect(one(read).flowNow_L_per_h).toBeCloseTo(one().flowClean_L_per_h! / Math.sqrt(2), 6);
    const warm = { treatment: { flowReadings: [{ ...reading, waterTemperature_C: 30 }] } };
    expect(one(warm).resistanceNow_ratio).toBeCloseTo((2 * 1.0016) / 0.7972, 3);
  });

  it('judges a set that is more worn than one due to be changed as it is', () => {
    const worse = { demand: 150, treatment: { flowReadings: [{ ...reading, flow_L_per_h: 30 }] } };
    expect(one(worse).hoursNeededWorn_h).toBeGreaterThan(one({ demand: 150 }).hoursNeededWorn_h!);
  });

  it('tells readings it cannot use, and takes the one before', () => {
    const flowReadings = [reading, { ...reading, readOn: day('2026-02-01'), pressure_kPa: null }];
    const found = given({ treatment: { flowReadings } });
    expect(found.finding![0]!.resistanceNow_ratio).toBeCloseTo(2, 9);
    expect(found.problems).toMatchObject([
      { code: 'treatment.reading_not_used', facts: { day: '2026-02-01', reason: 'noPressure' } },
    ]);
    const torn = { treatment: { flowReadings: [{ ...reading, flow_L_per_h: 3600 }] } };
    expect(given(torn).problems).toMatchObject([
      { code: 'treatment.reading_not_used', facts: { reason: 'overClean' } },
    ]);
    expect(one(torn).resistanceNow_ratio).toBeNull();
  });

  it('takes a set that was changed after the last reading as clean', () => {
    const changed = {
      treatment: {
        flowReadings: [reading],
        cartridges: [
          {
            serial: 'C1',
            unitSerial: null,
            partId: null,
            batch: null,
            installedOn: day('2026-02-02'),
            removedOn: null,
            reason: null,
          },
        ],
      },
    };
    expect(one(changed).resistanceNow_ratio).toBeNull();
    expect(codes(changed)).toEqual(['treatment.reading_early']);
  });

  it('takes the lesser of two flows that differ, and says so', () => {
    const both = withFigures({ membraneArea_m2: 2, permeability_L_per_m2_h_bar: 100, highestPressure_kPa: 100 });
    expect(one(both).flowClean_L_per_h).toBeCloseTo(200, 6);
    expect(codes(both)).toEqual(['treatment.rating_differs']);
    const near = withFigures({ membraneArea_m2: 3.5, permeability_L_per_m2_h_bar: 100 });
    expect(codes(near)).toEqual([]);
  });

  it.each<readonly [string, Change, string, string]>([
    ['no part', { units: [{ ...unit, partId: null, figures: null }] }, 'treatment.part_unknown', 'unknown'],
    ['no flow', withFigures({ ratedFlow_L_per_h: null }), 'treatment.flow_unknown', 'unknown'],
    ['no demand', { demand: null }, 'treatment.demand_unknown', 'unknown'],
    ['no water of that temperature', { settings: { waterTemperature_C: 71 } }, 'treatment.temperature', 'unknown'],
    ['no taps', { demand: 150, site: { taps_count: null } }, 'treatment.taps_unknown', 'tight'],
    [
      'no lowest flow',
      { demand: 150, ...withFigures({ lowestFlow_L_per_h: null }) },
      'treatment.lowest_flow_unknown',
      'tight',
    ],
    [
      'a lowest flow over the clean one',
      { demand: 150, ...withFigures({ lowestFlow_L_per_h: 400 }) },
      'treatment.lowest_flow_high',
      'tight',
    ],
    ['no piston', { demand: 150, ...withFigures({ pistonBore_mm: null }) }, 'treatment.pump_unknown', 'holds'],
    [
      'no backwash',
      { demand: 150, ...withFigures({ backwash_min_per_day: null }) },
      'treatment.backwash_unknown',
      'holds',
    ],
    ['too much fall', { demand: 150, site: { hasHandPump: false }, head_m: 30 }, 'treatment.pressure_high', 'holds'],
  ])('with %s says so', (_, change, code, verdict) => {
    expect(codes(change)).toEqual([code]);
    expect(one(change).verdict).toBe(verdict);
  });

  it('shares litres and taps among several units', () => {
    const two = { units: [unit, { ...unit, serial: 'U2' }] };
    const found = given(two);
    expect(found.finding).toHaveLength(2);
    expect(found.finding![0]).toMatchObject({ serial: 'U1', asked_L_per_day: 450 });
    expect(found.problems.map(({ code }) => code)).toEqual(['treatment.units_several']);
  });
});

describe('a test with air', () => {
  const air = (change: Partial<PressureTest> = {}, own: Partial<UnitFigures> = {}): Change => ({
    ...withFigures({ highestPressure_kPa: 100, ...own }),
    treatment: { pressureTests: [{ ...pressureTest, ...change }] },
  });

  it('sees holes of 2.9 µm at 100 kPa, and supports what its fall says, by the lesser of two ratios', () => {
    const { pressureTest: found } = one(air());
    expect(found!.smallestSeen_um).toBeCloseTo(2.91, 2);
    // Stirred, Y 0.59: √(998.2 ÷ 1.2041 × 201.325 ÷ 101.325 × 100 ÷ 100); smooth would be 55.2 × 1.49.
    const ratio = 0.59 * Math.sqrt((998.2 / 1.2041) * (201.325 / 101.325));
    expect(found!.supports_log10).toBeCloseTo(Math.log10((6 * ratio * 101.325) / 2), 3);
    expect(found!.fallLimit_kPa_per_min).toBeNull();
    expect(codes(air())).toEqual([]);
  });

  it('warns where the pressure falls faster than what is claimed allows', () => {
    const reductions = { ...unmeasuredUnit.reductions, protozoa_log10: 4 };
    expect(one(air({}, { reductions })).pressureTest!.fallLimit_kPa_per_min).toBeCloseTo(
      10 ** (one(air()).pressureTest!.supports_log10! - 4),
      9,
    );
    expect(codes(air({ fall_kPa_per_min: 5 }, { reductions }))).toEqual(['treatment.test_fails']);
    expect(codes(air({ fall_kPa_per_min: 0.1 }, { reductions }))).toEqual([]);
  });

  it('that names no unit where there have been several may be of each: it counts where it is worse, and is told', () => {
    const falls = (change: Change) =>
      given(change).finding!.map(({ pressureTest: found }) => found?.supports_log10 ?? null);
    const two = (...pressureTests: readonly PressureTest[]): Change => {
      const { units } = withFigures({ highestPressure_kPa: 100 });
      return { units: [units[0]!, { ...units[0]!, serial: 'U2' }], treatment: { pressureTests } };
    };
    const named = { ...pressureTest, fall_kPa_per_min: 0.1 };
    const [ofOne] = falls(two(named));
    const nobodys = { ...pressureTest, unitSerial: null, testedOn: day('2026-02-10') };
    const worse = two(named, { ...nobodys, fall_kPa_per_min: 10 });
    expect(falls(worse).map((supports) => ofOne! - supports!)).toEqual([expect.closeTo(2, 9), expect.closeTo(2, 9)]);
    expect(codes(worse).filter((code) => code === 'treatment.test_unit_unknown')).toHaveLength(2);
    expect(falls(two(named, { ...nobodys, fall_kPa_per_min: 0.01 }))[0]).toBe(ofOne);
    expect(falls(two({ ...nobodys, testedOn: day('2026-01-01') }, named))[0]).toBe(ofOne);
  });

  it('tells what it cannot say', () => {
    expect(codes(air({ pressure_kPa: 35 }))).toEqual(['treatment.test_sees_little']);
    expect(codes(air({ airVolume_L: null }))).toEqual(['treatment.test_volume_unknown']);
    expect(codes(air({ fall_kPa_per_min: 0 }))).toEqual(['treatment.test_no_fall']);
    expect(one(air({ fall_kPa_per_min: 0 })).pressureTest!.supports_log10).toBeNull();
    expect(codes(air({ testedOn: day('2025-01-01') }))).toEqual(['treatment.test_not_used']);
    expect(one(air({ testedOn: day('2025-01-01') })).pressureTest).toBeNull();
    expect(one(air({ unitSerial: 'U9' })).pressureTest).toBeNull();
  });
});

describe('unitHead_m', () => {
  it('is that of the flow of all taps through the clean unit', () => {
    // 15 L/min where 6 L/min take 100 kPa: 250 kPa.
    expect(unitHead_m(siteOf({}), defaultSettings)).toBeCloseTo(250_000 / (998.2 * 9.80665), 2);
    const two = { units: [unit, { ...unit, serial: 'U2' }] };
    expect(unitHead_m(siteOf(two), defaultSettings)).toBeCloseTo(125_000 / (998.2 * 9.80665), 2);
    expect(unitHead_m(siteOf({ site: { taps_count: null } }), defaultSettings)).toBeNull();
    expect(unitHead_m(siteOf({ units: [] }), defaultSettings)).toBeNull();
    expect(unitHead_m(siteOf(withFigures({ ratedFlow_L_per_h: null })), defaultSettings)).toBeNull();
    expect(unitHead_m(siteOf({}), { ...defaultSettings, waterTemperature_C: 80 })).toBeNull();
  });
});
