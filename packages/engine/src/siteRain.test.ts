import { describe, expect, it } from 'vitest';
import {
  type DesignSettings,
  dayIndexOf,
  defaultSettings,
  type GaugeFacts,
  noKit,
  noRollout,
  type Scenario,
  type SiteFacts,
} from './kernel/index.ts';
import { designSites, problemsOf, rainOfSite, readyProgramme, seriesOf } from './plan.ts';
import { gauge, normals, readings, site, twelveYears } from './siteRain.testing.ts';
import { rainUnder } from './siteRain.ts';

function judged(gauges: readonly GaugeFacts[], of = site(), settings: Partial<DesignSettings> = {}) {
  const facts = {
    settings: { ...defaultSettings, madeYears: 30, waterYearStartMonth: 1, ...settings },
    sites: [of],
    gauges,
    parts: [],
    prices: [],
    kit: noKit,
    rollout: noRollout,
  };
  const ready = readyProgramme(facts);
  const [design] = [...designSites([of], ready)];
  return { ready, design: design!, own: problemsOf(of, ready), rain: rainOfSite(of, ready), site: of };
}
/** Codes of problems, but for what every case has: a stated tank, and months of regular rain that look copied. */
const ofEveryCase = ['site.tank_volume_stated', 'rain.month_twice'];
const codes = (problems: readonly { code: string }[]) =>
  problems.flatMap(({ code }) => (ofEveryCase.includes(code) ? [] : [code]));

describe('a gauge with normals', () => {
  it('and no record has made-up rain: its sites are tight at best, and say why', () => {
    const { ready, design, own } = judged([gauge('G1', { normals })]);
    const finding = ready.gauges.get('G1')!;
    expect(finding.rain).toMatchObject({ judgedYears: 30, filledDays: 0 });
    expect(finding.rain!.madeDays).toBe(finding.rain!.record.rain_mm.length);
    expect(codes(finding.problems)).toEqual(['rain.made_up']);
    expect(finding.problems[0]!.facts).toMatchObject({ years: 30, yearFrom: 1981, yearTo: 2010 });
    expect(design.storages[0]).toMatchObject({
      verdict: 'tight',
      cappedBy: 'rain.made_up',
      goodYears: 30,
      tankToHold_L: null,
    });
    expect(codes(design.problems)).toContain('rain.made_up');
    // It is told of the gauge; the site's own problems do not tell it again.
    expect(codes(own)).not.toContain('rain.made_up');
    expect(design.working.map(({ code }) => code)).toContain('rain.made');
  });

  it('would hold on a measured record of the same kind', () => {
    expect(judged([gauge('G1', { readings: readings(twelveYears) })]).design.verdict).toBe('holds');
  });

  it('and a record too short to judge has made-up rain, and says that the record was set aside', () => {
    const { ready, design } = judged([gauge('G1', { normals, readings: readings(200) })]);
    expect(codes(ready.gauges.get('G1')!.problems)).toEqual(['rain.record_set_aside', 'rain.made_up']);
    expect(design.verdict).toBe('tight');
  });

  it('and a record that can be judged has its record, and is told where the two differ', () => {
    const alike = judged([gauge('G1', { normals, readings: readings(twelveYears) })]);
    expect(alike.ready.gauges.get('G1')!.rain!.madeDays).toBe(0);
    expect(codes(alike.ready.gauges.get('G1')!.problems)).toEqual([]);
    const other = judged([gauge('G1', { normals, readings: readings(twelveYears, 24) })]);
    expect(codes(other.ready.gauges.get('G1')!.problems)).toEqual(['rain.normals_differ']);
    expect(other.design.verdict).toBe('holds');
  });

  it('and a record in a wrong unit has no rain: the record is to be mended', () => {
    const inches = readings(twelveYears, 0.37);
    const { ready, design } = judged([gauge('G1', { normals, readings: inches })]);
    expect(ready.gauges.get('G1')!.rain).toBeNull();
    expect(codes(ready.gauges.get('G1')!.problems)).toEqual(['rain.in_inches']);
    expect(design.verdict).toBe('unknown');
  });

  it('that lack a month, or cannot be, has no rain', () => {
    const lacking = judged([gauge('G1', { normals: normals.slice(1) })]);
    expect(codes(lacking.ready.gauges.get('G1')!.problems)).toEqual(['rain.none', 'rain.normals_incomplete']);
    expect(lacking.design.verdict).toBe('unknown');
    const impossible = normals.map((one) => (one.month === 4 ? { ...one, wetDays: 0 } : one));
    expect(codes(judged([gauge('G1', { normals: impossible })]).ready.gauges.get('G1')!.problems)).toEqual([
      'rain.none',
      'rain.normals_impossible',
    ]);
  });
});

/** East of a place on the equator, a degree is 111.2 km. */
const east = (km: number) => ({ latitude_deg: 0, longitude_deg: km / 111.195 });
const unnamed = (change: Partial<SiteFacts> = {}) => site({ gaugeId: null, ...east(0), ...change });

describe('a site without a gauge of its own', () => {
  it('takes the mean of those within reach, and says which, how far and how much of each', () => {
    const gauges = [
      gauge('G1', { ...east(10), readings: readings(twelveYears) }),
      gauge('G2', { ...east(-20), readings: readings(twelveYears, 6, 4) }),
      gauge('G3', { ...east(60), readings: readings(twelveYears, 90) }),
    ];
    const { design, own, rain, ready, site: of } = judged(gauges);
    expect(design.gaugeId).toBe('G1');
    const found = judged(gauges, unnamed());
    expect(found.rain!.byDistance.map(({ gaugeId }) => gaugeId)).toEqual(['G1', 'G2']);
    expect(found.rain!.byDistance[0]!.weight_fraction).toBeCloseTo(0.8, 4);
    const note = found.own.find(({ code }) => code === 'site.gauge_by_distance')!;
    expect(note).toMatchObject({ severity: 'note', place: { siteId: 'S1' } });
    expect(note.facts).toMatchObject({
      gauges: ['G1', 'G2'],
      distances_km: ['10.0', '20.0'],
      weights_fraction: ['0.80', '0.20'],
    });
    expect(found.design).toMatchObject({ gaugeId: null, verdict: 'holds' });
    const series = seriesOf(found.site, found.ready)[0]!;
    // The first day of the judged record on which both rained: 0.8 × 12 + 0.2 × 6.
    expect(Math.max(...series.rain_mm)).toBeCloseTo(10.8, 3);
    expect(found.design.working.filter(({ code }) => code === 'rain.byDistance')).toHaveLength(2);
    expect(codes(own)).not.toContain('site.gauge_by_distance');
    expect(rain).toBe(ready.gauges.get(of.gaugeId!));
  });

  it('is the site with that gauge where it lies within reach of one alone', () => {
    const gauges = [gauge('G1', { ...east(10), readings: readings(twelveYears) })];
    const given = judged(gauges, site(east(0))).design.storages[0];
    expect(judged(gauges, unnamed()).design.storages[0]).toEqual(given);
  });

  it('has no verdict where the nearest is too far, and is told its distance', () => {
    const { design, own } = judged([gauge('G1', { ...east(51), readings: readings(twelveYears) })], unnamed());
    expect(design.verdict).toBe('unknown');
    expect(codes(own)).toEqual(['site.gauge_too_far']);
    expect(own[0]!.facts['distance_km']).toBeCloseTo(51, 3);
    const wide = judged([gauge('G1', { ...east(51), readings: readings(twelveYears) })], unnamed(), {
      gaugeReach_km: 60,
    });
    expect(wide.design.verdict).toBe('holds');
  });

  it('has no verdict where nobody knows where it is, or where the gauges are', () => {
    const gauges = [gauge('G1', { ...east(1), readings: readings(twelveYears) })];
    expect(codes(judged(gauges, site({ gaugeId: null })).own)).toEqual(['site.gauge_unknown']);
    expect(codes(judged([gauge('G1', { readings: readings(twelveYears) })], unnamed()).own)).toEqual([
      'site.gauge_unknown',
    ]);
  });

  it('names those within reach that have no record', () => {
    const gauges = [
      gauge('G1', { ...east(10), readings: readings(twelveYears) }),
      gauge('G2', east(3)),
      gauge('G3', { ...east(4), normals }),
    ];
    const { own, rain } = judged(gauges, unnamed());
    expect(own.find(({ code }) => code === 'site.gauge_by_distance')!.facts['without']).toEqual(['G2', 'G3']);
    expect(rain!.rain!.madeDays).toBe(0);
  });

  it('takes the nearest with normals where none within reach has a record, and is tight at best', () => {
    const gauges = [gauge('G2', east(3)), gauge('G3', { ...east(4), normals })];
    const { design, own, rain } = judged(gauges, unnamed());
    expect(rain!.byDistance).toEqual([{ gaugeId: 'G3', distance_km: expect.closeTo(4, 3), weight_fraction: 1 }]);
    expect(design.storages[0]).toMatchObject({ verdict: 'tight', cappedBy: 'rain.made_up' });
    expect(codes(own)).toContain('site.gauge_by_distance');
    const none = judged([gauge('G2', east(3))], unnamed());
    expect(none.design.verdict).toBe('unknown');
    expect(codes(none.design.problems)).toEqual(['rain.none']);
  });

  it('is worked out once a site, and anew for the next', () => {
    const gauges = [gauge('G1', { ...east(10), readings: readings(twelveYears) })];
    const { ready, site: one } = judged(gauges, unnamed());
    const first = rainOfSite(one, ready);
    expect(rainOfSite(one, ready)).toBe(first);
    expect(rainOfSite(unnamed({ siteId: 'S2' }), ready)!.name).toBe('S2');
  });
});

describe('the rain put to a question', () => {
  const drier: Scenario = { wetDays_fraction: 0.3, wetDayRain_fraction: 0.5, lastYears: null };
  const designUnder = (gauges: readonly GaugeFacts[], of: SiteFacts, asked = drier) => {
    const { ready, design } = judged(gauges, of);
    const [under] = [...designSites([of], rainUnder(ready, asked))];
    return { design, under: under! };
  };

  it('is asked of a gauge given, of those within reach, and of made-up rain alike', () => {
    const measured = [gauge('G1', { ...east(10), readings: readings(twelveYears) })];
    for (const [gauges, of] of [
      [measured, site()],
      [measured, unnamed()],
      [[gauge('G1', { ...east(10), normals })], site()],
      [[gauge('G1', { ...east(10), normals })], unnamed()],
    ] as const) {
      const { design, under } = designUnder(gauges, of);
      const share = under.storages[0]!.inflow_L_per_year / design.storages[0]!.inflow_L_per_year;
      // 0.3 of the wet days with 0.5 of their rain: 0.15, asked once and not twice.
      expect(share).toBeGreaterThan(0.12);
      expect(share).toBeLessThan(0.18);
      expect(under.verdict).toBe('short');
    }
  });

  it('leaves a site unknown where none of the last years can be judged', () => {
    const gaps = readings(twelveYears).filter(
      ({ day }) => day < dayIndexOf(2012, 3, 1) || day > dayIndexOf(2012, 8, 1),
    );
    const asked = { wetDays_fraction: 1, wetDayRain_fraction: 1, lastYears: 1 };
    const { design, under } = designUnder([gauge('G1', { readings: gaps })], site(), asked);
    expect(design.verdict).not.toBe('unknown');
    expect(under.verdict).toBe('unknown');
    expect(codes(under.problems)).toEqual(['rain.too_short']);
  });
});
