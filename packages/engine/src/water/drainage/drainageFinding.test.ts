import { describe, expect, it } from 'vitest';
import {
  type DesignStorm,
  type DownpipeFacts,
  defaultSettings,
  type GutterFacts,
  type PartFacts,
  type RoofFacts,
  type SiteFacts,
  type TankFacts,
  unmeasuredGutter,
  unmeasuredPart,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from '../../kernel/index.ts';
import { type DrainageGiven, drainageFinding } from './drainageFinding.ts';
import { stormFlows_L_per_s } from './stormFlows.ts';

/** A roof of 60 m² at 45°: 90 m² to the rain, so that 100 mm/h bring 2.5 L/s. */
const roof: RoofFacts = {
  ...unmeasuredRoof,
  roofId: 'R1',
  roofPlanArea_m2: 60,
  gutteredFraction: 1,
  pitch_deg: 45,
  eaveHeight_m: 3,
};
/** Half round of 200 mm: 4.400 L/s while short. */
const gutter: GutterFacts = {
  ...unmeasuredGutter,
  gutterId: 'G1',
  roofId: 'R1',
  shape: 'halfRound',
  width_mm: 200,
  depth_mm: 100,
  length_m: 5,
  fall_mm_per_m: 5,
  outlet_mm: 100,
};
const downpipe: DownpipeFacts = { downpipeId: 'D1', roofId: 'R1', bore_mm: 100, length_m: 3 };
const tank: TankFacts = {
  ...unmeasuredTank,
  tankId: 'T1',
  height_m: 2,
  overflowHeight_m: 1.85,
  standHeight_m: 0.3,
  overflowBore_mm: 100,
};
const storm: DesignStorm = {
  gaugeId: 'A',
  returnPeriod_years: 20,
  intensity_mm_per_h: 100,
  intensity_range: null,
  from: 'stated',
  source: 'An invented weather service',
  years_count: null,
  cappedBy: null,
};
const part = (partId: string, kind: string, size: Partial<PartFacts>): PartFacts => ({
  ...unmeasuredPart,
  partId,
  kind,
  name: partId,
  ...size,
});
const halfRound = (partId: string, width: number) =>
  part(partId, 'gutter', { shape: 'halfRound', topWidth_mm: width, depth_mm: width / 2 });
const catalogue: readonly PartFacts[] = [
  halfRound('gutter-250', 250),
  halfRound('gutter-150', 150),
  halfRound('gutter-200', 200),
  part('outlet-110', 'outlet', { bore_mm: 110 }),
  part('outlet-75', 'outlet', { bore_mm: 75 }),
  part('pipe-75', 'downpipe', { bore_mm: 75 }),
  part('over-160', 'overflow', { bore_mm: 160 }),
];

const site = (change: Partial<SiteFacts> = {}): SiteFacts => ({
  ...unmeasuredSite,
  ...{ siteId: 'S1', name: 'Hall', latitude_deg: null, longitude_deg: null, siteClass: null, target: null },
  ...{ people: 30, peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
  ...{ presence: null, secondSource: null, nearSecondSource: null, ration: null, gaugeId: 'A', rainFactor: 1 },
  ...{ handOverDay: null, demand: [], doubts: [] },
  roofs: [roof],
  gutters: [gutter],
  downpipes: [downpipe],
  tanks: [tank],
  ...change,
});
const found = (change: Partial<SiteFacts> = {}, given: Partial<DrainageGiven> = {}) =>
  drainageFinding({ site: site(change), storm, parts: catalogue, settings: defaultSettings, ...given });
const verdicts = (change: Partial<SiteFacts> = {}, given: Partial<DrainageGiven> = {}) => {
  const { finding, problems } = found(change, given);
  return {
    station: finding?.verdict ?? null,
    parts: Object.fromEntries((finding?.parts ?? []).map((one) => [`${one.part} ${one.id}`, one.verdict])),
    codes: problems.map(({ code }) => code),
    cappedBy: finding?.cappedBy ?? null,
  };
};

describe('a site with everything measured', () => {
  it('holds, with the flow and the capacity of every part', () => {
    const { finding, problems } = found();
    expect(problems).toEqual([]);
    expect(finding!.verdict).toBe('holds');
    const by = new Map(finding!.parts.map((one) => [one.part, one]));
    for (const one of finding!.parts) {
      expect(one.flow_L_per_s).toBeCloseTo(2.5, 9);
      expect(one.flow_L_per_s_range!.low).toBeCloseTo(2.25, 9);
      expect(one.flow_L_per_s_range!.high).toBeCloseTo(2.75, 9);
    }
    // 5 m is 50 times its depth: no length is taken off. 100 × 57.735 mm as a hole: 100² √57.735 ÷ 15000.
    expect(by.get('gutter')!.capacity_L_per_s).toBeCloseTo(4.39984, 4);
    expect(by.get('outlet')!.capacity_L_per_s).toBeCloseTo((1e4 * Math.sqrt(100 / Math.sqrt(3))) / 15000, 9);
    expect(by.get('downpipe')!.capacity_L_per_s).toBeCloseTo(10.7114, 4);
    expect(finding!.parts[finding!.governing!]!.part).toBe('gutter');
    expect(finding!.carries_mm_per_h).toBeCloseTo((100 * 4.39984) / 2.5, 2);
  });

  it('takes the storm at its stated range, and harder where the site is wetter than its gauge, not softer where it is drier', () => {
    const ranged = { ...storm, intensity_range: { low: 80, high: 190 } };
    expect(verdicts({}, { storm: ranged }).station).toBe('tight');
    expect(found({ rainFactor: 1.2 }).finding!.storm_mm_per_h).toBeCloseTo(120, 9);
    expect(found({ rainFactor: 0.5 }).finding!.storm_mm_per_h).toBe(100);
  });

  it('is tight where only the point is carried, and short where that is not; the smallest part that holds is named', () => {
    const tight = found({}, { storm: { ...storm, intensity_mm_per_h: 170 } }).finding!;
    expect(tight.verdict).toBe('tight');
    // 1.1 × 4.25 L/s; the gutter of 250 mm carries 7.69, shortened by nothing.
    expect(tight.parts[0]).toMatchObject({ verdict: 'tight', smallestPartId: 'gutter-250', smallest_mm: 250 });
    const short = found({}, { storm: { ...storm, intensity_mm_per_h: 180 } }).finding!;
    expect(short.verdict).toBe('short');
    expect(short.parts[0]).toMatchObject({ verdict: 'short', smallestPartId: 'gutter-250' });
    const hopeless = found({}, { storm: { ...storm, intensity_mm_per_h: 590 } }).finding!;
    expect(hopeless.parts[0]).toMatchObject({ verdict: 'short', smallestPartId: null, smallest_mm: null });
  });

  it('is not judged where nothing was measured, or the settings say so, and judged where they say always', () => {
    const bare = { gutters: [], downpipes: [] };
    expect(found(bare)).toEqual({ finding: null, problems: [], working: [] });
    const never = { settings: { ...defaultSettings, judgeDrainage: 'never' } } as const;
    expect(found({}, never).finding).toBeNull();
    const always = { settings: { ...defaultSettings, judgeDrainage: 'always' } } as const;
    expect(verdicts(bare, always)).toMatchObject({
      station: 'unknown',
      codes: expect.arrayContaining(['drainage.gutter_missing']),
    });
  });
});

describe('who shares the water of a roof', () => {
  it('gutters by their lengths, downpipes evenly', () => {
    const gutters = [gutter, { ...gutter, gutterId: 'G2', length_m: 15, outlets_count: 3 }];
    const downpipes = [downpipe, { ...downpipe, downpipeId: 'D2' }];
    const { finding } = found({ gutters, downpipes });
    const flow = (part: string, id: string) =>
      finding!.parts.find((one) => one.part === part && one.id === id)!.flow_L_per_s;
    expect(flow('gutter', 'G1')).toBeCloseTo(2.5 / 4, 9);
    // Three quarters, in three stretches of 5 m.
    expect(flow('gutter', 'G2')).toBeCloseTo((2.5 * 3) / 4 / 3, 9);
    expect(flow('outlet', 'G2')).toBeCloseTo((2.5 * 3) / 4 / 3, 9);
    expect(flow('downpipe', 'D2')).toBeCloseTo(1.25, 9);
  });

  it('an outlet in the middle takes all, and the gutter half on either side', () => {
    const { finding } = found({ gutters: [{ ...gutter, runToOutlet_m: 2.5 }] });
    expect(finding!.parts[0]!.flow_L_per_s).toBeCloseTo(1.25, 9);
    expect(finding!.parts[1]!.flow_L_per_s).toBeCloseTo(2.5, 9);
  });

  it('an overflow takes all roofs that lead to its body of water, and no others', () => {
    const roofs = [
      { ...roof, tankId: 'T1' },
      { ...roof, roofId: 'R2', tankId: 'T3' },
      { ...roof, roofId: 'R3', tankId: 'T2' },
      { ...roof, roofId: 'R4', gutteredFraction: 0, tankId: 'T1' },
    ];
    const tanks = [tank, { ...tank, tankId: 'T2', joinedTo: 'T1' }, { ...tank, tankId: 'T3' }];
    const parts = found({ roofs, tanks }).finding!.parts.filter((one) => one.part === 'overflow');
    expect(parts.map(({ id, flow_L_per_s }) => [id, flow_L_per_s?.toFixed(6)])).toEqual([
      ['T1', '5.000000'],
      ['T3', '2.500000'],
    ]);
    const one = found().finding!.parts.find((own) => own.part === 'overflow')!;
    expect(parts[0]!.capacity_L_per_s! / one.capacity_L_per_s!).toBeCloseTo(2, 9);
  });
});

describe('what is missing or impossible', () => {
  const rows: readonly [string, Partial<SiteFacts>, string, string][] = [
    ['a level gutter', { gutters: [{ ...gutter, fall_mm_per_m: 0 }] }, 'gutter G1', 'drainage.gutter_level'],
    [
      'one that falls backwards',
      { gutters: [{ ...gutter, fall_mm_per_m: -2 }] },
      'gutter G1',
      'drainage.gutter_backwards',
    ],
    [
      'an outlet wider than its gutter',
      { gutters: [{ ...gutter, outlet_mm: 201 }] },
      'outlet G1',
      'drainage.outlet_wider',
    ],
    ['no outlet', { gutters: [{ ...gutter, outlet_mm: null }] }, 'outlet G1', 'drainage.outlet_not_measured'],
    ['no shape', { gutters: [{ ...gutter, shape: null }] }, 'gutter G1', 'drainage.gutter_not_measured'],
    ['no length', { gutters: [{ ...gutter, length_m: null }] }, 'gutter G1', 'drainage.gutter_not_measured'],
    [
      'a trapezium without its sole',
      { gutters: [{ ...gutter, shape: 'trapezoidal' }] },
      'gutter G1',
      'drainage.gutter_not_measured',
    ],
    [
      'a sole wider than the top',
      { gutters: [{ ...gutter, shape: 'trapezoidal', baseWidth_mm: 250 }] },
      'gutter G1',
      'drainage.sole_wider',
    ],
    [
      'a run longer than the gutter',
      { gutters: [{ ...gutter, runToOutlet_m: 6 }] },
      'gutter G1',
      'drainage.run_impossible',
    ],
    [
      'a run too short for one outlet',
      { gutters: [{ ...gutter, runToOutlet_m: 2 }] },
      'gutter G1',
      'drainage.run_impossible',
    ],
    ['a run beyond the table', { gutters: [{ ...gutter, length_m: 51 }] }, 'gutter G1', 'drainage.run_too_long'],
    [
      'a downpipe without a bore',
      { downpipes: [{ ...downpipe, bore_mm: null }] },
      'downpipe D1',
      'drainage.downpipe_not_measured',
    ],
    [
      'an overflow at the rim',
      { tanks: [{ ...tank, overflowHeight_m: 2 }] },
      'overflow T1',
      'drainage.overflow_at_rim',
    ],
    ['a roof like a wall', { roofs: [{ ...roof, pitch_deg: 72 }] }, 'gutter G1', 'drainage.roof_too_steep'],
  ];
  it.each(rows)('%s leaves its part and the station unknown', (_, change, name, code) => {
    const { station, parts, codes } = verdicts(change);
    expect(codes).toEqual([code]);
    expect(parts[name]).toBe('unknown');
    expect(station).toBe('unknown');
  });

  it('says of each fault which column, and the other parts are still judged', () => {
    const { finding, problems } = found({ gutters: [{ ...gutter, width_mm: null, depth_mm: null, outlet_mm: null }] });
    expect(problems.map(({ code, place, facts }) => [code, place.column, facts['missing']])).toEqual([
      ['drainage.gutter_not_measured', 'width_mm', ['width_mm', 'depth_mm']],
      ['drainage.outlet_not_measured', 'outlet_mm', undefined],
    ]);
    expect(finding!.parts.map(({ verdict }) => verdict)).toEqual(['unknown', 'unknown', 'holds', 'holds']);
    expect(finding!.carries_mm_per_h).toBeNull();
  });

  it('a level gutter is told how far it is to fall over its run', () => {
    const { problems } = found({ gutters: [{ ...gutter, fall_mm_per_m: 0 }] });
    expect(problems[0]!.facts).toMatchObject({ run_m: 5, fall_mm: 15 });
  });

  it('a tank higher than its eave, or a storm that is not known, leaves the station unknown', () => {
    const high = verdicts({ tanks: [{ ...tank, standHeight_m: 1.1 }] });
    expect(high).toMatchObject({ station: 'unknown', codes: ['drainage.tank_above_eave'] });
    const low = verdicts({ tanks: [{ ...tank, standHeight_m: 1.1, inletHeight_m: 1.8 }] });
    expect(low).toMatchObject({ station: 'holds', codes: [] });
    const dry = verdicts({}, { storm: null });
    expect(dry).toMatchObject({ station: 'unknown', codes: ['drainage.no_storm'] });
  });

  it('a roof of which no gutter was measured leaves it unknown; one with a share of 0 is left out', () => {
    const roofs = [roof, { ...roof, roofId: 'R2' }];
    expect(verdicts({ roofs })).toMatchObject({
      station: 'unknown',
      codes: ['drainage.gutter_missing', 'drainage.downpipe_missing'],
    });
    expect(verdicts({ roofs: [roof, { ...roof, roofId: 'R2', gutteredFraction: 0 }] }).station).toBe('holds');
  });

  it('a short part makes the station short, whatever else is not known', () => {
    const gutters = [{ ...gutter, outlet_mm: null }];
    expect(verdicts({ gutters }, { storm: { ...storm, intensity_mm_per_h: 300 } }).station).toBe('short');
  });

  it.each([
    ['pitch', { roofs: [{ ...roof, pitch_deg: null }] }, 'drainage.pitch_unknown'],
    ['fall', { gutters: [{ ...gutter, fall_mm_per_m: null }] }, 'drainage.fall_unknown'],
    ['height of the rim', { tanks: [{ ...tank, height_m: null }] }, 'drainage.overflow_head_assumed'],
  ] as const)('where the %s was not measured, it is tight at best, and says why', (_, change, code) => {
    expect(verdicts(change)).toMatchObject({ station: 'tight', codes: [code], cappedBy: code });
  });

  it('of a storm that caps, the same; a flat roof needs no pitch', () => {
    const cappedBy = 'storm.from_daily';
    expect(verdicts({}, { storm: { ...storm, cappedBy } })).toMatchObject({ station: 'tight', cappedBy });
    expect(verdicts({ roofs: [{ ...roof, pitch_deg: null, form: 'flat' }] })).toMatchObject({ station: 'holds' });
  });

  it('downpipes and overflows that nobody measured are noted and not judged; valleys are warned of', () => {
    const left = { downpipes: [], tanks: [{ ...tank, overflowBore_mm: null }] };
    expect(verdicts({ ...left, roofs: [{ ...roof, valleys_count: 1 }] })).toMatchObject({
      station: 'holds',
      codes: ['drainage.valleys', 'drainage.downpipe_missing', 'drainage.overflow_not_measured'],
    });
  });
});

describe('rain over the gutters', () => {
  it('asks for the share over what the fullest part of each roof carries, and warns from one hundredth on', () => {
    const asked: number[] = [];
    const shareOverCapacity = (capacity: number) => {
      asked.push(capacity);
      return 0.03;
    };
    const { finding, problems } = found({}, { shareOverCapacity });
    expect(asked[0]).toBeCloseTo(176, 1);
    expect(finding!.lost_fraction).toBeCloseTo(0.03, 12);
    expect(problems.map(({ code }) => code)).toEqual(['drainage.rain_lost']);
    expect(found({}, { shareOverCapacity: () => 0.009 }).problems).toEqual([]);
    expect(found({}, { shareOverCapacity: () => null }).finding!.lost_fraction).toBeNull();
  });
});

describe('stormFlows_L_per_s', () => {
  it('gives each tank what its own roofs bring, and every tank those of which it is not said', () => {
    const roofs = [
      { ...roof, tankId: 'T1' },
      { ...roof, roofId: 'R2', tankId: null },
    ];
    const tanks = [tank, { ...tank, tankId: 'T2', joinedTo: 'T1' }];
    const flows = stormFlows_L_per_s({ site: site({ roofs, tanks }), storm, settings: defaultSettings });
    expect([...flows].map(([id, flow]) => [id, flow.toFixed(6)])).toEqual([
      ['T1', '5.000000'],
      ['T2', '2.500000'],
    ]);
  });

  it('knows nothing without a storm, or of a tank whose roof is not known', () => {
    expect(stormFlows_L_per_s({ site: site(), storm: null, settings: defaultSettings }).size).toBe(0);
    const roofs = [{ ...roof, roofPlanArea_m2: null }];
    expect(stormFlows_L_per_s({ site: site({ roofs }), storm, settings: defaultSettings }).size).toBe(0);
  });
});
