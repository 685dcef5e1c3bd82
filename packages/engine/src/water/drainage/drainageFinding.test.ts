import { describe, expect, it } from 'vitest';
import { defaultSettings, type TankFacts } from '../../kernel/index.ts';
import { downpipe, found, gutter, roof, site, storm, tank, verdicts } from './drainageHouse.testing.ts';
import { stormFlows_L_per_s } from './stormFlows.ts';

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

describe('overflows of joined tanks, in which water stands at one level', () => {
  const low = { ...tank, standHeight_m: 0, height_m: 2, overflowHeight_m: 1.9, overflowBore_mm: 50 };
  const high = {
    ...tank,
    tankId: 'T2',
    joinedTo: 'T1',
    standHeight_m: 0,
    height_m: 3,
    overflowHeight_m: 2.9,
    overflowBore_mm: 250,
  };
  const joined = (first: Partial<TankFacts>, second: Partial<TankFacts>) => {
    const { finding, problems } = found({
      tanks: [
        { ...low, ...first },
        { ...high, ...second },
      ],
    });
    const { capacity_L_per_s, verdict } = finding!.parts.find(({ part }) => part === 'overflow')!;
    return { capacity_L_per_s: capacity_L_per_s!, verdict, codes: problems.map(({ code }) => code) };
  };
  const alone = (one: Partial<TankFacts>) =>
    found({ tanks: [{ ...low, ...one }] }).finding!.parts.find(({ part }) => part === 'overflow')!.capacity_L_per_s!;

  it('one above the lowest rim lets out nothing', () => {
    // 50 mm at 100 mm of head: as a hole 1.48 L/s, pouring 1.36 L/s.
    const { capacity_L_per_s, verdict } = joined({}, {});
    expect(capacity_L_per_s).toBeCloseTo(1.36, 2);
    expect(verdict).toBe('short');
    expect(joined({ overflowBore_mm: null }, {})).toMatchObject({ capacity_L_per_s: 0, verdict: 'short' });
  });

  it('the head of each runs to the lowest rim, stands and all', () => {
    // The rim of the second is at 2.05 m and its overflow at 1.8 m, 0.2 m under the rim of the first; the other has its own 0.1 m.
    const second = { standHeight_m: 0.5, height_m: 1.55, overflowHeight_m: 1.3, overflowBore_mm: 50 };
    const own = alone({ overflowHeight_m: 1.8 });
    expect(joined({}, second).capacity_L_per_s).toBeCloseTo(alone({}) + own, 9);
    // On a stand of 0.6 m the first has its rim above: 0.1 m is left to the second, and its own overflow is too high.
    const raised = joined({ standHeight_m: 0.6 }, { ...second, overflowHeight_m: 1.45 });
    expect(raised.capacity_L_per_s).toBeCloseTo(alone({}), 9);
  });

  it('is tight at best where one of the rims, or of the stands, is not known', () => {
    const big = { overflowBore_mm: 250, overflowHeight_m: 1.5 };
    expect(joined(big, { overflowBore_mm: null }).verdict).toBe('holds');
    for (const open of [{ height_m: null }, { standHeight_m: null }])
      expect(joined({ ...big, standHeight_m: 0.1 }, { overflowBore_mm: null, ...open })).toMatchObject({
        verdict: 'tight',
        codes: ['drainage.overflow_head_assumed'],
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
