import { describe, expect, it } from 'vitest';
import type { SiteFacts } from '../../kernel/index.ts';
import { downpipe, found, gutter, roof, storm, tank, verdicts } from './drainageHouse.testing.ts';

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

  it('measured gutters on a roof of which no share has any are told of, and the other roofs are judged', () => {
    const none = { ...roof, roofId: 'R2', gutteredFraction: 0 };
    const second = { ...gutter, gutterId: 'G2', roofId: 'R2' };
    const both = verdicts({ roofs: [roof, none], gutters: [gutter, second] });
    expect(both).toMatchObject({ station: 'unknown', codes: ['drainage.guttered_share_zero'] });
    expect(both.parts).toEqual({
      'gutter G1': 'holds',
      'outlet G1': 'holds',
      'downpipe D1': 'holds',
      'overflow T1': 'holds',
    });
    const { finding, problems } = found({ roofs: [roof, none], gutters: [gutter, second] });
    expect(problems[0]).toMatchObject({
      place: { file: 'roofs.csv', column: 'gutteredFraction' },
      facts: { roof: 'R2' },
    });
    expect(finding!.carries_mm_per_h).toBeNull();
    const pipes = verdicts({
      roofs: [roof, none],
      downpipes: [downpipe, { ...downpipe, downpipeId: 'D2', roofId: 'R2' }],
    });
    expect(pipes).toMatchObject({ station: 'unknown', codes: ['drainage.guttered_share_zero'] });
    const alone = verdicts({ roofs: [{ ...roof, gutteredFraction: 0 }] });
    expect(alone).toMatchObject({ station: 'unknown', codes: ['drainage.guttered_share_zero'] });
  });

  it('does not tell of rain that everything carries while a roof has no gutter that was measured', () => {
    const roofs = [roof, { ...roof, roofId: 'R2' }];
    expect(found({ roofs }).finding!.carries_mm_per_h).toBeNull();
    expect(
      found({ roofs: [roof, { ...roof, roofId: 'R2', gutteredFraction: 0 }] }).finding!.carries_mm_per_h,
    ).not.toBeNull();
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
